package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.analysis.anchor.AnchorCount;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.model.AnchorUse;

/**
 * Finds for every length of vertical what holds it up, and where its weight goes if nothing does.
 */
final class WeightHolds {
  private final WallLayout layout;
  private final RunSupports supports;
  private final LengthHold[] holds;

  WeightHolds(WallLayout layout, RunSupports supports) {
    this.layout = layout;
    this.supports = supports;
    this.holds = new LengthHold[layout.verticals().size()];
    for (VerticalPiece piece : layout.verticals()) {
      holds[piece.index()] = find(piece);
    }
  }

  /** What holds a length. */
  LengthHold of(VerticalPiece piece) {
    return holds[piece.index()];
  }

  private LengthHold find(VerticalPiece piece) {
    List<PlacedAnchor> deadLoads = new ArrayList<>();
    List<PlacedAnchor> windLoads = new ArrayList<>();
    List<AnchorCount.Kind> kinds = new ArrayList<>();
    for (PlacedAnchor anchor : supports.anchorsOn(piece)) {
      boolean dead = anchor.use().kind() == AnchorUse.Kind.DEAD_LOAD;
      (dead ? deadLoads : windLoads).add(anchor);
      kinds.add(dead ? AnchorCount.Kind.DEAD_LOAD : AnchorCount.Kind.WIND_LOAD);
    }
    return new LengthHold(
        deadLoads,
        windLoads,
        landing(piece, deadLoads, windLoads),
        standsOn(piece),
        AnchorCount.solve(kinds));
  }

  private Optional<RunSupport> standsOn(VerticalPiece piece) {
    return piece.spliceBelow() < 0 ? supports.buttedEnd(piece, true) : Optional.empty();
  }

  private WeightLanding landing(
      VerticalPiece piece, List<PlacedAnchor> deadLoads, List<PlacedAnchor> windLoads) {
    if (!deadLoads.isEmpty()) {
      return new WeightLanding.HangsFromAnchors(deadLoads);
    }
    Optional<RunSupport> under = standsOn(piece);
    if (under.isPresent()) {
      return new WeightLanding.OnHorizontal(true, under.get());
    }
    Optional<RunSupport> over =
        piece.spliceAbove() < 0 ? supports.buttedEnd(piece, false) : Optional.empty();
    if (over.isPresent()) {
      return new WeightLanding.OnHorizontal(false, over.get());
    }
    if (piece.spliceBelow() >= 0) {
      return new WeightLanding.OnClosedJoint(
          layout.verticals().get(layout.splices().get(piece.spliceBelow()).below()));
    }
    return windLoads.isEmpty()
        ? new WeightLanding.Nowhere()
        : new WeightLanding.OnSlotEnd(windLoads.get(0));
  }

  /** The horizontal that the upper end of a length butts and holds up, by index; -1 if none. */
  int propped(VerticalPiece piece) {
    WeightLanding landing = of(piece).landing();
    boolean stands =
        landing instanceof WeightLanding.HangsFromAnchors
            || landing instanceof WeightLanding.OnHorizontal rest && rest.standing();
    return stands && piece.spliceAbove() < 0
        ? supports.buttedEnd(piece, false).map(RunSupport::horizontal).orElse(-1)
        : -1;
  }
}
