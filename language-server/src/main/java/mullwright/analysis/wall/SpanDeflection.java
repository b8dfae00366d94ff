package mullwright.analysis.wall;

import mullwright.analysis.beam.BeamResponse;
import mullwright.analysis.beam.Extremes;

/**
 * The deflection of one span of a vertical, support to support, or of an end beyond the last
 * support.
 *
 * @param run the vertical
 * @param from lower end [m]; {@code to} upper end [m]
 * @param overhang true if only one end is held
 * @param sag the largest deflection off the chord of its supports (off the tangent at its support,
 *     for an overhang) [m], and where
 * @param response the case that governs
 */
public record SpanDeflection(
    VerticalRun run,
    double from,
    double to,
    boolean overhang,
    Extremes.Extreme sag,
    BeamResponse response) {
  /** Height of the span [m]. */
  public double length() {
    return to - from;
  }

  /** Magnitude of the deflection [m]. */
  public double deflection() {
    return Math.abs(sag.value());
  }
}
