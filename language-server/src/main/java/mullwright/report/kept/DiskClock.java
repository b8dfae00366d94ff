package mullwright.report.kept;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import mullwright.workspace.FileStamp;

/** The time of the disk a folder lies on, which need not be this machine's, as it first was. */
final class DiskClock {
  private final Path folder;
  private long time;

  DiskClock(Path folder) {
    this.folder = folder;
  }

  /** A time not after now, in nanoseconds since 1970; always the same. */
  synchronized long time() {
    if (time == 0) {
      time = TimeUnit.MILLISECONDS.toNanos(System.currentTimeMillis());
      try {
        Files.createDirectories(folder);
        Path probe = Files.createTempFile(folder, "time", ".tmp");
        Optional<FileStamp> stamp = FileStamp.of(probe);
        Files.delete(probe);
        time = Math.min(time, stamp.map(FileStamp::modified).orElse(time));
      } catch (IOException closed) {
        // nothing will be kept there either: this machine's time is as good as any
        return time;
      }
    }
    return time;
  }
}
