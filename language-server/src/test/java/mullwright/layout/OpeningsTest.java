package mullwright.layout;

import static mullwright.layout.TestParts.in;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import mullwright.model.Grid.OpeningKind;
import mullwright.quantity.Length;
import org.junit.jupiter.api.Test;

/** Doors, voids, louvres: what drops out, what stays, what is beside them. */
class OpeningsTest {
  /** Four bays of 60": sill 2", door-head 86", head 146"; L1 at 0. */
  private static TestWalls shopFront() {
    return TestWalls.of(TestParts.inches())
        .lines("A B C D E", in(60))
        .floor("L1", in(0), in(6))
        .row("sill", in(2))
        .row("door-head", in(86))
        .row("head", in(146));
  }

  private static List<String> names(List<Cell> cells) {
    return cells.stream().map(Cell::name).toList();
  }

  private static VerticalPiece onLine(WallLayout layout, int line) {
    return layout.verticals().stream().filter(v -> v.line() == line).findFirst().orElseThrow();
  }

  private static List<Length> covers(WallLayout layout, String carrier) {
    return layout.covers().stream()
        .filter(cover -> cover.what() == CoverPiece.What.PRESSURE_PLATE)
        .filter(cover -> cover.name().equals("pressure plate of " + carrier))
        .map(CoverPiece::length)
        .toList();
  }

  @Test
  void aDoorTakesTheSillAndReachesTheFloor() {
    TestWalls wall = shopFront();
    WallLayout layout =
        wall.opening(
                OpeningKind.DOOR, "D1", "B", "C", wall.at("L1"), wall.at("door-head"), in(1, 4))
            .layOut();
    assertThat(layout.horizontals().stream().map(HorizontalPiece::name))
        .contains("horizontal sill, bay A-B", "horizontal door-head, bay B-C")
        .doesNotContain("horizontal sill, bay B-C");
    assertThat(names(layout.cells()))
        .containsExactly(
            "lite in bay A-B, sill to door-head",
            "lite in bay A-B, door-head to head",
            "door D1, bay B-C",
            "lite in bay B-C, door-head to head",
            "lite in bay C-D, sill to door-head",
            "lite in bay C-D, door-head to head",
            "lite in bay D-E, sill to door-head",
            "lite in bay D-E, door-head to head");
    Cell door = layout.cells().get(2);
    // daylight 60" - 2 x 1 1/4" = 57 1/2" by 86" - 1 1/4" = 84 3/4" from the floor
    assertThat(door.daylightWidth()).isEqualTo(in(115, 2));
    assertThat(door.daylightHeight()).isEqualTo(in(339, 4));
    assertThat(door.below()).isEqualTo(-1);
    // clear of both jambs and the head, not of the floor: 57" by 84 1/2"
    assertThat(door.glassWidth()).isEqualTo(in(57));
    assertThat(door.glassHeight()).isEqualTo(in(169, 2));
    assertThat(door.use()).isEmpty();
    // the door's jambs go down to the floor, the others to the lower edge of the sill
    assertThat(onLine(layout, 1).bottom()).isEqualTo(in(0));
    assertThat(onLine(layout, 2).bottom()).isEqualTo(in(0));
    assertThat(onLine(layout, 3).bottom()).isEqualTo(in(1));
    assertThat(layout.impossible()).isEmpty();
  }

  @Test
  void besideADoorPlatesStayForTheLiteOnTheOtherSide() {
    TestWalls wall = shopFront();
    WallLayout layout =
        wall.opening(OpeningKind.DOOR, "D1", "B", "C", wall.at("L1"), wall.at("door-head"))
            .layOut();
    // B: lite on its left from the sill's lower edge at 1" up to 147 1/2"
    assertThat(covers(layout, "vertical B")).containsExactly(in(293, 2));
    // the door's head has a lite above it
    assertThat(covers(layout, "horizontal door-head, bay B-C")).hasSize(1);
  }

  @Test
  void anEndMemberBesideADoorHasPlatesOnlyAboveIt() {
    TestWalls wall = shopFront();
    WallLayout layout =
        wall.opening(OpeningKind.DOOR, "D1", "A", "B", wall.at("L1"), wall.at("door-head"))
            .layOut();
    // A: from the lower edge of the door-head, 86" - 1 1/4" = 84 3/4", to 147 1/2"
    assertThat(covers(layout, "vertical A")).containsExactly(in(251, 4));
    assertThat(onLine(layout, 0).bottom()).isEqualTo(in(0));
    assertThat(onLine(layout, 0).endMember()).isTrue();
  }

