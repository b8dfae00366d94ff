package mullwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/**
 * A tower of 12 bays and 20 floors has every piece its grid asks for, and one ten times as large.
 */
class TowerTest {
  @Test
  void everyPieceOfTheTower() {
    WallLayout layout =
        LayoutBuilder.layOut(Towers.of(12, 20).wall(), TestParts.inches().catalog());
    // 13 lines of 11 lengths; 12 bays of 100 rows and so 99 lites
    assertThat(layout.verticals()).hasSize(143);
    assertThat(layout.horizontals()).hasSize(1200);
    assertThat(layout.cells()).hasSize(1188);
    assertThat(layout.impossible()).isEmpty();
  }

  @Test
  void everyPieceOfOneTenTimesAsLarge() {
    WallLayout layout =
        LayoutBuilder.layOut(Towers.of(48, 50).wall(), TestParts.inches().catalog());
    // 48 bays of 5 rows a floor
    assertThat(layout.horizontals()).hasSize(48 * 50 * 5);
    assertThat(layout.cells()).hasSize(48 * (50 * 5 - 1));
    assertThat(layout.impossible()).isEmpty();
  }
}
