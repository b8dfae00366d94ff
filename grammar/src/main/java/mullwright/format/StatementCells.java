package mullwright.format;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import mullwright.syntax.Argument;
import mullwright.syntax.Clause;
import mullwright.syntax.Place;
import mullwright.syntax.Remark;
import mullwright.syntax.Segment;
import mullwright.syntax.Statement;
import mullwright.syntax.StatementKind;
import mullwright.syntax.TextRange;
import mullwright.syntax.Token;
import mullwright.syntax.TokenKind;

/** Where the cells of each statement start: keyword, arguments, clauses, remarks. */
final class StatementCells {
  /** The start of a cell; cells of one key stand in one column. */
  record Start(String key, int offset) {}

  private final int segmentStart;
  private final List<Token> tokens;
  private final Map<Integer, Statement> byStart = new HashMap<>();
  private final List<TextRange> heads = new ArrayList<>();

  /**
   * @param tokens of the segment, places counted from the start of the file
   */
  StatementCells(Segment segment, int segmentStart, List<Token> tokens) {
    this.segmentStart = segmentStart;
    this.tokens = tokens;
    segment.statements().forEach(this::collect);
  }

  private void collect(Statement statement) {
    int start = segmentStart + statement.range().start();
    byStart.put(start, statement);
    int end =
        statement.block().map(block -> block.range().start() + 1).orElse(statement.range().end());
    heads.add(new TextRange(start, Math.max(start, segmentStart + end)));
    statement.block().ifPresent(block -> block.statements().forEach(this::collect));
  }

  /** Each statement up to the brace it opens, places counted from the start of the file. */
  List<TextRange> heads() {
    return heads;
  }

  /** The cells of the statement these two tokens begin and end; none if they do not. */
  List<Start> of(Token first, Token last) {
    Statement statement = byStart.get(first.range().start());
    if (statement == null
        || statement.block().isPresent()
        || segmentStart + statement.range().end() != last.range().end()
        || last.kind() == TokenKind.BRACE) {
      return List.of();
    }
    List<Start> starts = new ArrayList<>();
    starts.add(new Start("keyword", first.range().start()));
    if (statement.kind() == StatementKind.PROPERTY) {
      property(statement, starts);
    } else {
      arguments(statement, starts);
    }
    for (Clause clause : statement.clauses()) {
      starts.add(new Start(clause.word().name(), segmentStart + clause.range().start()));
      bearing(clause, starts);
    }
    for (Remark remark : statement.remarks()) {
      starts.add(new Start("remark", segmentStart + remark.range().start()));
    }
    return starts;
  }

  private void arguments(Statement statement, List<Start> starts) {
    int count = 0;
    for (Argument argument : statement.arguments()) {
      int start = segmentStart + argument.range().start();
      boolean assigned = statement.kind() == StatementKind.LET && count == 1;
      starts.add(
          assigned
              ? new Start("assigned", tokens.get(tokenAt(start) - 1).range().start())
              : new Start("argument " + count, start));
      count++;
    }
  }

  /** A property's first words, then its first value. */
  private void property(Statement statement, List<Start> starts) {
    if (statement.arguments().isEmpty()) {
      return;
    }
    Argument.Phrase phrase = (Argument.Phrase) statement.arguments().get(0);
    boolean words = false;
    for (Argument.Phrase.Part part : phrase.parts()) {
      boolean value = part instanceof Argument.Phrase.Part.Measured;
      if (value || !words) {
        starts.add(new Start(value ? "value" : "words", segmentStart + part.range().start()));
        words = true;
      }
      if (value) {
        return;
      }
    }
  }

  /** In a lone place above or below something, which way it lies has a column of its own. */
  private void bearing(Clause clause, List<Start> starts) {
    if (clause instanceof Clause.At at
        && at.places().size() == 1
        && at.to().isEmpty()
        && at.places().get(0) instanceof Place.AtNames place
        && place.offset().isPresent()) {
      int offsetEnd = segmentStart + place.offset().get().range().end();
      for (int i = tokenAt(offsetEnd); i < tokens.size(); i++) {
        if (tokens.get(i).kind() == TokenKind.BEARING) {
          starts.add(new Start("bearing", tokens.get(i).range().start()));
          return;
        }
      }
    }
  }

  /** The first token that starts at or after that offset. */
  private int tokenAt(int offset) {
    int low = 0;
    int high = tokens.size();
    while (low < high) {
      int middle = (low + high) / 2;
      if (tokens.get(middle).range().start() < offset) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
