package mullwright.check;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import mullwright.analysis.wall.RunSupport;
import mullwright.layout.PlacedAnchor;
import mullwright.model.AnchorUse;
import mullwright.model.NearNames;
import mullwright.syntax.ClauseWord;

/** Small words that sentences of findings are put together from. */
final class Words {
  /** How many near names are offered. */
  private static final int OFFERED = 3;

  /** How many letters of what was written are quoted. */
  static final int QUOTED = 120;

  /** How many names are listed. */
  private static final int LISTED = 12;

  /** Words that join the parts of a statement, quoted where they are names. */
  private static final Set<String> JOINERS =
      Set.of(
          "all", "except", "every", "to", "above", "below", "right", "left", "of", "equal", "in",
          "out", "floor", "splices", "by", "on", "others", "note", "verify", "hold", "x");

  private static final Set<String> CLOSED_WORDS = closedWords();

  private Words() {}

  /**
   * The name in quotes a reader can tell from the sentence round it; of one that is longer than any
   * name its beginning.
   */
  static String quoted(String name) {
    return "\u201c" + (name.length() > QUOTED ? beginning(name) + "\u2026" : name) + "\u201d";
  }

  private static String beginning(String name) {
    boolean splits = Character.isHighSurrogate(name.charAt(QUOTED - 1));
    return name.substring(0, splits ? QUOTED - 1 : QUOTED);
  }

  /** The few candidates a slip of the pen away from what was written, nearest first. */
  static List<String> near(String written, List<String> candidates) {
    return candidates.stream()
        .filter(candidate -> NearNames.isNear(written, candidate))
        .limit(OFFERED)
        .toList();
  }

  /** Offers the names that may be meant, else says which there are. */
  static String didYouMean(String written, List<String> candidates, String what) {
    List<String> near = near(written, candidates);
    if (!near.isEmpty()) {
      return "Did you mean " + either(near) + "?";
    }
    return candidates.isEmpty()
        ? "No " + what + " is known here: define it, or mend the name."
        : "Known here: " + some(candidates) + ".";
  }

  /** All of a short list, the beginning of a long one. */
  private static String some(List<String> words) {
    return words.size() <= LISTED
        ? list(words)
        : String.join(", ", words.subList(0, LISTED)) + " and more";
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

  /** Where a support is: the floor or row its text names, or what it is. */
  static String place(RunSupport support, WallFacts facts) {
    if (support.anchor() < 0) {
      return support.name();
    }
    return place(facts.layout().anchors().get(support.anchor()), facts);
  }

  /** Where an anchor is: the floor or row its text names, or what it is. */
  static String place(PlacedAnchor anchor, WallFacts facts) {
    AnchorUse use = anchor.use();
    return use.floor()
        .filter(floor -> use.kind() != AnchorUse.Kind.CLIP)
        .map(floor -> facts.wall().grid().floors().get(floor).name())
        .or(() -> use.place().base())
        .orElse(anchor.name());
  }

  /** The name of something on a line, where the line was named already. */
  static String onLine(String name, String line) {
    return name.replace(" of vertical " + line + " ", " ");
  }

  /** A name as it must be written: in quotes where it could not stand without. */
  static String asName(String name) {
    boolean plain =
        name.matches("[\\p{L}0-9][\\p{L}0-9_-]*(\\.[\\p{L}0-9_-]+)*")
            && !CLOSED_WORDS.contains(name);
    return plain ? name : "\"" + name + "\"";
  }

  private static Set<String> closedWords() {
    Set<String> words = new HashSet<>(JOINERS);
    for (ClauseWord clause : ClauseWord.values()) {
      words.addAll(List.of(clause.spelling().split(" ")));
    }
    return Set.copyOf(words);
  }
}
