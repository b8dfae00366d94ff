package mullwright.quantity;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The closed table of units, each with its kind, its spellings and its exact factor to SI.
 *
 * <p>A unit is known after a number only, and {@code in} alone is none. One spelling may serve two
 * kinds ({@code lb} is a force, and a mass where a mass is asked for; likewise {@code psf}, {@code
 * lb/ft}, {@code F}); the first declared is meant where nothing is asked for.
 *
 * <p>Everything follows exactly from these: 1 in = 25.4 mm and 1 lb = 0.453 592 37 kg
 * (international yard and pound agreement, 1959), standard gravity 9.806 65 m/s² (General
 * Conference on Weights and Measures, 1901), 1 Btu = 1 055.055 852 62 J (International Table,
 * 1956), 0 °C = 273.15 K, 1 °F = 5/9 K from -459.67 °F up.
 */
public enum Unit {
  INCH(Kind.LENGTH, Exact.INCH, "\""),
  FOOT(Kind.LENGTH, Exact.FOOT, "'"),
  MILLIMETRE(Kind.LENGTH, Exact.MILLI, "mm"),
  CENTIMETRE(Kind.LENGTH, Exact.CENTI, "cm"),
  METRE(Kind.LENGTH, Rational.ONE, "m"),

  SQUARE_INCH(Kind.AREA, Exact.INCH.power(2), "in2"),
  SQUARE_FOOT(Kind.AREA, Exact.FOOT.power(2), "ft2"),
  SQUARE_MILLIMETRE(Kind.AREA, Exact.MILLI.power(2), "mm2"),
  SQUARE_CENTIMETRE(Kind.AREA, Exact.CENTI.power(2), "cm2"),
  SQUARE_METRE(Kind.AREA, Rational.ONE, "m2"),

  CUBIC_INCH(Kind.SECTION_MODULUS, Exact.INCH.power(3), "in3"),
  CUBIC_MILLIMETRE(Kind.SECTION_MODULUS, Exact.MILLI.power(3), "mm3"),
  CUBIC_CENTIMETRE(Kind.SECTION_MODULUS, Exact.CENTI.power(3), "cm3"),

  INCH_TO_THE_FOURTH(Kind.SECOND_MOMENT, Exact.INCH.power(4), "in4"),
  MILLIMETRE_TO_THE_FOURTH(Kind.SECOND_MOMENT, Exact.MILLI.power(4), "mm4"),
  CENTIMETRE_TO_THE_FOURTH(Kind.SECOND_MOMENT, Exact.CENTI.power(4), "cm4"),

  POUND_PER_SQUARE_FOOT(Kind.PRESSURE, Exact.POUND_FORCE.dividedBy(Exact.FOOT.power(2)), "psf"),
  PASCAL(Kind.PRESSURE, Rational.ONE, "Pa"),
  KILOPASCAL(Kind.PRESSURE, Exact.KILO, "kPa"),
  POUND_PER_SQUARE_INCH(Kind.PRESSURE, Exact.POUND_FORCE.dividedBy(Exact.INCH.power(2)), "psi"),

  KIP_PER_SQUARE_INCH(Kind.STRESS, Exact.KIP.dividedBy(Exact.INCH.power(2)), "ksi"),
  MEGAPASCAL(Kind.STRESS, Exact.MEGA, "MPa"),
  NEWTON_PER_SQUARE_MILLIMETRE(Kind.STRESS, Exact.MEGA, "N/mm2"),
  GIGAPASCAL(Kind.STRESS, Exact.MEGA.times(1000), "GPa"),

  POUND_FORCE(Kind.FORCE, Exact.POUND_FORCE, "lb", "lbf"),
  KIP(Kind.FORCE, Exact.KIP, "kip"),
  NEWTON(Kind.FORCE, Rational.ONE, "N"),
  KILONEWTON(Kind.FORCE, Exact.KILO, "kN"),

