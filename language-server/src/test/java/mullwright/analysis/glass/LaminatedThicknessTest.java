package mullwright.analysis.glass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import mullwright.analysis.OutsideCheck;
import mullwright.analysis.glass.LaminatedThickness.Effective;
import mullwright.analysis.glass.LaminatedThickness.Laminate;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

public class LaminatedThicknessTest {
  private static final String SHEET = "published worked sheet for the appendix of ASTM E1300-09a";
  private static final String EXAMPLE = "shear transfer formulas worked by hand";

  private static Effective solve(Laminate laminate) {
    return OutsideCheck.solved(LaminatedThickness.solve(laminate));
  }

  public static List<OutsideCheck> checks() {
    Effective stiff = solve(new Laminate(0.00556, 0.00556, 0.00152, 7.1e6, 1.5));
    // The second sheet takes E = 70 GPa: only E/G counts, so G is raised in proportion.
    Effective thick = solve(new Laminate(0.015, 0.015, 0.00152, 26.4e6 * 71.7 / 70, 1.95));
    Effective soft = solve(new Laminate(0.00902, 0.00902, 0.00152, 0.44e6, 1.0));
    return List.of(
        // 6 + 1.52 + 6 mm, stiff interlayer, a = 1500 mm: 12.06999 and 12.33896 mm
        new OutsideCheck("6 + 6 mm, deflection", stiff.forDeflection(), 0.01206999, 1e-5, SHEET),
        new OutsideCheck("6 + 6 mm, stress", stiff.forStressFirst(), 0.01233896, 1e-5, SHEET),
        // 15 + 1.52 + 15 mm, a = 1950 mm: 30.92 and 31.21 mm, transfer 0.93
        new OutsideCheck("15 + 15 mm, transfer", thick.shearTransfer(), 0.93, 0.006, SHEET),
        new OutsideCheck("15 + 15 mm, deflection", thick.forDeflection(), 0.03092, 5e-4, SHEET),
        new OutsideCheck("15 + 15 mm, stress", thick.forStressFirst(), 0.03121, 5e-4, SHEET),
        // h_s = 10.54, I_s = 501.0 mm³, Γ = 0.0853; ∛1980.6 and √(1980.6/9.919) mm
        new OutsideCheck("10 + 10 mm, transfer", soft.shearTransfer(), 0.0853, 0.001, EXAMPLE),
        new OutsideCheck("10 + 10 mm, deflection", soft.forDeflection(), 0.012558, 0.001, EXAMPLE),
        new OutsideCheck("10 + 10 mm, stress", soft.forStressFirst(), 0.014131, 0.001, EXAMPLE));
  }

  @Nested
  class FromOutside {
    @ParameterizedTest
    @MethodSource("mullwright.analysis.glass.LaminatedThicknessTest#checks")
    void workedExamples(OutsideCheck check) {
      check.hold();
    }
  }

  @Nested
  class Contract {
    private static final double H = 0.00556;

    @Test
    void softInterlayerLeavesTwoLoosePlies() {
      Effective loose = solve(new Laminate(H, H, 0.00152, 1, 1.5));
      assertThat(loose.shearTransfer()).isCloseTo(0, within(1e-4));
      assertThat(loose.forDeflection()).isCloseTo(H * Math.cbrt(2), within(1e-6));
      assertThat(loose.forStressFirst()).isCloseTo(H * Math.sqrt(2), within(1e-6));
    }

    @Test
    void stiffInterlayerMakesOnePiece() {
      Effective solid = solve(new Laminate(H, H, 1e-9, 28e9, 1.5));
      assertThat(solid.shearTransfer()).isCloseTo(1, within(1e-6));
      assertThat(solid.forDeflection()).isCloseTo(2 * H, within(1e-6));
      assertThat(solid.forStressFirst()).isCloseTo(2 * H, within(1e-6));
    }

    @Test
    void stiffnessGrowsWithTheInterlayersModulus() {
      double before = 0;
      for (double modulus = 1e4; modulus < 1e9; modulus *= 3) {
        double now = solve(new Laminate(H, 0.00742, 0.00152, modulus, 1.5)).forDeflection();
        assertThat(now).isGreaterThan(before);
        before = now;
      }
    }

    @Test
    void pliesMayChangePlaces() {
      Effective one = solve(new Laminate(H, 0.00742, 0.00152, 1e6, 1.5));
      Effective turned = solve(new Laminate(0.00742, H, 0.00152, 1e6, 1.5));
      assertThat(turned.forDeflection()).isCloseTo(one.forDeflection(), within(1e-15));
      assertThat(turned.forStressFirst()).isCloseTo(one.forStressSecond(), within(1e-15));
      assertThat(turned.forStressSecond()).isCloseTo(one.forStressFirst(), within(1e-15));
    }

    @Test
    void refusesWithoutAModulusAndBeyondItsRange() {
      OutsideCheck.refused(
          LaminatedThickness.solve(new Laminate(H, H, 0.00152, 0, 1.5)),
          "shear modulus of the interlayer");
      OutsideCheck.refused(
          LaminatedThickness.solve(new Laminate(H, 0.01209, 0.00152, 1e6, 1.5)),
          "ratio of the two ply thicknesses");
      OutsideCheck.refused(
          LaminatedThickness.solve(new Laminate(H, H, 0.006, 1e6, 1.5)), "interlayer thickness");
    }
  }

  @Nested
  class Unchanged {
    // Own value: ask a human before editing it.
    @Test
    void ownValue() {
      Effective unlike = solve(new Laminate(H, 0.00742, 0.00152, 1e6, 1.5));
      assertThat(unlike.forStressSecond()).isCloseTo(0.012404912075628917, within(1e-12));
    }

    private static final double H = 0.00556;
  }
}
