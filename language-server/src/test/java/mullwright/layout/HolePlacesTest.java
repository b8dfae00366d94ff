package mullwright.layout;

import static mullwright.layout.TestParts.in;
import static mullwright.layout.TestParts.mm;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import mullwright.quantity.Length;
import org.junit.jupiter.api.Test;

/** Where holes are, worked by hand, and what holds of them in any wall. */
class HolePlacesTest {
  private static TestParts drilled() {
    return TestParts.inches().block("block", in(9, 32), in(5, 8), in(2), in(4));
  }

  // lines at 0, 60, 120; sill 2 (face 2), rail 50 (face 2 1/2), head 100 (face 3)
  private static TestWalls wall() {
    return TestWalls.of(drilled())
        .lines("A B C", in(60))
        .row("sill", in(2))
        .row("rail", in(50))
        .row("head", in(100));
  }

  private static List<Length> along(List<DrilledHole> holes) {
    return holes.stream().map(DrilledHole::along).distinct().toList();
  }

  @Test
  void blockHolesOfAVerticalAreOnTheHorizontalsCentreLines() {
    WallLayout layout = wall().layOut();
    HolePlaces holes = HolePlaces.of(layout);
    // closed form, recomputed: the vertical begins at 2 − 1 = 1, so rows stand at 1, 49, 99 of it
    assertThat(along(holes.vertical(0))).containsExactly(in(1), in(49), in(99));
    assertThat(holes.vertical(0)).hasSize(6).allMatch(hole -> hole.side() == HoleSide.RIGHT);
    assertThat(holes.vertical(1)).hasSize(12);
    assertThat(holes.vertical(2)).hasSize(6).allMatch(hole -> hole.side() == HoleSide.LEFT);
    assertThat(holes.vertical(0).subList(0, 2))
        .extracting(hole -> hole.back().orElseThrow())
        .containsExactly(in(2), in(4));
  }

  @Test
  void blockHolesOfAHorizontalAreSoFarFromItsEnds() {
    WallLayout layout = wall().layOut();
    HolePlaces holes = HolePlaces.of(layout);
    // closed form, recomputed: 60 − 1 1/8 − 1 1/4 − 1/16 = 57 9/16 long; 5/8 and 56 15/16 along
    assertThat(layout.horizontals().get(0).length()).isEqualTo(in(921, 16));
    assertThat(along(holes.horizontal(0))).containsExactly(in(5, 8), in(911, 16));
    assertThat(holes.horizontal(0)).hasSize(4);
  }

  @Test
  void aSlopedHorizontalIsDrilledOnItsCentreLine() {
    // a rise of 30 in 40 (slope 3/4): the upright cut takes 2 × 3/4 = 1 1/2 over the sill's face of
    // 2
    TestWalls sloped =
        TestWalls.of(drilled())
            .lines("A B", in(40))
            .slope("sill", in(0), in(30), "A", "B")
            .row("head", in(100));
    WallLayout layout = sloped.layOut();
    HolePlaces holes = HolePlaces.of(layout);
    HorizontalPiece sill = layout.horizontals().get(0);
    assertThat(holes.ends(sill).slant()).isEqualTo(in(3, 2));
    assertThat(holes.horizontal(0).get(0).along()).isEqualTo(in(3, 4).plus(in(5, 8)));
    assertThat(holes.horizontal(0).get(3).along())
        .isEqualTo(sill.length().minus(in(3, 4)).minus(in(5, 8)));
    // and the vertical beside it is cut along the slope: 2 1/4 × 3/4
    assertThat(holes.bottom(layout.verticals().get(0)).slant()).isEqualTo(in(27, 16));
    assertThat(holes.top(layout.verticals().get(0)).square()).isTrue();
  }

  @Test
  void jambsWithHolesThatMapOntoThemselvesAreOnePieceTurnedEndForEnd() {
    // rows 2, 51, 100 with faces 3 below and above: 1 1/2, 50 1/2, 99 1/2 of 101 — symmetric
    TestWalls symmetric =
        TestWalls.of(drilled())
            .lines("A B C", in(60))
            .row("head-low", in(2))
            .row("rail", in(51))
            .row("head", in(100))
            .profile("head-low", "head");
    PieceMarks marks = PieceMarks.of(symmetric.layOut());
    assertThat(marks.vertical(0)).isEqualTo(marks.vertical(2));
    assertThat(marks.vertical(1)).isNotEqualTo(marks.vertical(0));
    // an inch lower, and the left jamb's holes are nobody else's
    TestWalls uneven =
        TestWalls.of(drilled())
            .lines("A B C", in(60))
            .row("head-low", in(2))
            .row("rail", in(50))
            .row("head", in(100))
            .profile("head-low", "head");
    PieceMarks apart = PieceMarks.of(uneven.layOut());
    assertThat(apart.vertical(0)).isNotEqualTo(apart.vertical(2));
  }

