package mullwright.analysis.wall;

import mullwright.analysis.beam.BeamResponse;

/**
 * The deflection of one span of a vertical, support to support, or of an end beyond the last
 * support.
 *
 * @param run the vertical
 * @param from lower end [m]; {@code to} upper end [m]
 * @param overhang true if only one end is held
 * @param sag the largest deflection off the chord of its supports (off the tangent at its support,
 *     for an overhang) [m], where and in which case
 */
public record SpanDeflection(
    VerticalRun run, double from, double to, boolean overhang, SolvedBeam.Peak sag) {
  /** The case that governs. */
  public BeamResponse response() {
    return sag.response();
  }

  /** Height of the span [m]. */
  public double length() {
    return to - from;
  }

  /** Magnitude of the deflection [m]. */
  public double deflection() {
    return sag.size();
  }

  /**
   * True for an end no longer than {@link EndHold#GREATEST_SHARE} of the next span: it is no
   * cantilever but turns with that span, whose own limit holds it.
   */
  public boolean shortEnd() {
    return overhang
        && EndHold.of(run).stream()
            .anyMatch(end -> !end.free() && end.support().y() == (end.lower() ? to : from));
  }
}
