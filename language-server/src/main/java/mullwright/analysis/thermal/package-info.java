/**
 * Heat that passes through a wall: thermal transmittance of a module from its parts.
 *
 * <p>Entry: {@link mullwright.analysis.thermal.ComponentTransmittance} (ISO 12631) and {@link
 * mullwright.analysis.thermal.AreaWeightedTransmittance} (NFRC 100). Transmittances of the parts
 * are given, never assumed: they come from the maker, a simulation or a test. Air leakage, anchors,
 * sun, condensation and comfort are outside it.
 */
package mullwright.analysis.thermal;