  POUND_FORCE_INCH(Kind.MOMENT, Exact.POUND_FORCE.times(Exact.INCH), "lb·in"),
  KIP_INCH(Kind.MOMENT, Exact.KIP.times(Exact.INCH), "kip·in"),
  NEWTON_METRE(Kind.MOMENT, Rational.ONE, "N·m"),
  KILONEWTON_METRE(Kind.MOMENT, Exact.KILO, "kN·m"),

  POUND_MASS(Kind.MASS, Exact.POUND, "lb"),
  KILOGRAM(Kind.MASS, Rational.ONE, "kg"),

  POUND_MASS_PER_FOOT(Kind.MASS_PER_LENGTH, Exact.POUND.dividedBy(Exact.FOOT), "lb/ft"),
  KILOGRAM_PER_METRE(Kind.MASS_PER_LENGTH, Rational.ONE, "kg/m"),

  POUND_MASS_PER_SQUARE_FOOT(Kind.MASS_PER_AREA, Exact.POUND.dividedBy(Exact.FOOT.power(2)), "psf"),
  KILOGRAM_PER_SQUARE_METRE(Kind.MASS_PER_AREA, Rational.ONE, "kg/m2"),

  POUND_PER_CUBIC_FOOT(Kind.DENSITY, Exact.POUND.dividedBy(Exact.FOOT.power(3)), "pcf"),
  KILOGRAM_PER_CUBIC_METRE(Kind.DENSITY, Rational.ONE, "kg/m3"),

  POUND_FORCE_PER_INCH(Kind.FORCE_PER_LENGTH, Exact.POUND_FORCE.dividedBy(Exact.INCH), "lb/in"),
  POUND_FORCE_PER_FOOT(
      Kind.FORCE_PER_LENGTH, Exact.POUND_FORCE.dividedBy(Exact.FOOT), "plf", "lb/ft"),
  NEWTON_PER_METRE(Kind.FORCE_PER_LENGTH, Rational.ONE, "N/m"),
  KILONEWTON_PER_METRE(Kind.FORCE_PER_LENGTH, Exact.KILO, "kN/m"),
  NEWTON_PER_MILLIMETRE(Kind.FORCE_PER_LENGTH, Exact.KILO, "N/mm"),

  FAHRENHEIT(Kind.TEMPERATURE, Exact.FAHRENHEIT, Rational.of("459.67"), "°F", "F"),
  CELSIUS(Kind.TEMPERATURE, Rational.ONE, Rational.of("273.15"), "°C", "C"),
  KELVIN(Kind.TEMPERATURE, Rational.ONE, "K"),
  FAHRENHEIT_DIFFERENCE(Kind.TEMPERATURE_DIFFERENCE, Exact.FAHRENHEIT, "°F", "F"),
  CELSIUS_DIFFERENCE(Kind.TEMPERATURE_DIFFERENCE, Rational.ONE, "°C", "C"),
  KELVIN_DIFFERENCE(Kind.TEMPERATURE_DIFFERENCE, Rational.ONE, "K"),

  PER_FAHRENHEIT(Kind.THERMAL_EXPANSION, Exact.FAHRENHEIT.power(-1), "/°F", "/F"),
  PER_CELSIUS(Kind.THERMAL_EXPANSION, Rational.ONE, "/°C", "/C"),
  PER_KELVIN(Kind.THERMAL_EXPANSION, Rational.ONE, "/K"),

  BTU_PER_HOUR_SQUARE_FOOT_FAHRENHEIT(Kind.U_FACTOR, Exact.US_U_FACTOR, "Btu/hft2F"),
  WATT_PER_SQUARE_METRE_KELVIN(Kind.U_FACTOR, Rational.ONE, "W/m2K"),

  BTU_PER_HOUR_FOOT_FAHRENHEIT(
      Kind.LINEAR_TRANSMITTANCE, Exact.US_U_FACTOR.times(Exact.FOOT), "Btu/hftF"),
  WATT_PER_METRE_KELVIN(Kind.LINEAR_TRANSMITTANCE, Rational.ONE, "W/mK"),

