/**
 * Wind pressure on the parts of a facade: velocity pressure, components and cladding, edge zones.
 *
 * <p>Entry: {@link mullwright.analysis.wind.LowRiseCladding} and {@link
 * mullwright.analysis.wind.HighRiseCladding} for ASCE 7, fed by {@link
 * mullwright.analysis.wind.VelocityPressure}; {@link mullwright.analysis.wind.FacadeZonePressure}
 * for EN 1991-1-4. Pressures in pascals, positive towards the wall. Parapets, roofs, open buildings
 * and wind-tunnel results are outside it, and it chooses no wind speed, no exposure and no factor:
 * whoever asks must state them.
 */
package mullwright.analysis.wind;
