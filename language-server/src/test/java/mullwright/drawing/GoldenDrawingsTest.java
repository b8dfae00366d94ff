package mullwright.drawing;

import java.util.List;
import java.util.Optional;
import mullwright.drawing.elevation.ElevationSheets;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Elevations against stored ones. */
class GoldenDrawingsTest {
  private static List<Sheet> sheets(String path, String paper) {
    ExampleWalls.Example example = ExampleWalls.of(path);
    TitleBlock block =
        new TitleBlock("Invented project", "Wall", "A", "For review, not for construction", "-");
    return ElevationSheets.of(
        example.layout(),
        example.options(),
        Optional.empty(),
        Paper.named(paper).orElseThrow(),
        block,
        List.of("A note."));
  }

  @ParameterizedTest
  @CsvSource({
    "first-wall/lobby.wall, A4, first-wall",
    "library-corner/reading-room.wall, A3, library"
  })
  void elementByElement(String path, String paper, String name) throws Exception {
    Golden.elements(sheets(path, paper).get(0), name);
  }

  @ParameterizedTest
  @CsvSource({
    "first-wall/lobby.wall, A4, first-wall",
    "library-corner/reading-room.wall, A3, library"
  })
  void asAPicture(String path, String paper, String name) throws Exception {
    Golden.picture(sheets(path, paper).get(0), name);
  }
}
