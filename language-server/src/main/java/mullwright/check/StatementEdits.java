package mullwright.check;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import mullwright.model.Origin;
import mullwright.model.Wall;
import mullwright.syntax.Argument;
import mullwright.syntax.Block;
import mullwright.syntax.Clause;
import mullwright.syntax.ClauseWord;
import mullwright.syntax.Comment;
import mullwright.syntax.Place;
import mullwright.syntax.Segment;
import mullwright.syntax.Statement;
import mullwright.syntax.StatementKind;
import mullwright.syntax.TextRange;

/**
 * Edits of whole statements and clauses, found in the tree and leaving every other word as it is.
 *
 * <p>Each answers empty where the statement is not at hand.
 */
record StatementEdits(TextFacts facts) {
  private static final String INDENT = "  ";

  /** Puts a clause after the last clause of a statement, before its remarks. */
  Optional<Fix.Edit> addClause(Origin statement, String clause) {
    return facts
        .statementAt(statement)
        .map(found -> insert(statement, endOfClauses(found), " " + clause));
  }

  private static int endOfClauses(Statement statement) {
    int end = statement.keyword().range().end();
    for (Argument argument : statement.arguments()) {
      end = Math.max(end, argument.range().end());
    }
    for (Clause clause : statement.clauses()) {
      end = Math.max(end, clause.range().end());
    }
    return end;
  }

  /** Takes a clause out, with the blanks before it. */
  Optional<Fix.Edit> removeClause(Origin statement, ClauseWord word) {
    Optional<Clause> clause = facts.statementAt(statement).flatMap(found -> found.clause(word));
    Optional<Segment> segment = facts.segment(statement);
    if (clause.isEmpty() || segment.isEmpty()) {
      return Optional.empty();
    }
    TextRange range = clause.get().range();
    int start = range.start();
    while (start > 0 && segment.get().text().charAt(start - 1) == ' ') {
      start--;
    }
    return Optional.of(replace(statement, new TextRange(start, range.end()), ""));
  }

  /** Puts another keyword in the place of a statement's. */
  Optional<Fix.Edit> keyword(Origin statement, String keyword) {
    return facts
        .statementAt(statement)
        .map(found -> replace(statement, found.keyword().range(), keyword));
  }

  /** True if a statement has that clause. */
  boolean has(Origin statement, ClauseWord word) {
    return facts.statementAt(statement).flatMap(found -> found.clause(word)).isPresent();
  }

  /** Puts another clause in the place of one, or adds it. */
  Optional<Fix.Edit> setClause(Origin statement, ClauseWord word, String clause) {
    Optional<Clause> old = facts.statementAt(statement).flatMap(found -> found.clause(word));
    return old.isPresent()
        ? Optional.of(replace(statement, old.get().range(), clause))
        : addClause(statement, clause);
  }

  /** Puts another offset into the one place of an {@code at} clause: so far above or below. */
  Optional<Fix.Edit> offset(Origin statement, boolean above, String length) {
    Place.Direction direction = above ? Place.Direction.ABOVE : Place.Direction.BELOW;
    return facts
        .statementAt(statement)
        .flatMap(found -> found.clause(ClauseWord.AT))
        .filter(Clause.At.class::isInstance)
        .map(clause -> ((Clause.At) clause).places())
        .filter(places -> places.size() == 1)
        .map(places -> places.get(0))
        .filter(Place.AtNames.class::isInstance)
        .map(Place.AtNames.class::cast)
        .filter(place -> place.direction() == direction)
        .flatMap(Place.AtNames::offset)
        .map(offset -> replace(statement, offset.range(), length));
  }

  /** Puts a new statement on the line after a statement. */
  Optional<Fix.Edit> addAfter(Origin statement, String text) {
    Optional<Statement> found = facts.statementAt(statement);
    Optional<Segment> segment = facts.segment(statement);
    if (found.isEmpty() || segment.isEmpty()) {
      return Optional.empty();
    }
    String all = segment.get().text();
    int lineStart = all.lastIndexOf('\n', found.get().range().start() - 1) + 1;
    String indent = all.substring(lineStart, found.get().range().start());
    if (!indent.isBlank()) {
      return Optional.empty();
    }
    int end = endOfLine(segment.get(), found.get().range().end());
    String lineEnd = end < all.length() && all.charAt(end) == '\r' ? "\r\n" : "\n";
    return Optional.of(insert(statement, end, lineEnd + indent + text));
  }

