package mullwright.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class ParsedFileTest {
  static Stream<Path> walls() {
    return Fixtures.all().stream();
  }

  @Test
  void segmentsAreFoundByOffset() {
    ParsedFile file = ParsedFile.parse("units mm\n\nlet a = 5\nwall W {\n}\n// end\n");
    assertThat(file.segments().stream().map(Segment::text))
        .containsExactly("units mm\n", "\nlet a = 5\n", "wall W {\n}\n", "// end\n");
    assertThat(file.segmentAt(0)).isZero();
    assertThat(file.segmentAt(8)).isZero();
    assertThat(file.segmentAt(9)).isEqualTo(1);
    assertThat(file.segmentAt(1_000)).isEqualTo(3);
    assertThat(file.segmentStart(2)).isEqualTo(20);
    assertThat(file.absolute(2, new TextRange(0, 4))).isEqualTo(new TextRange(20, 24));
  }

  @Test
  void anEmptyTextIsOneEmptySegment() {
    ParsedFile file = ParsedFile.parse("");
    assertThat(file.segments()).hasSize(1);
    assertThat(file.segmentAt(0)).isZero();
    assertThat(file.tokens(0)).isEmpty();
    assertThat(file.edit(0, 0, "units mm").text()).isEqualTo("units mm");
  }

  @ParameterizedTest
  @MethodSource("walls")
  void tokensAndWhiteSpaceAreAllOfTheText(Path wall) {
    ParsedFile file = ParsedFile.parse(Fixtures.read(wall));
    for (int i = 0; i < file.segments().size(); i++) {
      String text = file.segments().get(i).text();
      int at = 0;
      for (Token token : file.tokens(i)) {
        assertThat(token.range().start()).isGreaterThanOrEqualTo(at);
        assertThat(text.substring(at, token.range().start())).isBlank();
        at = token.range().end();
      }
      assertThat(text.substring(at)).isBlank();
    }
  }

  @Test
  void tokensTellWhatEachWordIs() {
    String text =
        "wall W {\nanchors {\nclip all at 6\" below L2 bedded on pad note \"n\" // c\n}\n}";
    ParsedFile file = ParsedFile.parse(text);
    List<String> kinds =
        file.tokens(0).stream()
            .map(t -> t.kind() + ":" + text.substring(t.range().start(), t.range().end()))
            .toList();
    assertThat(kinds)
        .containsExactly(
            "KEYWORD:wall",
            "NAME:W",
            "BRACE:{",
            "KEYWORD:anchors",
            "BRACE:{",
            "KEYWORD:clip",
            "JOINER:all",
            "CLAUSE:at",
            "LENGTH:6\"",
            "BEARING:below",
            "NAME:L2",
            "CLAUSE:bedded",
            "CLAUSE:on",
            "NAME:pad",
            "REMARK:note",
            "STRING:\"n\"",
            "COMMENT:// c",
            "BRACE:}",
            "BRACE:}");
  }

  @ParameterizedTest
  @CsvSource({"\\n", "\\r\\n", "\\r"})
  void linesAndColumns(String lineEnd) {
    String end = lineEnd.translateEscapes();
    LineTable lines = ParsedFile.parse("ab" + end + end + "c").lines();
    assertThat(lines.count()).isEqualTo(3);
    assertThat(lines.line(1)).isZero();
    assertThat(lines.line(2)).isZero();
    assertThat(lines.line(2 + end.length())).isEqualTo(1);
    assertThat(lines.offset(2, 0)).isEqualTo(2 + 2 * end.length());
    assertThat(lines.offset(2, 99)).isEqualTo(3 + 2 * end.length());
    assertThat(lines.offset(0, 99)).isEqualTo(2);
    assertThat(lines.offset(9, 0)).isEqualTo(3 + 2 * end.length());
    assertThat(lines.offset(-1, 0)).isZero();
    assertThat(lines.column(3 + 2 * end.length())).isEqualTo(1);
    assertThat(lines.column(99)).isEqualTo(1);
    assertThat(lines.end(0)).isEqualTo(2);
  }

  @Test
  void everyOffsetComesBackFromItsLineAndColumn() {
    String text = "a\r\nbc\rd\n\n\re";
    LineTable lines = LineTable.of(text);
    for (int i = 0; i <= text.length(); i++) {
      boolean insideLineEnd =
          i > 0 && text.charAt(i - 1) == '\r' && i < text.length() && text.charAt(i) == '\n';
      if (!insideLineEnd) {
        assertThat(lines.offset(lines.line(i), lines.column(i))).isEqualTo(i);
      }
    }
  }

  @Test
  void aMendedStatementIsNoLongerBroken() {
    ParsedFile file = ParsedFile.parse("let a = \nlet b = 5\n");
    assertThat(file.segments().get(0).isBroken(file.segments().get(0).statements().get(0)))
        .isTrue();
    assertThat(file.segments().get(1).isBroken(file.segments().get(1).statements().get(0)))
        .isFalse();
  }

  @Test
  void aBlockIsNotBrokenByAMistakeInIt() {
    Segment segment =
        ParsedFile.parse("wall W {\ngrid {\nrow a at\nrow b at 3'\n}\n}\n").segments().get(0);
    Statement wall = segment.statements().get(0);
    Statement grid = wall.block().orElseThrow().statements().get(0);
    List<Statement> rows = grid.block().orElseThrow().statements();
    assertThat(Stream.of(wall, grid, rows.get(0), rows.get(1)).map(segment::isBroken))
        .containsExactly(false, false, true, false);
  }

  @Test
  void readingTellsThatItGoesOn() {
    int[] told = new int[1];
    ParsedFile.parse("units mm\nlet a = 3\n\nwall W {\n  grid {\n  }\n}\n", () -> told[0]++);
    assertThat(told[0]).isEqualTo(3);
  }

  @Test
  void linesAreThoseOfTheJdkInAnyMixtureOfLineEnds() {
    java.util.SplittableRandom random = new java.util.SplittableRandom(3);
    for (int run = 0; run < 5_000; run++) {
      StringBuilder mixed = new StringBuilder();
      for (int i = random.nextInt(12); i > 0; i--) {
        mixed.append("a½\n\r\n\r".charAt(random.nextInt(6)));
      }
      String text = mixed.toString();
      LineTable lines = LineTable.of(text);
      // the JDK's split by its own idea of a line break (Pattern, \\R), empty lines at the end kept
      List<String> split = List.of(text.split("\r\n|\n|\r", -1));
      assertThat(lines.count()).as(text).isEqualTo(split.size());
      for (int line = 0; line < split.size(); line++) {
        assertThat(text.substring(lines.start(line), lines.end(line))).isEqualTo(split.get(line));
      }
    }
  }
}
