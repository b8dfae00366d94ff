package mullwright.layout;

import static mullwright.layout.TestParts.in;
import static org.assertj.core.api.Assertions.assertThat;

import mullwright.layout.Impossible.Reason;
import org.assertj.core.groups.Tuple;
import org.junit.jupiter.api.Test;

/** What cannot be is told and left out; what hangs on an unknown profile is left out in silence. */
class ImpossibleTest {
  private static TestWalls wall() {
    return TestWalls.of(TestParts.inches())
        .lines("A B C", in(60))
        .row("sill", in(0))
        .row("R1", in(40))
        .row("head", in(80));
  }

  @Test
  void aBayNarrowerThanItsMembersHasNoHorizontalAndNoLite() {
    WallLayout layout =
        TestWalls.of(TestParts.inches())
            .lines("A B C", in(2), in(60))
            .row("sill", in(0))
            .row("head", in(80))
            .layOut();
    // 2" - 1 1/8" - 1 1/4" = -3/8", less 2 x 1/32" for a horizontal
    assertThat(layout.impossible())
        .extracting(Impossible::name, i -> i.length().orElseThrow())
        .contains(
            Tuple.tuple("horizontal sill, bay A-B", in(-7, 16)),
            Tuple.tuple("horizontal head, bay A-B", in(-7, 16)),
            Tuple.tuple("lite in bay A-B, sill to head", in(-3, 8)));
    assertThat(layout.horizontals()).hasSize(2);
    assertThat(layout.cells()).hasSize(1);
    assertThat(layout.verticals()).hasSize(3);
  }

  @Test
  void rowsCloserThanTheirFacesLeaveNoLite() {
    WallLayout layout =
        TestWalls.of(TestParts.inches())
            .lines("A B", in(60))
            .row("sill", in(0))
            .row("R1", in(2))
            .row("head", in(80))
            .layOut();
    // 2" - 1" - 1 1/4"
    assertThat(layout.impossible())
        .extracting(Impossible::name, Impossible::reason, i -> i.length().orElseThrow())
        .containsExactly(Tuple.tuple("lite in bay A-B, sill to R1", Reason.NO_LENGTH, in(-1, 4)));
  }

  @Test
  void aSpliceOutsideItsVerticalIsTold() {
    TestWalls wall = wall();
    WallLayout layout =
        wall.splice("B", wall.at(in(300)), in(1, 2))
            .splice("B", wall.at(in(-1)), in(1, 2))
            .layOut();
    assertThat(layout.impossible())
        .extracting(Impossible::reason)
        .containsExactly(Reason.SPLICE_OUTSIDE, Reason.SPLICE_OUTSIDE);
    assertThat(layout.verticals()).hasSize(3);
  }

  @Test
  void ofTwoSplicesWithNothingBetweenTheUpperIsTold() {
    TestWalls wall = wall();
    WallLayout layout =
        wall.splice("B", wall.at(in(50)), in(1, 2))
            .splice("B", wall.at(in(101, 2)), in(1, 2))
            .layOut();
    assertThat(layout.splices()).hasSize(1);
    assertThat(layout.impossible()).hasSize(1);
    assertThat(layout.verticals()).allMatch(piece -> piece.length().signum() > 0);
  }

  @Test
  void aVerticalThatEndsBelowItsBeginningIsTold() {
    TestWalls wall = wall();
    WallLayout layout = wall.vertical("B", wall.at(in(60)), wall.at(in(50))).layOut();
    assertThat(layout.impossible())
        .extracting(Impossible::name, Impossible::reason, Impossible::length)
        .contains(Tuple.tuple("vertical B", Reason.NO_LENGTH, java.util.Optional.of(in(-10))));
  }

  @Test
  void aHorizontalWhoseEndNothingHoldsIsTold() {
    TestWalls wall = wall();
    // the end line's vertical starts at 50": sill and R1 have nothing to hold their left end
    WallLayout layout = wall.vertical("A", wall.at(in(50)), null).layOut();
    assertThat(layout.impossible())
        .filteredOn(i -> i.reason() == Reason.NO_VERTICAL)
        .extracting(Impossible::name)
        .containsExactly(
            "horizontal sill, bay A-B", "horizontal R1, bay A-B", "lite in bay A-B, sill to R1");
  }

  @Test
  void whatHangsOnAnUnknownProfileIsLeftOut() {
    WallLayout layout = wall().profile("B", "nobody-knows").layOut();
    // B, all horizontals and lites beside it
    assertThat(layout.verticals()).hasSize(2);
    assertThat(layout.horizontals()).isEmpty();
    assertThat(layout.cells()).isEmpty();
    assertThat(layout.impossible()).isEmpty();
    WallLayout row = wall().profile("R1", "nobody-knows").layOut();
    // verticals end at sill and head, so they stay; the lites touch R1, so they go
    assertThat(row.verticals()).hasSize(3);
    assertThat(row.horizontals()).hasSize(4);
    assertThat(row.cells()).isEmpty();
    WallLayout sill = wall().profile("sill", "nobody-knows").layOut();
    assertThat(sill.verticals()).isEmpty();
    assertThat(sill.cells()).hasSize(2);
    assertThat(sill.impossible()).isEmpty();
  }

  @Test
  void aWallWithNothingInItIsAnEmptyLayout() {
    WallLayout layout = TestWalls.of(TestParts.inches()).lines("A B", in(60)).layOut();
    assertThat(layout.verticals()).isEmpty();
    assertThat(layout.horizontals()).isEmpty();
    assertThat(layout.cells()).isEmpty();
    assertThat(layout.impossible()).isEmpty();
  }
}
