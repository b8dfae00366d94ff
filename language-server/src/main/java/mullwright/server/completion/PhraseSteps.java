package mullwright.server.completion;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import mullwright.quantity.Kind;
import mullwright.quantity.Unit;

/**
 * What a phrase of a property may go on with, by a pattern of {@link mullwright.model.PartSchema}
 * and what of it is written.
 */
final class PhraseSteps {
  private static final String OPEN = "[";
  private static final String CLOSE = "]";

  /**
   * What a phrase is made of.
   *
   * @param text as written; of a number with its unit, the unit
   */
  record Item(Sort sort, String text) {
    /** A word, a word that names a value, a value, a number without a unit, a text, dots. */
    enum Sort {
      WORD,
      LET,
      VALUE,
      BARE,
      QUOTED,
      RANGE
    }
  }

  /**
   * Something that may come next.
   *
   * @param token as the pattern has it: words to choose from, or the word of a place
   * @param after the token before it in the pattern, or "" at its start
   * @param unit true if the value is there and only its unit may come
   */
  record Step(String token, String after, boolean unit) {
    /** True if it is written as it stands. */
    boolean fixed() {
      return isFixed(token);
    }
  }

  private final Set<Step> steps = new LinkedHashSet<>();
  private boolean matched;

  private PhraseSteps() {}

  /** What may come next, best first; nothing if what is written fits no further. */
  static Set<Step> next(String pattern, List<Item> written) {
    return of(pattern, written).steps;
  }

  /** True if the phrase is whole so, or may become it. */
  static boolean fits(String pattern, List<Item> written) {
    PhraseSteps steps = of(pattern, written);
    return steps.matched || !steps.steps.isEmpty();
  }

  private static PhraseSteps of(String pattern, List<Item> written) {
    String spaced = pattern.replace(OPEN, "[ ").replace(CLOSE, " ]");
    List<String> tokens =
        Arrays.stream(spaced.split(" ")).filter(token -> !token.isEmpty()).toList();
    PhraseSteps steps = new PhraseSteps();
    steps.walk(tokens, written, "");
    return steps;
  }

  static boolean isFixed(String token) {
    return !token.equals(token.toUpperCase(Locale.ROOT));
  }

  private void walk(List<String> open, List<Item> rest, String before) {
    if (open.isEmpty()) {
      matched |= rest.isEmpty();
      return;
    }
    String token = open.get(0);
    if (token.equals(OPEN)) {
      int close = open.indexOf(CLOSE);
      List<String> after = open.subList(close + 1, open.size());
      walk(joined(open.subList(1, close), after), rest, before);
      walk(after, rest, before);
    } else if (token.equals("PLACE")) {
      List<String> after = open.subList(1, open.size());
      walk(joined(List.of("LENGTH", "above|below", "LEVEL"), after), rest, before);
      walk(joined(List.of("LEVEL"), after), rest, before);
      walk(joined(List.of("LENGTH"), after), rest, before);
    } else if (rest.isEmpty()) {
      steps.add(new Step(token, before, false));
    } else {
      take(open, rest);
    }
  }

  private void take(List<String> open, List<Item> rest) {
    String token = open.get(0);
    List<String> after = open.subList(1, open.size());
    Item first = rest.get(0);
    List<Item> others = rest.subList(1, rest.size());
    boolean word = isWord(first);
    if (isFixed(token)) {
      if (word && List.of(token.split("\\|")).contains(first.text())) {
        walk(after, others, token);
      }
      return;
    }
    switch (token) {
      case "WORDS", "NAMES" -> {
        for (int taken = 1; taken <= rest.size() && isName(rest.get(taken - 1), token); taken++) {
          walk(after, rest.subList(taken, rest.size()), token);
        }
        if (token.equals("NAMES") && rest.get(rest.size() - 1).sort() == Item.Sort.RANGE) {
          steps.add(new Step(token, token, false));
        }
      }
      case "TEXT", "COLOUR" -> {
        if (first.sort() == Item.Sort.QUOTED) {
          walk(after, others, token);
        }
      }
      case "NUMBER" -> {
        if (first.sort() == Item.Sort.BARE) {
          walk(after, others, token);
        }
      }
      default -> value(token, after, rest);
    }
  }

  private static boolean isName(Item item, String token) {
    return token.equals("WORDS") || isWord(item) || item.sort() == Item.Sort.RANGE;
  }

  private static boolean isWord(Item item) {
    return item.sort() == Item.Sort.WORD || item.sort() == Item.Sort.LET;
  }

  /** A value of a kind with its unit, or a name. */
  private void value(String token, List<String> after, List<Item> rest) {
    Item first = rest.get(0);
    List<Item> others = rest.subList(1, rest.size());
    Kind kind = kind(token);
    if (kind == null) {
      boolean ratio = token.equals("SPAN_RATIO") && first.sort() == Item.Sort.VALUE;
      if (ratio || isWord(first) || first.sort() == Item.Sort.QUOTED) {
        walk(after, others, token);
      }
    } else if (first.sort() == Item.Sort.BARE) {
      if (others.isEmpty()) {
        steps.add(new Step(token, "", true));
      }
      // a bare number is a length, or a share of one
      if (kind == Kind.LENGTH || kind == Kind.RATIO) {
        walk(after, others, token);
      }
    } else if (first.sort() == Item.Sort.LET
        || first.sort() == Item.Sort.VALUE && measures(first.text(), kind)) {
      walk(after, others, token);
    }
  }

  private static Kind kind(String token) {
    for (Kind kind : Kind.values()) {
      if (kind.name().equals(token)) {
        return kind;
      }
    }
    return null;
  }

  /** Whether a unit is one of that kind; what is reckoned or has marks may be. */
  private static boolean measures(String unit, Kind kind) {
    boolean known = false;
    for (Unit each : Unit.values()) {
      if (each.spellings().contains(unit)) {
        known = true;
        if (each.kind().dimension().equals(kind.dimension())) {
          return true;
        }
      }
    }
    return !known && kind == Kind.LENGTH;
  }

  private static List<String> joined(List<String> some, List<String> more) {
    List<String> all = new ArrayList<>(some);
    all.addAll(more);
    return all;
  }
}
