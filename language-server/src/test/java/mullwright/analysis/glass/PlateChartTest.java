package mullwright.analysis.glass;

import static mullwright.analysis.OutsideCheck.solved;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The table stays within 5 % of the solutions it stands for, between its points too. */
class PlateChartTest {
  private static final double[] RATIOS = {1, 1.1, 1.37, 1.75, 2.25, 2.75, 3.5, 4.5, 5};

  @Test
  void loadsAndDeflections() {
    for (double thickness : new double[] {0.00292, 0.00556, 0.00902}) {
      for (double ratio : RATIOS) {
        double height = ratio;
        GlassFailurePrediction.Lite lite =
            GlassFailurePrediction.Lite.charted(1, height, thickness);
        GlassFailurePrediction.Resistance resistance = solved(GlassFailurePrediction.solve(lite));
        double exact = resistance.nonFactoredLoad();
        if (resistance.loadIntensity() > 950) {
          // beyond or at the end of the table: no number rather than a wrong one
          continue;
        }
        assertThat(PlateChart.nonFactoredLoad(lite))
            .as("load at %s, %s", ratio, thickness)
            .isCloseTo(exact, within(0.05 * exact));
        for (double load : new double[] {0.1, 0.35, 0.7, 1}) {
          double bent =
              solved(
                      LargeDeflectionPlate.solve(
                          new LargeDeflectionPlate.Lite(
                              1, height, thickness, 71.7e9, 0.22, load * exact)))
                  .centreDeflection();
          assertThat(PlateChart.deflection(1, height, thickness, load * exact))
              .as("deflection at %s, %s, %s", ratio, thickness, load)
              .isCloseTo(bent, within(0.05 * bent));
        }
      }
    }
  }
}
