package mullwright.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import mullwright.syntax.Fixtures;
import mullwright.syntax.ParsedFile;
import mullwright.syntax.RoundTrip;
import mullwright.syntax.TextRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FormatterTest {
  static Stream<Path> all() {
    return Fixtures.all().stream();
  }

  @ParameterizedTest
  @MethodSource("all")
  void laysOutAsTheFileBesideSays(Path wall) {
    String text = Fixtures.read(wall);
    String laidOut = Formatter.format(RoundTrip.check(text));
    assertThat(laidOut).isEqualTo(Fixtures.expected(wall, ".laid-out", laidOut));
  }

  @ParameterizedTest
  @MethodSource("all")
  void keepsTheLineEndsOfTheFirstLine(Path wall) {
    String text = Fixtures.read(wall);
    String laidOut = Formatter.format(ParsedFile.parse(text));
    for (String lineEnd : List.of("\r\n", "\r")) {
      assertThat(Formatter.format(RoundTrip.check(text.replace("\n", lineEnd))))
          .isEqualTo(laidOut.replace("\n", lineEnd));
    }
  }

  @ParameterizedTest
  @MethodSource("all")
  void dependsOnNoSpaceTheAuthorPut(Path wall) {
    String laidOut = Formatter.format(ParsedFile.parse(Fixtures.read(wall)));
    if (wall.getParent().endsWith("ok")) {
      String squeezed = laidOut.replaceAll("(?m)^ +| +(?= )", "");
      assertThat(Formatter.format(ParsedFile.parse(squeezed))).isEqualTo(laidOut);
    }
  }

  @Test
  void alignsARunOfOneKeywordAtMultiplesOfFour() {
    assertThat(
            grid(
                "floor L1 at 0\" slab 6\" // ground",
                "floor Mezzanine at 13'-0\" slab 10\"//upper",
                "row sill at 2\" above L1",
                "",
                "row head at 1'-10\" above Mezzanine only A..C"))
        .containsExactly(
            "    floor   L1          at 0\"       slab 6\"     // ground",
            "    floor   Mezzanine   at 13'-0\"   slab 10\"    //upper",
            "    row sill  at 2\" above L1",
            "",
            "    row head  at 1'-10\" above Mezzanine  only A..C");
  }

  @Test
  void aLongerNameThatStillFitsRespacesNothing() {
    List<String> before = grid("floor L12 at 0\"", "floor L13 at 13'", "floor L14 at 26'");
    List<String> after = grid("floor L12 at 0\"", "floor L13 at 13'", "floor L14-up at 26'");
    assertThat(after.subList(0, 2)).isEqualTo(before.subList(0, 2));
  }

  @Test
  void aClauseThatSomeLinesLackKeepsItsColumn() {
    assertThat(
            grid("row a at 3' above L1 only A..C edge", "row b at 3' edge", "row c at 3' only B"))
        .containsExactly(
            "    row a   at 3'   above L1    only A..C   edge",
            "    row b   at 3'                           edge",
            "    row c   at 3'               only B");
  }

  @Test
  void clausesInAnotherOrderBreakTheRun() {
    assertThat(grid("floor A at 0 slab 6", "floor B slab 6 at 10", "floor C slab 6 at 20"))
        .containsExactly(
            "    floor A  at 0  slab 6",
            "    floor   B   slab 6  at 10",
            "    floor   C   slab 6  at 20");
  }

  @Test
  void aBrokenLineStaysAsItIs() {
    assertThat(
            grid("floor A at 0  slab 6", " floor   B at   ,  slab  6  ", "floor Cc at 20 slab 6"))
        .containsExactly(
            "    floor   A   at 0    slab 6",
            " floor   B at   ,  slab  6  ",
            "    floor   Cc  at 20   slab 6");
  }

  @Test
  void writesMarksAndFractionsInOneWay() {
    assertThat(
            grid(
                "row a at 6-1/2\" above L1",
                "floor B at 5\u20326\u2033 slab 6\u201d",
                "row c at 5'  6-1/2\u2033+2 * ( b )",
                "row d at \u22121'-6\" only A .. C",
                "corner 5 90\u00b0",
                "slab 250mm L1,L2",
                "joint F..G note \u201con site\u201d"))
        .containsExactly(
            "    row a  at 6 1/2\" above L1",
            "    floor B  at 5'-6\"  slab 6\"",
            "    row c   at 5'-6 1/2\" + 2 * (b)",
            "    row d   at -1'-6\"   only A..C",
            "    corner 5  90\u00b0",
            "    slab 250 mm  L1, L2",
            "    joint F..G  note \"on site\"");
  }

  @Test
  void keepsOneBlankLineAndNoneInsideBraces() {
    String text = "\n\nunits mm\n\n\n\n// a\n\nwall W {\n\n  grid {\n\n\n  }\n\n}\n\n\n";
    assertThat(Formatter.format(RoundTrip.check(text)))
        .isEqualTo("units mm\n\n// a\n\nwall W {\n  grid {\n  }\n}\n");
  }

  @Test
  void endsTheLastLine() {
    assertThat(Formatter.format(ParsedFile.parse("units mm"))).isEqualTo("units mm\n");
    assertThat(Formatter.format(ParsedFile.parse(""))).isEmpty();
    assertThat(Formatter.format(ParsedFile.parse("  \n \n"))).isEmpty();
  }

  @Test
  void leavesCommentsOfSeveralLinesAlone() {
    String text = "wall W {\n/* one\n     two  \n three */\n   grid { /* a */ }\n}\n";
    assertThat(Formatter.format(RoundTrip.check(text)))
        .isEqualTo("wall W {\n  /* one\n     two  \n three */\n  grid { /* a */ }\n}\n");
  }

  @Test
  void indentsWhatGoesOnInTheNextLine() {
    String text = "wall W {\ngrid {\nlines A..C spaced 2 @ 5',\n3 @ 6',\n4 *\n( b\n + 2 )\n}\n}\n";
    assertThat(Formatter.format(RoundTrip.check(text)))
        .isEqualTo(
            "wall W {\n  grid {\n    lines A..C spaced 2 @ 5',\n        3 @ 6',\n        4 *\n"
                + "        (b\n        + 2)\n  }\n}\n");
  }

  @Test
  void editsOfARangeTouchNoOtherLine() {
    String text = "wall W {\ngrid {\nfloor A at 0\nfloor Bbb at 20\n}\n}\n";
    ParsedFile file = ParsedFile.parse(text);
    int line = text.indexOf("floor Bbb");
    List<TextEdit> edits = Formatter.edits(file, List.of(new TextRange(line + 3, line + 4)));
    assertThat(RoundTrip.applied(text, edits))
        .isEqualTo("wall W {\ngrid {\nfloor A at 0\n    floor   Bbb     at 20\n}\n}\n");
  }

  @Test
  void editsOfWholeLinesLeaveTheNextAndTheBlanksBelow() {
    String text = "wall W {\ngrid {\nfloor A at 0\n\n\n\nfloor Bbb at 20\n}\n}\n";
    ParsedFile file = ParsedFile.parse(text);
    int blank = text.indexOf("\n\n") + 1;
    TextRange lines = new TextRange(text.indexOf("floor A"), blank);
    assertThat(RoundTrip.applied(text, Formatter.edits(file, List.of(lines))))
        .isEqualTo(text.replace("floor A at 0", "    floor A  at 0"));
    TextRange next = new TextRange(blank, blank + 2);
    assertThat(RoundTrip.applied(text, Formatter.edits(file, List.of(next))))
        .isEqualTo(text.replace("\n\n\n\n", "\n\n"));
    assertThat(RoundTrip.applied(text, Formatter.edits(file, List.of(lines, next, lines))))
        .isEqualTo(text.replace("floor A at 0", "    floor A  at 0").replace("\n\n\n\n", "\n\n"));
  }

  @Test
  void editsAreNoLargerThanTheChange() {
    assertThat(Formatter.edits(ParsedFile.parse("units  mm\nuse   \"a.wall\"\n")))
        .containsExactly(new TextEdit(6, 7, ""), new TextEdit(14, 16, ""));
  }

  /** The lines of a grid block, laid out. */
  private static List<String> grid(String... lines) {
    String text = "wall W {\n  grid {\n" + String.join("\n", lines) + "\n  }\n}\n";
    List<String> laidOut = Formatter.format(RoundTrip.check(text)).lines().toList();
    return laidOut.subList(2, laidOut.size() - 2);
  }
}
