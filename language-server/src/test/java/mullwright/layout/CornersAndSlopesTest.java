package mullwright.layout;

import static mullwright.layout.TestParts.in;
import static mullwright.layout.TestParts.mm;
import static mullwright.layout.TestParts.profile;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import mullwright.model.Role;
import org.junit.jupiter.api.Test;

/** Around a corner a leg stands in place of the half width; on a slope a piece has its longest. */
class CornersAndSlopesTest {
  @Test
  void theLegOfEachFaceStandsInPlaceOfTheHalfWidth() {
    // corner B: leg 3" on the left-hand face, 3 1/2" on the right-hand one
    WallLayout layout =
        TestWalls.of(TestParts.inches())
            .lines("A B C", in(60))
            .corner("B")
            .row("sill", in(0))
            .row("head", in(80))
            .layOut();
    // metal: left 60" - 1 1/8" - 3" - 1/16" = 55 13/16"; right 60" - 3 1/2" - 1 1/8" - 1/16" =
    // 55 5/16"
    assertThat(layout.horizontals())
        .extracting(HorizontalPiece::length)
        .containsExactly(in(893, 16), in(885, 16), in(893, 16), in(885, 16));
    // daylight: 60" - 1 1/8" - 3" = 55 7/8"; 60" - 3 1/2" - 1 1/8" = 55 3/8"
    assertThat(layout.cells())
        .extracting(Cell::daylightWidth)
        .containsExactly(in(447, 8), in(443, 8));
    // plates: 60" - 1 1/4" - 3" - 2 x 1/8" = 55 1/2"; 60" - 3 1/2" - 1 1/4" - 1/4" = 55"
    assertThat(
            layout.covers().stream()
                .filter(c -> !c.vertical() && c.what() == CoverPiece.What.PRESSURE_PLATE)
                .map(CoverPiece::length))
        .containsExactly(in(111, 2), in(55), in(111, 2), in(55));
    // a corner has a bay on either side
    assertThat(layout.verticals().get(1).endMember()).isFalse();
  }

  /** One bay of 500 whose sill rises by 375: slope 3 to 4, so every slant comes out even. */
  private static TestWalls sloped() {
    return TestWalls.of(
            TestParts.millimetres()
                .with("jamb", metric(Role.JAMB, 40))
                .with("mullion", metric(Role.MULLION, 40))
                .with("sill", metric(Role.SILL, 80))
                .with("head", metric(Role.HEAD, 80)))
        .lines("A B C", mm(500))
        .slope("sill", mm(100), mm(850), "A", "C")
        .row("head", mm(3000));
  }

  private static TestParts.ProfileSheet metric(Role role, long face) {
    return profile(role, mm(face)).bite(mm(12), mm(12)).endAllowance(mm(1));
  }

  @Test
  void aSlopedHorizontalHasItsLongestLength() {
    HorizontalPiece piece = sloped().layOut().horizontals().get(0);
    // clear 500 - 20 - 20 - 2 = 458 across; slope 750 in 1000: cos 0.8, tan 0.75
    // along the slope 458 / 0.8 = 572.5, point to point + 80 x 0.75 = 632.5
    assertThat(piece.length()).isEqualTo(mm(6325, 10));
    // left end at x = 21: 100 + 21 x 0.75
    assertThat(piece.yLeft()).isEqualTo(mm(11575, 100));
    // right end at x = 479
    assertThat(piece.yRight()).isEqualTo(mm(45925, 100));
  }

  @Test
  void aVerticalReachesTheFurthestPointOfItsSlopedCut() {
    WallLayout layout = sloped().layOut();
    // half of 80 measured upright is 40 / 0.8 = 50
    // A: lowest at its outer edge, x = -20: 100 - 15 - 50 = 35; top 3000 + 40
    assertThat(layout.verticals().get(0).bottom()).isEqualTo(mm(35));
    assertThat(layout.verticals().get(0).length()).isEqualTo(mm(3005));
    // B: lowest at x = 480: 100 + 360 - 50 = 410
    assertThat(layout.verticals().get(1).bottom()).isEqualTo(mm(410));
    // C: lowest at its inner edge, x = 980: 100 + 735 - 50 = 785
    assertThat(layout.verticals().get(2).bottom()).isEqualTo(mm(785));
  }

  @Test
  void aLiteOnASlopeHasItsBoundingSize() {
    Cell cell = sloped().layOut().cells().get(0);
    assertThat(cell.rectangular()).isFalse();
    // daylight from x = 20 to 480; lowest at x = 20: 100 + 15 + 50 = 165; top 3000 - 40 = 2960
    assertThat(cell.daylightWidth()).isEqualTo(mm(460));
    assertThat(cell.bottom()).isEqualTo(mm(165));
    assertThat(cell.top()).isEqualTo(mm(2960));
    // glass from x = 8; there 100 + 6 + (40 - 12) / 0.8 = 141; to 2960 + 12: 2831
    assertThat(cell.glassWidth()).isEqualTo(mm(484));
    assertThat(cell.glassHeight()).isEqualTo(mm(2831));
  }

  @Test
  void aRakedHeadThatDoesNotComeOutEvenIsNearToTheTick() {
    WallLayout layout =
        TestWalls.of(TestParts.inches())
            .lines("A B", in(60))
            .row("sill", in(0))
            .slope("head", in(100), in(117), "", "")
            .layOut();
    double across = 60 - 2.25 - 1.0 / 16;
    double slant = Math.sqrt(60.0 * 60 + 17 * 17) / 60; // Pythagoras
    HorizontalPiece head = layout.horizontals().get(1);
    assertThat(head.length().toInches()).isCloseTo(across * slant + 3 * 17.0 / 60, within(1e-9));
    // the higher side of B is its outer edge, x = 61 1/8": 100" + 17" x 61.125 / 60 + 1 1/2" x
    // slant
    assertThat(layout.verticals().get(1).top().toInches())
        .isCloseTo(100 + 17 * 61.125 / 60 + 1.5 * slant, within(1e-9));
    assertThat(layout.cells().get(0).rectangular()).isFalse();
  }

  @Test
  void atARidgeTheVerticalReachesTheRidgeOnly() {
    WallLayout layout =
        TestWalls.of(TestParts.millimetres().with("head", metric(Role.HEAD, 80)))
            .lines("A B C", mm(400))
            .row("sill", mm(0))
            .slope("head.left", mm(3000), mm(3300), "A", "B")
            .slope("head.right", mm(3300), mm(3000), "B", "C")
            .layOut();
    // slope 3 to 4: the upper edges of both heads meet over B at 3300 + 40 / 0.8
    assertThat(layout.verticals().get(1).top()).isEqualTo(mm(3350));
    // A at its inner edge, x = 27.5, is lower than that and higher than at its outer edge
    assertThat(layout.verticals().get(0).top()).isEqualTo(mm(3070625, 1000));
  }
}