  /**
   * Takes a statement out with the lines it stands on and its documentation; empty if something
   * else stands on these.
   */
  Optional<Fix.Edit> remove(Origin statement) {
    Optional<Statement> found = facts.statementAt(statement);
    Optional<Segment> segment = facts.segment(statement);
    if (found.isEmpty() || segment.isEmpty()) {
      return Optional.empty();
    }
    String all = segment.get().text();
    TextRange range = found.get().range();
    int start = all.lastIndexOf('\n', range.start() - 1) + 1;
    int end = endOfLine(segment.get(), range.end());
    String rest = all.substring(range.end(), end).strip();
    if (!all.substring(start, range.start()).isBlank()
        || !(rest.isEmpty() || rest.startsWith("//"))) {
      return Optional.empty();
    }
    while (start > 0) {
      int above = all.lastIndexOf('\n', start - 2) + 1;
      if (!all.substring(above, start).strip().startsWith("///")) {
        break;
      }
      start = above;
    }
    int next = all.indexOf('\n', end) == end || all.startsWith("\r\n", end) ? end : -1;
    end = next < 0 ? end : all.indexOf('\n', end) + 1;
    return Optional.of(replace(statement, new TextRange(start, end), ""));
  }

  private Stream<Statement> inside(Origin statement) {
    return facts.statementAt(statement).flatMap(Statement::block).stream()
        .flatMap(block -> block.statements().stream());
  }

  /** Puts a statement on a line of its own before the closing brace of a block's. */
  Optional<Fix.Edit> addInside(Origin statement, String text) {
    Optional<Statement> last =
        inside(statement).max(Comparator.comparingInt(s -> s.range().start()));
    return last.flatMap(
        found -> addAfter(new Origin(statement.file(), statement.segment(), found.range()), text));
  }

  /** Puts a statement on a line of its own before the first one in a block. */
  Optional<Fix.Edit> addFirst(Origin statement, String text) {
    Optional<Statement> first =
        inside(statement).min(Comparator.comparingInt(s -> s.range().start()));
    Optional<Segment> segment = facts.segment(statement);
    if (first.isEmpty() || segment.isEmpty()) {
      return Optional.empty();
    }
    String all = segment.get().text();
    int start = first.get().range().start();
    int brace = all.lastIndexOf('{', start) + 1;
    int line = all.lastIndexOf('\n', start - 1) + 1;
    boolean ownLine = all.substring(line, start).isBlank();
    if (brace == 0
        || !ownLine
        || all.substring(brace, endOfLine(segment.get(), brace)).contains("/*")) {
      return Optional.empty();
    }
    int end = endOfLine(segment.get(), brace);
    String lineEnd = end < all.length() && all.charAt(end) == '\r' ? "\r\n" : "\n";
    return Optional.of(insert(statement, end, lineEnd + all.substring(line, start) + text));
  }

  /**
   * The count of the one step of a spacing ({@code 6 @ 5'-0"}), if it has one step with a count.
   */
  Optional<Origin> countOfSpacing(Origin statement) {
    return facts
        .statementAt(statement)
        .flatMap(found -> found.clause(ClauseWord.SPACED))
        .filter(Clause.Spaced.class::isInstance)
        .map(clause -> ((Clause.Spaced) clause).steps())
        .filter(steps -> steps.size() == 1)
        .flatMap(steps -> steps.get(0).count())
        .map(count -> new Origin(statement.file(), statement.segment(), count.range()));
  }

