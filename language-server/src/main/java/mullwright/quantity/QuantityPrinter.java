package mullwright.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * Prints quantities in both systems with as many digits as mean something.
 *
 * <p>Four significant digits, but never a rounded whole number below a million; trailing zeros are
 * dropped, and what is very large or small is written with an exponent as text says it ({@code
 * 4.1e6 mm4}). Temperatures print to a tenth of a degree, lengths up to {@link Length#LIMIT} as
 * {@link LengthPrinter} says, beyond it in metres. Rounded half up on the magnitude.
 */
public final class QuantityPrinter {
  private static final int DIGITS = 4;

  /** How many decimals are printed without rounding; expansions have seven. */
  private static final int DECIMALS = 12;

  private static final BigDecimal LARGE = BigDecimal.valueOf(1_000_000);
  private static final BigDecimal SMALL = new BigDecimal("0.001");
  private static final Rational THOUSAND = Rational.of(1000);

  private QuantityPrinter() {}

  /** Both systems, the given one first: {@code 32 psf (1.532 kPa)}; one where both say the same. */
  public static String both(Quantity quantity, Kind kind, UnitSystem first) {
    UnitSystem second = first == UnitSystem.US ? UnitSystem.SI : UnitSystem.US;
    String one = in(first, quantity, kind);
    String other = in(second, quantity, kind);
    return one.equals(other) ? one : one + " (" + other + ")";
  }

  /** In one system, in the unit the trade uses for that kind. */
  public static String in(UnitSystem system, Quantity quantity, Kind kind) {
    Rational size = quantity.si().abs();
    if (kind == Kind.LENGTH && size.compareTo(Length.LIMIT.metres()) <= 0) {
      return LengthPrinter.in(system, Length.nearest(quantity.si()));
    }
    if (kind == Kind.RATIO) {
      return number(quantity.si());
    }
    return in(system == UnitSystem.US ? us(kind, size) : si(kind, size), quantity);
  }

  /** In that unit, whose dimension must be the quantity's. */
  public static String in(Unit unit, Quantity quantity) {
    Rational number = quantity.in(unit);
    boolean temperature =
        unit.kind() == Kind.TEMPERATURE || unit.kind() == Kind.TEMPERATURE_DIFFERENCE;
    String digits = temperature ? plain(number.toDecimal(1, RoundingMode.HALF_UP)) : number(number);
    return unit == Unit.PERCENT ? digits + "%" : digits + " " + unit.symbol();
  }

  /**
   * Without rounding, so that no two quantities print alike: as a decimal in the unit of the first
   * system or else of the other, and where it is neither, as a fraction in SI base units.
   */
  public static String exact(Quantity quantity, Kind kind, UnitSystem first) {
    UnitSystem second = first == UnitSystem.US ? UnitSystem.SI : UnitSystem.US;
    Rational size = quantity.si().abs();
    for (UnitSystem system : List.of(first, second)) {
      Unit unit =
          kind == Kind.RATIO ? null : system == UnitSystem.US ? us(kind, size) : si(kind, size);
      Rational number = unit == null ? quantity.si() : quantity.in(unit);
      BigDecimal decimal = number.toDecimal(DECIMALS, RoundingMode.HALF_UP);
      if (Rational.of(decimal).equals(number)) {
        return plain(decimal) + (unit == null ? "" : " " + unit.symbol());
      }
    }
    return quantity.si() + " (SI)";
  }

  static String number(Rational number) {
    boolean thousands = number.abs().compareTo(THOUSAND) >= 0;
    BigDecimal digits = number.toDigits(DIGITS);
    BigDecimal rounded = thousands ? number.toDecimal(0, RoundingMode.HALF_UP) : digits;
    // what is printed decides, so that a figure printed, read and printed again stays the same
    boolean plain = rounded.abs().compareTo(LARGE) < 0 && rounded.abs().compareTo(SMALL) >= 0;
    if (plain || rounded.signum() == 0) {
      return plain(rounded);
    }
    int exponent = digits.precision() - digits.scale() - 1;
    return plain(digits.scaleByPowerOfTen(-exponent)) + "e" + exponent;
  }

  static String plain(BigDecimal decimal) {
    return decimal.signum() == 0 ? "0" : decimal.stripTrailingZeros().toPlainString();
  }

  /** Whether an area is more likely of a profile than of a lite: below one square foot. */
  private static boolean isSection(Rational area) {
    return area.compareTo(Unit.SQUARE_FOOT.factor()) < 0;
  }

  private static Unit us(Kind kind, Rational size) {
    return switch (kind) {
      case RATIO -> throw new IllegalArgumentException("a ratio has no unit");
      case LENGTH -> Unit.METRE;
      case AREA -> isSection(size) ? Unit.SQUARE_INCH : Unit.SQUARE_FOOT;
      case SECTION_MODULUS -> Unit.CUBIC_INCH;
      case SECOND_MOMENT -> Unit.INCH_TO_THE_FOURTH;
      case PRESSURE -> Unit.POUND_PER_SQUARE_FOOT;
      case STRESS -> Unit.KIP_PER_SQUARE_INCH;
      case FORCE -> Unit.POUND_FORCE;
      case MOMENT -> Unit.POUND_FORCE_INCH;
      case FORCE_PER_LENGTH -> Unit.POUND_FORCE_PER_INCH;
      case MASS -> Unit.POUND_MASS;
      case MASS_PER_LENGTH -> Unit.POUND_MASS_PER_FOOT;
      case MASS_PER_AREA -> Unit.POUND_MASS_PER_SQUARE_FOOT;
      case DENSITY -> Unit.POUND_PER_CUBIC_FOOT;
      case TEMPERATURE -> Unit.FAHRENHEIT;
      case TEMPERATURE_DIFFERENCE -> Unit.FAHRENHEIT_DIFFERENCE;
      case THERMAL_EXPANSION -> Unit.PER_FAHRENHEIT;
      case U_FACTOR -> Unit.BTU_PER_HOUR_SQUARE_FOOT_FAHRENHEIT;
      case LINEAR_TRANSMITTANCE -> Unit.BTU_PER_HOUR_FOOT_FAHRENHEIT;
      case ANGLE -> Unit.DEGREE;
      case SPEED -> Unit.MILE_PER_HOUR;
      case TIME -> Unit.SECOND;
    };
  }

  private static Unit si(Kind kind, Rational size) {
    boolean thousand = size.compareTo(THOUSAND) >= 0;
    return switch (kind) {
      case RATIO -> throw new IllegalArgumentException("a ratio has no unit");
      case LENGTH -> Unit.METRE;
      case AREA -> isSection(size) ? Unit.SQUARE_MILLIMETRE : Unit.SQUARE_METRE;
      case SECTION_MODULUS -> Unit.CUBIC_MILLIMETRE;
      case SECOND_MOMENT -> Unit.MILLIMETRE_TO_THE_FOURTH;
      case PRESSURE -> Unit.KILOPASCAL;
      case STRESS -> Unit.MEGAPASCAL;
      case FORCE -> thousand ? Unit.KILONEWTON : Unit.NEWTON;
      case MOMENT -> thousand ? Unit.KILONEWTON_METRE : Unit.NEWTON_METRE;
      case FORCE_PER_LENGTH -> thousand ? Unit.KILONEWTON_PER_METRE : Unit.NEWTON_PER_METRE;
      case MASS -> Unit.KILOGRAM;
      case MASS_PER_LENGTH -> Unit.KILOGRAM_PER_METRE;
      case MASS_PER_AREA -> Unit.KILOGRAM_PER_SQUARE_METRE;
      case DENSITY -> Unit.KILOGRAM_PER_CUBIC_METRE;
      case TEMPERATURE -> Unit.CELSIUS;
      case TEMPERATURE_DIFFERENCE -> Unit.KELVIN_DIFFERENCE;
      case THERMAL_EXPANSION -> Unit.PER_CELSIUS;
      case U_FACTOR -> Unit.WATT_PER_SQUARE_METRE_KELVIN;
      case LINEAR_TRANSMITTANCE -> Unit.WATT_PER_METRE_KELVIN;
      case ANGLE -> Unit.DEGREE;
      case SPEED -> Unit.METRE_PER_SECOND;
      case TIME -> Unit.SECOND;
    };
  }
}
