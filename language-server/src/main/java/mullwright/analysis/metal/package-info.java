/**
 * What happens where two metals, or metal and an absorbent material, touch.
 *
 * <p>Entry: {@link mullwright.analysis.metal.MetalContact}; {@link
 * mullwright.analysis.metal.GalvanicSeries} holds the potentials and reads names. It decides
 * whether a pair needs isolation and by which rule; it does not know which parts of a wall touch,
 * nor how an isolation is built.
 */
package mullwright.analysis.metal;
