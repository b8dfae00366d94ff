package mullwright.server.feature;

import com.google.auto.service.AutoService;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.server.Client;
import mullwright.server.Document;
import mullwright.server.Feature;
import mullwright.server.Route;
import mullwright.syntax.Block;
import mullwright.syntax.ParsedFile;
import mullwright.syntax.Statement;
import mullwright.syntax.TextRange;
import mullwright.syntax.Token;
import mullwright.workspace.Cancel;
import mullwright.workspace.Cursor;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.SelectionRange;
import org.eclipse.lsp4j.SelectionRangeParams;

/**
 * Grows a selection by the tree: word, clause, line, statement, inside of the block, block, file.
 *
 * <p>Answers {@code textDocument/selectionRange} (LSP 3.17).
 */
@AutoService(Feature.class)
public final class SelectionRangeFeature implements Feature {
  @Override
  public List<Route<?>> routes() {
    return List.of(
        Route.ofDocument(
            "textDocument/selectionRange",
            SelectionRangeParams.class,
            SelectionRangeParams::getTextDocument,
            (parameters, document, desk) ->
                all(
                    document,
                    Route.needed(parameters.getPositions(), "positions"),
                    desk.cancel())));
  }

  @Override
  public void advertise(Client client, JsonObject server) {
    server.addProperty("selectionRangeProvider", true);
  }

  private static List<SelectionRange> all(
      Document document, List<Position> positions, Cancel cancel) {
    List<SelectionRange> all = new ArrayList<>();
    for (Position position : positions) {
      cancel.check();
      all.add(ranges(document, document.offset(position)));
    }
    return all;
  }

  static SelectionRange ranges(Document document, int offset) {
    SelectionRange range = null;
    for (TextRange around : around(document, offset)) {
      Range shown = document.range(around.start(), around.end());
      // one that begins within a line end begins where the line does
      if (range == null || !range.getRange().equals(shown)) {
        range = new SelectionRange(shown, range);
      }
    }
    return range;
  }

  /** The ranges around an offset, counted from the start of the file, widest first, each once. */
  private static List<TextRange> around(Document document, int offset) {
    ParsedFile file = document.file();
    Cursor cursor = document.cursor(offset);
    List<TextRange> ranges = new ArrayList<>();
    ranges.add(new TextRange(0, file.text().length()));
    TextRange line = line(file, offset);
    for (Statement statement : cursor.enclosing()) {
      if (statement.block().isEmpty()) {
        // a statement on one line has its comment around it; one on many has the line within it
        add(ranges, line);
      }
      add(ranges, file.absolute(cursor.segment(), statement.range()));
      if (statement.block().isEmpty()) {
        add(ranges, line);
      }
      if (statement.block().isPresent()) {
        Block block = statement.block().get();
        TextRange braces = block.range();
        int end = block.closed() ? braces.end() - 1 : braces.end();
        if (braces.start() + 1 <= cursor.offset() && cursor.offset() <= end) {
          add(ranges, file.absolute(cursor.segment(), braces));
          add(
              ranges,
              file.absolute(
                  cursor.segment(),
                  new TextRange(braces.start() + 1, Math.max(braces.start() + 1, end))));
        }
      }
    }
    cursor
        .clause()
        .ifPresent(clause -> add(ranges, file.absolute(cursor.segment(), clause.range())));
    cursor.leaf().ifPresent(leaf -> add(ranges, file.absolute(cursor.segment(), leaf.range())));
    if (cursor.leaf().isEmpty()) {
      token(cursor).ifPresent(token -> add(ranges, file.absolute(cursor.segment(), token)));
    }
    // the blanks a line begins with are in none of what stands on it
    ranges.removeIf(range -> !range.touches(Math.min(offset, file.text().length())));
    return ranges;
  }

  /** The line without the blanks around it. */
  private static TextRange line(ParsedFile file, int offset) {
    int line = file.lines().line(Math.max(0, Math.min(offset, file.text().length())));
    int start = file.lines().start(line);
    int end = file.lines().end(line);
    while (start < end && Character.isWhitespace(file.text().charAt(start))) {
      start++;
    }
    while (end > start && Character.isWhitespace(file.text().charAt(end - 1))) {
      end--;
    }
    return new TextRange(start, end);
  }

  /** A comment or a mark that is no part of a statement. */
  private static Optional<TextRange> token(Cursor cursor) {
    return cursor.file().tokens(cursor.segment()).stream()
        .map(Token::range)
        .filter(range -> range.start() <= cursor.offset() && cursor.offset() <= range.end())
        .reduce((one, other) -> other);
  }

  /** Adds a range if it lies within the last and is not the same. */
  private static void add(List<TextRange> ranges, TextRange range) {
    TextRange last = ranges.get(ranges.size() - 1);
    if (last.start() <= range.start() && range.end() <= last.end() && !last.equals(range)) {
      ranges.add(range);
    }
  }
}
