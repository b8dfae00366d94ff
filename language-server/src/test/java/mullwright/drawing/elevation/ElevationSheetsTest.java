package mullwright.drawing.elevation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import mullwright.drawing.Box;
import mullwright.drawing.ExampleWalls;
import mullwright.drawing.Keynote;
import mullwright.drawing.Layer;
import mullwright.drawing.Measuring;
import mullwright.drawing.Paper;
import mullwright.drawing.Recorded;
import mullwright.drawing.Scale;
import mullwright.drawing.Sheet;
import mullwright.drawing.Squares;
import mullwright.drawing.TitleBlock;
import mullwright.layout.PieceRef;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class ElevationSheetsTest {
  private static final TitleBlock BLOCK =
      new TitleBlock("Invented", "Wall", "A", "For review, not for construction", "Caution.");

  static Stream<Arguments> sheets() {
    return ExampleWalls.PATHS.stream()
        .flatMap(path -> Stream.of("A3", "A1", "ANSI-B").map(paper -> Arguments.of(path, paper)));
  }

  private static List<Sheet> of(String path, String paper, Optional<Scale> scale) {
    ExampleWalls.Example example = ExampleWalls.of(path);
    return ElevationSheets.of(
        example.layout(),
        example.options(),
        scale,
        Paper.named(paper).orElseThrow(),
        BLOCK,
        List.of("A note."));
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void nothingLeavesItsSheetAndNoLettersFallOnLetters(String path, String paper) {
    for (Sheet sheet : of(path, paper, Optional.empty())) {
      assertThat(sheet.extent().holds(Measuring.of(sheet))).isTrue();
      Box room = Sheet.room(sheet.paper());
      Squares<Recorded.Text> seen = new Squares<>();
      for (Recorded.Text text : Recorded.of(sheet).texts) {
        Box box = text.box().grown(-0.05);
        assertThat(seen.any(box, box::overlaps)).as("%s, sheet %s", text, sheet.number()).isFalse();
        seen.put(box, text);
        if (text.layer() != Layer.NOTE && text.layer() != Layer.SHEET) {
          assertThat(room.holds(text.box())).as("%s", text).isTrue();
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void theSheetsTogetherShowEveryPiece(String path, String paper) {
    ExampleWalls.Example example = ExampleWalls.of(path);
    Set<PieceRef> shown = new HashSet<>();
    for (Sheet sheet : of(path, paper, Optional.empty())) {
      Recorded recorded = Recorded.of(sheet);
      recorded.pieces.forEach(shown::add);
    }
    assertThat(shown)
        .hasSize(
            example.layout().verticals().size()
                + example.layout().horizontals().size()
                + example.layout().splices().size()
                + example.layout().anchors().size()
                + example.layout().cells().size());
  }

  @Test
  void matchLinesNameEachOther() {
    List<Sheet> sheets = of("tower/north.wall", "A3", Scale.read("1/8\""));
    assertThat(sheets).hasSizeGreaterThan(2);
    Map<Integer, Map<String, Integer>> meets = new HashMap<>();
    for (Sheet sheet : sheets) {
      for (Recorded.Text text : Recorded.of(sheet).texts) {
        if (text.layer() == Layer.MATCH) {
          String[] words = text.text().split(", see part ");
          meets
              .computeIfAbsent(sheet.number(), any -> new HashMap<>())
              .put(words[0], Integer.parseInt(words[1]));
        }
      }
    }
    // every sheet is reached, and the way back has the same name
    assertThat(meets).hasSize(sheets.size());
    meets.forEach(
        (number, others) ->
            others.forEach(
                (line, other) ->
                    assertThat(meets.get(other).get(line))
                        .as("%s of sheet %s", line, number)
                        .isEqualTo(number)));
  }

  @Test
  void theLargestScaleThatFitsIsTaken() {
    // architects' scales, common practice: 1/2" = 1'-0" is 1:24; 1/4", 3/16" and 1/8" to the foot
    // are 1:48, 1:64 and 1:96
    Sheet sheet = of("ferry-terminal/east.wall", "A1", Optional.empty()).get(0);
    assertThat(sheet.scale().words()).isEqualTo("1/2\" = 1'-0\"");
    assertThat(of("ferry-terminal/east.wall", "ANSI-B", Optional.empty()))
        .singleElement()
        .extracting(it -> it.scale().ratio())
        .isIn(48.0, 64.0, 96.0);
  }

  @Test
  void manyKeynotesGoOnOnSheetsOfTheirOwn() {
    ExampleWalls.Example example = ExampleWalls.of("first-wall/lobby.wall");
    List<Keynote> notes =
        Stream.iterate(1, i -> i + 1)
            .limit(150)
            .map(
                i ->
                    new Keynote(i, "Note number " + i + " of a wall that is all wrong.", List.of()))
            .toList();
    List<Sheet> sheets =
        ElevationSheets.of(
            example.layout(),
            example.options().with(notes),
            Optional.empty(),
            Paper.named("A3").orElseThrow(),
            BLOCK,
            List.of());
    assertThat(sheets).hasSizeGreaterThan(1);
    Set<String> told = new HashSet<>();
    sheets.forEach(
        sheet ->
            Recorded.of(sheet).texts.stream()
                .filter(text -> text.text().startsWith("Note number"))
                .forEach(text -> told.add(text.text().split(" of ")[0])));
    assertThat(told).hasSize(150);
  }

  @Test
  void oneWordLongerThanAnyLineEnds() {
    ExampleWalls.Example example = ExampleWalls.of("first-wall/lobby.wall");
    List<Sheet> sheets =
        ElevationSheets.of(
            example.layout(),
            example.options(),
            Optional.empty(),
            Paper.named("A4").orElseThrow(),
            BLOCK,
            List.of("x".repeat(100_000)));
    assertThat(sheets).isNotEmpty().hasSizeLessThan(400);
  }
}
