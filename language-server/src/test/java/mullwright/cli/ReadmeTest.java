package mullwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The first wall of the README: what is said of it is so, and its pictures show what the program
 * gives. {@code -Dpictures.write=true} draws them anew.
 */
class ReadmeTest {
  private static final Path ROOT = Path.of("").toAbsolutePath().getParent();
  private static final Path FIRST = ROOT.resolve("examples").resolve("first-wall");
  private static final Pattern BLOCK = Pattern.compile("(?ms)^```\n(.*?)^```$");
  private static final int WIDTH = 96;

  private static List<String> blocks() throws IOException {
    return BLOCK
        .matcher(Files.readString(ROOT.resolve("README.md")))
        .results()
        .map(block -> block.group(1))
        .toList();
  }

  private static String wall() throws IOException {
    return blocks().stream().filter(block -> block.contains("wall Lobby {")).findFirst().get();
  }

  /** The line that the README puts in the place of the faulty one. */
  private static String mended() throws IOException {
    return blocks().stream()
        .filter(block -> block.strip().startsWith("dead-load"))
        .findFirst()
        .get();
  }

  private static Path asWritten(Path folder, String wall) throws IOException {
    Path catalog = Files.createDirectories(folder.resolve("catalog"));
    try (Stream<Path> parts = Files.list(ROOT.resolve("examples").resolve("catalog"))) {
      for (Path part : parts.toList()) {
        Files.copy(part, catalog.resolve(part.getFileName()));
      }
    }
    Files.writeString(
        Files.createDirectories(folder.resolve("first-wall")).resolve("lobby.wall"), wall);
    return folder;
  }

  private static void assertPicture(Path picture, String now) throws IOException {
    if (Boolean.getBoolean("pictures.write")) {
      Files.writeString(picture, now);
    }
    assertThat(Files.readString(picture)).isEqualTo(now);
  }

  @Test
  void theFirstCheckIsAsPictured(@TempDir Path folder) throws IOException {
    String command = "check --width " + WIDTH + " --color always first-wall/lobby.wall";
    Ran ran = Ran.with(asWritten(folder, wall()), Map.of(), true, new byte[0], command.split(" "));
    assertThat(ran.code()).isEqualTo(Exit.FINDINGS);
    assertThat(ran.out()).contains("anchor-end-without-plates").contains("isolation-missing");
    assertPicture(
        FIRST.resolve("checked.svg"),
        TerminalPicture.of("mullwright check first-wall/lobby.wall", ran.out(), WIDTH));
  }

  @Test
  void theMendedLineMakesItTheExample(@TempDir Path folder) throws IOException {
    Matcher faulty = Pattern.compile("(?m)^ *dead-load +A, D .*\n").matcher(wall());
    assertThat(faulty.find()).isTrue();
    String mended = faulty.replaceFirst(Matcher.quoteReplacement(mended()));
    Ran ran = Ran.in(asWritten(folder, mended), "check", "first-wall");
    assertThat(ran.out()).startsWith("1 file, 1 wall: nothing found");
    assertThat(ran.code()).isEqualTo(Exit.CLEAN);
    Ran facts = Ran.in(folder, "facts", "first-wall/lobby.wall");
    Ran example = Ran.in(ROOT.resolve("examples"), "facts", "first-wall/lobby.wall");
    assertThat(facts.out()).isEqualTo(example.out());
  }

  @Test
  void theElevationIsAsPictured() throws IOException {
    Ran ran =
        Ran.in(
            ROOT.resolve("examples"),
            "draw",
            "--view",
            "elevation",
            "--output",
            "svg",
            "--uncut",
            "first-wall/lobby.wall");
    assertThat(ran.code()).isEqualTo(Exit.CLEAN);
    assertPicture(FIRST.resolve("lobby.svg"), ran.out());
  }
}
