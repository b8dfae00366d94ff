package mullwright.layout;

import static mullwright.layout.TestParts.in;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import mullwright.model.Grid.OpeningKind;
import mullwright.model.Origin;
import mullwright.syntax.TextRange;
import org.junit.jupiter.api.Test;

/** From text to pieces and from pieces to text. */
class LayoutIndexTest {
  private final WallLayout layout = SampleWallTest.wall().layOut();
  private final LayoutIndex index = LayoutIndex.of(layout);

  private List<String> names(List<PieceRef> pieces) {
    return pieces.stream().map(index::name).toList();
  }

  @Test
  void aStatementFindsAllItMade() {
    // one splice statement stands for five joints
    Origin splices = layout.splices().get(0).splice().origin();
    assertThat(names(index.madeBy(splices)))
        .containsExactly(
            "splice of vertical B above L2",
            "splice of vertical C above L2",
            "splice of vertical D above L2",
            "splice of vertical E above L2",
            "splice of vertical F above L2");
  }

  @Test
  void everyPieceIsFoundUnderItsStatement() {
    for (int i = 0; i < layout.verticals().size(); i++) {
      assertFound(new PieceRef(PieceRef.Kind.VERTICAL, i));
    }
    for (int i = 0; i < layout.horizontals().size(); i++) {
      assertFound(new PieceRef(PieceRef.Kind.HORIZONTAL, i));
    }
    for (int i = 0; i < layout.anchors().size(); i++) {
      assertFound(new PieceRef(PieceRef.Kind.ANCHOR, i));
    }
    for (int i = 0; i < layout.cells().size(); i++) {
      assertFound(new PieceRef(PieceRef.Kind.CELL, i));
    }
    for (int i = 0; i < layout.covers().size(); i++) {
      assertFound(new PieceRef(PieceRef.Kind.COVER, i));
    }
  }

  private void assertFound(PieceRef piece) {
    Origin origin = index.origin(piece).orElseThrow();
    assertThat(index.madeBy(origin)).contains(piece);
    assertThat(index.touching(origin)).contains(piece);
  }

  @Test
  void anOffsetFindsTheStatementItTouches() {
    Origin splices = layout.splices().get(0).splice().origin();
    int start = splices.range().start();
    Origin caret = new Origin(splices.file(), 0, new TextRange(start, start));
    assertThat(index.touching(caret)).hasSize(5);
    Origin elsewhere = new Origin("other.wall", 0, new TextRange(start, start));
    assertThat(index.touching(elsewhere)).isEmpty();
    assertThat(index.touching(new Origin(splices.file(), 1, splices.range()))).isEmpty();
  }

  @Test
  void aLineOfTheGridFindsWhatStandsOnIt() {
    Origin lineC = layout.wall().grid().lines().get(2).origin();
    assertThat(names(index.madeBy(lineC)))
        .containsExactly(
            "vertical C, lower length, L1 to L2",
            "vertical C, upper length, L2 to Roof",
            "splice of vertical C above L2",
            "clip of vertical C at sill",
            "dead-load anchor of vertical C at L2",
            "dead-load anchor of vertical C at Roof",
            "pressure plate of vertical C, lower length, L1 to L2",
            "pressure plate of vertical C, upper length, L2 to Roof",
            "face cap of vertical C, lower length, L1 to L2",
            "face cap of vertical C, upper length, L2 to Roof");
    assertThat(index.onLine(2)).hasSize(10);
  }

  @Test
  void aRowAndABayFindTheirs() {
    // six horizontals with a plate and a cap each
    assertThat(index.onRow(3)).hasSize(18);
    // seven horizontals with plate and cap, six lites
    assertThat(index.inBay(0)).hasSize(27);
    assertThat(index.cellAt(2, in(60)).orElseThrow().name()).isEqualTo("lite in bay C-D, R1 to R2");
    assertThat(index.cellAt(2, in(36))).isEmpty(); // behind the horizontal
    assertThat(index.verticalAt(2, in(200)).orElseThrow().name())
        .isEqualTo("vertical C, upper length, L2 to Roof");
    assertThat(index.verticalAt(2, in(180))).isEmpty(); // the open joint
  }

  @Test
  void aLengthKnowsTheHorizontalsThatEndOnIt() {
    // sill, R1, R2, R3 on either side; R4 is above the splice
    assertThat(index.endingOn(layout.verticals().get(1)))
        .extracting(HorizontalPiece::name)
        .containsExactlyInAnyOrder(
            "horizontal sill, bay A-B",
            "horizontal sill, bay B-C",
            "horizontal R1, bay A-B",
            "horizontal R1, bay B-C",
            "horizontal R2, bay A-B",
            "horizontal R2, bay B-C",
            "horizontal R3, bay A-B",
            "horizontal R3, bay B-C");
  }

  @Test
  void anOpeningFindsItsCell() {
    TestWalls wall =
        TestWalls.of(TestParts.inches())
            .lines("A B C", in(60))
            .row("sill", in(2))
            .row("head", in(86));
    wall.opening(OpeningKind.DOOR, "D1", "A", "B", wall.at("sill"), wall.at("head"));
    WallLayout doors = wall.layOut();
    LayoutIndex of = LayoutIndex.of(doors);
    List<PieceRef> made = of.madeBy(doors.wall().grid().openings().get(0).origin());
    assertThat(made.stream().map(of::name)).containsExactly("door D1, bay A-B");
  }

  @Test
  void aPlaceOfTheElevationShowsMembersBeforeLites() {
    // line B at 60", row R1 at 36": vertical and the ends of two horizontals under its face
    assertThat(names(PiecesAt.at(layout, in(60), in(36))))
        .containsExactly("vertical B, lower length, L1 to L2");
    assertThat(names(PiecesAt.at(layout, in(90), in(36))))
        .containsExactly("horizontal R1, bay B-C");
    assertThat(names(PiecesAt.at(layout, in(90), in(60))))
        .containsExactly("lite in bay B-C, R1 to R2");
    assertThat(PiecesAt.at(layout, in(-20), in(60))).isEmpty();
  }
}
