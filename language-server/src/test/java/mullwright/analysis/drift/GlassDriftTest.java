package mullwright.analysis.drift;

import static mullwright.analysis.Outcomes.refused;
import static mullwright.analysis.Outcomes.solved;
import static mullwright.analysis.UsUnits.IN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class GlassDriftTest {
  private static final Percentage TENTH = withinPercentage(0.1);

  private static GlassDrift.Input lite(double importance) {
    return new GlassDrift.Input(
        72 * IN, 60 * IN, 0.25 * IN, 0.25 * IN, 0.010 * 72 * IN, importance);
  }

  @Nested
  class FromOutside {

    @Test
    void liteInInches() {
      // ASCE 7, section 13.5.9, from memory; values recomputed
      GlassDrift.Result usual = solved(GlassDrift.solve(lite(1.0)));
      assertThat(usual.clearDrift() / IN).isCloseTo(1.10, TENTH);
      assertThat(usual.demand() / IN).isCloseTo(0.90, TENTH);
      assertThat(usual.exempt()).isTrue();
      GlassDrift.Result essential = solved(GlassDrift.solve(lite(1.5)));
      assertThat(essential.demand() / IN).isCloseTo(1.35, TENTH);
      assertThat(essential.exempt()).isFalse();
    }

    @Test
    void liteInMillimetres() {
      // ASCE 7, section 13.5.9, from memory; values recomputed
      GlassDrift.Result r =
          solved(GlassDrift.solve(new GlassDrift.Input(2, 1.5, 0.008, 0.006, 0.01, 1)));
      assertThat(r.clearDrift() * 1000).isCloseTo(32.0, TENTH);
    }

    @Test
    void leastFalloutDrift() {
      // ASCE 7, section 13.5.9, from memory: never less than 1/2 in
      GlassDrift.Result r =
          solved(GlassDrift.solve(new GlassDrift.Input(2, 1.5, 0.001, 0.001, 0.004, 1)));
      assertThat(r.falloutDrift() / IN).isCloseTo(0.5, TENTH);
    }
  }

  @Nested
  class Contract {

    @Test
    void withoutTopAndBottomClearanceTheSidesTouchFirst() {
      GlassDrift.Result r =
          solved(GlassDrift.solve(new GlassDrift.Input(2, 1.5, 0.008, 0, 0.01, 1)));
      assertThat(r.clearDrift()).isCloseTo(0.016, within(1e-15));
    }

    @Test
    void withoutSideClearanceTheTurnIsLeft() {
      // The form with c₁ in a denominator has no value here; the expanded one has.
      GlassDrift.Result r = solved(GlassDrift.solve(new GlassDrift.Input(2, 1, 0, 0.006, 0.01, 1)));
      assertThat(r.clearDrift()).isCloseTo(0.024, within(1e-15));
    }

    @Test
    void scalesWithTheWholeLite() {
      GlassDrift.Result one = solved(GlassDrift.solve(lite(1)));
      GlassDrift.Result two =
          solved(
              GlassDrift.solve(
                  new GlassDrift.Input(144 * IN, 120 * IN, 0.5 * IN, 0.5 * IN, 1.44 * IN, 1)));
      assertThat(two.clearDrift()).isCloseTo(2 * one.clearDrift(), within(1e-15));
      assertThat(two.demand()).isCloseTo(2 * one.demand(), within(1e-15));
    }

    @Test
    void outOfRangeIsRefused() {
      assertThat(refused(GlassDrift.solve(lite(0.5))))
          .isEqualTo("importance factor is 0.5; it must be from 1.0 to 1.5.");
      assertThat(refused(GlassDrift.solve(new GlassDrift.Input(2, 0, 0, 0, 0, 1))))
          .startsWith("glass width is 0 m");
    }
  }
}
