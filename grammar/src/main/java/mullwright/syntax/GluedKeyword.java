package mullwright.syntax;

import static mullwright.syntax.antlr.WallLexer.*;

import java.util.ArrayList;
import java.util.List;
import mullwright.syntax.SyntaxProblem.Garbled;
import mullwright.syntax.SyntaxProblem.Garbled.How;
import org.antlr.v4.runtime.Token;

/** The first word of a line run together with what it says: {@code slab10" all}. */
final class GluedKeyword {
  private GluedKeyword() {}

  /**
   * The line as it reads with a blank after its first word, and that told; the line as it is if it
   * does not evidently lack one.
   */
  static List<WallToken> part(List<WallToken> line, BlockKind block, TypedTokens out) {
    WallToken first = line.get(0);
    int more = 0;
    while (more + 1 < line.size()
        && line.get(more + 1).start() == line.get(more).end()
        && line.get(more + 1).getType() != COMMA) {
      more++;
    }
    WallToken next = more + 1 < line.size() ? line.get(more + 1) : null;
    String text = first.part(NAME, first.start(), line.get(more).end()).getText();
    int length =
        Keywords.isOpen(block)
            ? beforeValue(line, first.getText())
            : beforeArgument(first.getText(), text, block, next);
    if (length == 0) {
      return line;
    }
    List<WallToken> parted = new ArrayList<>();
    parted.add(first.part(NAME, first.start(), first.start() + length));
    if (!cut(text, length, first, parted)) {
      return line;
    }
    parted.addAll(line.subList(more + 1, line.size()));
    String meant = text.substring(0, length) + " " + text.substring(length);
    TextRange range = new TextRange(first.start(), line.get(more).end());
    out.report(new Garbled(How.RUN_TOGETHER, text, List.of(meant), "", range));
    return parted;
  }

  /** The rest of the text as tokens; false if it holds what no line can. */
  private static boolean cut(String text, int length, WallToken first, List<WallToken> parted) {
    TableLexer lexer = new TableLexer(text.substring(length), 0);
    int from = first.start() + length;
    for (WallToken each = lexer.next(); each.getType() != Token.EOF; each = lexer.next()) {
      if (each.getType() == STRAY || each.getType() == OPEN_STRING) {
        return false;
      }
      parted.add(first.part(each.getType(), from + each.start(), from + each.end()));
    }
    return true;
  }

  /** Where a property's word ends if a length is run into it: no name has a mark of length. */
  private static int beforeValue(List<WallToken> line, String word) {
    int digit = 0;
    while (digit < word.length() && !Character.isDigit(word.charAt(digit))) {
      digit++;
    }
    if (digit < 2 || digit == word.length() || !Character.isLetter(word.charAt(digit - 1))) {
      return 0;
    }
    int type = line.get(0).getType();
    int next = line.size() > 1 && line.get(1).start() == line.get(0).end() ? type(line, 1) : 0;
    return type == MARKED_NAME || next == STRAY || next == DIVIDE ? digit : 0;
  }

  private static int type(List<WallToken> line, int at) {
    return line.get(at).getType();
  }

  /** Where the statement word ends that the text begins with; 0 if it is not evident. */
  private static int beforeArgument(String word, String text, BlockKind block, WallToken next) {
    String longest = "";
    for (String known : Keywords.words(block)) {
      if (word.startsWith(known) && known.length() > longest.length()) {
        longest = known;
      }
    }
    if (longest.isEmpty() || longest.length() == word.length()) {
      return 0;
    }
    StatementKind kind = Keywords.statement(block, longest);
    boolean evident =
        Character.isDigit(word.charAt(longest.length()))
            ? takesDigits(kind)
            : Character.isLetter(word.charAt(longest.length()))
                && Spelling.distance(longest, word) > 1
                && lacksArgument(kind, word.substring(longest.length()), text, next);
    return evident ? longest.length() : 0;
  }

  /** True if what the statement is about may begin with a digit: a length or a grid line. */
  private static boolean takesDigits(StatementKind kind) {
    return kind.form() != StatementKind.Form.GLASS && !StatementTyper.beginsWithName(kind);
  }

  /** True if nothing else on the line can be what the statement is about. */
  private static boolean lacksArgument(
      StatementKind kind, String rest, String text, WallToken next) {
    if (kind == StatementKind.LET) {
      return next != null && next.getType() == ASSIGN;
    }
    if (kind.clauses().isEmpty() && kind != StatementKind.JOINT) {
      return false;
    }
    if (rest.equals("all") || text.contains("..") || next == null) {
      return true;
    }
    ClauseWord clause = Keywords.clause(next.getText());
    return next.getType() == COMMA || clause != null && kind.clauses().contains(clause);
  }
}
