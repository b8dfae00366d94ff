package mullwright.quantity;

/**
 * What a quantity is made of: the exponents of length, mass, time, temperature and angle.
 *
 * <p>The base units are m, kg, s, K and the degree of angle (so that a right angle is the exact
 * number 90). A thermometer reading ({@code point}) is told from a difference of temperatures:
 * readings can be subtracted from each other, but not added or multiplied.
 */
public record Dimension(int length, int mass, int time, int temperature, int angle, boolean point) {
  /** The largest exponent either way; beyond any formula, short of any overflow. */
  static final int EXPONENT_LIMIT = 12;

  public static final Dimension NONE = of(0, 0, 0);

  static Dimension of(int length, int mass, int time) {
    return of(length, mass, time, 0);
  }

  static Dimension of(int length, int mass, int time, int temperature) {
    return new Dimension(length, mass, time, temperature, 0, false);
  }

  Dimension times(Dimension other) {
    return combined(other, 1);
  }

  Dimension dividedBy(Dimension other) {
    return combined(other, -1);
  }

  private Dimension combined(Dimension other, int sign) {
    return new Dimension(
        length + sign * other.length,
        mass + sign * other.mass,
        time + sign * other.time,
        temperature + sign * other.temperature,
        angle + sign * other.angle,
        false);
  }

  /** The same dimension with the reading of a thermometer taken as a difference, or the reverse. */
  Dimension asPoint(boolean reading) {
    return new Dimension(length, mass, time, temperature, angle, reading);
  }

  boolean isWithinLimit() {
    int largest = Math.max(Math.abs(length), Math.abs(mass));
    largest = Math.max(largest, Math.max(Math.abs(time), Math.abs(temperature)));
    return Math.max(largest, Math.abs(angle)) <= EXPONENT_LIMIT;
  }

  /**
   * In words if there is a {@link Kind} of it ("second moment of area"), else by base units ("m5
   * s-1").
   */
  public String words() {
    return Kind.of(this).map(Kind::words).orElseGet(this::baseUnits);
  }

  private String baseUnits() {
    StringBuilder text = new StringBuilder();
    append(text, "m", length);
    append(text, "kg", mass);
    append(text, "s", time);
    append(text, "K", temperature);
    append(text, "deg", angle);
    return text.toString();
  }

  private static void append(StringBuilder text, String unit, int exponent) {
    if (exponent != 0) {
      text.append(text.length() == 0 ? "" : " ").append(unit);
      if (exponent != 1) {
        text.append(exponent);
      }
    }
  }

  // a record's own way is made at run time, which every start would pay for
  @Override
  public boolean equals(Object other) {
    return other instanceof Dimension same
        && length == same.length
        && mass == same.mass
        && time == same.time
        && temperature == same.temperature
        && angle == same.angle
        && point == same.point;
  }

  @Override
  public int hashCode() {
    int exponents = (((length * 31 + mass) * 31 + time) * 31 + temperature) * 31 + angle;
    return exponents * 2 + (point ? 1 : 0);
  }
}
