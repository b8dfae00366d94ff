package mullwright.web;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
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
      entry(path).ifPresent(entries::add);
    }
    entry(Severities.FILE).ifPresent(entries::add);
    return entries;
  }

  private Optional<Entry> entry(String path) {
    // a file that went away since it was listed has no stamp
    return Optional.of(files.stamp(path))
        .filter(stamp -> mayEdit(path) && !stamp.equals(""))
        .map(stamp -> new Entry(path, stamp.toString()));
  }

  /**
   * The file; empty if there is none that may be edited.
   *
   * @throws IOException if it is there and cannot be read, with the reason
   */
  Optional<Content> read(String path) throws IOException {
    Path file = mayEdit(path) ? target(path) : null;
    if (file == null || !Files.isRegularFile(file)) {
      return Optional.empty();
    }
    if (Files.size(file) > SIZE_LIMIT) {
      throw new IOException("it is larger than 8 MiB");
    }
    try {
      byte[] bytes = Files.readAllBytes(file);
      DiskFiles.Read.Text text = DiskFiles.decoded(bytes);
      return Optional.of(new Content(text.text(), version(bytes), text.damaged()));
    } catch (NoSuchFileException gone) {
      return Optional.empty();
    }
  }

  /**
   * Writes the text whole or not at all, and only over the version that was edited.
   *
   * @param edited the version it was made from; empty for a new file
   */
  synchronized Outcome save(String path, String text, Optional<String> edited) throws IOException {
    Optional<String> refusal = refusal(path);
    if (refusal.isPresent()) {
      return new Refused("“" + path + "” cannot be saved: " + refusal.get());
    }
    try {
      Path file = target(path);
      return file == null
          ? new Refused("“" + path + "” does not lie in the folder that is edited.")
          : save(path, file, text, edited);
    } catch (FileSystemException failed) {
      return new Refused("“" + path + "” was not written: " + why(failed) + ".");
    }
  }

  private static Outcome save(String path, Path file, String text, Optional<String> edited)
      throws IOException {
    if (!Files.isDirectory(file.getParent())) {
      return new Refused(
          "“" + path + "” was not written: there is no such folder. Make the folder first.");
    }
    byte[] there = Files.exists(file) ? Files.readAllBytes(file) : null;
    byte[] bytes = bytes(text, there);
    if (edited.isPresent() && Arrays.equals(bytes, there)) {
      // it was written before, and the answer got lost
      return new Saved(version(bytes));
    }
    Optional<String> now = Optional.ofNullable(there).map(Folder::version);
    if (!now.equals(edited)) {
      return new Conflict(conflict(path, now, edited));
    }
    if (there != null && isProtected(file)) {
      return new Refused(
          "“" + path + "” is write-protected, so nothing was written: allow writing to it first.");
    }
    WholeFile.put(file, whole -> write(whole, bytes));
    return new Saved(version(bytes));
  }

  /** True if nobody is to write it, not even who could all the same. */
  private static boolean isProtected(Path file) throws IOException {
    PosixFileAttributeView view = Files.getFileAttributeView(file, PosixFileAttributeView.class);
    boolean marked =
        view != null
            && Collections.disjoint(
                view.readAttributes().permissions(),
                Set.of(
                    PosixFilePermission.OWNER_WRITE,
                    PosixFilePermission.GROUP_WRITE,
                    PosixFilePermission.OTHERS_WRITE));
    return marked || !Files.isWritable(file);
  }

  private static String why(FileSystemException failed) {
    if (failed instanceof AccessDeniedException) {
      return "nothing may be written in its folder; allow it first";
    }
    return failed.getReason() == null ? failed.getClass().getSimpleName() : failed.getReason();
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
    return refusal(path).isEmpty();
  }

  /** Why a file with that path is not edited here, whatever the disk has. */
  private static Optional<String> refusal(String path) {
    if (!path.endsWith(".wall") && !path.equals(Severities.FILE)) {
      return Optional.of(
          "Only wall files and " + Severities.FILE + " of the folder can be saved here.");
    }
    if (path.chars().anyMatch(c -> c < ' ' || c == ':' || c == '\\')) {
      return Optional.of("A name holds no “:”, no “\\” and nothing that cannot be seen.");
    }
    return Stream.of(path.split("/", -1)).anyMatch(name -> name.isEmpty() || name.startsWith("."))
        ? Optional.of("No name on the way is empty or begins with a dot.")
        : Optional.empty();
  }

  /** The file itself, past all links, whether or not it exists; null if it lies outside. */
  private Path target(String path) throws IOException {
    try {
      Path named = files.absolute(path);
      if (!Files.exists(files.root())) {
        return named;
      }
      Path root = files.root().toRealPath();
      if (Files.exists(named)) {
        Path file = named.toRealPath();
        return file.startsWith(root) && !Files.isDirectory(file) ? file : null;
      }
      if (Files.isSymbolicLink(named)) {
        return null;
      }
      Path parent = named.getParent();
      // a folder that is missing is no way out
      return !Files.exists(parent) || parent.toRealPath().startsWith(root) ? named : null;
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
