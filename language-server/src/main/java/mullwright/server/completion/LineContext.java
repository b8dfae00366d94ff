package mullwright.server.completion;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import mullwright.syntax.BlockKind;
import mullwright.syntax.ClauseWord;
import mullwright.syntax.ParsedFile;
import mullwright.syntax.Statement;
import mullwright.syntax.StatementKind;
import mullwright.syntax.TextRange;
import mullwright.syntax.Token;
import mullwright.syntax.TokenKind;
import mullwright.workspace.Cursor;

/**
 * What stands before the cursor on its line.
 *
 * @param prefix the word that is being written, as far as the cursor, counted from the file's start
 * @param wordEnd where the word ends that the cursor is in, counted from the file's start
 * @param closed true where nothing can be offered: in a comment, in a number or right before one,
 *     inside a mark, behind a brace that closes
 * @param numberEnds true right at the end of a number, which takes a unit and nothing else
 * @param inString true in quotes, where {@code prefix} is what stands after the opening quote
 * @param keyword the first word of the statement, or "" if it is that one that is being written
 * @param kind what the first word says in its block
 * @param clause the last clause word before the cursor
 * @param given the clause words that stand in the statement already
 * @param rest what is still to be written of a clause of two words, {@code by} of {@code isolated
 *     by}; "" if nothing is
 * @param afterClause the tokens from that clause word (or the keyword) to the prefix
 * @param words the same as they are spelled
 */
