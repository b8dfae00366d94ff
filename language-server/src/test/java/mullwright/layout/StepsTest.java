package mullwright.layout;

import static mullwright.layout.TestParts.in;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import mullwright.model.Model;
import mullwright.model.ModelMemory;
import mullwright.model.ModelReader;
import mullwright.quantity.Length;
import mullwright.syntax.ParsedFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rows of one name at other heights in other bays, and rows that leave bays out. */
class StepsTest {
  private static final String PARTS =
      """
      units inches
      catalog {
        system s { mullion m
          jamb m
          sill si
          head h
          intermediate r
          clip c }
        profile m { role mullion
          face 2.5
          depth 6
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
        profile beam { role intermediate
          face 4
          depth 6
          bite 0.5 }
        clip c { projection 3 }
        glass V1 { ply 1/4" tempered }
        glass V2 { ply 3/8" tempered }
      }
      """;

  /** Four bays of 60", the sill at 2" in two of them and at 38" in the others. */
  private static String wall(String rows, String members, String anchors, String lites) {
    return PARTS
        + "wall W {\nsystem s\ngrid {\nlines 1..5 spaced 4 @ 60\nfloor L1 at 0\n"
        + rows
        + "}\nmembers {\nvertical all\nhorizontal all\n"
        + members
        + "}\nanchors {\n"
        + anchors
        + "}\nlites {\nvision V1 all\n"
        + lites
        + "}\n}\n";
  }

  private static Model model(String text) {
    ParsedFile file = ParsedFile.parse(text);
    return ModelReader.read("test.wall", path -> Optional.of(file), new ModelMemory());
  }

  private static WallLayout layOut(String text) {
    Model model = model(text);
    assertThat(model.problems()).isEmpty();
    return LayoutBuilder.layOut(model.walls().get(0), model.catalog());
  }

  private static final String SILL_STEPS_UP =
      "row sill at 2 above L1 only 1..3\nrow sill at 38 above L1 only 3..5\n";

  private static final String SILL_STEPS_DOWN =
      "row sill at 38 above L1 only 1..3\nrow sill at 2 above L1 only 3..5\n";

  private static final String HEAD = "row head at 120 above L1\n";

  @Test
  void aClipAtASillThatStepsSitsAtEachLinesLowerSill() {
    // at the step the vertical takes the lower bay (conventions of measure), so its clip does too
    WallLayout up = layOut(wall(SILL_STEPS_UP + HEAD, "", "clip all at sill\n", ""));
    assertThat(up.anchors())
        .extracting(PlacedAnchor::y)
        .containsExactly(in(2), in(2), in(2), in(38), in(38));
    // and the same seen from indoors
    WallLayout down = layOut(wall(SILL_STEPS_DOWN + HEAD, "", "clip all at sill\n", ""));
    assertThat(down.anchors())
        .extracting(PlacedAnchor::y)
        .containsExactly(in(38), in(38), in(2), in(2), in(2));
  }

  @Test
  void aClipAtAHeadThatStepsSitsAtEachLinesUpperHead() {
    String rows =
        "row sill at 2 above L1\nrow head at 120 above L1 only 1..3\n"
            + "row head at 144 above L1 only 3..5\n";
    // the vertical runs to the upper edge of its highest horizontal
    assertThat(layOut(wall(rows, "", "clip all at head\n", "")).anchors())
        .extracting(PlacedAnchor::y)
        .containsExactly(in(120), in(120), in(144), in(144), in(144));
  }

  @ParameterizedTest
  @CsvSource({"up", "down"})
  void litesBetweenASillThatStepsAndARowOverIt(String way) {
    String rows = (way.equals("up") ? SILL_STEPS_UP : SILL_STEPS_DOWN) + "row mid at 80 above L1\n";
    WallLayout layout = layOut(wall(rows + HEAD, "", "", "vision V2 rows sill..mid\n"));
    assertThat(layout.cells())
        .filteredOn(cell -> cell.use().orElseThrow().glass().value().equals("V2"))
        .hasSize(4)
        .extracting(Cell::daylightHeight)
        // 80" - 2" - 1" - 1 1/4" in two bays, 80" - 38" - 1" - 1 1/4" in two
        .containsExactlyInAnyOrder(in(303, 4), in(303, 4), in(159, 4), in(159, 4));
  }

  @Test
  void theRangeFromASillThatStepsTakesBothStretches() {
    String text =
        wall(SILL_STEPS_UP + "row mid at 80 above L1\n" + HEAD, "", "", "")
            .replace("horizontal all", "horizontal sill..head");
    // four sills, four mids, four heads
    assertThat(layOut(text).horizontals()).hasSize(12);
  }

  @Test
  void aVerticalAndAnOpeningFromASillThatStepsTakeTheirOwnBays() {
    String rows =
        SILL_STEPS_UP
            + "row mid at 80 above L1\n"
            + HEAD
            + "opening void P1 bays 1..2 from sill to mid\n"
            + "opening louvre P2 bays 4..5 rows sill..mid by others\n";
    WallLayout layout = layOut(wall(rows, "vertical 2 as m from sill to head\n", "", ""));
    // lower edge of the sill, 1", to the upper edge of the head, 121 1/2"
    assertThat(layout.verticals().get(1).length()).isEqualTo(in(241, 2));
    assertThat(layout.cells())
        .filteredOn(cell -> cell.opening().isPresent())
        .extracting(Cell::daylightHeight)
        .containsExactlyInAnyOrder(in(303, 4), in(159, 4));
  }

  @ParameterizedTest
  @CsvSource({
    "above L1 except 2..4, 2",
    "above L1 only all except 2..4, 2",
    "above L1 only 1..2, 1",
    "above L1 except 1..2, 3"
  })
  void aRowLeavesBaysOut(String where, int pieces) {
    WallLayout layout =
        layOut(wall("row sill at 2 above L1\nrow mid at 80 " + where + "\n" + HEAD, "", "", ""));
    assertThat(layout.horizontals())
        .filteredOn(piece -> piece.name().startsWith("horizontal mid"))
        .hasSize(pieces);
  }

  @Test
  void floorsAreExceptedBeforeBays() {
    String rows =
        "floor L2 at 144\nrow sill at 2 above L1\nrow rail at 36 above L1, L2 except L2, 1..2\n"
            + "row head at 288\n";
    assertThat(layOut(wall(rows, "", "", "")).horizontals())
        .filteredOn(piece -> piece.name().startsWith("horizontal rail"))
        .hasSize(3);
  }

  @Test
  void onePieceOfTwoProfilesIsTold() {
    String rows =
        "row sill at 2 above L1\nrow door-head at 84 above L1\n"
            + HEAD
            + "opening door D1 bays 2..4 from L1 to door-head by others\n";
    String text = wall(rows, "horizontal door-head as beam bays 2..3\n", "", "");
    WallLayout layout = layOut(text);
    assertThat(layout.impossible())
        .extracting(Impossible::reason)
        .contains(Impossible.Reason.TWO_PROFILES);
    WallLayout whole = layOut(text.replace("bays 2..3\n}", "bays 2..4\n}"));
    assertThat(whole.impossible()).isEmpty();
    // 120" - 2 x 1 1/4" - 2 x 1/32"
    List<Length> beam =
        whole.horizontals().stream()
            .filter(piece -> piece.profile().name().equals("beam"))
            .map(HorizontalPiece::length)
            .toList();
    assertThat(beam).containsExactly(in(1879, 16));
  }
}
