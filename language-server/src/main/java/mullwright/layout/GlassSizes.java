package mullwright.layout;

import java.util.Optional;
import mullwright.model.Given;
import mullwright.model.Grid;
import mullwright.model.Part;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;
import mullwright.quantity.Rational;
import mullwright.quantity.Rounding;
import mullwright.quantity.Step;
import mullwright.quantity.UnitSystem;

/**
 * Order size, area and mass of what fills a cell.
 *
 * <p>The order size is the exact size rounded down, to 1/16" or to a whole millimetre; area and
 * mass are of the exact size (common practice).
 *
 * @param orderWidth width to order
 * @param orderHeight height to order
 * @param area exact
 * @param mass plies at nominal thickness × 2500 kg/m³ (soda-lime glass, EN 572-1) plus interlayers
 *     × 1100 kg/m³, times area; of an opening by others its stated mass; empty if nobody says
 */
public record GlassSizes(
    Length orderWidth, Length orderHeight, Quantity area, Optional<Quantity> mass) {
  private static final Rational GLASS = Rational.of(2500);
  private static final Rational INTERLAYER = Rational.of(1100);

  /** Standard acceleration of free fall, m/s². */
  private static final Rational GRAVITY = Rational.of("9.80665");

  /** What fills a cell, for a shop that works in that system of units. */
  public static GlassSizes of(Cell cell, UnitSystem system) {
    Rational area = cell.glassWidth().metres().times(cell.glassHeight().metres());
    return new GlassSizes(
        order(cell.glassWidth(), system),
        order(cell.glassHeight(), system),
        new Quantity(area, Kind.AREA.dimension()),
        massPerArea(cell).map(perArea -> new Quantity(perArea.times(area), Kind.MASS.dimension())));
  }

  /** An exact size rounded down to what is ordered. */
  public static Length order(Length exact, UnitSystem system) {
    Step step = system == UnitSystem.US ? Step.SIXTEENTH : Step.MILLIMETRE;
    return Rounding.DOWN.round(exact, step.length());
  }

  /** Mass per area of a make-up, or empty if it has no ply. */
  public static Optional<Quantity> massPerArea(Part.Glass glass) {
    return layers(glass).map(mass -> new Quantity(mass, Kind.MASS_PER_AREA.dimension()));
  }

  private static Optional<Rational> massPerArea(Cell cell) {
    return cell.opening().isPresent()
        ? cell.opening().flatMap(Grid.Opening::mass).map(Given::value).map(GlassSizes::perArea)
        : cell.glass().flatMap(GlassSizes::layers);
  }

  // psf may have been read as the pressure it makes
  private static Rational perArea(Quantity mass) {
    return mass.is(Kind.PRESSURE) ? mass.si().dividedBy(GRAVITY) : mass.si();
  }

  private static Optional<Rational> layers(Part.Glass glass) {
    Rational sum = Rational.ZERO;
    for (Part.Layer layer : glass.layers()) {
      if (layer.what().equals("ply")) {
        sum = sum.plus(layer.thickness().metres().times(GLASS));
      } else if (layer.what().equals("interlayer")) {
        sum = sum.plus(layer.thickness().metres().times(INTERLAYER));
      }
    }
    boolean glazed = glass.layers().stream().anyMatch(layer -> layer.what().equals("ply"));
    return glazed ? Optional.of(sum) : Optional.empty();
  }
}
