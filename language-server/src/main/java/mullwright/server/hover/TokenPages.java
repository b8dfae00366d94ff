package mullwright.server.hover;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import mullwright.check.Allowances;
import mullwright.check.RulePage;
import mullwright.quantity.Kind;
import mullwright.quantity.Quantity;
import mullwright.quantity.Unit;
import mullwright.syntax.TextRange;
import mullwright.syntax.Token;
import mullwright.syntax.TokenKind;
import mullwright.workspace.Cursor;

/**
 * The pages of words that the tree keeps no leaf for: those that join and point, marks of
 * arithmetic, comments that are read.
 */
final class TokenPages {
  /** Read only when such a word is pointed at. */
  private static final class Meanings {
    static final Map<String, String> OF =
        Map.ofEntries(
            Map.entry("all", "All that pass the place."),
            Map.entry("except", "Takes out again what follows."),
            Map.entry("every", "Keeps each so manieth, counted from the first."),
            Map.entry("to", "Ends an extent: from one place to another, or the far value."),
            Map.entry("floor", "With “below splices”: the nearest floor under each splice."),
            Map.entry("splices", "The splices of each line."),
            Map.entry("equal", "So many equal spaces; the rest falls to the last."),
            Map.entry("in", "Inwards, towards the room; after “equal”, the length to share out."),
            Map.entry("out", "Outwards, away from the room."),
            Map.entry("up", "Upwards."),
            Map.entry("down", "Downwards."),
            Map.entry("left", "To the left, seen from outdoors."),
            Map.entry("right", "To the right, seen from outdoors."),
            Map.entry("above", "Above what is named."),
            Map.entry("below", "Below what is named."),
            Map.entry("of", "With “right” or “left”: which side of what is named."),
            Map.entry("behind", "Behind the glass, towards the room."),
            Map.entry("before", "Before the glass, outdoors."),
            Map.entry("glass", "The outer face of the glass, from which depths are counted."),
            Map.entry("x", "Times: how many of what follows, or width by height."),
            Map.entry("at", "At which distance from the face."),
            Map.entry("..", "From the one to the other, in the order of the grid."),
            Map.entry("@", "So many spaces of this length."),
            Map.entry("=", "Has this value."),
            Map.entry("+", "Plus."),
            Map.entry("-", "Minus; a space stands on both sides, else it belongs to a length."),
            Map.entry("*", "Times."),
            Map.entry("/", "Divided by; what does not come out exactly is an error."),
            Map.entry(",", "And: the next of the list."),
            Map.entry("(", "What is in parentheses is worked out first."),
            Map.entry(")", "What is in parentheses is worked out first."),
            Map.entry("{", "Begins a block."),
            Map.entry("}", "Ends a block."));

    private Meanings() {}
  }

  private TokenPages() {}

  /**
   * The page of the token at a cursor.
   *
   * @param around the page of what the token is a part of, for words that mean nothing by
   *     themselves
   */
  static Optional<Pages.Shown> at(Cursor cursor, Supplier<Optional<Page>> around) {
    String text = cursor.file().segments().get(cursor.segment()).text();
    Token found = null;
    for (Token token : cursor.file().tokens(cursor.segment())) {
      if (token.range().start() > cursor.offset()) {
        break;
      }
      if (token.range().touches(cursor.offset())) {
        found = token;
      }
    }
    if (found == null) {
      return Optional.empty();
    }
    TextRange range = found.range();
    String spelled = text.substring(range.start(), Math.min(range.end(), text.length()));
    return page(found.kind(), spelled, cursor, around)
        .map(page -> new Pages.Shown(cursor.file().absolute(cursor.segment(), range), page));
  }

  private static Optional<Page> page(
      TokenKind kind, String spelled, Cursor cursor, Supplier<Optional<Page>> around) {
    if (kind == TokenKind.COMMENT) {
      return allowed(spelled);
    }
    if (kind == TokenKind.DOCUMENTATION) {
      return Optional.of(
          new Page("///").line("Documents the next statement and shows when that is pointed at."));
    }
    if (kind == TokenKind.UNIT) {
      return unit(Numbers.of(cursor.file()), Unit.named(spelled));
    }
    String meaning = Meanings.OF.get(spelled);
    if (meaning != null) {
      return Optional.of(new Page(spelled).line(meaning));
    }
    return around.get();
  }

  /** What the rules are about whose findings a comment allows. */
  private static Optional<Page> allowed(String comment) {
    List<String> rules = Allowances.named(comment);
    Page page = new Page("allow " + String.join(", ", rules));
    page.line(
        "Findings of "
            + (rules.size() == 1 ? "this rule" : "these rules")
            + " are allowed here, for the reason that follows.");
    boolean known = false;
    for (String rule : rules) {
      Optional<RulePage> of = RulePage.find(rule);
      of.ifPresent(found -> page.fact(rule, found.summary()));
      known |= of.isPresent();
    }
    return known ? Optional.of(page) : Optional.empty();
  }

  /** One of a unit in both systems. */
  static Optional<Page> unit(Numbers numbers, Optional<Unit> unit) {
    return unit.map(
        known -> {
          Page page = new Page(known.symbol()).line("A unit of " + known.kind().words() + ".");
          if (known.kind() != Kind.TEMPERATURE) {
            Quantity one = new Quantity(known.factor(), known.kind().dimension());
            page.fact("1 " + known.symbol(), numbers.of(one, known.kind()));
          }
          return page;
        });
  }
}
