package mullwright.server.action;

import java.util.List;
import mullwright.check.Finding;
import mullwright.server.Desk;
import mullwright.server.Document;
import mullwright.syntax.Statement;
import mullwright.workspace.Cursor;

/**
 * The place an action is asked for.
 *
 * @param start offset of the selection in the document's text
 * @param end offset after it; equal to {@code start} for a cursor
 */
public record Selected(Document document, int start, int end, Desk desk) {

  /** What is found in the document. */
  public List<Finding> findings() {
    return document
        .snapshot()
        .findings(java.util.Set.of(document.path()), desk.cancel())
        .getOrDefault(document.path(), List.of());
  }

  /** What is under the start of the selection. */
  public Cursor cursor() {
    return document.snapshot().cursor(document.path(), start).orElseThrow();
  }

  /** The innermost statement there whose keyword's line the selection touches; null if none. */
  public Statement statement() {
    return cursor().statement().orElse(null);
  }

  /** The text. */
  public String text() {
    return document.file().text();
  }
}
