package mullwright.check;

import java.util.List;
import java.util.Locale;

/** Small words that sentences of findings are put together from. */
final class Words {
  /** How many near names are offered. */
  private static final int OFFERED = 3;

  private Words() {}

  /** The name in quotes a reader can tell from the sentence round it. */
  static String quoted(String name) {
    return "\u201c" + name + "\u201d";
  }

  /** The first few, as told nearest first. */
  static List<String> nearest(List<String> candidates) {
    return candidates.subList(0, Math.min(OFFERED, candidates.size()));
  }

  /** Offers the nearest names, or says that there are none. */
  static String didYouMean(List<String> candidates, String what) {
    return candidates.isEmpty()
        ? "There is no " + what + " to choose from yet: define it, or mend the name."
        : "Did you mean " + either(nearest(candidates)) + "?";
  }

  /** {@code a, b or c}. */
  static String either(List<String> words) {
    return joined(words, " or ");
  }

  /** {@code a, b and c}. */
  static String list(List<String> words) {
    return joined(words, " and ");
  }

  private static String joined(List<String> words, String last) {
    if (words.size() < 2) {
      return String.join("", words);
    }
    return String.join(", ", words.subList(0, words.size() - 1))
        + last
        + words.get(words.size() - 1);
  }

  /** With "a" or "an" before it. */
  static String article(String noun) {
    boolean vowel = !noun.isEmpty() && "aeio".indexOf(noun.toLowerCase(Locale.ROOT).charAt(0)) >= 0;
    return (vowel ? "an " : "a ") + noun;
  }

  /** Begins with a capital and ends with a stop. */
  static String sentence(String words) {
    if (words.isEmpty()) {
      return words;
    }
    String begun = words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    char end = begun.charAt(begun.length() - 1);
    return end == '.' || end == '?' ? begun : begun + ".";
  }

  /** A name as it must be written: in quotes where it could not stand without. */
  static String asName(String name) {
    return name.matches("[\\p{L}0-9][\\p{L}0-9_-]*(\\.[\\p{L}0-9_-]+)*")
        ? name
        : "\"" + name + "\"";
  }
}
