package mullwright.quantity;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * The kinds of quantity a wall speaks of, each with its dimension.
 *
 * <p>Two kinds may share a dimension and still be asked for apart, as pressure and stress are: they
 * print in other units. {@link #of(Dimension)} gives the first declared.
 */
public enum Kind {
  RATIO(Dimension.NONE),
  LENGTH(Dimension.of(1, 0, 0)),
  AREA(Dimension.of(2, 0, 0)),
  SECTION_MODULUS(Dimension.of(3, 0, 0)),
  SECOND_MOMENT(Dimension.of(4, 0, 0), "second moment of area"),
  PRESSURE(Dimension.of(-1, 1, -2)),
  STRESS(Dimension.of(-1, 1, -2)),
  FORCE(Dimension.of(1, 1, -2)),
  MOMENT(Dimension.of(2, 1, -2)),
  FORCE_PER_LENGTH(Dimension.of(0, 1, -2)),
  MASS(Dimension.of(0, 1, 0)),
  MASS_PER_LENGTH(Dimension.of(-1, 1, 0)),
  MASS_PER_AREA(Dimension.of(-2, 1, 0)),
  DENSITY(Dimension.of(-3, 1, 0)),
  /** What a thermometer reads. */
  TEMPERATURE(Dimension.of(0, 0, 0, 1).asPoint(true)),
  TEMPERATURE_DIFFERENCE(Dimension.of(0, 0, 0, 1)),
  THERMAL_EXPANSION(Dimension.of(0, 0, 0, -1)),
  U_FACTOR(Dimension.of(0, 1, -3, -1), "U-factor"),
  LINEAR_TRANSMITTANCE(Dimension.of(1, 1, -3, -1)),
  ANGLE(new Dimension(0, 0, 0, 0, 1, false)),
  SPEED(Dimension.of(1, 0, -1)),
  TIME(Dimension.of(0, 0, 1));

  private final Dimension dimension;
  private final String words;

  Kind(Dimension dimension) {
    this.dimension = dimension;
    this.words = name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  Kind(Dimension dimension, String words) {
    this.dimension = dimension;
    this.words = words;
  }

  public Dimension dimension() {
    return dimension;
  }

  /** The kind as a message says it, such as "mass per length". */
  public String words() {
    return words;
  }

  /** The first kind of that dimension. */
  public static Optional<Kind> of(Dimension dimension) {
    return Arrays.stream(values()).filter(kind -> kind.dimension.equals(dimension)).findFirst();
  }
}
