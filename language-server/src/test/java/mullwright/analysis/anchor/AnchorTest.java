package mullwright.analysis.anchor;

import static mullwright.analysis.Outcomes.refused;
import static mullwright.analysis.Outcomes.solved;
import static mullwright.analysis.UsUnits.FT;
import static mullwright.analysis.UsUnits.IN;
import static mullwright.analysis.UsUnits.LB;
import static mullwright.analysis.UsUnits.PSF;
import static mullwright.analysis.anchor.AnchorCount.Kind.DEAD_LOAD;
import static mullwright.analysis.anchor.AnchorCount.Kind.WIND_LOAD;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class AnchorTest {
  private static final Percentage TENTH = withinPercentage(0.1);

  @Nested
  class FromOutside {

    @Test
    void oneDeadLoadAnchorForEachLength() {
      // CHECK 5b, common practice: exactly one on each continuous length
      assertThat(AnchorCount.solve(List.of(DEAD_LOAD, WIND_LOAD)).verdict())
          .isEqualTo(AnchorCount.Verdict.HANGS_FREE);
      assertThat(AnchorCount.solve(List.of(DEAD_LOAD, DEAD_LOAD)).verdict())
          .isEqualTo(AnchorCount.Verdict.LOCKED);
      assertThat(AnchorCount.solve(List.of(WIND_LOAD, WIND_LOAD)).verdict())
          .isEqualTo(AnchorCount.Verdict.UNSUPPORTED);
      assertThat(AnchorCount.solve(List.of(DEAD_LOAD, WIND_LOAD, WIND_LOAD)).verdict())
          .isEqualTo(AnchorCount.Verdict.HANGS_FREE);
    }

    @Test
    void weightOfOneStorey() {
      // CHECK 5a, closed form, recomputed: 8 psf × 5 ft × 12 ft
      DeadLoadReaction.Result r =
          solved(DeadLoadReaction.solve(new DeadLoadReaction.Input(8 * PSF, 5 * FT, 12 * FT, 0)));
      assertThat(r.weight() / LB).isCloseTo(480, TENTH);
      // The same storey under 30 psf of wind: 1800 lb
      DeadLoadReaction.Result wind =
          solved(DeadLoadReaction.solve(new DeadLoadReaction.Input(30 * PSF, 5 * FT, 12 * FT, 0)));
      assertThat(wind.weight() / LB).isCloseTo(1800, TENTH);
    }

    @Test
    void coupleOfTheWeight() {
      // Closed form, recomputed: 480 lb, 3 in out, arm 4 in
      AnchorCouple.Result r =
          solved(AnchorCouple.solve(new AnchorCouple.Input(480 * LB, 3 * IN, 4 * IN)));
      assertThat(r.moment() / (LB * IN)).isCloseTo(1440, TENTH);
      assertThat(r.pull() / LB).isCloseTo(360, TENTH);
    }
  }

  @Nested
  class Contract {

    @Test
    void nothingHangsFromNoAnchor() {
      AnchorCount.Result none = AnchorCount.solve(List.of());
      assertThat(none.verdict()).isEqualTo(AnchorCount.Verdict.UNSUPPORTED);
      AnchorCount.Result three = AnchorCount.solve(List.of(DEAD_LOAD, WIND_LOAD, DEAD_LOAD));
      assertThat(three.deadLoad()).isEqualTo(2);
      assertThat(three.windLoad()).isEqualTo(1);
    }

    @Test
    void weightsAdd() {
      double bare = weight(400, 0);
      assertThat(weight(800, 0)).isCloseTo(2 * bare, within(1e-9));
      assertThat(weight(400, 77)).isCloseTo(bare + 77, within(1e-9));
    }

    private double weight(double onArea, double other) {
      return solved(DeadLoadReaction.solve(new DeadLoadReaction.Input(onArea, 1.5, 3.6, other)))
          .weight();
    }

    @Test
    void noEccentricityNoPull() {
      assertThat(solved(AnchorCouple.solve(new AnchorCouple.Input(2000, 0, 0.1))).pull()).isZero();
    }

    @Test
    void outOfRangeIsRefused() {
      assertThat(refused(AnchorCouple.solve(new AnchorCouple.Input(2000, 0.1, 0))))
          .startsWith("arm of the couple is 0 m");
      assertThat(refused(DeadLoadReaction.solve(new DeadLoadReaction.Input(400, 0, 3, 0))))
          .startsWith("tributary width is 0 m");
    }
  }
}
