package mullwright.drawing.elevation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import mullwright.drawing.Box;
import mullwright.drawing.ExampleWalls;
import mullwright.drawing.Layer;
import mullwright.drawing.Lettering;
import mullwright.drawing.Measuring;
import mullwright.drawing.Recorded;
import mullwright.drawing.Squares;
import mullwright.layout.Cell;
import mullwright.layout.HorizontalPiece;
import mullwright.quantity.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Walls of which the elevation has little room, or a head that does not lie level. */
class TightPlacesTest {
  private static final String TOWER =
      """
      use "captured.wall"

      wall Front {
        system captured-6
        grid {
          face    Front   lines 1..15     spaced 14 @ 5'-0"
          face    Return  lines 15..17    spaced 2 @ 4'-6"
          corner 15  90 deg
          floors L1..L8, Roof  spaced 15'-0", 7 @ 12'-6"
          row sill    at 2"   above L1
          row rail    at 3'-0"    above L2..L8
          row head    at 4"   above Roof
        }
        members {
          vertical all  as mullion
          horizontal all
        }
        lites {
          vision V1  all
        }
      }
      """;

  private static final String HALL =
      """
      use "captured.wall"

      wall Hall {
        system captured-6
        grid {
          lines 1..7  spaced 6 @ 5'-0"
          floor G  at 0"
          row sill    at 2"   above G
          row mid     at 10'-0"   above G
          row head    at 16'-0" to 20'-0"
        }
        members {
          vertical all  as mullion
          horizontal all
        }
        lites {
          vision V1  all
        }
      }
      """;

  @TempDir private Path folder;

  private ExampleWalls.Example wall(String text) throws IOException {
    Files.copy(Path.of("../examples/catalog/captured.wall"), folder.resolve("captured.wall"));
    Files.writeString(folder.resolve("a.wall"), text);
    return ExampleWalls.in(folder, "a.wall", UnitSystem.US);
  }

  private static Recorded painted(ExampleWalls.Example example) {
    return Recorded.of(Elevation.of(example.layout(), example.options()));
  }

  @Test
  void theCornerOfANarrowFaceDoesNotStandInTheFacesName() throws IOException {
    Recorded recorded = painted(wall(TOWER));
    assertThat(recorded.texts).extracting(Recorded.Text::text).contains("Return", "corner 90°");
    Squares<Recorded.Text> seen = new Squares<>();
    for (Recorded.Text text : recorded.texts) {
      Box box = text.box().grown(-0.05);
      assertThat(seen.any(box, box::overlaps)).as("%s", text).isFalse();
      seen.put(box, text);
    }
  }

  @Test
  void theTitleStandsClearOfTheDimensionStrings() throws IOException {
    ExampleWalls.Example example = wall(TOWER);
    Recorded recorded = painted(example);
    Measuring strings = new Measuring();
    new Dimensions(new View(example.layout(), example.options(), Window.ALL)).paint(strings);
    Recorded.Text title =
        recorded.texts.stream()
            .filter(text -> text.text().equals("Elevation Front"))
            .findFirst()
            .orElseThrow();
    assertThat(title.box().top())
        .isLessThan(strings.reach().bottom() - Lettering.TITLE.height() / 2);
  }

  @Test
  void theMarkOfASlopedHeadStandsBesideTheHead() throws IOException {
    ExampleWalls.Example example = wall(HALL);
    View view = new View(example.layout(), example.options(), Window.ALL);
    List<HorizontalPiece> heads =
        example.layout().horizontals().stream()
            .filter(piece -> !piece.yLeft().equals(piece.yRight()))
            .toList();
    assertThat(heads).hasSize(6);
    Recorded recorded = painted(example);
    for (HorizontalPiece head : heads) {
      double left = view.corners(head)[0];
      double right = view.corners(head)[2];
      assertThat(recorded.texts)
          .filteredOn(text -> text.layer() == Layer.MARK)
          .as(head.name())
          .anySatisfy(
              text -> {
                Box box = text.box();
                assertThat(box.left()).isBetween(left, right);
                double above = view.clearOf(head, box.left(), box.right(), 1);
                double below = view.clearOf(head, box.left(), box.right(), -1);
                // by the height of two letters, over or under it
                assertThat(box.bottom() - above < 4 && below - box.top() < 4).isTrue();
                assertThat(box.bottom() >= above || box.top() <= below).isTrue();
              });
    }
  }

  @Test
  void aDoorOnTheFloorUnderASlopedRowIsDrawnUpToThatRow() throws IOException {
    String door =
        HALL.replace("at 10'-0\"   above G", "at 8'-0\" to 10'-0\"")
            .replace("to 20'-0\"", "")
            .replace(
                "G  at 0\"", "G  at 0\"\n    opening door D1 bays 3..4 from G to mid by others");
    ExampleWalls.Example example = wall(door);
    View view = new View(example.layout(), example.options(), Window.ALL);
    Cell opening =
        example.layout().cells().stream()
            .filter(cell -> cell.opening().isPresent())
            .findFirst()
            .orElseThrow();
    // no row is under it
    assertThat(opening.below()).isNegative();
    HorizontalPiece over =
        example.layout().horizontals().stream()
            .filter(it -> it.row() == opening.above() && it.firstBay() == opening.firstBay())
            .findFirst()
            .orElseThrow();
    double[] corners = view.corners(opening);
    assertThat(corners[1]).isEqualTo(corners[3]);
    for (int corner = 4; corner < 8; corner += 2) {
      assertThat(corners[corner + 1])
          .isEqualTo(view.clearOf(over, corners[corner], corners[corner], -1));
    }
    assertThat(corners[5]).isGreaterThan(corners[7]);
    assertThat(painted(example).texts).extracting(Recorded.Text::text).contains("D1");
  }
}
