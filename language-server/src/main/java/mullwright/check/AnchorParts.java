package mullwright.check;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import mullwright.analysis.wall.AnchorDemand;
import mullwright.analysis.wall.SlabDistance;
import mullwright.layout.PlacedAnchor;
import mullwright.model.Given;
import mullwright.model.Part;
import mullwright.model.PartKind;
import mullwright.syntax.ClauseWord;

/**
 * Parts of the catalog that an anchor may take in the place of its own: of its kind and metal, with
 * the bolts at the same height and all that its own part can do. So nothing else becomes another,
 * and a statement that speaks of more anchors may take it for them all.
 */
record AnchorParts(WallFacts facts, PlacedAnchor it) {

  /** Takes the weakest part that is good for all the anchor carries, if there is one. */
  Optional<Fix> strongerFor(List<AnchorDemand> demands) {
    return take(
        others(part -> demands.stream().allMatch(demand -> isGood(part, demand)))
            .min(Comparator.comparingDouble(AnchorParts::strength)));
  }

  /**
   * Takes the part with the shortest slot that is long enough, if there is one.
   *
   * @param needed length of the slot [m]
   */
  Optional<Fix> slotOf(double needed) {
    return take(
        others(part -> slot(part) >= needed).min(Comparator.comparingDouble(AnchorParts::slot)));
  }

  private Optional<Fix> take(Optional<Part.Anchor> part) {
    return part.flatMap(
        other ->
            new StatementEdits(facts.text())
                .setClause(
                    it.use().origin(),
                    ClauseWord.PART,
                    ClauseWord.PART.spelling() + " " + Words.asName(other.name()))
                .map(edit -> new Fix("Take " + other.name(), List.of(edit))));
  }

  private Stream<Part.Anchor> others(Predicate<Part.Anchor> enough) {
    Part.Anchor own = it.part().orElseThrow();
    return facts.catalog().all(PartKind.ANCHOR).stream()
        .filter(Part.Anchor.class::isInstance)
        .map(Part.Anchor.class::cast)
        .filter(part -> !part.name().equals(own.name()))
        .filter(part -> part.use().map(Given::value).map(kind()::equals).orElse(true))
        .filter(part -> part.metal().value().equals(own.metal().value()))
        .filter(part -> part.boltLine().value().equals(own.boltLine().value()))
        .filter(part -> doesAllOf(part, own))
        .filter(enough);
  }

  private String kind() {
    return it.use().kind().spelling();
  }

  private boolean doesAllOf(Part.Anchor part, Part.Anchor own) {
    boolean carries =
        own.capacities().entrySet().stream()
            .allMatch(
                given -> capacity(part, given.getKey()) >= given.getValue().value().toSi() - 1e-9);
    return carries && slot(part) >= slot(own) && reaches(part, own);
  }

  private boolean reaches(Part.Anchor part, Part.Anchor own) {
    Optional<SlabDistance.Reach> reach = SlabDistance.reach(part);
    if (reach.isEmpty()) {
      return true;
    }
    boolean here =
        SlabDistance.of(facts.layout(), it).filter(at -> !at.within(reach.get())).isEmpty();
    return here
        && SlabDistance.reach(own)
            .filter(
                its ->
                    its.least().isShorterThan(reach.get().least())
                        || its.most().isLongerThan(reach.get().most()))
            .isEmpty();
  }

  private static boolean isGood(Part.Anchor part, AnchorDemand demand) {
    // where no capacity is given nothing is known, which is no better
    return capacity(part, demand.direction()) >= demand.newtons()
        || demand.capacity().isEmpty() && !part.capacities().containsKey(demand.direction());
  }

  private static double capacity(Part.Anchor part, String direction) {
    return Optional.ofNullable(part.capacities().get(direction))
        .map(given -> given.value().toSi())
        .orElse(0.0);
  }

  // sorted: the map has another order at every start, and so the sum might have another last digit
  private static double strength(Part.Anchor part) {
    return part.capacities().values().stream()
        .mapToDouble(given -> given.value().toSi())
        .sorted()
        .sum();
  }

  private static double slot(Part.Anchor part) {
    return part.slot().map(given -> given.value().toMetres()).orElse(0.0);
  }
}
