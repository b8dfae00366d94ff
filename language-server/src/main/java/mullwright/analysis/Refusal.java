package mullwright.analysis;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Objects;

/**
 * Says why a method declines to answer: which quantity, what was given, what it accepts.
 *
 * @param quantity the input's name in words, such as {@code span}
 * @param given the value that was given
 * @param unit the unit of {@code given}; empty for a pure number
 * @param accepted what would be accepted, completing the sentence "it must be …"
 */
public record Refusal(String quantity, double given, String unit, String accepted) {
  private static final MathContext SIX_DIGITS = new MathContext(6);

  /** Rejects missing words; a refusal without a reason would be a silent one. */
  public Refusal {
    Objects.requireNonNull(quantity, "quantity");
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(accepted, "accepted");
  }

  /** The refusal as one sentence in the method's own SI units. */
  public String sentence() {
    String value = Double.isFinite(given) ? plain(given) : Double.toString(given);
    String withUnit = unit.isEmpty() ? value : value + " " + unit;
    return quantity + " is " + withUnit + "; it must be " + accepted + ".";
  }

  private static String plain(double number) {
    BigDecimal rounded = BigDecimal.valueOf(number).round(SIX_DIGITS);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
