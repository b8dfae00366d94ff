package mullwright.analysis.wall;

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
  /** An end this near to a support [m] rests on it. */
  private static final double AT_THE_END = 1e-4;

  public LengthHold {
    deadLoads = List.copyOf(deadLoads);
    windLoads = List.copyOf(windLoads);
  }

  /** What holds a length. */
  public static LengthHold of(WallAnalysis analysis, VerticalPiece piece) {
    List<PlacedAnchor> anchors = analysis.anchorsOn(piece);
    Optional<RunSupport> rest = Optional.empty();
    if (piece.spliceBelow() < 0) {
      double end = piece.bottom().toMetres();
      rest =
          analysis.runOf(piece).supports().stream()
              .filter(s -> s.anchor() < 0 && Math.abs(s.y() - end) < AT_THE_END)
              .findFirst();
    }
    return new LengthHold(
        anchors.stream().filter(LengthHold::deadLoad).toList(),
        anchors.stream().filter(anchor -> !deadLoad(anchor)).toList(),
        rest,
        AnchorCount.solve(
            anchors.stream()
                .map(a -> deadLoad(a) ? AnchorCount.Kind.DEAD_LOAD : AnchorCount.Kind.WIND_LOAD)
                .toList()));
  }

  private static boolean deadLoad(PlacedAnchor anchor) {
    return anchor.use().kind() == AnchorUse.Kind.DEAD_LOAD;
  }

  /** True if its weight goes nowhere: it hangs from no anchor and stands on nothing. */
  public boolean unsupported() {
    return count.verdict() == AnchorCount.Verdict.UNSUPPORTED && standsOn.isEmpty();
  }
}
