package mullwright.workspace;

import java.util.HashMap;
import java.util.Map;
import mullwright.check.Checker;
import mullwright.check.Rules;
import mullwright.syntax.ParsedFile;

/**
 * The texts below one root as they change: takes edits, hands out a {@link Snapshot} after each.
 *
 * <p>Open buffers stand before the disk. Methods may be called from any thread; each is one step.
 */
public final class Workspace {
  /** From so many bays on a portion is checked sooner than the whole. */
  private static final int WIDE_BAYS = 16;

  private final Files files;
  private Memory memory;
  private Snapshot now;

  /** A workspace over those files, with no buffer open, checked by those rules. */
  public Workspace(Files files, Rules rules) {
    this(files, rules, WIDE_BAYS);
  }

  /**
   * The same, with another measure of what is a wide wall.
   *
   * @param wideBays a wall of so many bays or more is checked again around what changed only
   */
  Workspace(Files files, Rules rules, int wideBays) {
    this.files = files;
    this.memory = new Memory(new Checker(rules), wideBays);
    this.now = new Snapshot(files, Map.of(), new Disk(files), memory);
  }

  /** The files behind the buffers. */
  public Files files() {
    return files;
  }

  /** What stands now. */
  public synchronized Snapshot snapshot() {
    return now;
  }

  /** Opens a buffer with that text, or gives an open one a new text. */
  public Snapshot open(String path, String text) {
    return open(path, text, () -> {});
  }

  /**
   * The same of a text that may be long.
   *
   * @param goesOn called while it is read
   */
  public synchronized Snapshot open(String path, String text, Runnable goesOn) {
    ParsedFile was = now.buffers().get(path);
    return withBuffer(path, was == null ? ParsedFile.parse(text, goesOn) : replaced(was, text));
  }

  /**
   * Puts a text in the place of a stretch of an open buffer.
   *
   * @param start offset of the stretch, {@code end} offset after it; cut to the text if beyond it
   * @throws IllegalArgumentException if the buffer is not open
   */
  public synchronized Snapshot change(String path, int start, int end, String text) {
    ParsedFile was = now.buffers().get(path);
    if (was == null) {
      throw new IllegalArgumentException("not open: " + path);
    }
    int length = was.text().length();
    int from = Math.min(Math.max(start, 0), length);
    int to = Math.min(Math.max(end, from), length);
    return withBuffer(path, was.edit(from, to, text));
  }

  /** Closes a buffer; from here on the disk counts. */
  public synchronized Snapshot close(String path) {
    Map<String, ParsedFile> buffers = new HashMap<>(now.buffers());
    buffers.remove(path);
    now = new Snapshot(files, buffers, now.disk().lookAgain(), memory);
    return now;
  }

  /** Looks at the files on disk again. */
  public synchronized Snapshot lookAgain() {
    now = new Snapshot(files, now.buffers(), now.disk().lookAgain(), memory);
    return now;
  }

  /**
   * Lets go of all that can be computed anew from the texts; for whoever runs out of memory. What
   * stands stays as it is.
   */
  public synchronized Snapshot forget() {
    memory = memory.emptied();
    now = new Snapshot(files, now.buffers(), now.disk(), memory);
    return now;
  }

  private Snapshot withBuffer(String path, ParsedFile file) {
    Map<String, ParsedFile> buffers = new HashMap<>(now.buffers());
    buffers.put(path, file);
    now = new Snapshot(files, buffers, now.disk(), memory);
    return now;
  }

  /** The new text as one edit of the old, so that what did not change stays as it is. */
  private static ParsedFile replaced(ParsedFile was, String text) {
    String old = was.text();
    int most = Math.min(old.length(), text.length());
    int same = 0;
    while (same < most && old.charAt(same) == text.charAt(same)) {
      same++;
    }
    int tail = 0;
    while (tail < most - same
        && old.charAt(old.length() - 1 - tail) == text.charAt(text.length() - 1 - tail)) {
      tail++;
    }
    return was.edit(same, old.length() - tail, text.substring(same, text.length() - tail));
  }
}
