package mullwright.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import mullwright.quantity.Kind;
import mullwright.syntax.Argument.Phrase.Part;
import mullwright.syntax.Expression;

/**
 * One way a phrase of a property may be written, as {@link PartSchema} tells it, and what a phrase
 * puts in its places.
 */
final class PhrasePattern {
  /** A member of a pattern. */
  private sealed interface Member permits Fixed, Slot, Maybe {}

  /** Words that stand as they are; of several one is chosen. */
  private record Fixed(List<String> words) implements Member {}

  /** A value; {@code kind} for quantities, {@code part} for names of parts, else by its word. */
  private record Slot(String word, Kind kind, PartKind part) implements Member {}

  /** Members that may be left out together. */
  private record Maybe(List<Member> members) implements Member {}

  /**
   * What stands in a place of the pattern.
   *
   * @param word the slot's word, or "" for a choice of fixed words
   * @param kind of a quantity, or null
   * @param part kind of the part that is named, or null
   * @param parts as written, at least one
   */
  record Capture(String word, Kind kind, PartKind part, List<Part> parts) {}

  private final List<Member> members;

  private PhrasePattern(List<Member> members) {
    this.members = members;
  }

  static PhrasePattern of(String pattern) {
    String spaced = pattern.replace("[", "[ ").replace("]", " ]");
    List<String> tokens =
        Arrays.stream(spaced.split(" ")).filter(token -> !token.isEmpty()).toList();
    int[] at = {0};
    return new PhrasePattern(members(tokens, at));
  }

  private static List<Member> members(List<String> tokens, int[] at) {
    List<Member> members = new ArrayList<>();
    while (at[0] < tokens.size()) {
      String token = tokens.get(at[0]++);
      if (token.equals("]")) {
        break;
      }
      if (token.equals("[")) {
        members.add(new Maybe(members(tokens, at)));
      } else if (token.equals(token.toUpperCase(Locale.ROOT))) {
        members.add(slot(token));
      } else {
        members.add(new Fixed(List.of(token.split("\\|"))));
      }
    }
    return members;
  }

  private static Slot slot(String word) {
    for (Kind kind : Kind.values()) {
      if (kind.name().equals(word)) {
        return new Slot(word, kind, null);
      }
    }
    for (PartKind part : PartKind.values()) {
      if (part.name().equals(word)) {
        return new Slot(word, null, part);
      }
    }
    return new Slot(word, null, null);
  }

  /**
   * What the phrase puts in the pattern's places, or empty if it is written another way.
   *
   * @param isValue true for a word that names a value
   */
  Optional<List<Capture>> match(List<Part> phrase, Predicate<String> isValue) {
    List<Capture> captures = new ArrayList<>();
    return match(members, phrase, captures, isValue) ? Optional.of(captures) : Optional.empty();
  }

  /**
   * How many parts of the phrase can be read before the first that does not fit.
   *
   * @param isValue true for a word that names a value
   */
  int reach(List<Part> phrase, Predicate<String> isValue) {
    int read = phrase.size();
    while (read > 0 && !begins(members, phrase.subList(0, read), isValue)) {
      read--;
    }
    return read;
  }

  /** True if the phrase is how some that fits the pattern may begin. */
  private static boolean begins(List<Member> open, List<Part> rest, Predicate<String> isValue) {
    if (rest.isEmpty()) {
      return true;
    }
    if (open.isEmpty()) {
      return false;
    }
    Member member = open.get(0);
    List<Member> after = open.subList(1, open.size());
    if (member instanceof Maybe maybe) {
      List<Member> with = new ArrayList<>(maybe.members());
      with.addAll(after);
      return begins(with, rest, isValue) || begins(after, rest, isValue);
    }
    if (member instanceof Fixed fixed) {
      return fixed.words().contains(word(rest.get(0)))
          && begins(after, rest.subList(1, rest.size()), isValue);
    }
    for (int taken : widths((Slot) member, rest, isValue)) {
      if (begins(after, rest.subList(taken, rest.size()), isValue)) {
        return true;
      }
    }
    return false;
  }

