package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.List;
import mullwright.analysis.wall.SlabDistance;
import mullwright.layout.PlacedAnchor;
import mullwright.model.Given;
import mullwright.model.Part;
import mullwright.model.PartKind;
import mullwright.syntax.ClauseWord;

/**
 * A slab edge nearer to the vertical, or further from it, than the anchor's part can span.
 *
 * <p>The angle does not reach its embed, or the vertical fouls the slab. Geometry.
 */
@AutoService(Rule.class)
public final class AnchorOutOfReach implements AnchorRule {
  @Override
  public About about() {
    return About.of(Group.ANCHOR, Severity.ERROR);
  }

  @Override
  public void check(PlacedAnchor it, WallFacts facts, Findings found) {
    SlabDistance.of(facts.layout(), it)
        .filter(distance -> distance.reach().isPresent())
        .filter(distance -> !distance.within(distance.reach().get()))
        .ifPresent(distance -> tell(it, distance, facts, found));
  }

  private static void tell(
      PlacedAnchor it, SlabDistance distance, WallFacts facts, Findings found) {
    SlabDistance.Reach reach = distance.reach().orElseThrow();
    Measures say = Measures.of(facts);
    boolean near = distance.value().isShorterThan(reach.least());
    Findings.Draft draft =
        found
            .at(it.use().origin())
            .piece(it.name())
            .what(
                "The slab edge stands "
                    + say.length(distance.value())
                    + " from the back of the vertical; "
                    + it.part().orElseThrow().name()
                    + " spans "
                    + say.length(reach.least())
                    + " to "
                    + say.length(reach.most())
                    + ".")
            .mend(near ? "Take a shorter part." : "Take a part that reaches further.")
            .measured(distance.explain())
            .limit(distance.limit(near))
            .related(distance.edge().origin(), "the slab edge");
    AnchorEdits anchors = new AnchorEdits(facts);
    for (String part : partsThatReach(it, distance, facts)) {
      anchors
          .give(it, ClauseWord.PART, part, other -> sameMistake(other, distance, facts))
          .map(edit -> new Fix("Take " + part, List.of(edit)))
          .ifPresent(draft::fix);
    }
  }

  private static boolean sameMistake(PlacedAnchor other, SlabDistance distance, WallFacts facts) {
    return SlabDistance.of(facts.layout(), other)
        .filter(d -> d.value().equals(distance.value()))
        .isPresent();
  }

  private static List<String> partsThatReach(
      PlacedAnchor it, SlabDistance distance, WallFacts facts) {
    String kind = it.use().kind().spelling();
    return facts.catalog().all(PartKind.ANCHOR).stream()
        .filter(Part.Anchor.class::isInstance)
        .map(Part.Anchor.class::cast)
        .filter(part -> part.use().map(Given::value).map(kind::equals).orElse(true))
        .filter(part -> SlabDistance.reach(part).filter(distance::within).isPresent())
        .map(Part.Anchor::name)
        .toList();
  }
}
