package mullwright.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Makes the names of a range: {@code A..G}, {@code AA..AF}, {@code X..AC}, {@code 1..19}, {@code
 * L1..L24}, {@code P1A..P1D}.
 *
 * <p>What both ends have in common at the front stays; the rest counts, as whole numbers (leading
 * zeros keep the width) or as letters of one case (Z is followed by AA).
 */
final class NamePattern {
  private NamePattern() {}

  /** How many names, without making them; empty if the ends make no pattern. */
  static Optional<Long> count(String first, String last) {
    return read(first, last).map(range -> Math.abs(range.to - range.from) + 1);
  }

  /** The names from the first to the last, both included; empty if the ends make no pattern. */
  static Optional<List<String>> names(String first, String last) {
    return read(first, last).map(NamePattern::make);
  }

  private static List<String> make(Range range) {
    List<String> names = new ArrayList<>();
    long step = range.from <= range.to ? 1 : -1;
    for (long at = range.from; at != range.to + step; at += step) {
      names.add(range.name(at));
    }
    return names;
  }

  private static Optional<Range> read(String first, String last) {
    int one = first.length() - tail(first, NamePattern::isDigit);
    int other = last.length() - tail(last, NamePattern::isDigit);
    if (one < first.length()
        && other < last.length()
        && first.substring(0, one).equals(last.substring(0, other))
        && first.length() - one <= 9
        && last.length() - other <= 9) {
      int width = first.charAt(one) == '0' ? first.length() - one : 0;
      return Optional.of(
          new Range(
              first.substring(0, one),
              Integer.parseInt(first.substring(one)),
              Integer.parseInt(last.substring(other)),
              width,
              false,
              false));
    }
    return letters(first, last);
  }

  private static Optional<Range> letters(String first, String last) {
    int one = first.length() - tail(first, NamePattern::isLetter);
    int other = last.length() - tail(last, NamePattern::isLetter);
    String from = first.substring(one);
    String to = last.substring(other);
    boolean upper = isUpper(from) && isUpper(to);
    boolean lower = isLower(from) && isLower(to);
    if (from.isEmpty()
        || to.isEmpty()
        || from.length() > 3
        || to.length() > 3
        || !(upper || lower)
        || !first.substring(0, one).equals(last.substring(0, other))) {
      return Optional.empty();
    }
    return Optional.of(
        new Range(first.substring(0, one), number(from), number(to), 0, true, upper));
  }

  private record Range(
      String front, long from, long to, int width, boolean letters, boolean upper) {
    String name(long at) {
      if (letters) {
        return front + letters(at, upper);
      }
      StringBuilder digits = new StringBuilder(Long.toString(at));
      while (digits.length() < width) {
        digits.insert(0, '0');
      }
      return front + digits;
    }

    private static String letters(long at, boolean upper) {
      StringBuilder name = new StringBuilder();
      for (long rest = at; rest > 0; rest = (rest - 1) / 26) {
        name.insert(0, (char) ((upper ? 'A' : 'a') + (rest - 1) % 26));
      }
      return name.toString();
    }
  }

  /** A is 1, Z is 26, AA is 27. */
  private static long number(String letters) {
    long number = 0;
    for (int i = 0; i < letters.length(); i++) {
      number = number * 26 + Character.toUpperCase(letters.charAt(i)) - 'A' + 1;
    }
    return number;
  }

  private static int tail(String name, java.util.function.IntPredicate takes) {
    int length = 0;
    while (length < name.length() && takes.test(name.charAt(name.length() - 1 - length))) {
      length++;
    }
    return length;
  }

  private static boolean isDigit(int c) {
    return c >= '0' && c <= '9';
  }

  private static boolean isLetter(int c) {
    return c >= 'A' && c <= 'Z' || c >= 'a' && c <= 'z';
  }

  private static boolean isUpper(String text) {
    return within(text, 'A', 'Z');
  }

  private static boolean isLower(String text) {
    return within(text, 'a', 'z');
  }

  private static boolean within(String text, char first, char last) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) < first || text.charAt(i) > last) {
        return false;
      }
    }
    return true;
  }
}
