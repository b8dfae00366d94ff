package mullwright.quantity;

import java.math.RoundingMode;

/**
 * One way to print lengths: style, fineness, direction of rounding.
 *
 * <p>What is printed reads back as exactly the rounded length. The same text on every machine.
 */
public record LengthFormat(Style style, Step step, Rounding rounding) {
  private static final Rational TWELVE = Rational.of(12);

  /** How the figure looks. */
  public enum Style {
    /** {@code 5'-11 3/16"}, {@code 0'-9"}: feet always, so that a column lines up. */
    FEET_INCHES(UnitSystem.US),
    /** {@code 5'-11 3/16"}, {@code 9"}: inches alone below one foot, as in running text. */
    FEET_IF_ANY(UnitSystem.US),
    /** {@code 71 3/16"}. */
    INCHES(UnitSystem.US),
    /** {@code 1808.2 mm}. */
    MILLIMETRES(UnitSystem.SI);

    private final UnitSystem system;

    Style(UnitSystem system) {
      this.system = system;
    }
  }

  /**
   * Checks that style and step are of one system.
   *
   * @throws IllegalArgumentException if they are not
   */
  public LengthFormat {
    if (style.system != step.system()) {
      throw new IllegalArgumentException(style + " in steps of " + step);
    }
  }

  public static LengthFormat feetInches(Step step) {
    return new LengthFormat(Style.FEET_INCHES, step, Rounding.NEAREST);
  }

  public static LengthFormat feetIfAny(Step step) {
    return new LengthFormat(Style.FEET_IF_ANY, step, Rounding.NEAREST);
  }

  public static LengthFormat inches(Step step) {
    return new LengthFormat(Style.INCHES, step, Rounding.NEAREST);
  }

  public static LengthFormat millimetres(Step step) {
    return new LengthFormat(Style.MILLIMETRES, step, Rounding.NEAREST);
  }

  /** The same format rounding another way. */
  public LengthFormat rounding(Rounding other) {
    return new LengthFormat(style, step, other);
  }

  /** The length that is printed for that length. */
  public Length round(Length length) {
    return rounding.round(length, step.length());
  }

  /** The length rounded and written. */
  public String print(Length length) {
    Length rounded = round(length);
    String sign = rounded.signum() < 0 ? "-" : "";
    Rational size = rounded.metres().abs();
    if (style == Style.MILLIMETRES) {
      int decimals = step == Step.MILLIMETRE ? 0 : 1;
      return sign
          + size.dividedBy(Unit.MILLIMETRE.factor())
              .toDecimal(decimals, RoundingMode.UNNECESSARY)
              .toPlainString()
          + " mm";
    }
    return sign + feetAndInches(size.dividedBy(Unit.INCH.factor()), style);
  }

  /** The exact number of inches in feet, inches and a fraction, whatever its denominator. */
  static String feetAndInches(Rational inches, Style style) {
    boolean feet =
        style == Style.FEET_INCHES || (style == Style.FEET_IF_ANY && inches.compareTo(TWELVE) >= 0);
    if (!feet) {
      return mixed(inches) + "\"";
    }
    Rational whole = Rational.of(inches.dividedBy(TWELVE).rounded(RoundingMode.DOWN));
    Rational rest = inches.minus(whole.times(TWELVE));
    // 57'-11/16" is easily read as 11 inches and something
    String nought = rest.signum() > 0 && rest.compareTo(Rational.ONE) < 0 ? "0 " : "";
    return whole + "'-" + nought + mixed(rest) + "\"";
  }

  private static String mixed(Rational number) {
    Rational whole = Rational.of(number.rounded(RoundingMode.DOWN));
    Rational fraction = number.minus(whole);
    if (fraction.signum() == 0) {
      return whole.toString();
    }
    return whole.signum() == 0 ? fraction.toString() : whole + " " + fraction;
  }
}
