package mullwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/** A folder for the while, gone with all that is in it when it is closed. */
record ScratchFolder(Path path) implements AutoCloseable {
  static ScratchFolder make() throws IOException {
    return new ScratchFolder(Files.createTempDirectory("mullwright"));
  }

  @Override
  public void close() throws IOException {
    try (Stream<Path> inside = Files.walk(path)) {
      for (Path file : inside.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }
}
