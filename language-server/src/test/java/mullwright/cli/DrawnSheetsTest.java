package mullwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import mullwright.check.Rules;
import mullwright.drawing.Layer;
import mullwright.drawing.Paper;
import mullwright.drawing.Recorded;
import mullwright.drawing.Sheet;
import mullwright.drawing.order.Stage;
import mullwright.drawing.piece.Bar;
import mullwright.drawing.piece.PieceSheets;
import mullwright.installation.WorkGraph;
import mullwright.layout.PieceRef;
import mullwright.report.DrawingSet;
import mullwright.report.DrawingView;
import mullwright.report.DrawnBars;
import mullwright.report.DrawnOrder;
import mullwright.report.DrawnWall;
import mullwright.report.Report;
import mullwright.report.WallsAtHand;
import mullwright.workspace.Cancel;
import mullwright.workspace.DiskFiles;
import mullwright.workspace.Snapshot;
import mullwright.workspace.Workspace;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Details, pieces and order of the examples: legible, and the same as the other reports. */
class DrawnSheetsTest {
  private static final Path EXAMPLES = Path.of("").toAbsolutePath().getParent().resolve("examples");
  private static final Map<String, DrawnWall> WALLS = new HashMap<>();

  private static DrawnWall wall(String path) {
    return WALLS.computeIfAbsent(path, DrawnSheetsTest::read);
  }

  private static DrawnWall read(String path) {
    Snapshot snapshot = new Workspace(new DiskFiles(EXAMPLES), Rules.find()).snapshot();
    Report.WallAtHand wall =
        WallsAtHand.of(snapshot, List.of(path), any -> any, Cancel.NEVER).get(0);
    return DrawnWall.of(wall, snapshot, path);
  }

  private static List<Sheet> sheets(String path, String view, String paper) {
    DrawingView of =
        DrawingSet.views().stream()
            .filter(one -> one.name().equals(view))
            .findFirst()
            .orElseThrow();
    return of.sheets(
        wall(path),
        new DrawingView.Wanted(Paper.named(paper).orElseThrow(), Optional.empty(), true));
  }

