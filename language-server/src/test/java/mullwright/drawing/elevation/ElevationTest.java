package mullwright.drawing.elevation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import mullwright.drawing.Box;
import mullwright.drawing.ExampleWalls;
import mullwright.drawing.Hatch;
import mullwright.drawing.Layer;
import mullwright.drawing.Measuring;
import mullwright.drawing.Recorded;
import mullwright.drawing.Squares;
import mullwright.layout.PieceRef;
import mullwright.model.AnchorUse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ElevationTest {
  static Stream<String> examples() {
    return ExampleWalls.PATHS.stream();
  }

  private static Recorded painted(ExampleWalls.Example example) {
    return Recorded.of(Elevation.of(example.layout(), example.options()));
  }

  @ParameterizedTest
  @MethodSource("examples")
  void itReachesAsFarAsWhatIsPainted(String path) {
    ExampleWalls.Example example = ExampleWalls.of(path);
    Elevation elevation = Elevation.of(example.layout(), example.options());
    assertThat(elevation.extent()).isEqualTo(Measuring.of(elevation));
  }

  @ParameterizedTest
  @MethodSource("examples")
  void everyPieceIsDrawnOnceAsLargeAsItIs(String path) {
    ExampleWalls.Example example = ExampleWalls.of(path);
    double ratio = example.options().scale().ratio();
    Map<PieceRef, Box> drawn =
        painted(example).areas.stream()
            .filter(area -> area.layer() == Layer.MEMBER)
            .collect(
                Collectors.toMap(
                    area -> area.subject().piece().orElseThrow(), area -> Box.of(area.points())));
    assertThat(drawn)
        .hasSize(example.layout().verticals().size() + example.layout().horizontals().size());
    example
        .layout()
        .verticals()
        .forEach(
            piece -> {
              Box box = drawn.get(new PieceRef(PieceRef.Kind.VERTICAL, piece.index()));
              assertThat(box.height() * ratio)
                  .isCloseTo(piece.length().toMillimetres(), within(1e-6));
              assertThat(box.bottom() * ratio)
                  .isCloseTo(piece.bottom().toMillimetres(), within(1e-6));
            });
    example
        .layout()
        .horizontals()
        .forEach(
            piece -> {
              Box box = drawn.get(new PieceRef(PieceRef.Kind.HORIZONTAL, piece.index()));
              assertThat(box.width() * ratio)
                  .isCloseTo(piece.length().toMillimetres(), within(1e-6));
              assertThat(box.height() * ratio)
                  .isCloseTo(piece.profile().face().value().toMillimetres(), within(1e-6));
            });
  }

  @ParameterizedTest
  @MethodSource("examples")
  void noLettersFallOnLetters(String path) {
    Squares<Recorded.Text> seen = new Squares<>();
    for (Recorded.Text text : painted(ExampleWalls.of(path)).texts) {
      Box box = text.box().grown(-0.05);
      assertThat(seen.any(box, box::overlaps)).as("%s", text).isFalse();
      seen.put(box, text);
    }
  }

  @ParameterizedTest
  @MethodSource("examples")
  void noHatchGoesThroughLetters(String path) {
    Recorded recorded = painted(ExampleWalls.of(path));
    List<Recorded.Text> marks =
        recorded.texts.stream().filter(text -> text.layer() == Layer.MARK).toList();
    for (Recorded.Hatched hatched : recorded.hatched) {
      Box area = Box.of(hatched.points());
      for (Recorded.Text mark : marks) {
        if (area.overlaps(mark.box())) {
          assertThat(hatched.clear()).as("%s", mark).anyMatch(box -> box.holds(mark.box()));
        }
      }
    }
  }

  @Test
  void spandrelsAreHatchedAndVisionIsNot() {
    ExampleWalls.Example example = ExampleWalls.of("ferry-terminal/east.wall");
    Recorded recorded = painted(example);
    assertThat(recorded.hatched)
        .allMatch(hatched -> hatched.hatch().equals(Hatch.SPANDREL))
        .allMatch(hatched -> hatched.subject().kind().equals("cell spandrel"))
        .hasSize(
            (int)
                example.layout().cells().stream()
                    .filter(cell -> !cell.use().orElseThrow().vision())
                    .count());
  }

  @Test
  void anchorsAreToldApartByKind() {
    ExampleWalls.Example example = ExampleWalls.of("ferry-terminal/east.wall");
    Map<String, Long> counted =
        painted(example).signs.stream()
            .collect(Collectors.groupingBy(sign -> sign.symbol().name(), Collectors.counting()));
    for (AnchorUse.Kind kind : AnchorUse.Kind.values()) {
      assertThat(counted.get(kind.spelling()))
          .isEqualTo(
              example.layout().anchors().stream()
                  .filter(anchor -> anchor.use().kind() == kind)
                  .count());
    }
  }

  @Test
  void dimensionsSayWhatTheTextSays() {
    // examples/ferry-terminal/east.wall: lines A..G spaced 6 @ 5'-0", floors at 0", 13'-0", 26'-0"
    List<String> figures =
        painted(ExampleWalls.of("ferry-terminal/east.wall")).texts.stream()
            .filter(text -> text.layer() == Layer.DIMENSION)
            .map(Recorded.Text::text)
            .toList();
    assertThat(figures.stream().filter("5'-0\""::equals)).hasSize(6);
    assertThat(figures.stream().filter("13'-0\""::equals)).hasSize(2);
    // conventions: daylight opening = spacing − ½ sightline either side: 60 − 2 1/2 = 57 1/2
    assertThat(figures.stream().filter("4'-9 1/2\""::equals)).hasSize(6);
    // 6 × 60 + 2 1/2 = 362 1/2
    assertThat(figures).contains("30'-2 1/2\"");
  }

  @Test
  void millimetresStandWithoutTheirUnit() {
    // ISO 129-1: lengths in millimetres without unit (from memory); lines spaced 4 @ 1500
    List<String> figures =
        painted(ExampleWalls.of("library-corner/reading-room.wall")).texts.stream()
            .filter(text -> text.layer() == Layer.DIMENSION)
            .map(Recorded.Text::text)
            .toList();
    assertThat(figures.stream().filter("1500"::equals)).hasSize(4);
    assertThat(figures).noneMatch(figure -> figure.contains("mm"));
  }
}
