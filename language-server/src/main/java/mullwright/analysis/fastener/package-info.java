/**
 * Holes, bolts and screws in aluminum, and how tolerances add.
 *
 * <p>Entries: {@link mullwright.analysis.fastener.HoleLayout}, {@link
 * mullwright.analysis.fastener.BearingStrength}, {@link
 * mullwright.analysis.fastener.ScrewStrength}, {@link mullwright.analysis.fastener.ToleranceStack}.
 * Coefficients the editions differ on are put in by the caller, not assumed; screw chases and
 * anchors into concrete are not covered.
 */
package mullwright.analysis.fastener;