  @Test
  void besideADoorPlatesUnderARakedHeadHaveTheirLongestLengthToo() {
    TestWalls wall =
        TestWalls.of(TestParts.inches())
            .lines("A B C D E", in(60))
            .floor("L1", in(0), in(6))
            .row("sill", in(2))
            .row("door-head", in(86))
            .slope("head", in(146), in(326), "A", "E");
    WallLayout layout =
        wall.opening(OpeningKind.DOOR, "D1", "A", "C", wall.at("L1"), wall.at("door-head"))
            .layOut();
    // slope 3 to 4, half of the head's 3" measured upright: 1 1/2" / 0.8 = 1 7/8"
    // A: highest at its inner edge, x = 1 1/8": 146" + 27/32" + 1 7/8", from 84 3/4"
    assertThat(onLine(layout, 0).top()).isEqualTo(in(4759, 32));
    assertThat(covers(layout, "vertical A")).containsExactly(in(4759 - 2712, 32));
    // C: highest at its right edge, x = 121 1/4": 146" + 90 15/16" + 1 7/8", from 1"
    assertThat(onLine(layout, 2).top()).isEqualTo(in(3821, 16));
    assertThat(covers(layout, "vertical C")).containsExactly(in(3821 - 16, 16));
  }

  @Test
  void betweenTwoDoorsThereIsNothingOnTheVertical() {
    TestWalls wall = shopFront();
    WallLayout layout =
        wall.opening(OpeningKind.DOOR, "D1", "B", "C", wall.at("L1"), wall.at("door-head"))
            .opening(OpeningKind.DOOR, "D2", "C", "D", wall.at("L1"), wall.at("door-head"))
            .layOut();
    assertThat(covers(layout, "vertical C")).containsExactly(in(251, 4));
    assertThat(onLine(layout, 2).bayLeft()).isTrue(); // lites above the doors
  }

  @Test
  void aDoorTwoBaysWideTakesTheVerticalBetween() {
    TestWalls wall = shopFront();
    WallLayout layout =
        wall.opening(OpeningKind.DOOR, "D1", "B", "D", wall.at("L1"), wall.at("door-head"))
            .layOut();
    // C stands on the door-head, 86" + 1 1/4", to 147 1/2"
    assertThat(onLine(layout, 2).bottom()).isEqualTo(in(349, 4));
    assertThat(onLine(layout, 2).length()).isEqualTo(in(241, 4));
    // the door-head runs through: 120" - 2 x 1 1/4" - 1/16" = 117 7/16"
    assertThat(layout.horizontals())
        .filteredOn(h -> h.name().equals("horizontal door-head, bays B-D"))
        .extracting(HorizontalPiece::length)
        .containsExactly(in(1879, 16));
    assertThat(names(layout.cells())).contains("door D1, bays B-D");
    assertThat(layout.impossible()).isEmpty();
  }

  @Test
  void statingThatTheVerticalStandsOnTheDoorHeadChangesNothing() {
    TestWalls plain = shopFront();
    plain.opening(OpeningKind.DOOR, "D1", "B", "D", plain.at("L1"), plain.at("door-head"));
    TestWalls said = shopFront();
    said.opening(OpeningKind.DOOR, "D1", "B", "D", said.at("L1"), said.at("door-head"))
        .vertical("C", said.at("door-head"), said.at("head"));
    assertThat(onLine(said.layOut(), 2).bottom()).isEqualTo(onLine(plain.layOut(), 2).bottom());
    assertThat(onLine(said.layOut(), 2).top()).isEqualTo(onLine(plain.layOut(), 2).top());
    assertThat(said.layOut().horizontals()).hasSameSizeAs(plain.layOut().horizontals());
  }

  /** Three bays, six rows from 0 to 200". */
  private static TestWalls sixRows() {
    return TestWalls.of(TestParts.inches())
        .lines("A B C D", in(60))
        .row("sill", in(0))
        .row("R1", in(40))
        .row("R2", in(80))
        .row("R3", in(120))
        .row("R4", in(160))
        .row("head", in(200));
  }

