package mullwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import mullwright.model.Catalog;
import mullwright.model.Wall;
import org.junit.jupiter.api.Test;

/**
 * Holds the order of magnitude: a tower of 12 bays and 20 floors takes about half a millisecond
 * when warm, one ten times as large about ten times that. Measured in processor time, so that a
 * busy machine does not count; a quadratic step would break the limits.
 */
class SpeedTest {
  private static double best(Wall wall, Catalog catalog, int times) {
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    long best = Long.MAX_VALUE;
    for (int i = 0; i < times; i++) {
      long start = threads.getCurrentThreadCpuTime();
      WallLayout layout = LayoutBuilder.layOut(wall, catalog);
      best = Math.min(best, threads.getCurrentThreadCpuTime() - start);
      assertThat(layout.impossible()).isEmpty();
    }
    return best / 1e6;
  }

  @Test
  void inProportionToTheWall() {
    Catalog catalog = TestParts.inches().catalog();
    Wall tower = Towers.of(12, 20).wall();
    WallLayout layout = LayoutBuilder.layOut(tower, catalog);
    // 13 lines of 11 lengths; 12 bays of 100 rows and so 99 lites
    assertThat(layout.verticals()).hasSize(143);
    assertThat(layout.horizontals()).hasSize(1200);
    assertThat(layout.cells()).hasSize(1188);
    assertThat(best(tower, catalog, 100)).isLessThan(10);
    assertThat(best(Towers.of(48, 50).wall(), catalog, 5)).isLessThan(100);
  }
}
