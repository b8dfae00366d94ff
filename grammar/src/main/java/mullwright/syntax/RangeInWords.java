package mullwright.syntax;

import static mullwright.syntax.antlr.WallLexer.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import mullwright.syntax.SyntaxProblem.Garbled;
import mullwright.syntax.SyntaxProblem.Garbled.How;

/** A word or a dash that stands where the {@code ..} of a range should: {@code 9 to 12}. */
final class RangeInWords {
  private static final Set<String> WORDS = Set.of("to", "through", "thru", "until", "till");
  private static final Set<String> JOINERS = Set.of("all", "except", "every", "above", "below");

  private RangeInWords() {}

  /** True for a word that says in plain English what {@code ..} says. */
  static boolean isWord(String text) {
    return WORDS.contains(text);
  }

  /**
   * The slip, if names stand on both sides of a word or dash; else null.
   *
   * @param line raw tokens of the line
   * @param at where the word or dash is among them
   * @param numbers true where a number is a name too
   */
  static Garbled find(List<WallToken> line, int at, StatementKind kind, boolean numbers) {
    if (at < 2 || at + 1 >= line.size() || line.get(at - 2).getType() == RANGE) {
      return null;
    }
    WallToken left = line.get(at - 1);
    WallToken right = line.get(at + 1);
    boolean ranges = at + 2 < line.size() && line.get(at + 2).getType() == RANGE;
    if (ranges || !isName(left, true) || !isName(right, numbers)) {
      return null;
    }
    WallToken all = left.part(NAME, left.start(), right.end());
    List<String> meant = new ArrayList<>();
    meant.add(left.getText() + ".." + right.getText());
    WallToken between = line.get(at);
    boolean touches = left.end() == between.start() || between.end() == right.start();
    if (touches && left.getType() == NAME && right.getType() == NAME) {
      meant.add(left.getText() + between.getText() + right.getText());
    }
    return new Garbled(How.RANGE_IN_WORDS, all.getText(), meant, kind.spelling(), all.range());
  }

  /**
   * The slip, if {@code from 9 to 12} stands where lines are chosen; else null. Two lines, not two
   * heights: those have longer names.
   *
   * @param at where {@code from} is among the tokens
   */
  static Garbled fromTo(List<WallToken> line, int at, StatementKind kind) {
    if (at + 3 >= line.size() || !line.get(at + 2).getText().equals("to")) {
      return null;
    }
    WallToken first = line.get(at + 1);
    WallToken last = line.get(at + 3);
    boolean range = at + 4 < line.size() && line.get(at + 4).getType() == RANGE;
    if (range || !isLine(first) || !isLine(last)) {
      return null;
    }
    WallToken all = first.part(NAME, line.get(at).start(), last.end());
    List<String> meant = List.of(first.getText() + ".." + last.getText());
    return new Garbled(How.RANGE_IN_WORDS, all.getText(), meant, kind.spelling(), all.range());
  }

  private static boolean isLine(WallToken token) {
    boolean letter = token.getType() == NAME && token.end() - token.start() == 1;
    return token.getType() == NUMBER || letter;
  }

  private static boolean isName(WallToken token, boolean numbers) {
    return switch (token.getType()) {
      case NAME -> {
        String text = token.getText();
        yield Keywords.clause(text) == null && !JOINERS.contains(text);
      }
      case STRING -> true;
      case NUMBER, DIGIT_WORD -> numbers;
      default -> false;
    };
  }
}
