package mullwright.layout;

import static mullwright.layout.TestParts.in;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import mullwright.quantity.Length;
import org.junit.jupiter.api.Test;

/** Verticals run through, horizontals stop between them: steps, stops in between, joints, edges. */
class WhoRunsThroughTest {
  private static VerticalPiece vertical(WallLayout layout, String name) {
    return layout.verticals().stream()
        .filter(piece -> piece.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + name + " in " + layout.verticals()));
  }

  private static List<String> names(WallLayout layout) {
    return layout.cells().stream().map(Cell::name).toList();
  }

  private static HorizontalPiece horizontal(WallLayout layout, String name) {
    return layout.horizontals().stream()
        .filter(piece -> piece.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + name + " in " + layout.horizontals()));
  }

  @Test
  void atAStepInTheSillTheVerticalTakesTheLowerBay() {
    WallLayout layout =
        TestWalls.of(TestParts.inches())
            .lines("A B C", in(60))
            .row("sill.low", in(2), "A", "B")
            .row("sill.high", in(26), "B", "C")
            .row("head", in(100))
            .layOut();
    // B: 2" - 1" to 100" + 1 1/2"; C: 26" - 1" to the same
    assertThat(vertical(layout, "vertical B").bottom()).isEqualTo(in(1));
    assertThat(vertical(layout, "vertical B").length()).isEqualTo(in(201, 2));
    assertThat(vertical(layout, "vertical C").bottom()).isEqualTo(in(25));
    assertThat(vertical(layout, "vertical C").length()).isEqualTo(in(153, 2));
    assertThat(names(layout))
        .containsExactly("lite in bay A-B, sill.low to head", "lite in bay B-C, sill.high to head");
    assertThat(layout.impossible()).isEmpty();
  }

  private static TestWalls threeBays() {
    return TestWalls.of(TestParts.inches())
        .lines("A B C D", in(60))
        .row("sill", in(2))
        .row("R1", in(36))
        .row("head", in(144));
  }

  @Test
  void aVerticalThatStartsAtARowInBetweenStandsOnItsHorizontal() {
    TestWalls wall = threeBays();
    WallLayout layout = wall.vertical("B", wall.at("R1"), null).layOut();
    // from the upper edge of R1, 36" + 1 1/4", to the upper edge of the head, 145 1/2"
    assertThat(vertical(layout, "vertical B").bottom()).isEqualTo(in(149, 4));
    assertThat(vertical(layout, "vertical B").length()).isEqualTo(in(433, 4));
    // R1 runs through from A to C: 120" - 1 1/8" - 1 1/4" - 1/16"; so does the sill
    assertThat(horizontal(layout, "horizontal R1, bays A-C").length()).isEqualTo(in(1881, 16));
    assertThat(horizontal(layout, "horizontal sill, bays A-C").length()).isEqualTo(in(1881, 16));
    assertThat(horizontal(layout, "horizontal head, bay A-B").length()).isEqualTo(in(921, 16));
    assertThat(names(layout))
        .containsExactly(
            "lite in bays A-C, sill to R1",
            "lite in bay A-B, R1 to head",
            "lite in bay B-C, R1 to head",
            "lite in bay C-D, sill to R1",
            "lite in bay C-D, R1 to head");
    // 120" - 1 1/8" - 1 1/4" = 117 5/8", glass 118 5/8"
    assertThat(layout.cells().get(0).glassWidth()).isEqualTo(in(949, 8));
    assertThat(layout.impossible()).isEmpty();
  }

  @Test
  void aVerticalThatStopsAtARowInBetweenHangsUnderIt() {
    TestWalls wall = threeBays();
    WallLayout layout = wall.vertical("C", null, wall.at("R1")).layOut();
    // from the lower edge of the sill, 1", to the lower edge of R1, 36" - 1 1/4"
    assertThat(vertical(layout, "vertical C").length()).isEqualTo(in(135, 4));
    assertThat(horizontal(layout, "horizontal R1, bays B-D").length()).isEqualTo(in(1881, 16));
    assertThat(horizontal(layout, "horizontal head, bays B-D").length()).isEqualTo(in(1881, 16));
    assertThat(names(layout)).contains("lite in bays B-D, R1 to head");
  }

  @Test
  void twoVerticalsMayMeetAtARow() {
    TestWalls wall = threeBays();
    WallLayout layout =
        wall.vertical("B", null, wall.at("R1")).vertical("B", wall.at("R1"), null).layOut();
    assertThat(layout.verticals().stream().filter(piece -> piece.line() == 1))
        .extracting(VerticalPiece::name)
        .containsExactly("vertical B, lower length", "vertical B, upper length");
    assertThat(horizontal(layout, "horizontal R1, bays A-C")).isNotNull();
    assertThat(names(layout))
        .contains("lite in bay A-B, sill to R1", "lite in bay A-B, R1 to head");
  }

  @Test
  void fromTheLowestToTheHighestRowIsFullHeight() {
    TestWalls wall = threeBays();
    WallLayout stated = wall.vertical("B", wall.at("sill"), wall.at("head")).layOut();
    assertThat(vertical(stated, "vertical B").length()).isEqualTo(in(289, 2));
    assertThat(stated.horizontals()).hasSize(9);
  }

  @Test
  void aBareHeightIsThatHeight() {
    TestWalls wall = threeBays().floor("Roof", in(140), in(8));
    WallLayout layout = wall.vertical("A", wall.at(in(-3)), wall.at("Roof", in(12))).layOut();
    assertThat(vertical(layout, "vertical A").bottom()).isEqualTo(in(-3));
    assertThat(vertical(layout, "vertical A").top()).isEqualTo(in(152));
  }

  @Test
  void atAJointBothLinesAreEndMembersAndNothingCrosses() {
    WallLayout layout =
        TestWalls.of(TestParts.inches())
            .lines("A B C D", in(60), in(5), in(60))
            .joint("B", "C")
            .row("sill", in(2))
            .row("head", in(100))
            .layOut();
    assertThat(layout.verticals()).allMatch(VerticalPiece::endMember);
    assertThat(layout.verticals()).extracting(v -> v.profile().name()).containsOnly("jamb");
    assertThat(names(layout))
        .containsExactly("lite in bay A-B, sill to head", "lite in bay C-D, sill to head");
    // 60" - 2 x 1 1/8" - 1/16"
    assertThat(layout.horizontals()).hasSize(4);
    assertThat(layout.horizontals()).extracting(HorizontalPiece::length).containsOnly(in(923, 16));
  }

  @Test
  void edgePositionsMoveTheCentreByHalfTheFace() {
    WallLayout layout =
        TestWalls.of(TestParts.inches())
            .lines("A B C", in(60))
            .lineByEdge("A")
            .lineByEdge("C")
            .rowByEdge("sill", in(0))
            .row("R1", in(50))
            .rowByEdge("head", in(100))
            .layOut();
    // A's outer edge at 0: centre at 1 1/8"; C's at 120": centre at 118 7/8"
    assertThat(vertical(layout, "vertical A").x()).isEqualTo(in(9, 8));
    assertThat(vertical(layout, "vertical C").x()).isEqualTo(in(951, 8));
    // sill's lower edge at 0, head's upper edge at 100"
    assertThat(vertical(layout, "vertical A").bottom()).isEqualTo(in(0));
    assertThat(vertical(layout, "vertical A").length()).isEqualTo(in(100));
    // 60" - 2 1/4" (whole jamb) - 1 1/4" - 1/16" = 56 7/16"
    assertThat(layout.horizontals()).extracting(HorizontalPiece::length).containsOnly(in(903, 16));
    // sill 2" of face: daylight from 2" to 50" - 1 1/4"; head 3": from 51 1/4" to 97"
    assertThat(layout.cells().get(0).daylightHeight()).isEqualTo(in(187, 4));
    assertThat(layout.cells().get(1).daylightHeight()).isEqualTo(in(183, 4));
    assertThat(layout.cells().get(0).daylightWidth()).isEqualTo(in(113, 2));
  }

  @Test
  void aSpliceExactlyAtARowStillCuts() {
    TestWalls wall = threeBays();
    WallLayout layout = wall.splice("B", wall.at("R1"), in(1, 2)).layOut();
    // 1" to 35 3/4"; 36 1/4" to 145 1/2"
    assertThat(layout.verticals().stream().filter(piece -> piece.line() == 1))
        .extracting(VerticalPiece::length)
        .containsExactly(in(139, 4), in(437, 4));
    // the joint is in the vertical, so R1 still stops there on both sides
    assertThat(horizontal(layout, "horizontal R1, bay A-B")).isNotNull();
    assertThat(horizontal(layout, "horizontal R1, bay B-C")).isNotNull();
  }

  @Test
  void aRowThatRunsInSomeBaysOnlyEndsAtItsVerticals() {
    WallLayout layout =
        TestWalls.of(TestParts.inches())
            .lines("A B C D", in(60))
            .row("sill", in(2))
            .row("rail", in(40), "B", "C")
            .row("head", in(100))
            .layOut();
    assertThat(names(layout))
        .containsExactly(
            "lite in bay A-B, sill to head",
            "lite in bay B-C, sill to rail",
            "lite in bay B-C, rail to head",
            "lite in bay C-D, sill to head");
    assertThat(layout.horizontals()).hasSize(7);
  }

  @Test
  void aTowerRepeats() {
    WallLayout layout = Towers.of(6, 9).layOut();
    // lengths: 1" to 180" - 3/8", then two floors of 312" less a gap of 3/4", the last from
    // 180" + 3 x 312" + 3/8" = 1116 3/8" to 9 x 156" + 4" + 1 1/2" = 1409 1/2": 293 1/8"
    List<Length> lengths =
        layout.verticals().stream()
            .filter(piece -> piece.line() == 3)
            .map(VerticalPiece::length)
            .toList();
    assertThat(lengths)
        .containsExactly(in(1429, 8), in(1245, 4), in(1245, 4), in(1245, 4), in(2345, 8));
    assertThat(layout.verticals().stream().filter(piece -> piece.line() == 3))
        .extracting(VerticalPiece::name)
        .containsExactly(
            "vertical 4, length 1 of 5, L1 to L2",
            "vertical 4, length 2 of 5, L2 to L4",
            "vertical 4, length 3 of 5, L4 to L6",
            "vertical 4, length 4 of 5, L6 to L8",
            "vertical 4, length 5 of 5, L8 to L10");
    // every whole floor has the same lites
    for (int bay = 0; bay < 6; bay++) {
      int first = bay;
      List<Length> heights =
          layout.cells().stream()
              .filter(cell -> cell.firstBay() == first)
              .map(Cell::glassHeight)
              .toList();
      assertThat(heights.subList(6, 11)).isEqualTo(heights.subList(11, 16));
    }
    assertThat(layout.impossible()).isEmpty();
  }

  @Test
  void threeLengthsAreLowerMiddleAndUpper() {
    TestWalls wall =
        threeBays().floor("L1", in(0), null).floor("L2", in(70), null).floor("L3", in(140), null);
    WallLayout layout =
        wall.splice("B", wall.at("L2", in(24)), in(1, 2))
            .splice("B", wall.at("L1", in(24)), in(1, 2))
            .layOut();
    assertThat(layout.verticals().stream().filter(piece -> piece.line() == 1))
        .extracting(VerticalPiece::name)
        .containsExactly(
            "vertical B, lower length, at L1",
            "vertical B, middle length, L1 to L2",
            "vertical B, upper length, L2 to L3");
    assertThat(layout.splices())
        .extracting(SpliceJoint::name)
        .containsExactly("splice of vertical B above L1", "splice of vertical B above L2");
  }
}
