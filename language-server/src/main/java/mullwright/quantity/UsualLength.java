package mullwright.quantity;

import java.util.OptionalLong;

/**
 * Reads the plain spellings nearly every length of a wall has ({@code 5'-6 1/2"}, {@code 13'-0"},
 * {@code 3/8"}) in one pass over the characters; what is not plain and right is left to {@link
 * LengthReader}, which can also say what is wrong with it.
 *
 * <p>Plain: whole feet; a dash, one space or nothing; whole inches below twelve beside feet; a dash
 * or one space; a fraction below one in halves to 64ths; the inch mark after inches. At most four
 * digits a number, far below the longest length there is.
 */
final class UsualLength {
  private static final int DIGITS = 4;
  private static final long LARGEST_DENOMINATOR = 64;
  private static final long INCHES_PER_FOOT = 12;

  private final String text;
  private int at;

  private UsualLength(String text) {
    this.text = text;
  }

  /** The length in ticks, if the text is plain and right. */
  static OptionalLong ticks(String text) {
    return new UsualLength(text).read();
  }

  private OptionalLong read() {
    long first = number();
    if (first < 0) {
      return OptionalLong.empty();
    }
    if (!next('\'')) {
      return inches(first, 0);
    }
    if (at == text.length()) {
      return OptionalLong.of(first * INCHES_PER_FOOT * Length.TICKS_PER_INCH);
    }
    if (!next('-')) {
      next(' ');
    }
    long whole = number();
    return whole < 0 || whole >= INCHES_PER_FOOT
        ? OptionalLong.empty()
        : inches(whole, first * INCHES_PER_FOOT);
  }

  /** The rest after the first number of the inches, which may be that of the fraction. */
  private OptionalLong inches(long first, long more) {
    long whole = first;
    long numerator = 0;
    long denominator = 1;
    if (next('/')) {
      whole = 0;
      numerator = first;
      denominator = number();
    } else if (next(' ') || next('-')) {
      numerator = number();
      denominator = next('/') ? number() : -1;
    }
    boolean right =
        numerator >= 0
            && numerator <= denominator
            && (numerator < denominator || whole == 0 && more == 0)
            && denominator <= LARGEST_DENOMINATOR
            && Long.bitCount(denominator) == 1;
    return right && next('"') && at == text.length()
        ? OptionalLong.of(
            (more + whole) * Length.TICKS_PER_INCH
                + numerator * (Length.TICKS_PER_INCH / denominator))
        : OptionalLong.empty();
  }

  /** The whole number that stands here, or -1. */
  private long number() {
    int start = at;
    long number = 0;
    while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
      number = number * 10 + (text.charAt(at) - '0');
      at++;
      if (at - start > DIGITS) {
        return -1;
      }
    }
    return at == start ? -1 : number;
  }

  private boolean next(char wanted) {
    boolean here = at < text.length() && text.charAt(at) == wanted;
    if (here) {
      at++;
    }
    return here;
  }
}
