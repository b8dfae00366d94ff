package mullwright.drawing.dxf;

/** Pairs of lines: a group code, then its value. */
final class Tags {
  private static final long UNIT = 1_000_000;

  private final StringBuilder out = new StringBuilder(1 << 14);

  Tags text(int code, String value) {
    out.append(code).append('\n').append(value).append('\n');
    return this;
  }

  Tags whole(int code, int value) {
    out.append(code).append('\n').append(value).append('\n');
    return this;
  }

  /** To six decimals, the same in any locale. */
  Tags number(int code, double value) {
    out.append(code).append('\n');
    long millionths = Math.round(value * UNIT);
    if (millionths < 0) {
      out.append('-');
      millionths = -millionths;
    }
    out.append(millionths / UNIT).append('.');
    long rest = millionths % UNIT;
    long place = UNIT / 10;
    do {
      out.append((char) ('0' + rest / place));
      rest %= place;
      place /= 10;
    } while (rest > 0);
    out.append('\n');
    return this;
  }

  /** A point in the plane, as the first (0), second (1) … of an entity. */
  Tags point(int which, double x, double y) {
    return flat(which, x, y).number(30 + which, 0);
  }

  /** A point without a height. */
  Tags flat(int which, double x, double y) {
    return number(10 + which, x).number(20 + which, y);
  }

  Tags all(Tags others) {
    out.append(others.out);
    return this;
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
