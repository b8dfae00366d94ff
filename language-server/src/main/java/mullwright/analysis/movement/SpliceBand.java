package mullwright.analysis.movement;

import mullwright.analysis.Formula;
import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Where on a storey a splice stands well: 0.15 to 0.25 of the storey from an anchor.
 *
 * <p>There the moment of a long continuous run is small: it is nil at (3 − √3)/6 = 0.2113 of the
 * span under uniform load. Distances are from the anchor that carries the length. Source: the place
 * of no moment is a closed form (fixed-end beam); the band is common practice.
 */
public final class SpliceBand {
  /** Share of the span at which the moment of a long run is nil: (3 − √3)/6. */
  public static final double CONTRAFLEXURE = (3 - Math.sqrt(3)) / 6;

  /** Near end of the band as a share of the span. */
  public static final double NEAR = 0.15;

  /** Far end of the band as a share of the span. */
  public static final double FAR = 0.25;

  /** Near end of the band. */
  public static final Formula NEAREST = new Formula("0.15 × storey span", "common practice");

  /** Far end of the band. */
  public static final Formula FARTHEST = new Formula("0.25 × storey span", "common practice");

  private SpliceBand() {}

  /**
   * The band.
   *
   * @param span storey from anchor to anchor [m]
   * @param near least distance from the anchor [m]
   * @param best distance at which a long run under uniform load has no moment [m]
   * @param far greatest distance from the anchor [m]
   */
  public record Result(double span, double near, double best, double far) {

    /** Whether a splice at that distance [m] from the anchor stands in the band. */
    public boolean holds(double distance) {
      return distance >= near && distance <= far;
    }
  }

  /** Computes the band for a span [m]. */
  public static Outcome<Result> solve(double span) {
    return Guard.range()
        .positive("storey span", span, "m")
        .then(() -> new Result(span, NEAR * span, CONTRAFLEXURE * span, FAR * span));
  }
}
