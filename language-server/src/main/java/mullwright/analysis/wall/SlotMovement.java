package mullwright.analysis.wall;

import java.util.List;
import java.util.Optional;
import mullwright.analysis.movement.Expansion;
import mullwright.analysis.movement.SlotLength;
import mullwright.derivation.Derivation;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.VerticalPiece;
import mullwright.model.AnchorUse;
import mullwright.model.Criteria;
import mullwright.model.Given;
import mullwright.model.Part;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;

/**
 * The slot a sliding anchor needs, beside the one its part has.
 *
 * <p>The vertical moves past the slot with the heat of the metal between the slot and the dead-load
 * anchor it hangs from, down with the slab it hangs from, and up against the anchor's own slab
 * where that sinks. The bolt is set at the middle; the adjustment when installing is {@link
 * #ADJUSTMENT} (common practice).
 *
 * @param anchor the sliding anchor
 * @param hangs the dead-load anchor the length hangs from
 * @param bolt the bolt in the slot
 * @param slot the slot the part has
 * @param result the numbers
 */
public record SlotMovement(
    PlacedAnchor anchor,
    PlacedAnchor hangs,
    Given<Length> bolt,
    Given<Length> slot,
    double coefficient,
    Given<Criteria.Temperature> temperature,
    Optional<Given<Length>> slabHere,
    Optional<Given<Length>> slabThere,
    SlotLength.Result result) {
  /** Left for installing: 1/4" (common practice). */
  public static final Length ADJUSTMENT = Length.ofInches(1, 4);

  /**
   * The movement at a sliding anchor; empty unless its part states its slot, its bolt its diameter,
   * the project the temperature of the metal, and the length hangs from a dead-load anchor.
   */
  public static Optional<SlotMovement> of(WallAnalysis analysis, PlacedAnchor anchor) {
    Optional<Given<Length>> slot = anchor.part().flatMap(Part.Anchor::slot);
    Optional<Given<Length>> bolt =
        anchor
            .use()
            .bolted()
            .flatMap(
                fixing ->
                    analysis
                        .layout()
                        .catalog()
                        .find(Part.Fastener.class, fixing.fastener().value()))
            .flatMap(Part.Fastener::diameter);
    Criteria criteria = analysis.layout().wall().criteria();
    boolean slides = anchor.use().kind() != AnchorUse.Kind.DEAD_LOAD && anchor.vertical() >= 0;
    if (!slides || slot.isEmpty() || bolt.isEmpty() || criteria.temperature().isEmpty()) {
      return Optional.empty();
    }
    VerticalPiece piece = analysis.layout().verticals().get(anchor.vertical());
    return analysis.anchorsOn(piece).stream()
        .filter(other -> other.use().kind() == AnchorUse.Kind.DEAD_LOAD)
        .findFirst()
        .flatMap(hangs -> of(analysis, piece, anchor, hangs, bolt.get(), slot.get()));
  }

  private static Optional<SlotMovement> of(
      WallAnalysis analysis,
      VerticalPiece piece,
      PlacedAnchor anchor,
      PlacedAnchor hangs,
      Given<Length> bolt,
      Given<Length> slot) {
    Given<Criteria.Temperature> temperature =
        analysis.layout().wall().criteria().temperature().orElseThrow();
    double coefficient = JointMovement.expansion(piece).coefficient();
    double above = anchor.y().minus(hangs.y()).toMetres();
    double most = temperature.value().most().toSi() - temperature.value().set().toSi();
    double least = temperature.value().set().toSi() - temperature.value().least().toSi();
    Optional<Given<Length>> here = JointMovement.slab(analysis, anchor);
    Optional<Given<Length>> there = JointMovement.slab(analysis, hangs);
    double growth = coefficient * Math.abs(above) * most;
    double shrinking = coefficient * Math.abs(above) * least;
    double up = (above > 0 ? growth : shrinking) + metres(here);
    double down = (above > 0 ? shrinking : growth) + metres(there);
    return SlotLength.solve(
            new SlotLength.Input(bolt.value().toMetres(), up, down, ADJUSTMENT.toMetres()))
        .solved()
        .map(
            result ->
                new SlotMovement(
                    anchor, hangs, bolt, slot, coefficient, temperature, here, there, result));
  }

  private static double metres(Optional<Given<Length>> length) {
    return length.map(given -> given.value().toMetres()).orElse(0.0);
  }

  /** True if the slot is shorter than needed. */
  public boolean tooShort() {
    return slot.value().toMetres() < result.needed() - 1e-7;
  }

  void numbers(List<FrameNumber> into) {
    into.add(
        FrameNumber.held(
            "slot needed",
            anchor.name(),
            result.needed(),
            slot.value().toMetres(),
            Kind.LENGTH,
            "movement",
            this::needed,
            () -> Inputs.length("slot", slot)));
  }

  /** The slot needed with how it came about. */
  public Derivation needed() {
    return SlotLength.NEEDED.explain(
        "slot needed",
        result.needed(),
        Kind.LENGTH,
        Inputs.length("bolt diameter", bolt),
        movement("movement up", result.input().up(), true),
        movement("movement down", result.input().down(), false),
        Derivation.assumed("installation adjustment", ADJUSTMENT, "common practice"));
  }

  private Derivation movement(String name, double metres, boolean up) {
    boolean grows = anchor.y().isLongerThan(hangs.y()) == up;
    Quantity end = grows ? temperature.value().most() : temperature.value().least();
    Optional<Given<Length>> slab = up ? slabHere : slabThere;
    return Derivation.computed(
        name,
        metres,
        Kind.LENGTH,
        "coefficient of expansion × distance to the dead-load anchor × change of temperature"
            + " + slab deflection",
        "statics",
        Derivation.assumed(
            "coefficient of expansion",
            Quantity.ofSi(coefficient, Kind.THERMAL_EXPANSION),
            Kind.THERMAL_EXPANSION,
            Expansion.SOURCE),
        Derivation.computed(
            "distance to the dead-load anchor",
            anchor.y().minus(hangs.y()).abs(),
            "from " + hangs.name(),
            "conventions of measure"),
        Derivation.computed(
            "change of temperature",
            Math.abs(end.toSi() - temperature.value().set().toSi()),
            Kind.TEMPERATURE_DIFFERENCE,
            grows ? "hottest metal − metal when set" : "metal when set − coldest metal",
            "the project's criteria"),
        slab.map(given -> Inputs.length("slab deflection", given))
            .orElseGet(
                () ->
                    Derivation.assumed(
                        "slab deflection", Length.ZERO, "not stated, so taken as none")));
  }
}
