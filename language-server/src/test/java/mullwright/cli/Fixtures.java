package mullwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** The walls and the expected texts of these tests. */
final class Fixtures {
  static final Path LENGTHS = folder("lengths");
  static final Path CHECK = folder("check");

  private Fixtures() {}

  private static Path folder(String name) {
    return Path.of("src", "test", "resources", "reports", name).toAbsolutePath();
  }

  /** Puts a text into a file. */
  static Path write(Path folder, String name, String text) {
    try {
      Path file = folder.resolve(name);
      Files.createDirectories(file.getParent());
      return Files.writeString(file, text, StandardCharsets.UTF_8);
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  static String read(Path file) {
    try {
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  /** Compares with a stored text; {@code -Dfixtures.write=true} stores it anew and still fails. */
  static void assertSame(Path stored, String text) {
    if (Boolean.getBoolean("fixtures.write")) {
      write(stored.getParent(), stored.getFileName().toString(), text);
      throw new AssertionError("written anew, look at it and run without: " + stored);
    }
    assertThat(text).isEqualTo(read(stored));
  }

  /** A wall that is laid out and free of errors, in feet and inches. */
  static Path lengths(Path folder) {
    write(folder, "captured.wall", read(LENGTHS.resolve("captured.wall")));
    return write(folder, "east.wall", read(LENGTHS.resolve("east.wall")));
  }
}
