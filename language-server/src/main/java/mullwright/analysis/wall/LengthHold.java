package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.analysis.anchor.AnchorCount;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.VerticalPiece;
import mullwright.model.AnchorUse;

/**
 * What a length of vertical hangs from or stands on.
 *
 * @param deadLoads its dead-load anchors, from below
 * @param windLoads its wind-load anchors and clips, from below
 * @param standsOn the horizontal its lower end butts and rests on, if there is one
 * @param count the count of its anchors
 */
public record LengthHold(
    List<PlacedAnchor> deadLoads,
    List<PlacedAnchor> windLoads,
    Optional<RunSupport> standsOn,
    AnchorCount.Result count) {
  public LengthHold {
    deadLoads = List.copyOf(deadLoads);
    windLoads = List.copyOf(windLoads);
  }

  /** What holds a length. */
  static LengthHold of(WallAnalysis analysis, VerticalPiece piece) {
    List<PlacedAnchor> deadLoads = new ArrayList<>();
    List<PlacedAnchor> windLoads = new ArrayList<>();
    List<AnchorCount.Kind> kinds = new ArrayList<>();
    for (PlacedAnchor anchor : analysis.anchorsOn(piece)) {
      boolean dead = anchor.use().kind() == AnchorUse.Kind.DEAD_LOAD;
      (dead ? deadLoads : windLoads).add(anchor);
      kinds.add(dead ? AnchorCount.Kind.DEAD_LOAD : AnchorCount.Kind.WIND_LOAD);
    }
    Optional<RunSupport> rest = Optional.empty();
    if (piece.spliceBelow() < 0) {
      double end = piece.bottom().toMetres();
      rest =
          analysis
              .runOf(piece)
              .horizontals()
              .filter(s -> Math.abs(s.y() - end) < RunSupport.SAME_HEIGHT)
              .findFirst();
    }
    return new LengthHold(deadLoads, windLoads, rest, AnchorCount.solve(kinds));
  }

  /** True if its weight goes nowhere: it hangs from no anchor and stands on nothing. */
  public boolean unsupported() {
    return count.verdict() == AnchorCount.Verdict.UNSUPPORTED && standsOn.isEmpty();
  }
}
