package mullwright.server;

import java.nio.file.Path;
import java.util.Optional;
import mullwright.model.Origin;
import mullwright.syntax.LineTable;
import mullwright.syntax.ParsedFile;
import mullwright.syntax.TextRange;
import mullwright.workspace.Cursor;
import mullwright.workspace.FilePlace;
import mullwright.workspace.Snapshot;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;

/**
 * A file as the client sees it: its address, and positions in the client's view.encoding().
 *
 * @param path below the root of its workspace
 */
public record Document(View view, String address, String path, ParsedFile file) {

  /** The address of a file, as editors spell it. */
  public static String address(Path file) {
    return Addresses.of(file);
  }

  /** Where it lies on disk, or would lie; empty if its address is of no disk. */
  public Optional<Path> onDisk() {
    return Addresses.path(address);
  }

  /** The texts it is one of. */
  public Snapshot snapshot() {
    return view.snapshot();
  }

  /** Its version as the client numbers it; null if the client does not have it open. */
  public Integer version() {
    return view.versions().apply(path);
  }

  /** The offset of a position; one outside the text counts as the nearest inside. */
  public int offset(Position position) {
    LineTable lines = file.lines();
    int line = Route.needed(position, "position").getLine();
    if (line < 0 || line >= lines.count()) {
      return lines.offset(line, 0);
    }
    CharSequence text = line(line);
    return lines.start(line) + view.encoding().units(text, Math.max(0, position.getCharacter()));
  }

  /** The position of an offset. */
  public Position position(int offset) {
    LineTable lines = file.lines();
    int line = lines.line(offset);
    int units = Math.min(offset, lines.end(line)) - lines.start(line);
    return new Position(line, view.encoding().columns(line(line), units));
  }

  /** What is under an offset. */
  public Cursor cursor(int offset) {
    return snapshot().cursor(path, offset).orElseThrow();
  }

  /** The range between two offsets. */
  public Range range(int start, int end) {
    return new Range(position(start), position(end));
  }

  /** The range of something in a segment. */
  public Range range(int segment, TextRange range) {
    int start = file.segmentStart(segment);
    return range(start + range.start(), start + range.end());
  }

  /** The range of an origin, if it stands in this file. */
  public Optional<Range> range(Origin origin) {
    if (!origin.file().equals(path)) {
      return Optional.empty();
    }
    return snapshot().place(origin).map(this::range);
  }

  private Range range(FilePlace place) {
    return range(place.start(), place.end());
  }

  /** How many columns a stretch within one line takes. */
  public int columns(int start, int end) {
    return view.encoding().columns(file.text().substring(start, end), end - start);
  }

  private CharSequence line(int line) {
    LineTable lines = file.lines();
    return file.text().substring(lines.start(line), lines.end(line));
  }
}
