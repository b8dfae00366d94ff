package mullwright.server.action;

import java.util.List;
import java.util.Set;
import mullwright.check.Finding;
import mullwright.server.Desk;
import mullwright.server.Document;
import mullwright.syntax.Statement;
import mullwright.workspace.Cursor;
import mullwright.workspace.FilePlace;

/**
 * The place an action is asked for. It lasts one request, on one thread: what several actions ask
 * of the place is worked out once.
 */
public final class Selected {
  private final Document document;
  private final int start;
  private final int end;
  private final Desk desk;
  private List<Finding> findings;
  private Cursor cursor;

  /**
   * @param start offset of the selection in the document's text
   * @param end offset after it; equal to {@code start} for a cursor
   */
  public Selected(Document document, int start, int end, Desk desk) {
    this.document = document;
    this.start = start;
    this.end = end;
    this.desk = desk;
  }

  public Document document() {
    return document;
  }

  /** Offset of the selection in the document's text. */
  public int start() {
    return start;
  }

  /** Offset after the selection; equal to the start for a cursor. */
  public int end() {
    return end;
  }

  public Desk desk() {
    return desk;
  }

  /** What is found in the document. */
  public List<Finding> findings() {
    if (findings == null) {
      findings =
          document
              .snapshot()
              .findings(Set.of(document.path()), desk.cancel())
              .getOrDefault(document.path(), List.of());
    }
    return findings;
  }

  /** What is under the start of the selection. */
  public Cursor cursor() {
    if (cursor == null) {
      cursor = document.cursor(start);
    }
    return cursor;
  }

  /** True if a place of the document and the selection have a point in common, be it an end. */
  boolean touches(FilePlace place) {
    return place.start() <= end && start <= place.end();
  }

  /** True if the selection is a cursor on the line that a place of the document begins on. */
  boolean isOnLineOf(FilePlace place) {
    String text = text();
    int from = Math.min(start, place.start());
    int to = Math.min(Math.max(start, place.start()), text.length());
    for (int i = from; i < to; i++) {
      if (text.charAt(i) == '\n' || text.charAt(i) == '\r') {
        return false;
      }
    }
    return start == end;
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
