package mullwright.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;
import mullwright.quantity.Rational;
import mullwright.quantity.Unit;
import org.junit.jupiter.api.Test;

/** The spellings of the grid, each with what it stands for, worked out by hand. */
class GridSpellingsTest {
  @Test
  void numberedLines() {
    Seen seen = Seen.grid("lines 1..19 spaced 18 @ 5'-0\"").sound();
    assertThat(seen.grid().lines()).hasSize(19);
    assertThat(seen.grid().lines().get(18).name()).isEqualTo("19");
    // 18 × 60"
    assertThat(seen.grid().lines().get(18).x()).isEqualTo(Length.ofInches(1080));
  }

  @Test
  void mixedSpacingWithALet() {
    // 1200, then 4 × 1500, 75, 2 × 1500, 900: 9 spaces between 10 names
    Seen seen =
        Seen.of(
                """
            units millimetres
            wall W {
              let b = 1500
              grid { lines A..J spaced 1200, 4 @ b, 75, 2 @ 1500, 900 }
            }
            """)
            .sound();
    assertThat(seen.grid().lines())
        .extracting(line -> line.name() + " " + line.x().millimetres().toPlainString())
        .containsExactly(
            "A 0", "B 1200", "C 2700", "D 4200", "E 5700", "F 7200", "G 7275", "H 8775", "I 10275",
            "J 11175");
  }

  @Test
  void skippedLettersAreNoLines() {
    Seen seen = Seen.grid("lines H..Q spaced 7 @ 60 skip I, O").sound();
    assertThat(seen.lines()).isEqualTo("H 0, J 60, K 120, L 180, M 240, N 300, P 360, Q 420");
  }

  @Test
  void anInsertedLineRenumbersNothing() {
    Seen seen = Seen.grid("lines A..D spaced 3 @ 60", "line C.5 at 2'-6\" right of C").sound();
    assertThat(seen.lines()).isEqualTo("A 0, B 60, C 120, C.5 150, D 180");
    assertThat(seen.grid().bays())
        .extracting(bay -> Seen.inches(bay.width()))
        .containsExactly("60", "60", "30", "30");
  }

  @Test
  void aLineMayLeanOnOneThatComesLater() {
    Seen seen =
        Seen.grid("line D at 10 left of C", "line C at 30 right of A", "lines A, B at 0, 100")
            .sound();
    assertThat(seen.lines()).isEqualTo("A 0, D 20, C 30, B 100");
  }

  @Test
  void positionsInsteadOfSpacing() {
    assertThat(Seen.grid("lines A, B, C at 0\", 5'-0\", 10'-6\"").sound().lines())
        .isEqualTo("A 0, B 60, C 126");
  }

  @Test
  void xCountsFromTheFirstLine() {
    assertThat(Seen.grid("lines A..C spaced 2 @ 60 at 24").sound().lines())
        .isEqualTo("A 0, B 60, C 120");
  }

  @Test
  void equalSpacesGiveTheRestToTheLast() {
    Seen seen = Seen.grid("lines A..H spaced 7 equal in 30'-0\"").sound();
    List<Grid.Bay> bays = seen.grid().bays();
    Length first = bays.get(0).width();
    // 360" / 7 does not come out: six are equal, the last is longer by less than a nanometre
    assertThat(bays.subList(0, 6)).allMatch(bay -> bay.width().equals(first));
    Length rest = bays.get(6).width().minus(first);
    assertThat(rest.signum()).isPositive();
    assertThat(rest).isLessThan(Length.ofNanometres(1));
    assertThat(seen.grid().lines().get(7).x()).isEqualTo(Length.ofInches(360));
  }

