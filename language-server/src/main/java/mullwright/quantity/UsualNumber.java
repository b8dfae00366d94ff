package mullwright.quantity;

import java.util.Optional;

/**
 * A literal in the plain spelling nearly all have ({@code 32 psf}, {@code -10 F}, {@code 7}), read
 * in one pass over the characters; what is not plain is left to {@link QuantityReader}.
 *
 * <p>Plain: a minus or none; at most fifteen digits, a point among them at most; spaces or none; a
 * unit that begins with a letter of ASCII, or none.
 *
 * @param number its exact value
 * @param unit as spelled, or ""
 * @param unitAt where the unit starts
 */
record UsualNumber(Rational number, String unit, int unitAt) {
  private static final int DIGITS = 15;
  private static final int ASCII = 0x7F;

  /** The literal, if it is plain. */
  static Optional<UsualNumber> of(String text) {
    long digits = 0;
    long scale = 0;
    int count = 0;
    boolean negative = text.startsWith("-");
    int at = negative ? 1 : 0;
    for (; at < text.length(); at++) {
      char c = text.charAt(at);
      if (c == '.' && scale == 0 && count > 0) {
        scale = 1;
      } else if (c >= '0' && c <= '9') {
        digits = 10 * digits + (c - '0');
        scale *= 10;
        count++;
      } else {
        break;
      }
    }
    boolean openEnded = at > 0 && text.charAt(at - 1) == '.';
    if (count == 0 || count > DIGITS || openEnded) {
      return Optional.empty();
    }
    while (at < text.length() && text.charAt(at) == ' ') {
      at++;
    }
    return isUnit(text, at)
        ? Optional.of(
            new UsualNumber(
                Rational.of(negative ? -digits : digits, Math.max(1, scale)),
                text.substring(at),
                at))
        : Optional.empty();
  }

  private static boolean isUnit(String text, int from) {
    for (int i = from; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean letter = c >= 'A' && c <= 'Z' || c >= 'a' && c <= 'z';
      if (i == from ? !letter || isExponent(text, i) : c <= ' ' || c >= ASCII) {
        return false;
      }
    }
    return true;
  }

  /** Whether an e and a digit or a sign follow, which may be a power of ten. */
  private static boolean isExponent(String text, int at) {
    return (text.charAt(at) == 'e' || text.charAt(at) == 'E')
        && at + 1 < text.length()
        && !Character.isLetter(text.charAt(at + 1));
  }
}