  private static int endOfLine(Segment segment, int from) {
    String text = segment.text();
    int end = from;
    while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
      end++;
    }
    for (Comment comment : segment.comments()) {
      if (comment.range().start() < end && end < comment.range().end()) {
        return endOfLine(segment, comment.range().end());
      }
    }
    return end;
  }

  /** The last statement of the anchors block of a wall. */
  Optional<Origin> lastAnchor(Wall wall) {
    return last(wall, StatementKind.ANCHORS_BLOCK);
  }

  /** The last statement of the lites block of a wall. */
  Optional<Origin> lastLite(Wall wall) {
    return last(wall, StatementKind.LITES_BLOCK);
  }

  /** Puts a statement at the end of the lites block of a wall, which is made if it has none. */
  Optional<Fix.Edit> addLite(Wall wall, String text) {
    Optional<Statement> block =
        inside(wall.origin()).filter(s -> s.kind() == StatementKind.LITES_BLOCK).findFirst();
    if (lastLite(wall).isPresent()) {
      return lastLite(wall).flatMap(last -> addAfter(last, text));
    }
    if (block.isPresent()) {
      return block.flatMap(lites -> fill(wall.origin(), lites, text));
    }
    Optional<Statement> last =
        inside(wall.origin()).max(Comparator.comparingInt(s -> s.range().start()));
    return last.flatMap(found -> indent(wall.origin(), found))
        .flatMap(
            blanks ->
                addInside(
                    wall.origin(), "lites {\n" + blanks + INDENT + text + "\n" + blanks + "}"))
        .map(
            edit ->
                new Fix.Edit(
                    edit.origin(),
                    withLineEnds(
                        (standsApart(wall.origin(), last.get()) ? "\n" : "") + edit.text(),
                        wall.origin())));
  }

  /** True if there is a blank line above a statement. */
  private boolean standsApart(Origin near, Statement statement) {
    String above =
        facts
            .segment(near)
            .map(segment -> segment.text().substring(0, statement.range().start()))
            .orElse("");
    return above.substring(above.stripTrailing().length()).chars().filter(c -> c == '\n').count()
        > 1;
  }

  /** A text of several lines with the ends that lines have there. */
  private String withLineEnds(String text, Origin near) {
    String plain = text.replace("\r\n", "\n");
    return facts.segment(near).filter(segment -> segment.text().contains("\r\n")).isPresent()
        ? plain.replace("\n", "\r\n")
        : plain;
  }

  /** Puts a statement into a block that has none. */
  private Optional<Fix.Edit> fill(Origin near, Statement empty, String text) {
    Optional<Block> block = empty.block().filter(Block::closed);
    Optional<String> indent = indent(near, empty);
    Optional<Segment> segment = facts.segment(near);
    if (block.isEmpty() || indent.isEmpty() || segment.isEmpty()) {
      return Optional.empty();
    }
    TextRange range = block.get().range();
    String inside = segment.get().text().substring(range.start() + 1, range.end() - 1);
    return inside.isBlank()
        ? Optional.of(
            replace(near, range, "{\n" + indent.get() + INDENT + text + "\n" + indent.get() + "}"))
        : Optional.empty();
  }

  private Optional<String> indent(Origin near, Statement statement) {
    return facts
        .segment(near)
        .map(
            segment -> {
              int start = statement.range().start();
              int line = segment.text().lastIndexOf('\n', start - 1) + 1;
              return segment.text().substring(line, start);
            })
        .filter(String::isBlank);
  }

  private Optional<Origin> last(Wall wall, StatementKind kind) {
    Origin last = null;
    for (Statement statement : block(wall, kind)) {
      TextRange range = statement.range();
      if (last == null || range.start() > last.range().start()) {
        last = new Origin(wall.origin().file(), wall.origin().segment(), range);
      }
    }
    return Optional.ofNullable(last);
  }

  /** True if a statement stands in that wall's own block, and not in one it is like. */
  boolean standsIn(Wall wall, Origin statement) {
    return statement.file().equals(wall.origin().file())
        && statement.segment() == wall.origin().segment();
  }

  private List<Statement> block(Wall wall, StatementKind kind) {
    return facts
        .statementAt(wall.origin())
        .flatMap(Statement::block)
        .flatMap(block -> block.statements().stream().filter(s -> s.kind() == kind).findFirst())
        .flatMap(Statement::block)
        .map(Block::statements)
        .orElse(List.of());
  }

  private static Fix.Edit insert(Origin near, int offset, String text) {
    return replace(near, new TextRange(offset, offset), text);
  }

  private static Fix.Edit replace(Origin near, TextRange range, String text) {
    return new Fix.Edit(new Origin(near.file(), near.segment(), range), text);
  }
}
