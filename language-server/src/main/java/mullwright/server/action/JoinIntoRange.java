package mullwright.server.action;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.model.Grid;
import mullwright.model.Wall;
import mullwright.server.Document;
import mullwright.server.Edits;
import mullwright.server.Route;
import mullwright.syntax.Argument;
import mullwright.syntax.Block;
import mullwright.syntax.Comment;
import mullwright.syntax.Selection;
import mullwright.syntax.Statement;
import mullwright.syntax.StatementKind;
import mullwright.syntax.TextRange;
import mullwright.syntax.Word;
import mullwright.workspace.Cursor;
import mullwright.workspace.Supposition;
import org.eclipse.lsp4j.CodeActionKind;

/**
 * Writes what repeats as one range: the list {@code B, C, D} as {@code B..D}, and statements that
 * say the same of neighbouring lines, one after the other, as one statement.
 *
 * <p>A comment that would be lost with what goes is kept by not offering it. Refused if anything
 * would mean something else: one statement reaches farther than each of several, and another that
 * they override may then be the narrower.
 */
@AutoService(ActionSource.class)
public final class JoinIntoRange implements ActionSource {
  private static final int FEWEST = 3;

  @Override
  public String kind() {
    return CodeActionKind.RefactorRewrite;
  }

  /** Statements of one line each that differ in that line only. */
  private record Run(List<Statement> statements, Selection first, String range) {}

  @Override
  public List<Action> offers(Selected selected) {
    Cursor cursor = selected.cursor();
    Statement statement = selected.statement();
    Optional<List<String>> lines = statement == null ? Optional.empty() : lines(cursor, selected);
    Optional<Selection> selection = statement == null ? Optional.empty() : selection(statement);
    if (lines.isEmpty() || selection.isEmpty()) {
      return List.of();
    }
    List<Action> offers = new ArrayList<>();
    range(names(selection.get()), lines.get())
        .filter(range -> !comments(selection.get().range(), selected))
        .ifPresent(
            range ->
                offers.add(
                    Action.of(
                        "Write " + text(selection.get(), selected) + " as " + range,
                        () -> replaced(selection.get(), range, selected))));
    run(cursor, statement, lines.get(), selected)
        .ifPresent(
            run ->
                offers.add(
                    Action.of(
                        "Write these "
                            + run.statements().size()
                            + " statements as one, of "
                            + run.range(),
                        () -> joined(run, selected))));
    return offers;
  }

  /** The names of the grid's lines of the wall the cursor is in, in their order. */
  private static Optional<List<String>> lines(Cursor cursor, Selected selected) {
    for (Statement outer : cursor.enclosing()) {
      if (outer.kind() == StatementKind.WALL_BLOCK) {
        int start = outer.range().start();
        return selected
            .document()
            .snapshot()
            .reading(selected.document().path())
            .flatMap(
                reading ->
                    reading.model().walls().stream()
                        .filter(wall -> stands(wall, cursor, start))
                        .findFirst())
            .map(wall -> wall.grid().lines().stream().map(Grid.Line::name).toList());
      }
    }
    return Optional.empty();
  }

  private static boolean stands(Wall wall, Cursor cursor, int start) {
    return wall.origin().file().equals(cursor.path())
        && wall.origin().segment() == cursor.segment()
        && wall.origin().range().start() >= start;
  }

  private static Optional<Selection> selection(Statement statement) {
    return statement.kind().form() == StatementKind.Form.LINES
        ? statement
            .argument(Argument.Select.class)
            .map(Argument.Select::selection)
            .filter(of -> !of.all() && of.except().isEmpty() && of.every().isEmpty())
        : Optional.empty();
  }

  /** The single names of a selection; none if it holds a range. */
  private static List<String> names(Selection selection) {
    return selection.items().stream().anyMatch(Selection.Item::isRange)
        ? List.of()
        : selection.items().stream().map(Selection.Item::first).map(Word::text).toList();
  }

  private static Optional<String> range(List<String> names, List<String> lines) {
    int first = names.isEmpty() ? -1 : lines.indexOf(names.get(0));
    boolean neighbours =
        names.size() >= FEWEST
            && first >= 0
            && first + names.size() <= lines.size()
            && lines.subList(first, first + names.size()).equals(names);
    return neighbours
        ? Optional.of(names.get(0) + ".." + names.get(names.size() - 1))
        : Optional.empty();
  }

