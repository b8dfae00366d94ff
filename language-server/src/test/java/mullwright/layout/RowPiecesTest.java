package mullwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The horizontal of a row in a bay, held to going through all horizontals. */
class RowPiecesTest {
  private static final int WALLS = 200;

  @Test
  void inAWallOneKnows() {
    WallLayout layout = SampleWallTest.wall().layOut();
    RowPieces rows = RowPieces.of(layout);
    assertThat(rows.in(3, 2).orElseThrow().name()).isEqualTo("horizontal R3, bay C-D");
    Cell lite = LayoutIndex.of(layout).cellAt(2, TestParts.in(60)).orElseThrow();
    assertThat(lite.name()).isEqualTo("lite in bay C-D, R1 to R2");
    assertThat(rows.under(lite).orElseThrow().name()).isEqualTo("horizontal R1, bay C-D");
    assertThat(rows.over(lite).orElseThrow().name()).isEqualTo("horizontal R2, bay C-D");
  }

  @Test
  void aRowHasAtMostOneHorizontalInABayAndThatIsFound() {
    int wide = 0;
    int none = 0;
    int open = 0;
    for (long seed = 0; seed < WALLS; seed++) {
      WallLayout layout = new RandomWalls(seed, false).wall(1).layOut();
      RowPieces rows = RowPieces.of(layout);
      for (int row = 0; row < layout.wall().grid().rows().size(); row++) {
        for (int bay = 0; bay < layout.wall().grid().bays().size(); bay++) {
          List<HorizontalPiece> there = crossing(layout, row, bay);
          assertThat(there).as("row %d, bay %d", row, bay).hasSizeLessThanOrEqualTo(1);
          Optional<HorizontalPiece> found = rows.in(row, bay);
          assertThat(found).isEqualTo(there.stream().findFirst());
          none += found.isEmpty() ? 1 : 0;
          wide += found.isPresent() && found.get().firstBay() < bay ? 1 : 0;
        }
      }
      for (Cell cell : layout.cells()) {
        if (cell.below() < 0) {
          assertThat(rows.under(cell)).isEmpty();
          open++;
        }
      }
    }
    // what the walls are to try is in them
    assertThat(List.of(wide, none, open)).allSatisfy(count -> assertThat(count).isPositive());
  }

  private static List<HorizontalPiece> crossing(WallLayout layout, int row, int bay) {
    return layout.horizontals().stream()
        .filter(piece -> piece.row() == row && piece.firstBay() <= bay && bay <= piece.lastBay())
        .toList();
  }
}
