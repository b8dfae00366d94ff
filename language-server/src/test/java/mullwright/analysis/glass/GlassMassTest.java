package mullwright.analysis.glass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import mullwright.analysis.OutsideCheck;
import mullwright.analysis.glass.GlassMass.Lite;
import mullwright.analysis.glass.GlassMass.Mass;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

public class GlassMassTest {
  private static final double AREA = 58.5 * 70.5 * 0.0254 * 0.0254;

  private static Mass solve(double area, List<Double> plies, List<Double> interlayers) {
    return OutsideCheck.solved(GlassMass.solve(new Lite(area, plies, interlayers)));
  }

  public static List<OutsideCheck> checks() {
    Mass unit = solve(AREA, List.of(0.006, 0.006), List.of());
    return List.of(
        // handbook CHECK 7.3 (closed form, recomputed)
        check("area", AREA, 2.6608),
        check("6 + 6 mm unit, kg", unit.mass(), 79.82),
        check("6 + 6 mm unit, lb", unit.mass() / 0.45359237, 175.98),
        check("6 + 6 mm unit, kg/m²", unit.perArea(), 30),
        check("6 + 6 mm unit, psf", unit.perArea() * 0.204816, 6.144),
        // 1.1 kg/m² per mm of interlayer
        check(
            "6 + 1.52 + 6 mm laminate, kg/m²",
            solve(1, List.of(0.006, 0.006), List.of(0.00152)).perArea(),
            30 + 1.672));
  }

  private static OutsideCheck check(String what, double computed, double expected) {
    return new OutsideCheck(what, computed, expected, 0.001, "EN 572-1 density, recomputed");
  }

  @Nested
  class FromOutside {
    @ParameterizedTest
    @MethodSource("mullwright.analysis.glass.GlassMassTest#checks")
    void masses(OutsideCheck check) {
      check.hold();
    }
  }

  @Nested
  class Contract {
    @Test
    void orderOfPliesDoesNotMatterAndMassFollowsArea() {
      Mass one = solve(1.7, List.of(0.006, 0.008), List.of(0.0008));
      Mass turned = solve(3.4, List.of(0.008, 0.006), List.of(0.0008));
      assertThat(turned.mass()).isCloseTo(2 * one.mass(), within(1e-9));
    }

    @Test
    void refusesALiteWithoutGlass() {
      OutsideCheck.refused(GlassMass.solve(new Lite(1, List.of(), List.of())), "number of plies");
      OutsideCheck.refused(
          GlassMass.solve(new Lite(1, List.of(0.006, 0.0), List.of())), "ply thickness");
      OutsideCheck.refused(GlassMass.solve(new Lite(0, List.of(0.006), List.of())), "area");
    }
  }

  @Nested
  class Unchanged {
    // Own value: ask a human before editing it.
    @Test
    void ownValue() {
      assertThat(solve(2.5, List.of(0.010, 0.008, 0.006), List.of(0.00152)).mass())
          .isCloseTo(154.18, within(1e-9));
    }
  }
}
