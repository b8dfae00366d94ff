package mullwright.server.completion;

import java.util.ArrayList;
import java.util.List;
import mullwright.quantity.Kind;
import mullwright.syntax.StatementKind;
import mullwright.syntax.TokenKind;
import org.eclipse.lsp4j.CompletionItemKind;

/**
 * Words that join on to what is written of a clause: {@code above} after a length, {@code to} after
 * the place an extent begins at, {@code x} after a count.
 *
 * @param offers best first
 * @param due true if the clause is not whole without one, so that nothing else may come
 */
record Joining(List<Offer> offers, boolean due) {
  private static final Joining NONE = new Joining(List.of(), false);

  static Joining of(LineContext line) {
    int last = line.afterClause().size() - 1;
    if (last < 0) {
      return NONE;
    }
    TokenKind kind = line.afterClause().get(last).kind();
    boolean value = kind == TokenKind.NUMBER || kind == TokenKind.LENGTH || kind == TokenKind.UNIT;
    boolean name = kind == TokenKind.NAME;
    if (line.clause().isEmpty()) {
      boolean range =
          name && last > 0 && line.afterClause().get(last - 1).kind() == TokenKind.RANGE;
      StatementKind.Form form = line.kind().form();
      boolean chosen = form == StatementKind.Form.LINES || form == StatementKind.Form.ROWS;
      return range && chosen
          ? maybe("every", "each second, third …", "except", "all but those that follow")
          : NONE;
    }
    return switch (line.clause().get()) {
      case BOLTED -> value ? due("x", "times: how many of what follows") : NONE;
      case SPACED ->
          kind == TokenKind.NUMBER
              ? maybe("@", "so many spaces of this length", "equal in", "so many spaces, together")
              : NONE;
      case OFFSET -> value ? due("left", "side", "right", "side") : NONE;
      case EDGE ->
          value
              ? due("behind glass", "the slab ends short of it", "before glass", "beyond it")
              : NONE;
      case FROM -> name && !line.words().contains("to") ? due("to", "where it ends") : place(value);
      case AT -> at(line, value, name);
      default -> NONE;
    };
  }

  private static Joining at(LineContext line, boolean value, boolean name) {
    switch (line.kind()) {
      case LINES_STATEMENT, FACE, FLOORS -> {
        return NONE;
      }
      case LINE -> {
        return value
            ? maybe("right of", "measured from a line", "left of", "measured from a line")
            : NONE;
      }
      case BRACKET -> {
        if (isLoad(line)) {
          return value && !line.afterNumber()
              ? due(
                  "down",
                  "its direction",
                  "in",
                  "its direction",
                  "out",
                  "its direction",
                  "up",
                  "its direction")
              : NONE;
        }
        return place(value);
      }
      case ROW -> {
        return name
            ? maybe("to", "where it ends, of a slope", "except", "bays it does not run through")
            : place(value);
      }
      default -> {
        return place(value);
      }
    }
  }

  /** True if what is being written is a force: the place stands before it. */
  private static boolean isLoad(LineContext line) {
    int last = line.afterClause().size() - 1;
    int number =
        last > 0 && line.afterClause().get(last).kind() == TokenKind.UNIT ? last - 1 : last;
    return number > 0 && line.afterClause().get(number - 1).kind() == TokenKind.NAME;
  }

  /** The kind of quantity a number is of that has no unit yet. */
  static Kind kindOf(LineContext line) {
    return switch (line.clause().map(Enum::name).orElse(line.kind().name())) {
      case "MASS" -> Kind.MASS_PER_AREA;
      case "CORNER" -> Kind.ANGLE;
      case "AT" -> line.kind() == StatementKind.BRACKET && isLoad(line) ? Kind.FORCE : Kind.LENGTH;
      default -> Kind.LENGTH;
    };
  }

  private static Joining place(boolean value) {
    return value
        ? maybe("above", "so far above a floor or row", "below", "so far below one")
        : NONE;
  }

  private static Joining due(String... wordsAndMeanings) {
    return new Joining(offers(wordsAndMeanings), true);
  }

  private static Joining maybe(String... wordsAndMeanings) {
    return new Joining(offers(wordsAndMeanings), false);
  }

  private static List<Offer> offers(String... wordsAndMeanings) {
    List<Offer> offers = new ArrayList<>();
    for (int i = 0; i < wordsAndMeanings.length; i += 2) {
      offers.add(
          Offer.of(wordsAndMeanings[i], CompletionItemKind.Keyword, wordsAndMeanings[i + 1]));
    }
    return offers;
  }
}
