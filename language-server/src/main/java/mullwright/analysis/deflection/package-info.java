/**
 * How far a member may bend: one class a published limit.
 *
 * <p>Entries: {@link mullwright.analysis.deflection.TirA11Limit}, {@link
 * mullwright.analysis.deflection.GlassEdgeLimit}, {@link
 * mullwright.analysis.deflection.En13830Limit} for wind; {@link
 * mullwright.analysis.deflection.DeadLoadLimit} and {@link
 * mullwright.analysis.deflection.En13830DeadLoadLimit} for weight in the plane of the wall. They
 * give limits only; deflections come from {@code analysis.beam}.
 */
package mullwright.analysis.deflection;
