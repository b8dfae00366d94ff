package mullwright.report;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Prints plain figures of reports. */
final class Figures {
  private Figures() {}

  /** A share of one, to the hundredth, up so that what is over never reads as 1.00. */
  static String share(double share) {
    BigDecimal exact = BigDecimal.valueOf(share);
    BigDecimal rounded = exact.setScale(2, RoundingMode.HALF_UP);
    boolean over = share > 1 + 1e-9 && rounded.compareTo(BigDecimal.ONE) <= 0;
    return (over ? exact.setScale(2, RoundingMode.UP) : rounded).toPlainString();
  }
}
