package mullwright.quantity;

import java.math.RoundingMode;

/**
 * Prints a length for people in both systems, and exactly for those who must have it all.
 *
 * <p>In running text 64ths of an inch are told exactly in the US system. All else is rounded to
 * what its size makes sensible: up to one inch (a deflection, a movement) to 0.001" and 0.01 mm,
 * else to 1/32" and 0.1 mm. Trailing zeros are dropped.
 */
public final class LengthPrinter {
  private static final LengthFormat US = LengthFormat.feetIfAny(Step.THIRTY_SECOND);
  private static final Length SMALL = Length.ofInches(1);

  /** More decimals of an inch than any tick needs that comes out in decimal inches at all. */
  private static final int INCH_DECIMALS = 16;

  private LengthPrinter() {}

  /** Both systems, the given one first: {@code 5'-11 3/16" (1808.2 mm)}. */
  public static String both(Length length, UnitSystem first) {
    String us = in(UnitSystem.US, length);
    String si = in(UnitSystem.SI, length);
    return first == UnitSystem.US ? us + " (" + si + ")" : si + " (" + us + ")";
  }

  /**
   * In one system, as running text says it: {@code 5'-11 3/16"}, {@code 0.231"}, {@code 9.53 mm}.
   */
  public static String in(UnitSystem system, Length length) {
    boolean small = !length.abs().isLongerThan(SMALL);
    if (system == UnitSystem.SI) {
      return decimal(length, Unit.MILLIMETRE, small ? 2 : 1) + " mm";
    }
    if (is64ths(length)) {
      return exact(length, system);
    }
    return small ? decimal(length, Unit.INCH, 3) + "\"" : US.print(length);
  }

  /**
   * The exact length: in the US system in feet, inches and 64ths or decimal inches where it can be
   * said so, else in millimetres. Reads back as the same length.
   */
  public static String exact(Length length, UnitSystem system) {
    if (system == UnitSystem.US && is64ths(length)) {
      return (length.signum() < 0 ? "-" : "")
          + LengthFormat.feetAndInches(length.inches().abs(), LengthFormat.Style.FEET_IF_ANY);
    }
    if (system == UnitSystem.US
        && length.inches().times(Rational.of(10).power(INCH_DECIMALS)).isWhole()) {
      return decimal(length, Unit.INCH, INCH_DECIMALS) + "\"";
    }
    return length.millimetres().toPlainString() + " mm";
  }

  private static boolean is64ths(Length length) {
    return length.ticks() % Step.SIXTY_FOURTH.length().ticks() == 0;
  }

  private static String decimal(Length length, Unit unit, int decimals) {
    return QuantityPrinter.plain(
        length.metres().dividedBy(unit.factor()).toDecimal(decimals, RoundingMode.HALF_UP));
  }
}