  DEGREE(Kind.ANGLE, Rational.ONE, "deg", "°"),

  MILE_PER_HOUR(Kind.SPEED, Exact.FOOT.times(5280).dividedBy(Exact.HOUR), "mph"),
  METRE_PER_SECOND(Kind.SPEED, Rational.ONE, "m/s"),

  PERCENT(Kind.RATIO, Exact.CENTI, "%"),

  SECOND(Kind.TIME, Rational.ONE, "s"),
  MINUTE(Kind.TIME, Rational.of(60), "min"),
  HOUR(Kind.TIME, Exact.HOUR, "h");

  private static final Map<String, List<Unit>> BY_SPELLING = bySpelling();

  private final Kind kind;
  private final Rational factor;
  private final Rational offset;
  private final List<String> spellings;

  Unit(Kind kind, Rational factor, String... spellings) {
    this(kind, factor, Rational.ZERO, spellings);
  }

  Unit(Kind kind, Rational factor, Rational offset, String... spellings) {
    this.kind = kind;
    this.factor = factor;
    this.offset = offset;
    this.spellings = List.of(spellings);
  }

  private static Map<String, List<Unit>> bySpelling() {
    Map<String, List<Unit>> found = new HashMap<>();
    for (Unit unit : values()) {
      for (String spelling : unit.spellings) {
        found.computeIfAbsent(spelling, any -> new ArrayList<>(2)).add(unit);
      }
    }
    found.replaceAll((spelling, units) -> List.copyOf(units));
    return Collections.unmodifiableMap(found);
  }

  /** The unit of that spelling; of those that share it, the first declared. */
  public static Optional<Unit> named(String spelling) {
    List<Unit> units = BY_SPELLING.get(spelling);
    return units == null ? Optional.empty() : Optional.of(units.get(0));
  }

  /** The unit of that spelling whose dimension is that kind's. */
  public static Optional<Unit> named(String spelling, Kind asked) {
    for (Unit unit : BY_SPELLING.getOrDefault(spelling, List.of())) {
      if (unit.kind.dimension().equals(asked.dimension())) {
        return Optional.of(unit);
      }
    }
    return Optional.empty();
  }

  /** All units that measure that kind, in declared order. */
  public static List<Unit> of(Kind kind) {
    return Arrays.stream(values())
        .filter(unit -> unit.kind.dimension().equals(kind.dimension()))
        .toList();
  }

  public Kind kind() {
    return kind;
  }

  /** What one of it is in SI base units (degrees for angles), exactly. */
  public Rational factor() {
    return factor;
  }

  /** The spelling that is printed. */
  public String symbol() {
    return spellings.get(0);
  }

  /** All spellings that are read, the printed one first. */
  public List<String> spellings() {
    return spellings;
  }

  Rational toSi(Rational number) {
    return number.plus(offset).times(factor);
  }

  Rational fromSi(Rational si) {
    return si.dividedBy(factor).minus(offset);
  }

  /** The exact numbers the table is made of; apart, because an enum's own constants come first. */
  private static final class Exact {
    static final Rational MILLI = Rational.of(1, 1000);
    static final Rational CENTI = Rational.of(1, 100);
    static final Rational KILO = Rational.of(1000);
    static final Rational MEGA = Rational.of(1_000_000);
    static final Rational INCH = Rational.of("0.0254");
    static final Rational FOOT = INCH.times(12);
    static final Rational POUND = Rational.of("0.45359237");
    static final Rational POUND_FORCE = POUND.times(Rational.of("9.80665"));
    static final Rational KIP = POUND_FORCE.times(1000);
    static final Rational FAHRENHEIT = Rational.of(5, 9);
    static final Rational HOUR = Rational.of(3600);
    static final Rational US_U_FACTOR =
        Rational.of("1055.05585262").dividedBy(HOUR.times(FOOT.power(2)).times(FAHRENHEIT));

    private Exact() {}
  }
}
