package mullwright.analysis.metal;

import static mullwright.analysis.metal.MetalContact.Areas.FIRST_SMALL;
import static mullwright.analysis.metal.MetalContact.Areas.SECOND_SMALL;
import static mullwright.analysis.metal.MetalContact.Areas.SIMILAR;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import mullwright.analysis.metal.MetalContact.Areas;
import mullwright.analysis.metal.MetalContact.State;
import mullwright.analysis.metal.MetalContact.Verdict;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class MetalContactTest {

  private static MetalContact.Result decide(
      Material first, Material second, Areas areas, Exposure exposure) {
    return MetalContact.solve(new MetalContact.Input(first, second, areas, exposure, false, false));
  }

  private static MetalContact.Result onAluminum(Material other, Areas areas) {
    return decide(other, Material.ALUMINUM, areas, Exposure.OUTDOOR);
  }

  @Nested
  class FromOutside {

    // Anodic-index practice, widely reprinted table; differences recomputed
    @ParameterizedTest
    @CsvSource({
      "STAINLESS_300, 0.40",
      "GALVANIZED_STEEL, 0.30",
      "CARBON_STEEL, 0.05",
      "COPPER, 0.55",
      "BRASS, 0.50",
      "LEAD, 0.20",
      "NICKEL, 0.60"
    })
    void differencesAgainst6063(Material metal, double volts) {
      assertThat(GalvanicSeries.difference(metal, Material.ALUMINUM).getAsDouble())
          .isCloseTo(volts, within(1e-9));
    }

    // Aluminum Design Manual, section M.7 (quoted), then areas, then potential: worked decisions
    @ParameterizedTest
    @CsvSource({
      "STAINLESS_300,     FIRST_SMALL, NOT_NEEDED_WITH_NOTE, ALUMINUM_STAINLESS",
      "STAINLESS_300,     SIMILAR,     NOT_NEEDED,           ALUMINUM_STAINLESS",
      "GALVANIZED_STEEL,  SIMILAR,     NOT_NEEDED,           ALUMINUM_COATED_STEEL",
      "ZINC_PLATED_STEEL, FIRST_SMALL, NOT_NEEDED,           ALUMINUM_COATED_STEEL",
      "ALUMINIZED_STEEL,  SIMILAR,     NOT_NEEDED,           ALUMINUM_COATED_STEEL",
      "CARBON_STEEL,      SIMILAR,     NEEDED,               ALUMINUM_BARE_STEEL",
      "CARBON_STEEL,      FIRST_SMALL, AVOID,                SMALL_STEEL_PART",
      "COPPER,            SIMILAR,     NEEDED,               POTENTIAL",
      "LEAD,              SIMILAR,     NEEDED,               POTENTIAL",
      "CONCRETE,          SIMILAR,     NEEDED,               ALUMINUM_ON_ABSORBENT",
      "WOOD,              SIMILAR,     NEEDED,               ALUMINUM_ON_ABSORBENT",
      "COPPER,            SECOND_SMALL, AVOID,               SMALL_ALUMINUM_PART",
      "STAINLESS_300,     SECOND_SMALL, AVOID,               SMALL_ALUMINUM_PART"
    })
    void outdoorsAgainst6063(Material other, Areas areas, Verdict verdict, ContactRule rule) {
      MetalContact.Result r = onAluminum(other, areas);
      assertThat(r.verdict()).isEqualTo(verdict);
      assertThat(r.rule()).isEqualTo(rule);
    }

    @Test
    void chlorideTakesTheLeaveForStainlessAway() {
      // Aluminum Design Manual, section M.7 (quoted)
      assertThat(
              decide(Material.STAINLESS_300, Material.ALUMINUM, SIMILAR, Exposure.COASTAL)
                  .verdict())
          .isEqualTo(Verdict.NEEDED);
    }

    @Test
    void copperRunOff() {
      // Aluminum Design Manual, section M.7 (quoted): no run-off, isolated or not
      MetalContact.Result r =
          MetalContact.solve(
              new MetalContact.Input(
                  Material.COPPER, Material.ALUMINUM, SIMILAR, Exposure.OUTDOOR, true, true));
      assertThat(r.rule()).isEqualTo(ContactRule.RUN_OFF);
      assertThat(r.state()).isEqualTo(State.WRONG_METAL);
    }

    // Anodic-index practice
    @ParameterizedTest
    @CsvSource({"COASTAL, 0.15", "OUTDOOR, 0.15", "UNCONDITIONED, 0.25", "CONDITIONED, 0.50"})
    void thresholds(Exposure exposure, double volts) {
      assertThat(exposure.threshold()).isEqualTo(volts);
    }

    // Anodic-index practice: lead on aluminum, 0.20 V
    @ParameterizedTest
    @CsvSource({"OUTDOOR, NEEDED", "UNCONDITIONED, NOT_NEEDED", "CONDITIONED, NOT_NEEDED"})
    void exposureDecidesByPotential(Exposure exposure, Verdict verdict) {
      MetalContact.Result r = decide(Material.LEAD, Material.ALUMINUM, SIMILAR, exposure);
      assertThat(r.verdict()).isEqualTo(verdict);
      assertThat(r.rule()).isEqualTo(ContactRule.POTENTIAL);
    }
  }

  @Nested
  class Contract {

    @Test
    void orderOfTheTwoDoesNotMatter() {
      for (Material one : Material.values()) {
        for (Material other : Material.values()) {
          for (Exposure exposure : Exposure.values()) {
            for (Areas areas : Areas.values()) {
              Areas turned =
                  areas == SIMILAR ? SIMILAR : areas == FIRST_SMALL ? SECOND_SMALL : FIRST_SMALL;
              MetalContact.Result r = decide(one, other, areas, exposure);
              MetalContact.Result back = decide(other, one, turned, exposure);
              assertThat(back.verdict()).isEqualTo(r.verdict());
              assertThat(back.rule()).isEqualTo(r.rule());
            }
          }
        }
      }
    }

    @Test
    void drierNeverNeedsMore() {
      for (Material one : Material.values()) {
        for (Material other : Material.values()) {
          boolean needed = true;
          for (Exposure exposure : Exposure.values()) {
            boolean now = decide(one, other, SIMILAR, exposure).verdict() == Verdict.NEEDED;
            assertThat(needed || !now).as("%s on %s, %s", one, other, exposure).isTrue();
            needed = now;
          }
        }
      }
    }

    @ParameterizedTest
    @EnumSource
    void aMaterialNeedsNothingAgainstItself(Material material) {
      MetalContact.Result r = decide(material, material, SIMILAR, Exposure.COASTAL);
      assertThat(r.verdict()).isEqualTo(Verdict.NOT_NEEDED);
      assertThat(r.rule()).isEqualTo(ContactRule.SAME_METAL);
    }

    @Test
    void isolationIsComparedWithNeed() {
      assertThat(state(Material.CARBON_STEEL, true)).isEqualTo(State.RIGHT);
      assertThat(state(Material.CARBON_STEEL, false)).isEqualTo(State.MISSING);
      assertThat(state(Material.GALVANIZED_STEEL, true)).isEqualTo(State.OVERDONE);
      assertThat(state(Material.GALVANIZED_STEEL, false)).isEqualTo(State.RIGHT);
    }

    private State state(Material other, boolean isolated) {
      return MetalContact.solve(
              new MetalContact.Input(
                  other, Material.ALUMINUM, SIMILAR, Exposure.OUTDOOR, false, isolated))
          .state();
    }

    @Test
    void whatNoRuleSpeaksOfStaysUndecided() {
      MetalContact.Result r =
          decide(Material.CARBON_STEEL, Material.CONCRETE, SIMILAR, Exposure.OUTDOOR);
      assertThat(r.verdict()).isEqualTo(Verdict.NOT_DECIDED);
      assertThat(r.state()).isEqualTo(State.NOT_DECIDED);
      assertThat(r.difference()).isEmpty();
    }

    @Test
    void zincMayCoverItsSteel() {
      assertThat(
              decide(
                      Material.GALVANIZED_STEEL,
                      Material.CARBON_STEEL,
                      FIRST_SMALL,
                      Exposure.OUTDOOR)
                  .verdict())
          .isEqualTo(Verdict.NOT_NEEDED);
    }

    @Test
    void smallBasePartInALargeNoblerFaceIsAvoided() {
      assertThat(
              decide(Material.CARBON_STEEL, Material.COPPER, FIRST_SMALL, Exposure.OUTDOOR).rule())
          .isEqualTo(ContactRule.SMALL_BASE_PART);
      assertThat(
              decide(Material.STAINLESS_300, Material.CARBON_STEEL, FIRST_SMALL, Exposure.OUTDOOR)
                  .rule())
          .isEqualTo(ContactRule.SMALL_NOBLE_PART);
    }

    @Test
    void theGreaterOfTwoPrintedIndicesDecides() {
      // 0.35 V by one copy of the table, 0.50 V by another; neither is over 0.50 V.
      MetalContact.Result r =
          decide(Material.STAINLESS_300, Material.CARBON_STEEL, SIMILAR, Exposure.CONDITIONED);
      assertThat(r.difference().getAsDouble()).isCloseTo(0.35, within(1e-9));
      assertThat(r.greatestDifference().getAsDouble()).isCloseTo(0.50, within(1e-9));
      assertThat(r.verdict()).isEqualTo(Verdict.NOT_NEEDED);
    }
  }

  @Nested
  class Names {

    @ParameterizedTest
    @CsvSource({
      "aluminum, ALUMINUM",
      "Aluminium, ALUMINUM",
      "6063-T6, ALUMINUM",
      "6005A-T61, ALUMINUM",
      "aluminum 6061-T6, ALUMINUM",
      "2024-T3, ALUMINUM_2000",
      "steel, CARBON_STEEL",
      "carbon steel, CARBON_STEEL",
      "carbon-steel, CARBON_STEEL",
      "galvanised steel, GALVANIZED_STEEL",
      "hot-dip galvanized, GALVANIZED_STEEL",
      "zinc_plated_steel, ZINC_PLATED_STEEL",
      "stainless, STAINLESS_300",
      "stainless-316, STAINLESS_300",
      "316L, STAINLESS_300",
      "stainless steel 304, STAINLESS_300",
      "stainless 410, STAINLESS_12_CR",
      "zinc, ZINC",
      "copper, COPPER",
      "brass, BRASS",
      "lead, LEAD",
      "concrete, CONCRETE"
    })
    void areReadAsCatalogsWriteThem(String name, Material material) {
      assertThat(GalvanicSeries.find(name)).contains(material);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "  ", "unobtainium", "60", "stee", "plastic", "9999-T6"})
    void thatAreUnknownAreNotGuessed(String name) {
      assertThat(GalvanicSeries.find(name)).isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void ofEveryMaterialReadBack(Material material) {
      assertThat(GalvanicSeries.find(material.words())).contains(material);
    }
  }
}