  @Test
  void theFloorsOfATower() {
    Seen seen =
        Seen.grid("floors L1..L24, Roof spaced 18'-0\", 11 @ 13'-0\", 16'-0\", 11 @ 13'-0\"")
            .sound();
    List<Grid.Floor> floors = seen.grid().floors();
    assertThat(floors).hasSize(25);
    assertThat(floors.get(1).name()).isEqualTo("L2");
    assertThat(floors.get(1).elevation().value()).isEqualTo(Length.ofInches(216));
    // L13 = 18' + 11 × 13' = 161'; L14 = 177'; Roof = 177' + 11 × 13' = 320'
    assertThat(floors.get(12).elevation().value()).isEqualTo(Length.ofInches(161 * 12));
    assertThat(floors.get(13).elevation().value()).isEqualTo(Length.ofInches(177 * 12));
    assertThat(floors.get(24).name()).isEqualTo("Roof");
    assertThat(floors.get(24).elevation().value()).isEqualTo(Length.ofInches(320 * 12));
  }

  @Test
  void floorsMayStartAboveTheDatum() {
    assertThat(Seen.grid("floors L1..L3 spaced 2 @ 13'-0\" at 100").sound().floors())
        .isEqualTo("L1 100, L2 256, L3 412");
  }

  @Test
  void aFloorAboveAFloor() {
    assertThat(Seen.grid("floor M at 6'-0\" above L1", "floor L1 at 12").sound().floors())
        .isEqualTo("L1 12, M 84");
  }

  @Test
  void slabsByFloorAndTheirExceptions() {
    Seen seen =
        Seen.grid(
                "floors L1..L5 spaced 4 @ 13'-0\" slab 10\"",
                "slab 14\" L3, L4",
                "floor L6 at 100'-0\" slab 250 mm edge 300 mm behind glass")
            .sound();
    assertThat(seen.grid().floors())
        .extracting(floor -> floor.slab().map(slab -> Seen.inches(slab.value())).orElse(""))
        .containsExactly("10", "10", "14", "14", "10", "1250/127");
    assertThat(seen.text(seen.grid().floors().get(2).slab().orElseThrow().origin()))
        .isEqualTo("14\"");
    assertThat(seen.grid().floors().get(5).edge().orElseThrow().value())
        .isEqualTo(Length.ofMillimetres(300));
    assertThat(seen.grid().floors().get(0).edge()).isEmpty();
  }

  @Test
  void anEdgeBeforeTheGlassIsNegative() {
    Seen seen =
        Seen.grid("floors L1, L2 spaced 13'-0\"", "slab 8\" L2 edge 1\" before glass").sound();
    assertThat(seen.grid().floors().get(1).edge().orElseThrow().value())
        .isEqualTo(Length.ofInches(-1));
  }

  @Test
  void aRowRepeatedOverFloorsWithExceptions() {
    Seen seen =
        Seen.grid(
                "lines A..C spaced 2 @ 60",
                "floors L1..L5 spaced 4 @ 156",
                "row rail at 3'-0\" above L2..L5 except L4",
                "row rail at 3'-10\" above L3")
            .sound();
    // L2 156 + 36, L3 312 + 46 (the exception), L5 624 + 36
    assertThat(seen.rows()).isEqualTo("L2.rail 192, L3.rail 358, L5.rail 660");
    assertThat(seen.grid().rows()).allMatch(row -> row.base().equals("rail"));
    assertThat(seen.grid().rows())
        .extracting(row -> row.floor().orElseThrow())
        .containsExactly(1, 2, 4);
  }

  @Test
  void anExceptionMaySpellTheFloorInItsName() {
    Seen seen =
        Seen.grid(
                "floors L1..L3 spaced 2 @ 156",
                "row rail at 36 above L1..L3",
                "row L2.rail at 40 above L2")
            .sound();
    assertThat(seen.rows()).isEqualTo("L1.rail 36, L2.rail 196, L3.rail 348");
  }

  @Test
  void oneRowAtOneFloorKeepsItsBareName() {
    Seen seen = Seen.grid("floor L1 at 0", "row sill at 2 above L1", "row mid at 30").sound();
    assertThat(seen.rows()).isEqualTo("sill 2, mid 30");
    assertThat(seen.grid().rows().get(1).floor()).isEmpty();
    assertThat(seen.grid().rows().get(1).left().base()).isEmpty();
  }