  private boolean match(
      List<Member> open, List<Part> rest, List<Capture> captures, Predicate<String> isValue) {
    if (open.isEmpty()) {
      return rest.isEmpty();
    }
    Member member = open.get(0);
    List<Member> after = open.subList(1, open.size());
    if (member instanceof Maybe maybe) {
      List<Member> with = new ArrayList<>(maybe.members());
      with.addAll(after);
      int size = captures.size();
      if (match(with, rest, captures, isValue)) {
        return true;
      }
      captures.subList(size, captures.size()).clear();
      return match(after, rest, captures, isValue);
    }
    if (member instanceof Fixed fixed) {
      if (rest.isEmpty() || !fixed.words().contains(word(rest.get(0)))) {
        return false;
      }
      if (fixed.words().size() > 1) {
        captures.add(new Capture("", null, null, rest.subList(0, 1)));
      }
      return match(after, rest.subList(1, rest.size()), captures, isValue);
    }
    Slot slot = (Slot) member;
    int size = captures.size();
    for (int taken : widths(slot, rest, isValue)) {
      captures.add(new Capture(slot.word(), slot.kind(), slot.part(), rest.subList(0, taken)));
      if (match(after, rest.subList(taken, rest.size()), captures, isValue)) {
        return true;
      }
      captures.subList(size, captures.size()).clear();
    }
    return false;
  }

  /** How many parts a slot may take, the most first. */
  private static List<Integer> widths(Slot slot, List<Part> rest, Predicate<String> isValue) {
    if (rest.isEmpty()) {
      return List.of();
    }
    Part first = rest.get(0);
    String word = word(first);
    boolean fits;
    switch (slot.word()) {
      case "WORDS":
        return upTo(rest.size());
      case "NAMES":
        int names = 0;
        while (names < rest.size() && !word(rest.get(names)).isEmpty()) {
          names++;
        }
        return upTo(names);
      case "PLACE":
        return place(rest);
      case "TEXT":
        fits = first instanceof Part.Quoted;
        break;
      case "COLOUR":
        fits = first instanceof Part.Quoted quoted && isColour(quoted.string().text());
        break;
      case "SPAN_RATIO":
        fits = spanRatio(first) != null;
        break;
      case "NUMBER":
        fits = isBareNumber(first);
        break;
      default:
        fits =
            slot.kind() == null
                ? !word.isEmpty() && !word.equals("..")
                : first instanceof Part.Measured && spanRatio(first) == null
                    || first instanceof Part.Plain && isValue.test(word);
    }
    return fits ? List.of(1) : List.of();
  }

  /** {@code #} and six hexadecimal digits: red, green, blue. */
  private static boolean isColour(String text) {
    boolean colour = text.length() == 7 && text.charAt(0) == '#';
    for (int i = 1; colour && i < text.length(); i++) {
      colour = Character.digit(text.charAt(i), 16) >= 0 && text.charAt(i) < 128;
    }
    return colour;
  }

  private static List<Integer> upTo(int most) {
    List<Integer> widths = new ArrayList<>();
    for (int width = most; width >= 1; width--) {
      widths.add(width);
    }
    return widths;
  }

  private static List<Integer> place(List<Part> rest) {
    boolean bearing =
        rest.size() >= 3
            && rest.get(0) instanceof Part.Measured
            && List.of("above", "below").contains(word(rest.get(1)))
            && !word(rest.get(2)).isEmpty();
    return bearing ? List.of(3, 1) : List.of(1);
  }

  /** The word or quoted text, or "" for a value. */
  static String word(Part part) {
    if (part instanceof Part.Plain plain) {
      return plain.word().text();
    }
    return part instanceof Part.Quoted quoted ? quoted.string().text() : "";
  }

  private static boolean isBareNumber(Part part) {
    return part instanceof Part.Measured measured
        && measured.expression() instanceof Expression.Literal literal
        && literal.unit() == null
        && !literal.hasMarks();
  }

  /** The divisor of {@code L/240} or {@code H/400}, or null. */
  static Expression spanRatio(Part part) {
    return part instanceof Part.Measured measured
            && measured.expression() instanceof Expression.Binary binary
            && binary.operator() == '/'
            && binary.left() instanceof Expression.Reference span
            && List.of("L", "H", "h").contains(span.name().text())
        ? binary.right()
        : null;
  }
}
