package mullwright.analysis.wall;

import java.util.List;
import java.util.Optional;
import mullwright.analysis.movement.Expansion;
import mullwright.analysis.movement.HeadGap;
import mullwright.derivation.Derivation;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.VerticalPiece;
import mullwright.model.Criteria;
import mullwright.model.Given;
import mullwright.model.Grid;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;

/**
 * The joint over the head of a vertical: what must fit into it, beside what the project gives.
 *
 * <p>The vertical grows with heat from the dead-load anchor it hangs from, and the slab right over
 * it sinks; tolerance is {@link JointMovement#TOLERANCE} (common practice). A slab counts if its
 * underside is at most {@link #NEAR} over the end of the vertical and the vertical does not hang
 * from it.
 *
 * @param piece the uppermost length
 * @param hangs the dead-load anchor it grows from
 * @param slab how far the slab over it sinks, if one is near and the project says so
 * @param over the floor of that slab
 * @param given the width of the joint round the frame, if stated
 */
public record HeadJoint(
    VerticalPiece piece,
    PlacedAnchor hangs,
    Given<Criteria.Temperature> temperature,
    Optional<Given<Length>> slab,
    Optional<Grid.Floor> over,
    Optional<Given<Length>> given,
    HeadGap.Result result) {
  /** A slab further over the end of a vertical than that is not what closes its joint. */
  public static final Length NEAR = Length.ofInches(12);

  /**
   * The joint over a length; empty unless it is the uppermost of its run, ends free of horizontals,
   * hangs from a dead-load anchor, and the project states the temperature of the metal.
   */
  public static Optional<HeadJoint> of(WallAnalysis analysis, VerticalPiece piece) {
    Optional<Given<Criteria.Temperature>> temperature =
        analysis.layout().wall().criteria().temperature();
    if (piece.spliceAbove() >= 0 || temperature.isEmpty() || butts(analysis, piece)) {
      return Optional.empty();
    }
    List<PlacedAnchor> dead = analysis.holdOf(piece).deadLoads();
    return dead.isEmpty()
        ? Optional.empty()
        : of(analysis, piece, dead.get(dead.size() - 1), temperature.get());
  }

  private static Optional<HeadJoint> of(
      WallAnalysis analysis,
      VerticalPiece piece,
      PlacedAnchor hangs,
      Given<Criteria.Temperature> temperature) {
    Optional<Grid.Floor> over =
        analysis.layout().wall().grid().floors().stream()
            .filter(floor -> near(floor, piece.top()))
            .filter(floor -> hangs.use().floor().filter(f -> f == floor.index()).isEmpty())
            .findFirst();
    var sinking = analysis.layout().wall().criteria().slabDeflection();
    Optional<Given<Length>> slab =
        over.flatMap(
            floor ->
                Optional.ofNullable(sinking.get(floor.name()))
                    .or(() -> Optional.ofNullable(sinking.get(""))));
    double warmer =
        Math.max(0, temperature.value().most().toSi() - temperature.value().set().toSi());
    double above = Math.max(0, piece.top().minus(hangs.y()).toMetres());
    return HeadGap.solve(
            new HeadGap.Input(
                slab.map(length -> length.value().toMetres()).orElse(0.0),
                JointMovement.expansion(piece).coefficient() * above * warmer,
                JointMovement.TOLERANCE.toMetres()))
        .solved()
        .map(
            result ->
                new HeadJoint(
                    piece,
                    hangs,
                    temperature,
                    slab,
                    over,
                    analysis.layout().wall().fabrication().perimeterJoint(),
                    result));
  }

  private static boolean butts(WallAnalysis analysis, VerticalPiece piece) {
    double top = piece.top().toMetres();
    return analysis
        .runOf(piece)
        .horizontals()
        .anyMatch(end -> Math.abs(end.y() - top) < RunSupport.SAME_HEIGHT);
  }

  private static boolean near(Grid.Floor floor, Length top) {
    Length underside =
        floor.slab().map(depth -> floor.elevation().value().minus(depth.value())).orElse(null);
    return underside != null
        && !underside.isShorterThan(top)
        && !underside.minus(top).isLongerThan(NEAR);
  }

  void numbers(List<FrameNumber> into) {
    into.add(
        given
            .map(
                joint ->
                    FrameNumber.held(
                        "head joint needed",
                        piece.name(),
                        result.needed(),
                        joint.value().toMetres(),
                        Kind.LENGTH,
                        "movement",
                        this::needed,
                        () -> Inputs.length("joint round the frame", joint)))
            .orElseGet(
                () ->
                    FrameNumber.free(
                        "head joint needed",
                        piece.name(),
                        result.needed(),
                        Kind.LENGTH,
                        "movement",
                        this::needed)));
  }

  /** The joint needed, with everything put in. */
  public Derivation needed() {
    return HeadGap.NEEDED.explain(
        "head joint needed",
        result.needed(),
        Kind.LENGTH,
        slab.map(length -> Inputs.length("slab deflection", length))
            .orElseGet(() -> Derivation.assumed("slab deflection", Length.ZERO, noSlab())),
        growth(),
        Derivation.assumed("tolerance", JointMovement.TOLERANCE, "common practice"));
  }

  private String noSlab() {
    return over.isEmpty()
        ? "no slab that it does not hang from is right over the head"
        : "not stated, so taken as none";
  }

  private Derivation growth() {
    return Derivation.computed(
        "thermal growth",
        result.input().thermalGrowth(),
        Kind.LENGTH,
        "coefficient of expansion × distance to the head × change of temperature",
        "closed form",
        Derivation.assumed(
            "coefficient of expansion",
            Quantity.ofSi(JointMovement.expansion(piece).coefficient(), Kind.THERMAL_EXPANSION),
            Kind.THERMAL_EXPANSION,
            Expansion.SOURCE),
        Derivation.computed(
            "distance to the head",
            piece.top().minus(hangs.y()),
            "from " + hangs.name(),
            "conventions of measure"),
        Derivation.computed(
            "change of temperature",
            temperature.value().most().toSi() - temperature.value().set().toSi(),
            Kind.TEMPERATURE_DIFFERENCE,
            "hottest metal − metal when set",
            "the project's criteria"));
  }
}
