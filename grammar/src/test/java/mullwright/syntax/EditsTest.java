package mullwright.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** An edited file is what a fresh reading of its text would be, and keeps what was not touched. */
class EditsTest {
  private static final int EDITS = 6_000;

  private static final List<String> PIECES =
      List.of(
          "{",
          "}",
          "}\n",
          "/*",
          "*/",
          "//",
          "\"",
          "\n",
          "\r",
          "\r\n",
          " ",
          "(",
          ")",
          ",",
          "+",
          "-",
          "..",
          "wall North {\n",
          "\nwall South like East {",
          "\nproject \"P\" {\n",
          "\ncatalog {",
          "use \"a.wall\"\n",
          "let b = 5'-6 1/2\"\n",
          "let b = 3 +\n",
          "units mm",
          "\n/// told\n",
          "/* a */",
          "row R at 3' above L1\n",
          "grid {",
          "x",
          "6",
          "'",
          "§",
          "\uD83D",
          "\u0000",
          "dead-load all {\n at L2\n",
          "\n\n\n");

  static Stream<Path> walls() {
    return Fixtures.all().stream();
  }

  @Test
  void randomEditsEqualAFreshReading() {
    List<String> texts = Fixtures.all().stream().map(Fixtures::read).toList();
    SplittableRandom random = new SplittableRandom(20260301);
    ParsedFile file = ParsedFile.parse("");
    for (int i = 0; i < EDITS; i++) {
      if (i % 200 == 0) {
        String text = texts.get(random.nextInt(texts.size()));
        file = ParsedFile.parse(text + text);
      }
      int length = file.text().length();
      int start = random.nextInt(length + 1);
      int span = random.nextInt(10) == 0 ? random.nextInt(200) : random.nextInt(3);
      int end = Math.min(length, start + span);
      String piece = random.nextInt(4) == 0 ? "" : PIECES.get(random.nextInt(PIECES.size()));
      String edited = file.text().substring(0, start) + piece + file.text().substring(end);
      file = file.edit(start, end, piece);
      ParsedFile fresh = ParsedFile.parse(edited);
      assertThat(file.text()).isEqualTo(edited);
      assertThat(file.segments()).as("edit %d", i).isEqualTo(fresh.segments());
      assertThat(lines(file)).as("lines after edit %d", i).isEqualTo(lines(fresh));
    }
  }

  private static List<TextRange> lines(ParsedFile file) {
    LineTable lines = file.lines();
    return IntStream.range(0, lines.count())
        .mapToObj(line -> new TextRange(lines.start(line), lines.end(line)))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("walls")
  void typedLetterByLetterItIsTheSame(Path wall) {
    String text = Fixtures.read(wall);
    ParsedFile file = ParsedFile.parse("");
    for (int i = 0; i < text.length(); i++) {
      file = file.edit(i, i, text.substring(i, i + 1));
    }
    assertThat(file.segments()).isEqualTo(ParsedFile.parse(text).segments());
  }

  @Test
  void keepsTheSegmentsThatWereNotTouched() {
    String wall = "wall W {\n  grid {\n    lines A..C spaced 2 @ 5'\n  }\n}\n";
    ParsedFile file = ParsedFile.parse(wall.repeat(9));
    assertThat(file.segments()).hasSize(9);
    int inFifth = file.segmentStart(4) + wall.indexOf("5'");
    ParsedFile edited = file.edit(inFifth, inFifth + 1, "6");
    for (int i = 0; i < 9; i++) {
      if (i == 4) {
        assertThat(edited.segments().get(i)).isNotEqualTo(file.segments().get(i));
      } else {
        assertThat(edited.segments().get(i)).isSameAs(file.segments().get(i));
      }
    }
  }

  @Test
  void anUnclosedBraceCostsItsOwnBlockOnly() {
    String broken = "wall A {\n  grid {\n    lines A..C spaced 2 @ 5'\n\n";
    String whole = "/// the next\nwall B {\n}\n";
    ParsedFile file = ParsedFile.parse(broken + whole);
    assertThat(file.segments()).hasSize(2);
    assertThat(file.segments().get(1).text()).isEqualTo("\n" + whole);
    assertThat(file.segments().get(1).problems()).isEmpty();
    assertThat(file.segments().get(1).statements().get(0).documentation()).contains("the next");
  }

  @Test
  void anUnclosedCommentCostsItsLineOnly() {
    String walls = "wall A {\n  grid {\n    floor L1 at 0\"\n  }\n}\nwall B {\n}\n";
    ParsedFile file = ParsedFile.parse(walls);
    int line = walls.indexOf("floor");
    ParsedFile commented = file.edit(line, line, "/* ");
    assertThat(commented.segments()).hasSize(2);
    assertThat(commented.segments().get(1)).isSameAs(file.segments().get(1));
    assertThat(commented.problems()).hasSize(1);
    ParsedFile back = commented.edit(line, line + 3, "");
    assertThat(back.segments()).isEqualTo(file.segments());
  }

  @Test
  void theEndOfACommentReachesBackToItsBeginning() {
    String walls = "/* wall A {\nunits mm\nwall B {\n}\nwall C {\n}\nlet a = 3\n";
    ParsedFile open = ParsedFile.parse(walls);
    int inC = walls.indexOf("wall C");
    for (String end : List.of("*/", "/* */", "// */", "*/ */")) {
      ParsedFile closed = open.edit(inC, inC, end);
      String text = walls.substring(0, inC) + end + walls.substring(inC);
      assertThat(closed.segments()).isEqualTo(ParsedFile.parse(text).segments());
    }
    ParsedFile half = open.edit(inC, inC, "*");
    assertThat(half.edit(inC + 1, inC + 1, "/").segments())
        .isEqualTo(
            ParsedFile.parse(walls.substring(0, inC) + "*/" + walls.substring(inC)).segments());
  }

  @Test
  void manyUnclosedCommentsAreQuicklyRead() {
    // each would be followed to the end of the text, if that were not known to hold no end
    String text = "units mm /*\n".repeat(100_000);
    assertThat(ParsedFile.parse(text).segments()).hasSize(100_000);
  }
}