  @Test
  void aProfileWithUnlikeSidesIsNotTurned() {
    TestParts parts =
        drilled()
            .with(
                "jamb", TestParts.profile(mullwright.model.Role.JAMB, in(9, 4)).bite(in(1), in(2)));
    TestWalls symmetric =
        TestWalls.of(parts)
            .lines("A B C", in(60))
            .row("head-low", in(2))
            .row("head", in(100))
            .profile("head-low", "head");
    PieceMarks marks = PieceMarks.of(symmetric.layOut());
    assertThat(marks.vertical(0)).isNotEqualTo(marks.vertical(2));
  }

  @Test
  void everyEndOfAHorizontalMeetsItsHolesInTheVertical() {
    for (int seed = 0; seed < 300; seed++) {
      WallLayout layout = new RandomWalls(seed, false).wall(1).layOut();
      HolePlaces holes = HolePlaces.of(layout);
      VerticalsOnLine lines = new VerticalsOnLine(layout);
      int ends = 0;
      for (HorizontalPiece piece : layout.horizontals()) {
        ends += meets(piece, piece.leftLine(), piece.yLeft(), HoleSide.RIGHT, layout, holes, lines);
        ends +=
            meets(piece, piece.rightLine(), piece.yRight(), HoleSide.LEFT, layout, holes, lines);
      }
      // and there is no hole besides
      assertThat(
              layout.verticals().stream()
                  .flatMap(piece -> holes.vertical(piece.index()).stream())
                  .filter(hole -> hole.purpose() == DrilledHole.Purpose.SHEAR_BLOCK)
                  .count())
          .as("wall %s", seed)
          .isEqualTo(2L * ends);
    }
  }

  // 1 if a length of vertical passes there (a splice may be there instead)
  private static int meets(
      HorizontalPiece piece,
      int line,
      Length y,
      HoleSide side,
      WallLayout layout,
      HolePlaces holes,
      VerticalsOnLine lines) {
    int vertical = lines.inside(line, y);
    if (vertical < 0) {
      return 0;
    }
    Length along = y.minus(layout.verticals().get(vertical).bottom());
    List<Optional<Length>> depths =
        holes.horizontal(piece.index()).stream().map(DrilledHole::back).distinct().toList();
    assertThat(
            holes.vertical(vertical).stream()
                .filter(hole -> hole.side() == side && hole.along().equals(along))
                .filter(hole -> hole.partner().equals(piece.name()))
                .map(DrilledHole::back))
        .as(piece.name())
        .containsExactlyElementsOf(depths);
    return 1;
  }

  @Test
  void marksAreTheSameOfAWallAndItsMirrorImage() {
    // mirrored, every piece is turned over, not end for end; counts of marks may not change
    for (int seed = 0; seed < 100; seed++) {
      RandomWalls plan = new RandomWalls(seed, true);
      WallLayout one = plan.wall(1).layOut();
      WallLayout other = plan.mirrored(1).layOut();
      assertThat(count(PieceMarks.of(one), one)).isEqualTo(count(PieceMarks.of(other), other));
    }
  }

  private static long count(PieceMarks marks, WallLayout layout) {
    return layout.verticals().stream()
        .map(piece -> marks.vertical(piece.index()))
        .distinct()
        .count();
  }

  @Test
  void fastenersOfAPlate() {
    // CHECK 12a, handbook of the trade (common practice): L = 69.5, s = 9, e = 2 → n = 9, spacing
    // 8.1875
    List<Length> places = PlateHoles.places(in(139, 2), in(2), in(9));
    assertThat(places).hasSize(9).startsWith(in(2)).endsWith(in(135, 2));
    assertThat(places.get(1).minus(places.get(0))).isEqualTo(in(131, 16));
    // conventions: n = max(2, ⌈(L − 4")/9"⌉ + 1), at the limits
    assertThat(PlateHoles.places(in(13), in(2), in(9))).hasSize(2);
    assertThat(PlateHoles.places(in(13).plus(mm(1)), in(2), in(9))).hasSize(3);
    assertThat(PlateHoles.places(in(3), in(2), in(9))).containsExactly(in(3, 4), in(9, 4));
  }

  @Test
  void weepsStandFourInchesInAndClearOfTheBlocks() {
    WallLayout layout = wall().layOut();
    HolePlaces holes = HolePlaces.of(layout);
    // four lites, two weeps each; none over the head
    assertThat(holes.weeps()).hasSize(8);
    Weep first = holes.weeps().get(0);
    // daylight from 1 1/8: at 5 1/8; the plate begins at 1 1/4 + 1/8
    assertThat(first.x()).isEqualTo(in(41, 8));
    assertThat(holes.weepsOf(first.cover()).get(0).x().minus(in(11, 8))).isEqualTo(in(15, 4));
    // a bay of 20: daylight 17 3/4, glass 18 3/4, blocks of 4 centred at 4 11/16: from 2 3/16 of
    // the
    // daylight on with the half inch they are kept clear of; a weep at 4 gives way outward
    WallLayout narrow =
        TestWalls.of(drilled())
            .lines("A B", in(20))
            .row("sill", in(2))
            .row("head", in(100))
            .layOut();
    assertThat(HolePlaces.of(narrow).weeps())
        .allMatch(Weep::moved)
        .extracting(Weep::fromEnd)
        .containsExactly(in(27, 16), in(27, 16));
  }
}
