package mullwright.analysis.wall;

import java.util.List;
import java.util.Optional;
import mullwright.analysis.anchor.AnchorCount;
import mullwright.layout.PlacedAnchor;

/**
 * What a length of vertical hangs from or stands on.
 *
 * @param deadLoads its dead-load anchors, from below
 * @param windLoads its wind-load anchors and clips, from below
 * @param landing where its weight goes
 * @param standsOn the horizontal its lower end butts and rests on, if there is one
 * @param count the count of its anchors
 */
public record LengthHold(
    List<PlacedAnchor> deadLoads,
    List<PlacedAnchor> windLoads,
    WeightLanding landing,
    Optional<RunSupport> standsOn,
    AnchorCount.Result count) {
  public LengthHold {
    deadLoads = List.copyOf(deadLoads);
    windLoads = List.copyOf(windLoads);
  }

  /** True if nothing made to hold its weight does: no dead-load anchor, and no horizontal. */
  public boolean unsupported() {
    return !(landing instanceof WeightLanding.HangsFromAnchors
        || landing instanceof WeightLanding.OnHorizontal);
  }
}
