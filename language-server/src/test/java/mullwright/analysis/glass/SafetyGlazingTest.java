package mullwright.analysis.glass;

import static org.assertj.core.api.Assertions.assertThat;

import mullwright.analysis.OutsideCheck;
import mullwright.analysis.glass.HazardousLocation.Place;
import mullwright.analysis.glass.SafetyGlazing.Condition;
import mullwright.analysis.glass.SafetyGlazing.Lite;
import mullwright.analysis.glass.SafetyGlazing.Verdict;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SafetyGlazingTest {
  private static final double INCH = 0.0254;
  private static final double SQUARE_FOOT = 0.09290304;

  private static Verdict imperial(double area, double bottom, double top, double walk) {
    return OutsideCheck.solved(
        SafetyGlazing.solve(new Lite(area * SQUARE_FOOT, bottom * INCH, top * INCH, walk * INCH)));
  }

  @Nested
  class FromOutside {
    @ParameterizedTest
    @CsvSource({
      // handbook CHECK 8: ft², in, in, in → required, and which condition fails (from memory)
      "20, 12, 60, 0, true, -1",
      "20, 18, 60, 0, false, 1",
      "9.0, 12, 60, 0, false, 0",
      "9.01, 12, 36, 0, false, 2",
      "20, 12, 60, 37, false, 3",
      "20, 12, 60, 36, true, -1"
    })
    void windowClause(
        double area, double bottom, double top, double walk, boolean required, int unmet) {
      Verdict verdict = imperial(area, bottom, top, walk);
      assertThat(verdict.required()).isEqualTo(required);
      assertThat(verdict.conditions()).hasSize(4);
      for (int i = 0; i < 4; i++) {
        assertThat(verdict.conditions().get(i).met()).isEqualTo(i != unmet);
      }
      assertThat(verdict.clause()).isEqualTo("IBC 2406.4.3");
    }

    @ParameterizedTest
    @CsvSource({
      // clauses of IBC 2406.4, from memory: place, bottom in, distance in → required
      "IN_DOOR, 80, 0, true",
      "IN_GUARD, 80, 0, true",
      "BESIDE_DOOR, 59, 24, true",
      "BESIDE_DOOR, 60, 24, false",
      "BESIDE_DOOR, 59, 25, false",
      "NEAR_WATER, 59, 60, true",
      "NEAR_WATER, 59, 61, false",
      "BESIDE_STAIR, 59, 35, true",
      "BESIDE_STAIR, 59, 36, false",
      "BOTTOM_LANDING, 59, 60, true",
      "BOTTOM_LANDING, 60, 60, false"
    })
    void otherClauses(Place place, double bottom, double distance, boolean required) {
      HazardousLocation.Verdict verdict =
          OutsideCheck.solved(
              HazardousLocation.solve(
                  new HazardousLocation.Lite(
                      place, 20 * SQUARE_FOOT, bottom * INCH, distance * INCH)));
      assertThat(verdict.required()).isEqualTo(required);
    }

    @Test
    void categoryByArea() {
      // IBC table 2406.2(1), from memory: category I up to 9 ft²
      assertThat(imperial(9, 0, 60, 0).category()).isEqualTo(SafetyCategory.CATEGORY_I);
      assertThat(imperial(9.01, 0, 60, 0).category()).isEqualTo(SafetyCategory.CATEGORY_II);
    }
  }

  @Nested
  class Contract {
    @Test
    void requiredMeansAllFourAndNothingElse() {
      for (double area : new double[] {8, 20}) {
        for (double bottom : new double[] {0, 20}) {
          for (double top : new double[] {30, 70}) {
            for (double walk : new double[] {0, 50}) {
              Verdict verdict = imperial(area, bottom, top, walk);
              assertThat(verdict.required())
                  .isEqualTo(verdict.conditions().stream().allMatch(Condition::met));
              assertThat(verdict.notExamined()).isNotEmpty();
            }
          }
        }
      }
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 17, 18, 35, 36, 37})
    void metresAndInchesMeanTheSame(double inches) {
      double summed = 0;
      for (int i = 0; i < inches; i++) {
        summed += 0.0254;
      }
      Verdict once = imperial(20, inches, inches + 40, inches);
      Verdict often =
          OutsideCheck.solved(
              SafetyGlazing.solve(new Lite(20 * SQUARE_FOOT, summed, summed + 1.016, summed)));
      assertThat(often.required()).isEqualTo(once.required());
    }

    @Test
    void refusesAnUpsideDownLite() {
      OutsideCheck.refused(SafetyGlazing.solve(new Lite(1, 1, 0.5, 0)), "top edge above the floor");
      OutsideCheck.refused(
          SafetyGlazing.solve(new Lite(1, 0, 1, -1)), "distance to the walking surface");
      OutsideCheck.refused(
          HazardousLocation.solve(new HazardousLocation.Lite(Place.NEAR_WATER, 0, 0, 0)), "area");
    }
  }

  @Nested
  class Unchanged {
    // Own words: ask a human before editing them.
    @Test
    void wordsOfTheConditions() {
      assertThat(imperial(20, 12, 60, 0).conditions())
          .extracting(Condition::words)
          .containsExactly(
              "area of one pane is more than 9 ft²",
              "bottom edge is less than 18 in above the floor",
              "top edge is more than 36 in above the floor",
              "a walking surface lies within 36 in of the glass");
    }
  }
}
