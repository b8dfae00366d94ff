/**
 * Whether a lite stays in its frame when the building drifts in an earthquake.
 *
 * <p>Entry: {@link mullwright.analysis.drift.GlassDrift}. It compares clearances with a stated
 * drift; the drift itself comes from the structural engineer.
 */
package mullwright.analysis.drift;