  @Test
  void aRowAboveARow() {
    Seen seen =
        Seen.grid(
                "floors L1, L2 spaced 156",
                "row top at 6 above rail",
                "row rail at 36 above L1, L2")
            .sound();
    assertThat(seen.rows()).isEqualTo("L1.rail 36, L1.top 42, L2.rail 192, L2.top 198");
    assertThat(seen.grid().rows().get(3).left().base()).contains("L2.rail");
  }

  @Test
  void aSlopedSillRunsThroughSomeBays() {
    Seen seen =
        Seen.grid(
                "lines A..G spaced 6 @ 60",
                "floor L1 at 0",
                "row sill at 60 above L1 to 96 above L1 only C..F")
            .sound();
    Grid.Row sill = seen.grid().rows().get(0);
    assertThat(sill.bays()).containsExactly(2, 3, 4);
    assertThat(sill.slopes()).isTrue();
    assertThat(sill.left().elevation()).isEqualTo(Length.ofInches(60));
    assertThat(sill.right().elevation()).isEqualTo(Length.ofInches(96));
  }

  @Test
  void aRakedHeadIsMeasuredFromTheDatum() {
    Seen seen = Seen.grid("lines A..C spaced 2 @ 60", "row head at 11500 mm to 12800 mm").sound();
    assertThat(seen.grid().rows().get(0).left().elevation()).isEqualTo(Length.ofMillimetres(11500));
    assertThat(seen.grid().rows().get(0).right().elevation())
        .isEqualTo(Length.ofMillimetres(12800));
  }

  @Test
  void anExceptionLeavesASlopeItsLine() {
    // from 0 at A to 40 at E; the exception takes C..D, so what is left is 0 to 20 and 30 to 40
    Seen seen =
        Seen.grid("lines A..E spaced 4 @ 60", "row sill at 0 to 40", "row sill at 5 only C..D")
            .sound();
    assertThat(seen.grid().rows())
        .extracting(
            row ->
                row.bays()
                    + " "
                    + Seen.inches(row.left().elevation())
                    + " "
                    + Seen.inches(row.right().elevation()))
        .containsExactly("[0, 1] 0 20", "[2] 5 5", "[3] 30 40");
  }

  @Test
  void aSteppedSillIsTwoRowsOfOneName() {
    Seen seen =
        Seen.grid(
                "lines A..E spaced 4 @ 60",
                "floor L1 at 0",
                "row sill at 2 above L1 only A..C",
                "row sill at 36 above L1 only C..E")
            .sound();
    assertThat(seen.rows()).isEqualTo("sill 2, sill 36");
    assertThat(seen.grid().rows().get(0).bays()).containsExactly(0, 1);
    assertThat(seen.grid().rows().get(1).bays()).containsExactly(2, 3);
  }

  @Test
  void aBeamInOneBay() {
    Seen seen =
        Seen.grid("lines 1..9 spaced 8 @ 60", "floor L1 at 0", "row beam at 128 above L1 only 7..8")
            .sound();
    assertThat(seen.grid().rows().get(0).bays()).containsExactly(6);
  }

  @Test
  void facesShareTheirCornerLine() {
    Seen seen =
        Seen.grid(
                "face South lines 1..5 spaced 4 @ 60",
                "face East  lines 5..8 spaced 3 @ 48",
                "corner 5 90 deg")
            .sound();
    assertThat(seen.lines()).isEqualTo("1 0, 2 60, 3 120, 4 180, 5 240, 6 288, 7 336, 8 384");
    assertThat(seen.grid().faces())
        .extracting(face -> face.name() + " " + face.firstLine() + " " + face.lastLine())
        .containsExactly("South 0 4", "East 4 7");
    assertThat(seen.grid().bays()).hasSize(7);
    assertThat(seen.grid().lines().get(4).end()).isFalse();
    Grid.Corner corner = seen.grid().corners().get(0);
    assertThat(corner.line()).isEqualTo(4);
    assertThat(corner.angle().value()).isEqualTo(Quantity.of(Rational.of(90), Unit.DEGREE));
  }