  @Test
  void aVoidInTheMiddleTakesMembersStrictlyInsideAndKeepsThoseOnItsEdge() {
    TestWalls wall = sixRows();
    WallLayout layout =
        wall.opening(OpeningKind.VOID, "P1", "A", "C", wall.at("R1"), wall.at("R4"), in(1, 2))
            .layOut();
    // R2 and R3 drop out in A-C; R1 and R4 run through there
    assertThat(layout.horizontals().stream().map(HorizontalPiece::name))
        .containsExactly(
            "horizontal sill, bay A-B",
            "horizontal sill, bay B-C",
            "horizontal sill, bay C-D",
            "horizontal R1, bays A-C",
            "horizontal R1, bay C-D",
            "horizontal R2, bay C-D",
            "horizontal R3, bay C-D",
            "horizontal R4, bays A-C",
            "horizontal R4, bay C-D",
            "horizontal head, bay A-B",
            "horizontal head, bay B-C",
            "horizontal head, bay C-D");
    // B in two: -1" to 38 3/4", 161 1/4" to 201 1/2"
    assertThat(layout.verticals().stream().filter(v -> v.line() == 1))
        .extracting(VerticalPiece::length)
        .containsExactly(in(159, 4), in(161, 4));
    assertThat(layout.verticals().stream().filter(v -> v.line() == 1))
        .extracting(VerticalPiece::name)
        .containsExactly("vertical B, lower length", "vertical B, upper length");
    Cell hole = layout.cells().stream().filter(c -> c.opening().isPresent()).findFirst().get();
    // 120" - 1 1/8" - 1 1/4" - 2 x 1/2" = 116 5/8"; 120" - 2 x 1 1/4" - 2 x 1/2" = 116 1/2"
    assertThat(hole.glassWidth()).isEqualTo(in(933, 8));
    assertThat(hole.glassHeight()).isEqualTo(in(233, 2));
    // A has plates below R1's upper edge and above R4's lower edge: -1" to 41 1/4", 158 3/4" to
    // 201 1/2"
    assertThat(covers(layout, "vertical A, part 1 of 2")).containsExactly(in(169, 4));
    assertThat(covers(layout, "vertical A, part 2 of 2")).containsExactly(in(171, 4));
    // C has lites on its right all the way
    assertThat(covers(layout, "vertical C")).containsExactly(in(405, 2));
  }

  @Test
  void aLouvreKeepsPocketAndPlates() {
    TestWalls wall = sixRows();
    WallLayout layout =
        wall.opening(OpeningKind.LOUVRE, "LV-1", "A", "B", wall.at("R1"), wall.at("R3")).layOut();
    Cell louvre = layout.cells().stream().filter(c -> c.opening().isPresent()).findFirst().get();
    assertThat(louvre.name()).isEqualTo("louvre LV-1, bay A-B");
    // 60" - 1 1/8" - 1 1/4" + 2 x 1/2" = 58 5/8"; 80" - 2 x 1 1/4" + 2 x 1/2" = 78 1/2"
    assertThat(louvre.glassWidth()).isEqualTo(in(469, 8));
    assertThat(louvre.glassHeight()).isEqualTo(in(157, 2));
    assertThat(covers(layout, "vertical A")).containsExactly(in(405, 2));
    assertThat(layout.verticals()).filteredOn(v -> v.line() == 0).allMatch(v -> v.bayRight());
  }

  @Test
  void anEndMemberBesideAVoidAloneHasNoBay() {
    TestWalls wall =
        TestWalls.of(TestParts.inches())
            .lines("A B C", in(60))
            .row("sill", in(0))
            .row("head", in(80));
    WallLayout layout =
        wall.opening(OpeningKind.VOID, "P1", "A", "B", wall.at("sill"), wall.at("head")).layOut();
    assertThat(onLine(layout, 1).bayLeft()).isFalse();
    assertThat(onLine(layout, 1).bayRight()).isTrue();
    assertThat(onLine(layout, 1).endMember()).isTrue();
    // no plates on A, nor on the rows of that bay
    assertThat(layout.covers().stream().map(CoverPiece::name))
        .noneMatch(name -> name.endsWith("vertical A") || name.endsWith("bay A-B"));
  }

  @Test
  void anOpeningThatEndsAtNoRowIsTold() {
    TestWalls wall = sixRows();
    WallLayout layout =
        wall.opening(OpeningKind.LOUVRE, "LV-1", "A", "B", wall.at("R1"), wall.at(in(100)))
            .layOut();
    assertThat(layout.impossible())
        .extracting(Impossible::name, Impossible::reason)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("louvre LV-1", Impossible.Reason.NO_HORIZONTAL));
  }
}
