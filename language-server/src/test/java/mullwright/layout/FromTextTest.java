package mullwright.layout;

import static mullwright.layout.TestParts.in;
import static mullwright.layout.TestParts.mm;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import mullwright.model.Model;
import mullwright.model.ModelMemory;
import mullwright.model.ModelReader;
import mullwright.model.Wall;
import mullwright.quantity.Length;
import mullwright.syntax.ParsedFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Walls as they are written, from text to pieces. */
class FromTextTest {
  private static final String INCHES =
      """
      units inches
      catalog {
        system s { mullion m
          jamb j
          corner c
          sill si
          head h
          intermediate r
          pressure-plate p
          face-cap fc }
        profile m { role mullion
          face 2.5
          depth 6
          bite 0.5 }
        profile j { role jamb
          face 2.25
          depth 6
          bite 0.5 }
        profile c { role corner
          face 5
          depth 6
          leg 3 left, 3.5 right
          bite 0.5 }
        profile si { role sill
          face 2
          depth 6
          bite 0.5 }
        profile h { role head
          face 3
          depth 6
          bite 0.5 }
        profile r { role intermediate
          face 2.5
          depth 6
          bite 0.5 }
        pressure-plate p { width 2.5 }
        face-cap fc { face 2.5 }
        glass V1 { ply 1/4"
          space 1/2"
          ply 1/4" }
      }
      """;

  private static Model read(String text) {
    ParsedFile file = ParsedFile.parse(text);
    Model model =
        ModelReader.read(
            "test.wall",
            path -> path.equals("test.wall") ? Optional.of(file) : Optional.empty(),
            new ModelMemory());
    assertThat(model.problems()).isEmpty();
    return model;
  }

  private static WallLayout layOut(String walls, String name) {
    Model model = read(INCHES + walls);
    Wall wall = model.walls().stream().filter(w -> w.name().equals(name)).findFirst().orElseThrow();
    return LayoutBuilder.layOut(wall, model.catalog());
  }

  private static final String SHOP =
      """
      wall Shop {
        system s
        grid {
          lines 1..5 spaced 4 @ 60
          floor L1 at 0
          row sill at 2 above L1
          row door-head at 86 above L1
          row head at 146 above L1
          opening door D1 bays 2..4 from L1 to door-head by others clear 1/4"
        }
        members {
          vertical all
          vertical 3 from door-head to head
          horizontal all
        }
        lites { vision V1 all }
      }
      """;

  @Test
  void aVerticalOnADoorHead() {
    WallLayout layout = layOut(SHOP, "Shop");
    assertThat(layout.impossible()).isEmpty();
    // 3 stands on the door-head: 86" + 1 1/4" to 146" + 1 1/2"
    VerticalPiece third = layout.verticals().get(2);
    assertThat(third.name()).isEqualTo("vertical 3");
    assertThat(third.length()).isEqualTo(in(241, 4));
    // the door-head runs through two bays: 120" - 2 x 1 1/4" - 1/16"
    assertThat(layout.horizontals())
        .filteredOn(piece -> piece.name().equals("horizontal door-head, bays 2-4"))
        .extracting(HorizontalPiece::length)
        .containsExactly(in(1879, 16));
    // 2 and 4 go down to the floor for the door, 1 and 5 to the sill's lower edge
    assertThat(layout.verticals())
        .extracting(VerticalPiece::bottom)
        .containsExactly(in(1), in(0), in(349, 4), in(0), in(1));
    // the door: 117 1/2" - 1/2" by 84 3/4" - 1/4"
    Cell door = layout.cells().stream().filter(c -> c.opening().isPresent()).findFirst().get();
    assertThat(door.glassWidth()).isEqualTo(in(117));
    assertThat(door.glassHeight()).isEqualTo(in(169, 2));
    assertThat(layout.cells())
        .filteredOn(c -> c.opening().isEmpty())
        .allMatch(c -> c.use().isPresent());
  }

  @Test
  void aMirroredWallHasTheSamePieces() {
    WallLayout one = layOut(SHOP, "Shop");
    WallLayout other = layOut(SHOP + "wall Other like Shop mirrored { }\n", "Other");
    assertThat(lengths(other)).isEqualTo(lengths(one));
  }

  private static List<Length> lengths(WallLayout layout) {
    return Stream.of(
            layout.verticals().stream().map(VerticalPiece::length),
            layout.horizontals().stream().map(HorizontalPiece::length),
            layout.covers().stream().map(CoverPiece::length),
            layout.cells().stream().map(Cell::glassWidth),
            layout.cells().stream().map(Cell::glassHeight))
        .flatMap(sizes -> sizes.sorted())
        .toList();
  }

