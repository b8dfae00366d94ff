package mullwright.web;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import mullwright.check.Severities;
import mullwright.workspace.DiskFiles;
import mullwright.workspace.WholeFile;

/**
 * The folder whose walls are edited: lists, reads and saves wall files and the settings file, and
 * nothing else. Nothing outside of it is reached, by whatever path or link.
 */
final class Folder {
  /** The largest text that is saved, in bytes: what the server would read. */
  static final long SIZE_LIMIT = mullwright.workspace.Files.SIZE_LIMIT;

  private static final byte[] BYTE_ORDER_MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

  private final DiskFiles files;

  Folder(Path root) {
    this.files = new DiskFiles(root);
  }

  Path root() {
    return files.root();
  }

  /**
   * A file that may be edited.
   *
   * @param stamp equal as long as the file is the same
   */
  record Entry(String path, String stamp) {}

  /**
   * A file as it was read.
   *
   * @param version of its bytes, to be told when it is saved
   * @param damaged true if it is not all UTF-8: saving it would change what was not edited
   */
  record Content(String text, String version, boolean damaged) {}

  /** What came of saving: {@link Saved}, {@link Conflict} or {@link Refused}. */
  sealed interface Outcome {}

  /** It is on the disk, in that version. */
  record Saved(String version) implements Outcome {}

  /** The disk has another text than the one that was edited; nothing was written. */
  record Conflict(String sentence) implements Outcome {}

  /** It may not or cannot be written. */
  record Refused(String sentence) implements Outcome {}

  /** All that may be edited, in the order of their paths. */
  List<Entry> list() {
    List<Entry> entries = new ArrayList<>();
    for (String path : files.walls()) {
      stamp(path).ifPresent(stamp -> entries.add(new Entry(path, stamp)));
    }
    stamp(Severities.FILE).ifPresent(stamp -> entries.add(new Entry(Severities.FILE, stamp)));
    return entries;
  }

  private Optional<String> stamp(String path) {
    try {
      Path file = files.absolute(path);
      return Optional.of(Files.getLastModifiedTime(file).toMillis() + "-" + Files.size(file));
    } catch (IOException gone) {
      // it went away since it was listed
      return Optional.empty();
    }
  }

  /** The file; empty if there is none that may be edited. */
  Optional<Content> read(String path) throws IOException {
    if (!mayEdit(path)
        || !(files.read(path) instanceof mullwright.workspace.Files.Read.Text text)) {
      return Optional.empty();
    }
    byte[] bytes = Files.readAllBytes(files.absolute(path));
    return Optional.of(new Content(text.text(), version(bytes), text.damaged()));
  }

  /**
   * Writes the text whole or not at all, and only over the version that was edited.
   *
   * @param edited the version it was made from; empty for a new file
   */
  synchronized Outcome save(String path, String text, Optional<String> edited) throws IOException {
    if (!mayEdit(path)) {
      return new Refused(
          "Only wall files and "
              + Severities.FILE
              + " of the folder can be saved here, and “"
              + path
              + "” is neither.");
    }
    Path file = target(path);
    if (file == null) {
      return new Refused("“" + path + "” does not lie in a folder below the one that is edited.");
    }
    byte[] there;
    try {
      there = Files.readAllBytes(file);
    } catch (NoSuchFileException none) {
      there = null;
    }
    Optional<String> now = Optional.ofNullable(there).map(Folder::version);
    if (!now.equals(edited)) {
      return new Conflict(conflict(path, now, edited));
    }
    byte[] bytes = bytes(text, there);
    WholeFile.put(file, whole -> write(whole, bytes));
    return new Saved(version(bytes));
  }

  private static String conflict(String path, Optional<String> now, Optional<String> edited) {
    String what =
        edited.isEmpty()
            ? " is there already"
            : now.isEmpty() ? " was deleted since it was opened" : " changed since it was opened";
    String so = now.isEmpty() ? ", so nothing was written." : ", so nothing was written over it.";
    return "“" + path + "”" + what + so;
  }

  private static boolean mayEdit(String path) {
    boolean plain =
        !path.isEmpty()
            && !path.startsWith("/")
            && path.indexOf('\\') < 0
            && path.chars().noneMatch(c -> c < ' ' || c == ':')
            && List.of(path.split("/", -1)).stream()
                .noneMatch(name -> name.isEmpty() || name.startsWith("."));
    return plain && (path.endsWith(".wall") || path.equals(Severities.FILE));
  }

  /** The file itself, past all links; null if it lies outside or its folder is missing. */
  private Path target(String path) throws IOException {
    try {
      Path named = files.absolute(path);
      Path file =
          Files.exists(named)
              ? named.toRealPath()
              : named.getParent().toRealPath().resolve(named.getFileName());
      boolean link = Files.isSymbolicLink(named) && !Files.exists(named);
      return !link && file.startsWith(files.root().toRealPath()) && !Files.isDirectory(file)
          ? file
          : null;
    } catch (NoSuchFileException | InvalidPathException nowhere) {
      return null;
    }
  }

  /** UTF-8, with a byte order mark if the file has one. */
  private static byte[] bytes(String text, byte[] there) {
    byte[] plain = text.getBytes(StandardCharsets.UTF_8);
    boolean marked =
        there != null
            && there.length >= BYTE_ORDER_MARK.length
            && Arrays.equals(
                there, 0, BYTE_ORDER_MARK.length, BYTE_ORDER_MARK, 0, BYTE_ORDER_MARK.length);
    if (!marked) {
      return plain;
    }
    return ByteBuffer.allocate(BYTE_ORDER_MARK.length + plain.length)
        .put(BYTE_ORDER_MARK)
        .put(plain)
        .array();
  }

  private static void write(Path whole, byte[] bytes) throws IOException {
    try (FileChannel out = FileChannel.open(whole, StandardOpenOption.WRITE)) {
      ByteBuffer rest = ByteBuffer.wrap(bytes);
      while (rest.hasRemaining()) {
        out.write(rest);
      }
      out.force(true);
    }
  }

  private static String version(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("every Java has SHA-256", impossible);
    }
  }
}
