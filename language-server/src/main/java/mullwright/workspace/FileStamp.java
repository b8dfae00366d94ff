package mullwright.workspace;

import java.io.IOException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/**
 * What a disk tells of a file without its being read: equal as long as the file is the same, unless
 * it was written twice within one tick of the disk's clock.
 *
 * @param modified when its content was last written, {@code changed} when anything about it was (0
 *     where the system does not tell), in nanoseconds since 1970
 * @param size in bytes
 * @param key what names it on its disk (inode), or "" where there is no such thing
 */
public record FileStamp(long modified, long changed, long size, String key) {
  private static final String UNIX = "unix";
  private static final String ASKED = "unix:lastModifiedTime,ctime,size,fileKey,isRegularFile";

  /** No disk counts time in coarser steps. */
  private static final long COARSEST = TimeUnit.SECONDS.toNanos(2);

  /**
   * The stamp of a file, behind links; empty if there is no such file or it cannot be looked at.
   */
  public static Optional<FileStamp> of(Path file) {
    try {
      if (!file.getFileSystem().supportedFileAttributeViews().contains(UNIX)) {
        BasicFileAttributes is =
            java.nio.file.Files.readAttributes(file, BasicFileAttributes.class);
        return is.isRegularFile()
            ? Optional.of(
                new FileStamp(
                    nanoseconds(is.lastModifiedTime()),
                    0,
                    is.size(),
                    is.fileKey() == null ? "" : is.fileKey().toString()))
            : Optional.empty();
      }
      Map<String, Object> is = java.nio.file.Files.readAttributes(file, ASKED);
      return Boolean.TRUE.equals(is.get("isRegularFile"))
          ? Optional.of(
              new FileStamp(
                  nanoseconds((FileTime) is.get("lastModifiedTime")),
                  nanoseconds((FileTime) is.get("ctime")),
                  (Long) is.get("size"),
                  String.valueOf(is.get("fileKey"))))
          : Optional.empty();
    } catch (IOException gone) {
      return Optional.empty();
    }
  }

  private static long nanoseconds(FileTime time) {
    return time.to(TimeUnit.NANOSECONDS);
  }

  /**
   * True if a file written at or after {@code then} would have another stamp than this.
   *
   * @param then nanoseconds since 1970 by the clock of the file's disk
   */
  public boolean before(long then) {
    return Math.max(modified, changed) < then - COARSEST;
  }
}