  @Test
  void aSillThatRisesInSomeBays() {
    WallLayout layout =
        layOut(
            """
            wall Street {
              system s
              grid {
                lines A..D spaced 3 @ 48
                row sill at 0
                row sill at 0 to 72 only B..D
                row head at 160
              }
              members {
                vertical all
                horizontal all
              }
              lites { vision V1 all }
            }
            """,
            "Street");
    assertThat(layout.impossible()).isEmpty();
    // 72" in 96": slope 3 to 4; clear of C and D 48" - 1 1/4" - 1 1/8" - 1/16" = 45 9/16",
    // along the slope 45 9/16" / 0.8 + 2" x 0.75 = 58 29/64"
    HorizontalPiece last = layout.horizontals().get(2);
    assertThat(last.length()).isEqualTo(in(58 * 64 + 29, 64));
    // D: the sill's lower edge at its inner side, 48" + 72" less 2 1/4": 72" - 1 1/8" x 0.75 - 1
    // 1/4"
    assertThat(layout.verticals().get(3).bottom()).isEqualTo(in(2237, 32));
    assertThat(layout.cells()).extracting(Cell::rectangular).containsExactly(true, false, false);
  }

  @Test
  void aWallRoundACornerWithAJointAndRowsByTheirEdges() {
    WallLayout layout =
        layOut(
            """
            wall Corner {
              system s
              grid {
                face South lines 1..3 spaced 2 @ 60
                face East lines 3..6 spaced 60, 4, 60
                corner 3 90 deg
                joint 4..5
                row sill at 0 edge
                row head at 100 edge
              }
              members {
                vertical all
                horizontal all
              }
              lites { vision V1 all }
            }
            """,
            "Corner");
    assertThat(layout.impossible()).isEmpty();
    assertThat(layout.verticals()).allMatch(piece -> piece.length().equals(in(100)));
    // bay 2-3: 60" - 1 1/4" - 3" leg; bay 3-4: 60" - 3 1/2" leg - 1 1/8"
    assertThat(layout.cells().get(1).daylightWidth()).isEqualTo(in(223, 4));
    assertThat(layout.cells().get(2).daylightWidth()).isEqualTo(in(443, 8));
    assertThat(layout.cells()).hasSize(4);
    assertThat(layout.verticals().stream().filter(VerticalPiece::endMember))
        .extracting(VerticalPiece::line)
        .containsExactly(0, 3, 4, 5);
  }

  static Stream<Path> examples() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("..", "examples"))) {
      return files
          .filter(file -> file.toString().endsWith(".wall"))
          .filter(file -> !file.getParent().endsWith("catalog"))
          .sorted()
          .toList()
          .stream();
    }
  }

  @ParameterizedTest
  @MethodSource("examples")
  void theExamplesAreLaidOutWhole(Path example) {
    Path root = Path.of("..", "examples");
    Model model =
        ModelReader.read(
            root.relativize(example).toString().replace('\\', '/'),
            path -> parsed(root.resolve(path)),
            new ModelMemory());
    assertThat(model.walls()).isNotEmpty();
    for (Wall wall : model.walls()) {
      WallLayout layout = LayoutBuilder.layOut(wall, model.catalog());
      assertThat(layout.impossible()).isEmpty();
      // something stands on every line, lies on every row, fills every bay
      TreeSet<Integer> lines = new TreeSet<>();
      layout.verticals().forEach(piece -> lines.add(piece.line()));
      assertThat(lines).hasSameSizeAs(wall.grid().lines());
      TreeSet<Integer> rows = new TreeSet<>();
      layout.horizontals().forEach(piece -> rows.add(piece.row()));
      assertThat(rows).hasSameSizeAs(wall.grid().rows());
      assertThat(layout.cells())
          .allMatch(cell -> cell.use().isPresent() != cell.opening().isPresent());
      assertThat(layout.anchors()).allMatch(anchor -> anchor.vertical() >= 0);
    }
  }

  private static Optional<ParsedFile> parsed(Path path) {
    try {
      return Optional.of(ParsedFile.parse(Files.readString(path)));
    } catch (IOException absent) {
      return Optional.empty();
    }
  }

  @Test
  void theReadingRoomInMillimetres() {
    Path root = Path.of("..", "examples");
    Model model =
        ModelReader.read(
            "library-corner/reading-room.wall",
            path -> parsed(root.resolve(path)),
            new ModelMemory());
    WallLayout layout = LayoutBuilder.layOut(model.walls().get(0), model.catalog());
    // mullion 60 of face throughout, no allowance stated: 1/32" = 0.79375 an end
    // bay 4-5 ends at the corner's leg
    var corner = layout.verticals().stream().filter(v -> v.line() == 4).findFirst().get();
    Length leg = corner.profile().legLeft().orElseThrow().value();
    Length face =
        layout.verticals().stream()
            .filter(v -> v.line() == 3)
            .findFirst()
            .get()
            .profile()
            .face()
            .value();
    HorizontalPiece before =
        layout.horizontals().stream()
            .filter(h -> h.rightLine() == 4 && h.leftLine() == 3)
            .findFirst()
            .get();
    assertThat(before.length())
        .isEqualTo(
            mm(1500)
                .minus(face.half())
                .minus(leg)
                .minus(before.profile().endAllowance().value().times(2)));
  }
}
