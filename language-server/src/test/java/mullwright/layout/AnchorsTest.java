package mullwright.layout;

import static mullwright.layout.TestParts.in;
import static org.assertj.core.api.Assertions.assertThat;

import mullwright.model.AnchorUse.Kind;
import mullwright.model.Grid.OpeningKind;
import mullwright.quantity.Length;
import org.junit.jupiter.api.Test;

/** Where anchors and clips sit and which length they hold. */
class AnchorsTest {
  private static TestWalls wall() {
    return TestWalls.of(
            TestParts.inches()
                .anchor("over", in(2), false, true)
                .anchor("under", in(3), true, false))
        .lines("A B C", in(60))
        .floor("L1", in(0), null)
        .floor("L2", in(150), in(10))
        .row("sill", in(2))
        .row("head", in(200));
  }

  private static Length height(TestWalls wall) {
    return wall.layOut().anchors().get(0).y();
  }

  @Test
  void theBoltLineIsMeasuredFromTopOrUndersideOfTheSlab() {
    TestWalls below = wall();
    // "angle": 8" below top of slab
    assertThat(height(below.anchor(Kind.DEAD_LOAD, "B", below.at("L2"), "angle")))
        .isEqualTo(in(142));
    TestWalls above = wall();
    assertThat(height(above.anchor(Kind.DEAD_LOAD, "B", above.at("L2"), "over")))
        .isEqualTo(in(152));
    TestWalls under = wall();
    // 150" - 10" of slab - 3"
    assertThat(height(under.anchor(Kind.DEAD_LOAD, "B", under.at("L2"), "under")))
        .isEqualTo(in(137));
  }

  @Test
  void aStatedHeightOverridesTheBoltLine() {
    TestWalls wall = wall();
    assertThat(height(wall.anchor(Kind.DEAD_LOAD, "B", wall.at("L2", in(-6)), "angle")))
        .isEqualTo(in(144));
  }

  @Test
  void withoutAPartAnAnchorSitsAtItsFloor() {
    TestWalls wall = wall();
    assertThat(height(wall.anchor(Kind.WIND_LOAD, "B", wall.at("L2"), "nobody-knows")))
        .isEqualTo(in(150));
  }

  @Test
  void aClipSitsAtTheCentreOfItsRow() {
    TestWalls wall = wall();
    WallLayout layout =
        wall.anchor(Kind.CLIP, "A", wall.at("sill"), null)
            .anchor(Kind.CLIP, "A", wall.at("head"), null)
            .layOut();
    assertThat(layout.anchors())
        .extracting(PlacedAnchor::name, PlacedAnchor::y)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("clip of vertical A at sill", in(2)),
            org.assertj.core.groups.Tuple.tuple("clip of vertical A at head", in(200)));
  }

  @Test
  void aClipAtARowGivenByItsEdgeSitsAtTheCentreToo() {
    TestWalls wall =
        TestWalls.of(TestParts.inches())
            .lines("A B", in(60))
            .rowByEdge("sill", in(0))
            .row("head", in(80));
    // sill 2" of face, lower edge at 0
    assertThat(height(wall.anchor(Kind.CLIP, "A", wall.at("sill"), null))).isEqualTo(in(1));
  }

  @Test
  void aClipBesideADoorThatTookTheSillSitsAsHighAsTheOthers() {
    TestWalls wall =
        TestWalls.of(TestParts.inches())
            .lines("A B C", in(60))
            .floor("L1", in(0), in(6))
            .rowByEdge("sill", in(0))
            .row("door-head", in(86))
            .row("head", in(140));
    WallLayout layout =
        wall.opening(OpeningKind.DOOR, "D1", "B", "C", wall.at("L1"), wall.at("door-head"))
            .anchor(Kind.CLIP, "B C", wall.at("sill"), null)
            .layOut();
    // sill 2" of face, lower edge at 0: a row is the centre of its horizontal
    assertThat(layout.anchors()).extracting(PlacedAnchor::y).containsExactly(in(1), in(1));
  }

  @Test
  void anAnchorHoldsTheLengthThatPasses() {
    TestWalls wall = wall();
    WallLayout layout =
        wall.splice("B", wall.at(in(142)), in(1, 2))
            .splice("C", wall.at(in(150)), in(1, 2))
            .anchor(Kind.DEAD_LOAD, "A", wall.at("L2"), "angle")
            .anchor(Kind.DEAD_LOAD, "B", wall.at("L2"), "angle")
            .anchor(Kind.DEAD_LOAD, "C", wall.at("L2"), "angle")
            .anchor(Kind.DEAD_LOAD, "C", wall.at(in(300)), "angle")
            .layOut();
    assertThat(layout.verticals().get(layout.anchors().get(0).vertical()).name())
        .isEqualTo("vertical A");
    // the bolt line falls into B's open joint
    assertThat(layout.anchors().get(1).vertical()).isEqualTo(-1);
    assertThat(layout.verticals().get(layout.anchors().get(2).vertical()).name())
        .isEqualTo("vertical C, lower length, L1 to L2");
    // above the wall
    assertThat(layout.anchors().get(3).vertical()).isEqualTo(-1);
    assertThat(layout.anchors().get(3).name())
        .isEqualTo("dead-load anchor of vertical C at 25'-0\" (7620 mm)");
  }

  @Test
  void anUndersideOfASlabWithoutDepthIsTold() {
    TestWalls wall = wall();
    WallLayout layout = wall.anchor(Kind.DEAD_LOAD, "B", wall.at("L1"), "under").layOut();
    assertThat(layout.anchors()).isEmpty();
    assertThat(layout.impossible())
        .extracting(Impossible::reason)
        .containsExactly(Impossible.Reason.NO_SLAB_DEPTH);
  }
}
