package mullwright.syntax;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The walls under {@code src/test/resources/syntax}, each with its printed tree beside it. */
public final class Fixtures {
  private static final Path ROOT = Path.of("src/test/resources/syntax");

  private Fixtures() {}

  /** All walls of a folder, {@code ok} or {@code broken}, by name. */
  public static List<Path> walls(String folder) {
    try (Stream<Path> files = Files.list(ROOT.resolve(folder))) {
      return files.filter(file -> file.toString().endsWith(".wall")).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The walls of both folders. */
  public static List<Path> all() {
    return Stream.of("ok", "broken").flatMap(folder -> walls(folder).stream()).toList();
  }

  /** The text of a file. */
  public static String read(Path file) {
    try {
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The file of the same name with another ending. */
  public static Path beside(Path wall, String ending) {
    return wall.resolveSibling(wall.getFileName().toString().replace(".wall", ending));
  }

  /** What a fixture's companion says, or what it should say when they are to be written anew. */
  public static String expected(Path wall, String ending, String actual) {
    Path file = beside(wall, ending);
    if (Boolean.getBoolean("fixtures.write")) {
      try {
        Files.writeString(file, actual, StandardCharsets.UTF_8);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return read(file);
  }
}
