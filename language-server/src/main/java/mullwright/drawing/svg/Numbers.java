package mullwright.drawing.svg;

/** Writes numbers with at most three decimals, as short as they go and the same in any locale. */
final class Numbers {
  private static final long UNIT = 1000;

  private Numbers() {}

  static void append(double value, StringBuilder out) {
    long thousandths = Math.round(value * UNIT);
    if (thousandths < 0) {
      out.append('-');
      thousandths = -thousandths;
    }
    out.append(thousandths / UNIT);
    long rest = thousandths % UNIT;
    if (rest == 0) {
      return;
    }
    out.append('.');
    for (long place = UNIT / 10; rest > 0; place /= 10) {
      out.append((char) ('0' + rest / place));
      rest %= place;
    }
  }
}
