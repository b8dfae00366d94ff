package mullwright.workspace;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import mullwright.syntax.ParsedFile;

/**
 * The files behind the open buffers as they were when first looked at: each is read and parsed
 * once, until somebody looks again.
 */
final class Disk {
  private final Files files;
  private final Map<String, Kept> kept = new ConcurrentHashMap<>();
  private List<String> walls;

  Disk(Files files) {
    this.files = files;
  }

  /**
   * A file as it was found.
   *
   * @param stamp taken before it was read, so that a change in between is seen at the next look
   * @param file its tree, empty if there was no text
   */
  record Kept(Object stamp, Files.Read read, Optional<ParsedFile> file) {}

  Kept get(String path) {
    return kept.computeIfAbsent(path, this::read);
  }

  /** The wall files, listed once. */
  synchronized List<String> walls() {
    if (walls == null) {
      walls = files.walls();
    }
    return walls;
  }

  /** The same files as they are now; one whose text is what it was keeps the very same tree. */
  Disk lookAgain() {
    Disk now = new Disk(files);
    kept.forEach((path, was) -> now.kept.put(path, again(path, was)));
    return now;
  }

  private Kept again(String path, Kept was) {
    if (files.stamp(path).equals(was.stamp)) {
      return was;
    }
    Object stamp = files.stamp(path);
    Files.Read read = files.read(path);
    return read.equals(was.read)
        ? new Kept(stamp, was.read, was.file)
        : new Kept(stamp, read, parsed(read));
  }

  private Kept read(String path) {
    Object stamp = files.stamp(path);
    Files.Read read = files.read(path);
    return new Kept(stamp, read, parsed(read));
  }

  private static Optional<ParsedFile> parsed(Files.Read read) {
    return read instanceof Files.Read.Text text
        ? Optional.of(ParsedFile.parse(text.text()))
        : Optional.empty();
  }
}