  @ParameterizedTest
  @CsvSource({
    "first-wall/lobby.wall, A3", "first-wall/lobby.wall, ANSI-D",
    "ferry-terminal/east.wall, A3", "ferry-terminal/east.wall, ANSI-D",
    "library-corner/reading-room.wall, A3", "library-corner/reading-room.wall, A1",
    "tower/north.wall, ANSI-D"
  })
  void noLetterStandsOnAnother(String path, String paper) {
    for (String view : List.of("details", "pieces", "order")) {
      List<Sheet> sheets = sheets(path, view, paper);
      assertThat(sheets).isNotEmpty();
      for (Sheet sheet : sheets) {
        List<Recorded.Text> texts = Recorded.of(sheet).texts;
        for (int at = 0; at < texts.size(); at++) {
          for (int other = at + 1; other < texts.size(); other++) {
            // descenders may reach into the line below
            boolean meet =
                texts.get(at).box().grown(-0.35).overlaps(texts.get(other).box().grown(-0.35));
            assertThat(meet)
                .as(
                    "%s, sheet %d: “%s” and “%s”",
                    view, sheet.number(), texts.get(at).text(), texts.get(other).text())
                .isFalse();
          }
        }
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "ferry-terminal/east.wall, A3",
    "library-corner/reading-room.wall, A3",
    "tower/north.wall, ANSI-D"
  })
  void everythingStandsWithinItsSheet(String path, String paper) {
    Paper size = Paper.named(paper).orElseThrow();
    for (String view : List.of("details", "pieces", "order")) {
      for (Sheet sheet : sheets(path, view, paper)) {
        for (Sheet.Placed placed : sheet.drawings()) {
          assertThat(
                  Sheet.room(size)
                      .grown(0.01)
                      .holds(placed.drawing().extent().moved(placed.dx(), placed.dy())))
              .as("%s, sheet %d: %s", view, sheet.number(), placed.drawing().title())
              .isTrue();
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "first-wall/lobby.wall",
        "ferry-terminal/east.wall",
        "library-corner/reading-room.wall",
        "tower/north.wall"
      })
  void piecesShowWhatTheirTicketsSay(String path) {
    Ran ran = Ran.in(EXAMPLES, "tickets", "--output", "json", path);
    JsonObject report = JsonParser.parseString(ran.out()).getAsJsonObject();
    Map<String, Set<String>> places = new HashMap<>();
    Map<String, Set<String>> depths = new HashMap<>();
    Map<String, String> lengths = new HashMap<>();
    for (JsonElement section : report.getAsJsonArray("sections")) {
      for (JsonElement table : section.getAsJsonObject().getAsJsonArray("tables")) {
        for (JsonElement row : table.getAsJsonObject().getAsJsonArray("rows")) {
          JsonObject one = row.getAsJsonObject();
          switch (table.getAsJsonObject().get("name").getAsString()) {
            case "pieces" -> lengths.put(one.get("mark").getAsString(), printed(one, "cut-length"));
            case "holes" -> {
              String mark = one.get("mark").getAsString();
              places.computeIfAbsent(mark, any -> new TreeSet<>()).add(printed(one, "along"));
              depths.computeIfAbsent(mark, any -> new TreeSet<>()).add(printed(one, "back"));
            }
            default -> {}
          }
        }
      }
    }
    DrawnWall wall = wall(path);
    List<Bar> bars = DrawnBars.of(wall.wall());
    assertThat(bars).isNotEmpty();
    for (Bar bar : bars) {
      List<String> texts =
          Recorded.of(PieceSheets.uncut("one", List.of(bar), wall.wall().units())).texts.stream()
              .filter(text -> text.layer() == Layer.DIMENSION)
              .map(Recorded.Text::text)
              .toList();
      Set<String> running =
          texts.stream()
              .filter(text -> text.contains("  "))
              .map(text -> text.substring(0, text.indexOf("  ")))
              .collect(Collectors.toCollection(TreeSet::new));
      assertThat(running).as(bar.mark()).isEqualTo(places.getOrDefault(bar.mark(), Set.of()));
      assertThat(texts)
          .as(bar.mark())
          .contains(lengths.get(bar.mark()))
          .containsAll(
              depths.getOrDefault(bar.mark(), Set.of()).stream()
                  .filter(depth -> !depth.isEmpty())
                  .toList());
    }
  }

  // drawings of millimetres leave the unit out
  private static String printed(JsonObject row, String column) {
    JsonElement value = row.get(column);
    return value == null || value.isJsonNull()
        ? ""
        : value.getAsJsonObject().get("printed").getAsString().replaceFirst(" mm$", "");
  }

  @Test
  void theGlassStandsWhereTheCatalogSays() {
    // captured-6: bite 1/2", edge clearance 1/4", sightline 2 1/2", glass 1", box 6" deep, glass
    // plane 7 1/4"; so between the lites are left 2 1/2 − 2 × 3/4 = 1", before the box 1/4"
    List<String> figures = figures("ferry-terminal/east.wall", "Intermediate");
    assertThat(figures)
        .contains("1/2\"", "1/4\"", "1\"", "2 1/2\"", "6\"", "7 1/4\"")
        .allMatch(
            text -> Set.of("1/2\"", "1/4\"", "1\"", "2 1/2\"", "6\"", "7 1/4\"").contains(text));
    // captured-150: bite 13, clearance 6, sightline 60, glass 28, box 150, glass plane 184; so
    // between the lites 60 − 2 × 19 = 22, before the box 6
    assertThat(figures("library-corner/reading-room.wall", "Intermediate"))
        .contains("13", "6", "22", "60", "28", "150", "184");
  }

  private static List<String> figures(String path, String title) {
    for (Sheet sheet : sheets(path, "details", "A1")) {
      for (Sheet.Placed placed : sheet.drawings()) {
        if (placed.drawing().title().equals(title)) {
          return Recorded.of(placed.drawing()).texts.stream()
              .filter(text -> text.layer() == Layer.DIMENSION)
              .map(Recorded.Text::text)
              .toList();
        }
      }
    }
    throw new AssertionError("no detail " + title);
  }

  @Test
  void everyJointThatDiffersIsDetailedOnce() {
    List<String> titles =
        sheets("library-corner/reading-room.wall", "details", "A1").stream()
            .flatMap(sheet -> sheet.drawings().stream())
            .map(placed -> placed.drawing().title())
            .toList();
    // by hand: sill; rail and band between lites; rail over the door; head; jambs left and right;
    // mullions between lites, left and right of the door; splices of jamb, mullion and corner
    assertThat(titles)
        .containsExactlyInAnyOrder(
            "Sill",
            "Intermediate",
            "Intermediate",
            "Head",
            "Jamb",
            "Jamb",
            "Mullion",
            "Mullion",
            "Mullion",
            "Splice",
            "Splice",
            "Splice");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "first-wall/lobby.wall",
        "ferry-terminal/east.wall",
        "library-corner/reading-room.wall",
        "tower/north.wall"
      })
  void everyStepIsInOnePictureAndEveryPieceInSome(String path) {
    DrawnWall wall = wall(path);
    List<Stage> stages = DrawnOrder.of(wall.wall()).stages();
    assertThat(stages).hasSizeLessThanOrEqualTo(60);
    int next = 1;
    Set<PieceRef> pieces = new HashSet<>();
    for (Stage stage : stages) {
      List<Integer> numbers = new ArrayList<>();
      for (String word : stage.sentence().split(":")[0].split("[^0-9]+")) {
        if (!word.isEmpty()) {
          numbers.add(Integer.valueOf(word));
        }
      }
      assertThat(numbers.get(0)).as(stage.sentence()).isEqualTo(next);
      next = numbers.get(numbers.size() - 1) + 1;
      pieces.addAll(stage.pieces());
    }
    assertThat(next - 1).isEqualTo(WorkGraph.of(wall.layout()).steps().size());
    assertThat(pieces.stream().filter(piece -> piece.kind() == PieceRef.Kind.VERTICAL))
        .hasSize(wall.layout().verticals().size());
    assertThat(pieces.stream().filter(piece -> piece.kind() == PieceRef.Kind.HORIZONTAL))
        .hasSize(wall.layout().horizontals().size());
    assertThat(pieces.stream().filter(piece -> piece.kind() == PieceRef.Kind.ANCHOR))
        .hasSize(wall.layout().anchors().size());
    assertThat(pieces.stream().filter(piece -> piece.kind() == PieceRef.Kind.COVER))
        .hasSize(wall.layout().covers().size());
  }
}
