package mullwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

/** The forms a comparison of files and folders comes in. */
class DiffFormsTest {
  @TempDir Path folder;

  @BeforeEach
  void twoStates() {
    Path examples = Path.of("..", "examples");
    String wall = Fixtures.read(examples.resolve("ferry-terminal/east.wall"));
    Fixtures.write(
        folder, "catalog/captured.wall", Fixtures.read(examples.resolve("catalog/captured.wall")));
    Fixtures.write(folder, "old/east.wall", wall);
    Fixtures.write(
        folder,
        "new/east.wall",
        wall.replace(
                "lines A..G  spaced 6 @ 5'-0\"",
                "lines A..G  spaced 2 @ 5'-0\", 5'-3\", 4'-9\", 2 @ 5'-0\"")
            .replace("splice B..F  at 2'-0\"", "splice B..F  at 3'-0\""));
  }

  private Ran diff(String... more) {
    String[] all = new String[more.length + 3];
    System.arraycopy(new String[] {"diff", "old", "new"}, 0, all, 0, 3);
    System.arraycopy(more, 0, all, 3, more.length);
    return Ran.in(folder, all);
  }

  @ParameterizedTest
  @ValueSource(ints = {80, 100, 120})
  void noLineIsLongerThanAskedFor(int width) {
    Ran ran = diff("--width", "" + width);
    assertThat(ran.code()).isEqualTo(Exit.FINDINGS);
    assertThat(ran.out().lines()).allMatch(line -> line.codePointCount(0, line.length()) <= width);
    assertThat(ran.out()).contains("line D moved 3\"", "splice-on-horizontal", "tripped");
  }

  @Test
  void figuresAreNotBrokenOverLines() {
    assertThat(diff("--width", "80").out().lines())
        .noneMatch(line -> line.stripTrailing().matches(".*\\d'-\\d+$"));
  }

  @Test
  void foldersFilesAndMarkdownTellTheSame() {
    String folders = diff("--output", "markdown").out();
    String files =
        Ran.in(folder, "diff", "--output", "markdown", "old/east.wall", "new/east.wall").out();
    assertThat(files.lines().skip(1).toList()).isEqualTo(folders.lines().skip(1).toList());
    assertThat(folders).contains("| 1 | line D moved 3\" to the right, 15'-0\" → 15'-3\" |");
  }

  @Test
  void aFileReadAsIfItLayElsewhereFindsWhatItUses() {
    Fixtures.write(folder, "tmp/a", Fixtures.read(folder.resolve("old/east.wall")));
    Fixtures.write(folder, "tmp/b", Fixtures.read(folder.resolve("new/east.wall")));
    Ran ran = Ran.in(folder, "diff", "tmp/a", "tmp/b", "--as", "new/east.wall");
    assertThat(ran.out()).contains("7 horizontals longer by 3\"").doesNotContain("Errors stand");
  }

  @Test
  void thePageStandsAloneAndItsDrawingsAreWhole() throws Exception {
    String page = diff("--output", "html").out();
    assertThat(page.replace("http://www.w3.org/2000/svg", ""))
        .doesNotContain("http", "src=", "href=", "@import", "<script");
    Matcher drawings = Pattern.compile("(?s)<svg xmlns.*?</svg>").matcher(page);
    int count = 0;
    while (drawings.find()) {
      count++;
      Document drawing =
          DocumentBuilderFactory.newInstance()
              .newDocumentBuilder()
              .parse(new InputSource(new StringReader(drawings.group())));
      // seven rows in the two bays beside line D, six lites in each, two lengths of B to F,
      // and the splices of those
      int hatched = 0;
      for (int at = 0; at < drawing.getElementsByTagName("polygon").getLength(); at++) {
        String fill =
            drawing
                .getElementsByTagName("polygon")
                .item(at)
                .getAttributes()
                .getNamedItem("fill")
                .getNodeValue();
        hatched += fill.startsWith("url(#") && fill.endsWith("changed)") ? 1 : 0;
      }
      assertThat(hatched).isEqualTo(14 + 12 + 10 + 5);
    }
    assertThat(count).isEqualTo(2);
  }

  @Test
  void whatIsNewAndGoneIsHatchedOtherwise() {
    Fixtures.write(
        folder,
        "new/east.wall",
        Fixtures.read(folder.resolve("old/east.wall"))
            .replace("    row R3      at 1'-6\"    below L2\n", ""));
    String page = diff("--output", "html").out();
    assertThat(page).contains("gone)\"", "new)\"");
  }

  @Test
  void aWallThatIsNewOrGoneIsTold() {
    Fixtures.write(
        folder,
        "new/west.wall",
        Fixtures.read(folder.resolve("old/east.wall"))
            .replace("wall East", "wall West")
            .replaceAll("spaced 6 @ 5'-0\"", "spaced 6 @ 4'-0\"")
            .replaceAll(
                "(?m)^    row .*\n",
                "    row sill at 2\" above L1\n    row head at 4\" above Roof\n")
            .replaceFirst("    row sill at 2\" above L1\n    row head at 4\" above Roof\n", "")
            .replaceAll("(?s)  lites \\{.*?\\}\n", ""));
    assertThat(diff().out()).contains("west.wall, wall West, added");
    Ran back = Ran.in(folder, "diff", "new", "old");
    assertThat(back.out()).contains("wall West, removed");
  }

  @Test
  void factsAreALineEach() {
    Ran ran = Ran.in(folder, "facts", "old/east.wall");
    assertThat(ran.out())
        .startsWith("wall East\n")
        .contains("  splice B L2 at: 2'-0\" above L2\n", "  line D at: 15'-0\"\n");
    Fixtures.write(
        folder,
        "old/again.wall",
        Fixtures.read(folder.resolve("old/east.wall")).replace("  ", " "));
    assertThat(Ran.in(folder, "facts", "old/again.wall").out()).isEqualTo(ran.out());
  }

  @Test
  void factsGiveWindAndHeatAsTheyAreWritten() {
    Fixtures.write(
        folder,
        "hall.wall",
        """
        wall Hall {
          criteria {
            wind field 32.5 psf in, 1.5 kPa out
            metal temperature -10 F to 65 C, set at 60 F
          }
        }
        """);
    assertThat(Ran.in(folder, "facts", "hall.wall").out())
        .contains(
            "  criteria metal temperature, least: -10 °F\n",
            "  criteria metal temperature, most: 149 °F\n",
            "  wind field in: 32.5 psf\n",
            "  wind field out: 1.5 kPa\n");
  }
}