  @Test
  void facesMayNameLinesPlacedElsewhere() {
    Seen seen =
        Seen.grid("face South lines 1..3", "face East lines 3..4", "lines 1..4 spaced 3 @ 60")
            .sound();
    assertThat(seen.grid().faces())
        .extracting(face -> face.name() + " " + face.firstLine() + " " + face.lastLine())
        .containsExactly("South 0 2", "East 2 3");
  }

  @Test
  void nothingCrossesAJoint() {
    Seen seen = Seen.grid("lines A..H spaced 5 @ 60, 3, 60", "joint F..G").sound();
    assertThat(seen.grid().joints())
        .extracting(joint -> joint.left() + " " + joint.right())
        .containsExactly("5 6");
    // seven spaces, one of them the joint
    assertThat(seen.grid().bays()).hasSize(6);
    assertThat(
            IntStream.range(0, 8)
                .filter(line -> seen.grid().lines().get(line).end())
                .mapToObj(seen::line))
        .containsExactly("A", "F", "G", "H");
  }

  @Test
  void theOuterEdgeOfTheEnds() {
    Seen seen =
        Seen.grid("lines A..C spaced 2 @ 60 edge", "row sill at 0 edge", "row head at 96 edge")
            .sound();
    assertThat(seen.grid().lines()).extracting(Grid.Line::edge).containsExactly(true, false, true);
    assertThat(seen.grid().rows()).allMatch(Grid.Row::edge);
  }

  @Test
  void openingsByPlacesAndByRows() {
    Seen seen =
        Seen.grid(
                "lines 1..5 spaced 4 @ 60",
                "floors L1, L2 spaced 156",
                "row door-head at 84 above L1 only 2..4",
                "row curb at 24 above L2",
                "row louvre-top at 96 above L2",
                "opening door D1 bays 2..3 from L1 to door-head by others clear 1/4\"",
                "opening louvre LV-1 bays 1..5 rows L2.curb..L2.louvre-top by others mass 6 psf")
            .sound();
    Grid.Opening door = seen.grid().openings().get(0);
    assertThat(door.kind()).isEqualTo(Grid.OpeningKind.DOOR);
    assertThat(door.bays()).containsExactly(1);
    assertThat(door.bottom().elevation()).isEqualTo(Length.ZERO);
    assertThat(door.top().elevation()).isEqualTo(Length.ofInches(84));
    assertThat(door.top().base()).contains("door-head");
    assertThat(door.byOthers()).isTrue();
    assertThat(door.clear().orElseThrow().value()).isEqualTo(Length.ofInches(1, 4));
    Grid.Opening louvre = seen.grid().openings().get(1);
    assertThat(louvre.bays()).containsExactly(0, 1, 2, 3);
    assertThat(louvre.bottom().elevation()).isEqualTo(Length.ofInches(180));
    assertThat(louvre.top().elevation()).isEqualTo(Length.ofInches(252));
    // 6 lb/ft² as a mass by area: 6 × 0.45359237 / 0.3048² kg/m² (closed form)
    Rational mass = Rational.of("0.45359237").times(6).dividedBy(Rational.of("0.3048").power(2));
    assertThat(louvre.mass().orElseThrow().value())
        .isEqualTo(new Quantity(mass, Kind.MASS_PER_AREA.dimension()));
  }

  @Test
  void lettersGoOnAfterZ() {
    Seen seen = Seen.grid("lines Y..AC spaced 4 @ 60").sound();
    assertThat(seen.lines()).isEqualTo("Y 0, Z 60, AA 120, AB 180, AC 240");
  }

  @Test
  void quotedNamesAreNames() {
    Seen seen = Seen.grid("floor \"ground floor\" at 0", "row sill at 2 above \"ground floor\"");
    assertThat(seen.sound().grid().floors().get(0).name()).isEqualTo("ground floor");
  }

  @Test
  void everySecondNameCanBeGiven() {
    assertThat(Seen.grid("lines 1..7 every 2 spaced 3 @ 60").sound().lines())
        .isEqualTo("1 0, 3 60, 5 120, 7 180");
  }
}
