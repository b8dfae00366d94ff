/**
 * What a lite of glass bears and weighs: large deflection, chance of breakage, load resistance of
 * single, laminated and insulating glass, effective thickness, size, mass, setting blocks, safety
 * glazing.
 *
 * <p>Entry: {@link mullwright.analysis.glass.GlassFailurePrediction} for the non-factored load of a
 * lite, {@link mullwright.analysis.glass.LargeDeflectionPlate} for deflection and stress under a
 * given pressure. Sizes are given as plain numbers; which thickness, treatment or interlayer a wall
 * has is not its business. Thermal stress, edge quality, climatic loads of sealed units, holes and
 * point supports are outside all of it and remain not checked.
 */
package mullwright.analysis.glass;