record LineContext(
    TextRange prefix,
    int wordEnd,
    boolean closed,
    boolean numberEnds,
    boolean inString,
    String keyword,
    StatementKind kind,
    Optional<ClauseWord> clause,
    Set<ClauseWord> given,
    String rest,
    List<Token> afterClause,
    List<String> words) {

  /** Joining words that nothing need follow. */
  private static final List<String> WHOLE = List.of("all", "splices");

  static LineContext of(Cursor cursor) {
    ParsedFile file = cursor.file();
    String text = file.segments().get(cursor.segment()).text();
    int base = file.segmentStart(cursor.segment());
    int offset = cursor.offset();
    List<Token> before = new ArrayList<>();
    List<Token> after = new ArrayList<>();
    Token touched = null;
    for (Token token : file.tokens(cursor.segment())) {
      TextRange range = token.range();
      if (range.start() >= offset) {
        if (text.substring(offset, range.start()).indexOf('\n') >= 0) {
          break;
        }
        after.add(token);
      } else if (range.end() > offset || range.end() == offset && isWord(token)) {
        touched = token;
      } else {
        before.add(token);
      }
    }
    boolean inside = touched != null && !isWord(touched) && touched.kind() != TokenKind.STRING;
    boolean closed = inside || touched == null && beforeNumber(after, offset);
    closed |= behindBrace(before, text, touched == null ? offset : touched.range().start());
    Token left = before.isEmpty() ? null : before.get(before.size() - 1);
    boolean numberEnds =
        touched == null
            && left != null
            && left.kind() == TokenKind.NUMBER
            && left.range().end() == offset;
    boolean string = touched != null && text.startsWith("\"", touched.range().start());
    int start = touched == null ? offset : touched.range().start() + (string ? 1 : 0);
    List<Token> statement = statement(before, text, cursor);
    int end = touched == null || closed ? offset : wordEnd(touched, string, text);
    LineContext context =
        make(
            new TextRange(base + start, base + offset),
            base + end,
            closed,
            numberEnds,
            string,
            statement,
            text,
            cursor);
    context.given.addAll(clauses(touched, after, text));
    return context;
  }

  private static boolean beforeNumber(List<Token> after, int offset) {
    Token next = after.isEmpty() ? null : after.get(0);
    return next != null
        && next.range().start() == offset
        && (next.kind() == TokenKind.NUMBER || next.kind() == TokenKind.LENGTH);
  }

  /** True if a brace that closes stands before that on its line. */
  private static boolean behindBrace(List<Token> before, String text, int offset) {
    TextRange left = before.isEmpty() ? null : before.get(before.size() - 1).range();
    return left != null
        && text.startsWith("}", left.start())
        && text.substring(left.end(), offset).indexOf('\n') < 0;
  }

  /**
   * The clauses that words behind the cursor open, those left out that go on with the one at it.
   */
  private static Set<ClauseWord> clauses(Token touched, List<Token> after, String text) {
    Set<ClauseWord> clauses = EnumSet.noneOf(ClauseWord.class);
    String before = touched == null ? "" : word(touched, text);
    for (Token token : after) {
      String word = word(token, text);
      Optional<ClauseWord> clause =
          token.kind() == TokenKind.CLAUSE ? clause(word) : Optional.empty();
      boolean second = clause(before).filter(it -> it.spelling().endsWith(" " + word)).isPresent();
      if (!second) {
        clause.ifPresent(clauses::add);
      }
      before = word;
    }
    return clauses;
  }

  private static int wordEnd(Token token, boolean string, String text) {
    int end = token.range().end();
    boolean closed = token.range().length() > 1 && text.charAt(end - 1) == '"';
    return string && closed ? end - 1 : end;
  }

  /** Whether a token is a word, which more letters would go on with. */
  private static boolean isWord(Token token) {
    return switch (token.kind()) {
      case KEYWORD, PROPERTY, CLAUSE, JOINER, BEARING, DIRECTION, REMARK -> true;
      case NAME, REFERENCE, UNIT, UNKNOWN, FAULT -> true;
      default -> false;
    };
  }

  /** The tokens of the statement in hand: from its first word, over lines that go on. */
  private static List<Token> statement(List<Token> before, String text, Cursor cursor) {
    int from = before.size();
    int next = cursor.offset();
    while (from > 0) {
      Token token = before.get(from - 1);
      boolean newLine = text.substring(token.range().end(), next).indexOf('\n') >= 0;
      boolean goesOn =
          token.kind() == TokenKind.COMMA
              || token.kind() == TokenKind.RANGE
              || token.kind() == TokenKind.OPERATOR;
      if (newLine && !goesOn || token.kind() == TokenKind.BRACE) {
        break;
      }
      next = token.range().start();
      from--;
    }
    List<Token> line = before.subList(from, before.size());
    // clauses that stand one a line in braces belong to the statement around them
    Optional<Statement> around =
        cursor
            .statement()
            .filter(s -> s.block().isEmpty() && s.range().start() < next(line, cursor));
    if (around.isEmpty() || !inBraces(around.get(), before, text, cursor)) {
      return line;
    }
    List<Token> whole = new ArrayList<>();
    for (Token token : before) {
      if (token.range().start() >= around.get().range().start()) {
        whole.add(token);
      }
    }
    return whole;
  }

  private static int next(List<Token> line, Cursor cursor) {
    return line.isEmpty() ? cursor.offset() : line.get(0).range().start();
  }

  private static boolean inBraces(
      Statement statement, List<Token> before, String text, Cursor cursor) {
    int depth = 0;
    for (Token token : before) {
      if (token.kind() == TokenKind.BRACE
          && token.range().start() >= statement.range().start()
          && token.range().end() <= cursor.offset()) {
        depth += text.charAt(token.range().start()) == '{' ? 1 : -1;
      }
    }
    return depth > 0;
  }

  private static LineContext make(
      TextRange prefix,
      int wordEnd,
      boolean closed,
      boolean numberEnds,
      boolean string,
      List<Token> statement,
      String text,
      Cursor cursor) {
    if (statement.isEmpty()) {
      return new LineContext(
          prefix,
          wordEnd,
          closed,
          numberEnds,
          string,
          "",
          StatementKind.UNKNOWN,
          Optional.empty(),
          EnumSet.noneOf(ClauseWord.class),
          "",
          List.of(),
          List.of());
    }
    String keyword = word(statement.get(0), text);
    Set<ClauseWord> given = EnumSet.noneOf(ClauseWord.class);
    ClauseWord last = null;
    int from = 1;
    String rest = "";
    for (int i = 1; i < statement.size(); i++) {
      rest = "";
      if (statement.get(i).kind() == TokenKind.CLAUSE) {
        String spelled = word(statement.get(i), text);
        Optional<ClauseWord> word = clause(spelled);
        boolean second = from == i && last != null && last.spelling().endsWith(" " + spelled);
        if (second) {
          from = i + 1;
        } else if (word.isPresent()) {
          last = word.get();
          given.add(last);
          from = i + 1;
          rest = last.spelling().substring(Math.min(spelled.length(), last.spelling().length()));
        }
      }
    }
    List<Token> after =
        statement.subList(from, statement.size()).stream()
            .filter(token -> token.kind() != TokenKind.CLAUSE && token.kind() != TokenKind.BRACE)
            .toList();
    return new LineContext(
        prefix,
        wordEnd,
        closed,
        numberEnds,
        string,
        keyword,
        kind(keyword, cursor.block(), statement.get(0).kind()),
        Optional.ofNullable(last),
        given,
        rest.strip(),
        after,
        after.stream().map(token -> word(token, text)).toList());
  }

  private static String word(Token token, String text) {
    return text.substring(token.range().start(), token.range().end());
  }

  static Optional<ClauseWord> clause(String first) {
    for (ClauseWord word : ClauseWord.values()) {
      if (word.spelling().split(" ")[0].equals(first)) {
        return Optional.of(word);
      }
    }
    return Optional.empty();
  }

  private static StatementKind kind(String keyword, BlockKind block, TokenKind token) {
    for (StatementKind kind : StatementKind.values()) {
      if (kind.spelling().equals(keyword) && kind.standsIn().contains(block)) {
        return kind;
      }
    }
    if (token != TokenKind.PROPERTY) {
      return StatementKind.UNKNOWN;
    }
    return block == BlockKind.CATALOG ? StatementKind.CATALOG_PART : StatementKind.PROPERTY;
  }

  /** True if the first word of the statement is being written. */
  boolean atStart() {
    return keyword.isEmpty();
  }

  /** True if what the last clause (or the keyword) wants is not there yet. */
  boolean wantsOperand() {
    if (afterClause.isEmpty()) {
      return clause.filter(word -> word.form() == ClauseWord.Form.FLAG).isEmpty();
    }
    return switch (afterClause.get(afterClause.size() - 1).kind()) {
      case COMMA, RANGE, BEARING, OPERATOR, SIGN -> true;
      case JOINER -> !WHOLE.contains(words.get(words.size() - 1));
      default -> false;
    };
  }

  /** The first name of the range that is being written, {@code A} of {@code A..}. */
  Optional<String> rangeFrom() {
    int last = afterClause.size() - 1;
    return last > 0 && afterClause.get(last).kind() == TokenKind.RANGE
        ? Optional.of(words.get(last - 1))
        : Optional.empty();
  }

  /** The place an extent begins at, once its {@code to} is written. */
  Optional<String> extentFrom() {
    int last = afterClause.size() - 1;
    return last > 0 && words.get(last).equals("to")
        ? Optional.of(words.get(last - 1))
        : Optional.empty();
  }

  /** True right after a number, where a unit may follow. */
  boolean afterNumber() {
    return !afterClause.isEmpty()
        && afterClause.get(afterClause.size() - 1).kind() == TokenKind.NUMBER;
  }
}