  private static Optional<Run> run(
      Cursor cursor, Statement statement, List<String> lines, Selected selected) {
    if (cursor.enclosing().size() < 2) {
      return Optional.empty();
    }
    Optional<Block> block = cursor.enclosing().get(cursor.enclosing().size() - 2).block();
    if (block.isEmpty()) {
      return Optional.empty();
    }
    List<Statement> all = block.get().statements();
    String rest = rest(statement, selected);
    int at = all.indexOf(statement);
    int from = at;
    while (from > 0 && alike(all.get(from - 1), statement, rest, selected)) {
      from--;
    }
    int to = at + 1;
    while (to < all.size() && alike(all.get(to), statement, rest, selected)) {
      to++;
    }
    List<Statement> statements = all.subList(from, to);
    List<String> names = new ArrayList<>();
    statements.forEach(each -> selection(each).ifPresent(of -> names.addAll(names(of))));
    return range(names, lines)
        .filter(range -> names.size() == statements.size() && alone(statements, selected))
        .map(range -> new Run(statements, selection(statements.get(0)).orElseThrow(), range));
  }

  /**
   * True if the two differ in nothing but which line they name.
   *
   * @param rest what the other says besides
   */
  private static boolean alike(Statement one, Statement other, String rest, Selected selected) {
    return one.kind() == other.kind()
        && one.documentation().isEmpty()
        && selection(one).isPresent()
        && rest(one, selected).equals(rest);
  }

  private static String rest(Statement statement, Selected selected) {
    TextRange of = selection(statement).map(Selection::range).orElse(statement.range());
    String text = segment(selected);
    return text.substring(of.end(), statement.range().end()).strip().replaceAll("[ \\t]+", " ");
  }

  /** True if each stands on a line of its own and nothing but blanks beside or between them. */
  private static boolean alone(List<Statement> statements, Selected selected) {
    String text = segment(selected);
    int end = statements.get(statements.size() - 1).range().end();
    if (!text.substring(end).lines().findFirst().orElse("").isBlank()) {
      return false;
    }
    for (int i = 1; i < statements.size(); i++) {
      String between =
          text.substring(statements.get(i - 1).range().end(), statements.get(i).range().start());
      if (!between.isBlank() || between.chars().filter(c -> c == '\n').count() != 1) {
        return false;
      }
      int name = selection(statements.get(i)).map(it -> it.range().start()).orElse(end);
      if (comments(new TextRange(statements.get(i).range().start(), name), selected)) {
        return false;
      }
    }
    return true;
  }

  /** True if a comment stands there. */
  private static boolean comments(TextRange range, Selected selected) {
    Cursor cursor = selected.cursor();
    return cursor.file().segments().get(cursor.segment()).comments().stream()
        .map(Comment::range)
        .anyMatch(it -> it.start() < range.end() && range.start() < it.end());
  }

  private static String segment(Selected selected) {
    Cursor cursor = selected.cursor();
    return cursor.file().segments().get(cursor.segment()).text();
  }

  private static String text(Selection selection, Selected selected) {
    TextRange range = selection.range();
    return segment(selected).substring(range.start(), range.end());
  }

  private static Edits replaced(Selection selection, String range, Selected selected) {
    Rewriting rewriting = new Rewriting(selected);
    rewriting.replace(selection.range(), range);
    return rewriting.edits();
  }

  private static Edits joined(Run run, Selected selected) {
    Rewriting rewriting = new Rewriting(selected);
    rewriting.replace(run.first().range(), run.range());
    Statement first = run.statements().get(0);
    Statement last = run.statements().get(run.statements().size() - 1);
    rewriting.replace(new TextRange(first.range().end(), last.range().end()), "");
    return rewriting.edits();
  }

  /** Other words for some of the cursor's statement, in ascending order. */
  private static final class Rewriting {
    private final Selected selected;
    private final Edits edits;
    private final StringBuilder after;

    Rewriting(Selected selected) {
      this.selected = selected;
      this.edits = new Edits(selected.document().view());
      this.after = new StringBuilder(selected.text());
    }

    void replace(TextRange range, String text) {
      Document document = selected.document();
      int segment = selected.cursor().segment();
      edits.replace(document, document.range(segment, range), text);
      int behind = selected.text().length() - document.file().absolute(segment, range).end();
      int end = after.length() - behind;
      after.replace(end - range.length(), end, text);
    }

    Edits edits() {
      Document document = selected.document();
      new Supposition(document.snapshot(), Map.of(document.path(), after.toString()))
          .difference(selected.desk().cancel())
          .ifPresent(
              what -> {
                throw Route.refused("The text stays as it is, since " + what + ".");
              });
      return edits;
    }
  }
}
