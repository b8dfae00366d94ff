package mullwright.quantity;

import java.math.RoundingMode;

/** Prints a length for people in both systems, and exactly for those who must have it all. */
public final class LengthPrinter {
  private static final LengthFormat US = LengthFormat.feetIfAny(Step.SIXTEENTH);
  private static final LengthFormat SI = LengthFormat.millimetres(Step.TENTH_MILLIMETRE);
  private static final int DECIMALS = 12;

  private LengthPrinter() {}

  /** Both systems, the given one first: {@code 5'-11 3/16" (1808.2 mm)}. */
  public static String both(Length length, UnitSystem first) {
    String us = in(UnitSystem.US, length);
    String si = in(UnitSystem.SI, length);
    return first == UnitSystem.US ? us + " (" + si + ")" : si + " (" + us + ")";
  }

  /** In one system, as running text says it: to 1/16" or 0.1 mm. */
  public static String in(UnitSystem system, Length length) {
    return (system == UnitSystem.US ? US : SI).print(length);
  }

  /**
   * The exact length: in the US system in feet, inches and 64ths or decimal inches where it can be
   * said so, else in millimetres. Reads back as the same length.
   */
  public static String exact(Length length, UnitSystem system) {
    String sign = length.signum() < 0 ? "-" : "";
    Rational inches = length.inches().abs();
    if (system == UnitSystem.US && inches.times(64).isWhole()) {
      return sign + LengthFormat.feetAndInches(inches, LengthFormat.Style.FEET_IF_ANY);
    }
    if (system == UnitSystem.US && inches.times(Rational.of(10).power(DECIMALS)).isWhole()) {
      String decimal =
          inches.toDecimal(DECIMALS, RoundingMode.UNNECESSARY).stripTrailingZeros().toPlainString();
      return sign + decimal + "\"";
    }
    return length.millimetres().toPlainString() + " mm";
  }
}
