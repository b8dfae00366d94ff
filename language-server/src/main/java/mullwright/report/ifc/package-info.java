/**
 * A wall for the models of the other trades: IFC4 (ISO 16739-1) in clear text (ISO 10303-21).
 *
 * <p>Begin with {@link mullwright.report.ifc.IfcModel}. Nothing here computes where a piece is or
 * how long: that is {@code layout}'s. What the catalog does not state is left out of the file,
 * never made up.
 */
package mullwright.report.ifc;
