/**
 * Stress in members against what their alloy may bear, in allowable-strength terms.
 *
 * <p>Entries: {@link mullwright.analysis.strength.AluminumAllowable}, {@link
 * mullwright.analysis.strength.BendingStress}, {@link
 * mullwright.analysis.strength.LateralTorsionalBuckling}, {@link
 * mullwright.analysis.strength.LoadSharing}. Local buckling of thin walls, welds, shear and
 * combined forces are not covered; a licensed engineer checks them.
 */
package mullwright.analysis.strength;
