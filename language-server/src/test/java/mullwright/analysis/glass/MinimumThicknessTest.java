package mullwright.analysis.glass;

import static org.assertj.core.api.Assertions.assertThat;

import mullwright.analysis.OutsideCheck;
import mullwright.analysis.glass.MinimumThickness.Designation;
import mullwright.analysis.glass.MinimumThickness.Nominal;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MinimumThicknessTest {
  private static Designation solve(double thickness) {
    return OutsideCheck.solved(MinimumThickness.solve(new Nominal(thickness)));
  }

  @Nested
  class FromOutside {
    @ParameterizedTest
    @CsvSource({
      // ASTM E1300 table of minimum thicknesses, from memory: mm, inch size, minimum mm
      "2.5, 0.09375, 2.16",
      "3, 0.125, 2.92",
      "4, 0.15625, 3.78",
      "5, 0.1875, 4.57",
      "6, 0.25, 5.56",
      "8, 0.3125, 7.42",
      "10, 0.375, 9.02",
      "12, 0.5, 11.91",
      "16, 0.625, 15.09",
      "19, 0.75, 18.26",
      "22, 0.875, 21.44",
      "25, 1, 24.61"
    })
    void tableBothWays(double millimetres, double inches, double minimum) {
      assertThat(solve(millimetres / 1000).minimum()).isEqualTo(minimum / 1000);
      assertThat(solve(inches * 0.0254)).isEqualTo(solve(millimetres / 1000));
    }

    @Test
    void laminationGradeHasNoInchSize() {
      // ASTM E1300 table of minimum thicknesses, from memory
      assertThat(solve(0.0027).minimum()).isEqualTo(0.00259);
      assertThat(solve(0.0027).inch()).isNaN();
    }
  }

  @Nested
  class Contract {
    @Test
    void minimumLiesBelowTheNominalAndRowsIncrease() {
      double before = 0;
      for (Designation row : MinimumThickness.table()) {
        assertThat(row.minimum()).isLessThan(row.metric()).isGreaterThan(before);
        before = row.minimum();
      }
    }

    @Test
    void refusesAThicknessNobodySells() {
      OutsideCheck.refused(MinimumThickness.solve(new Nominal(0.007)), "nominal glass thickness");
      OutsideCheck.refused(
          MinimumThickness.solve(new Nominal(Double.NaN)), "nominal glass thickness");
    }
  }

  @Nested
  class Unchanged {
    // Own value: ask a human before editing it.
    @Test
    void thirteenRows() {
      assertThat(MinimumThickness.table()).hasSize(13);
    }
  }
}
