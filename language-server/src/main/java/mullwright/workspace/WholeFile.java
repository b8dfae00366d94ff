package mullwright.workspace;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;

/** Puts a file in its place all at once: a reader finds the old one or the new, never half. */
public final class WholeFile {
  private static final String NEW = "rw-r--r--";

  private WholeFile() {}

  /** Writes what the file is to hold. */
  @FunctionalInterface
  public interface Writing {
    /** Writes it into an empty file that nobody else knows. */
    void to(Path whole) throws IOException;
  }

  /**
   * Writes beside the file, then takes its place with the permissions it had.
   *
   * @param file in a folder that exists; a link is replaced, not followed
   * @throws IOException if it cannot be written; what stood there is then untouched
   */
  public static void put(Path file, Writing writing) throws IOException {
    place(
        file,
        whole -> {
          writing.to(whole);
          keepPermissions(file, whole);
        });
  }

  /**
   * The same of a file that only the user may read.
   *
   * @param file in a folder that exists
   * @throws IOException if it cannot be written; what stood there is then untouched
   */
  public static void putPrivately(Path file, Writing writing) throws IOException {
    place(file, writing);
  }

  private static void place(Path file, Writing writing) throws IOException {
    Path whole = Files.createTempFile(file.toAbsolutePath().getParent(), ".mullwright-", ".saving");
    try {
      writing.to(whole);
      try {
        Files.move(
            whole, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
      } catch (AtomicMoveNotSupportedException apart) {
        Files.move(whole, file, StandardCopyOption.REPLACE_EXISTING);
      }
    } finally {
      Files.deleteIfExists(whole);
    }
  }

  // a temporary file is the user's alone; what it replaces may have been readable by others
  private static void keepPermissions(Path file, Path whole) throws IOException {
    PosixFileAttributeView view = Files.getFileAttributeView(whole, PosixFileAttributeView.class);
    if (view != null) {
      view.setPermissions(
          Files.exists(file)
              ? Files.getPosixFilePermissions(file)
              : PosixFilePermissions.fromString(NEW));
    }
  }
}
