package mullwright.server.completion;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The name that goes on a series: {@code G} after {@code A..F}, {@code L13} after {@code L12}. */
final class NextName {
  private static final Pattern COUNTED = Pattern.compile("(.*?)(\\d+)");
  private static final Pattern LETTER = Pattern.compile("[A-Ya-y]");
  private static final int LONGEST_COUNT = 9;

  private NextName() {}

  /**
   * The first free name that goes on the last name of a series; empty if no name of it counts.
   *
   * @param names in their order; one that does not count ({@code Roof}) is passed over
   */
  static Optional<String> after(List<String> names) {
    for (int i = names.size() - 1; i >= 0; i--) {
      String name = names.get(i);
      Matcher counted = COUNTED.matcher(name);
      if (name.indexOf('.') >= 0) {
        continue;
      }
      if (counted.matches() && counted.group(2).length() <= LONGEST_COUNT) {
        int number = Integer.parseInt(counted.group(2));
        String next;
        do {
          number++;
          next = counted.group(1) + number;
        } while (names.contains(next));
        return Optional.of(next);
      }
      if (LETTER.matcher(name).matches()) {
        char letter = name.charAt(0);
        do {
          letter++;
        } while (names.contains(String.valueOf(letter)));
        return Character.isLetter(letter) ? Optional.of(String.valueOf(letter)) : Optional.empty();
      }
    }
    return Optional.empty();
  }
}
