/**
 * Bending of verticals and horizontals under lateral load.
 *
 * <p>Entry: {@link mullwright.analysis.beam.HingedBeam} for a run of lengths over many supports
 * with splices as hinges; {@link mullwright.analysis.beam.TributaryLoad} for the load the lites
 * bring. Linear elastic and slender: no shear deformation, no second-order effect, no twist. It
 * holds nothing against a limit; {@code analysis.deflection} and {@code analysis.strength} do.
 */
package mullwright.analysis.beam;
