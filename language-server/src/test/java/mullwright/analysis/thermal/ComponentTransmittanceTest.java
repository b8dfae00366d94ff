package mullwright.analysis.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import mullwright.analysis.OutsideCheck;
import mullwright.analysis.thermal.ComponentTransmittance.Area;
import mullwright.analysis.thermal.ComponentTransmittance.Joint;
import mullwright.analysis.thermal.ComponentTransmittance.Module;
import mullwright.analysis.thermal.ComponentTransmittance.Transmittance;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

public class ComponentTransmittanceTest {
  private static Transmittance solve(Module module) {
    return OutsideCheck.solved(ComponentTransmittance.solve(module));
  }

  /** A module 1.5 × 3.6 m, 60 mm members; transmittances are test input, not advice. */
  private static Module module() {
    return new Module(
        List.of(
            new Area("vision glass", 1.44 * 2.34, 1.1),
            new Area("spandrel panel", 1.44 * 1.14, 0.35),
            new Area("mullion", 0.06 * 3.6, 2.2),
            new Area("transoms", 2 * 0.06 * 1.44, 2.4)),
        List.of(
            new Joint("vision glass edge", 2 * (2.34 + 1.44), 0.11),
            new Joint("spandrel edge", 2 * (1.14 + 1.44), 0.18)));
  }

  public static List<OutsideCheck> checks() {
    Transmittance found = solve(module());
    return List.of(
        // handbook CHECK 14a
        check("module area", found.area(), 5.400),
        check("flow through areas", found.areaFlow(), 3.7066 + 0.5746 + 0.4752 + 0.4147),
        check("flow through joints", found.jointFlow(), 0.8316 + 0.9288),
        check("transmittance", found.transmittance(), 1.2836));
  }

  private static OutsideCheck check(String what, double computed, double expected) {
    return new OutsideCheck(what, computed, expected, 0.0001, "ISO 12631 formula, recomputed");
  }

  @Nested
  class FromOutside {
    @ParameterizedTest
    @MethodSource("mullwright.analysis.thermal.ComponentTransmittanceTest#checks")
    void module(OutsideCheck check) {
      check.hold();
    }
  }

  @Nested
  class Contract {
    @Test
    void oneMaterialWithoutJointsKeepsItsTransmittance() {
      Module plain = new Module(List.of(new Area("a", 2, 1.3), new Area("b", 5, 1.3)), List.of());
      assertThat(solve(plain).transmittance()).isCloseTo(1.3, within(1e-12));
    }

    @Test
    void scalingAllLengthsSpreadsTheJointsThinner() {
      Transmittance found = solve(module());
      Module doubled =
          new Module(
              module().areas().stream()
                  .map(a -> new Area(a.name(), 4 * a.area(), a.transmittance()))
                  .toList(),
              module().joints().stream()
                  .map(j -> new Joint(j.name(), 2 * j.length(), j.transmittance()))
                  .toList());
      double expected = (found.areaFlow() + found.jointFlow() / 2) / found.area();
      assertThat(solve(doubled).transmittance()).isCloseTo(expected, within(1e-12));
    }

    @Test
    void refusesPartsWithoutTransmittanceAndNamesThem() {
      OutsideCheck.refused(
          ComponentTransmittance.solve(new Module(List.of(), List.of())), "number of areas");
      OutsideCheck.refused(
          ComponentTransmittance.solve(new Module(List.of(new Area("mullion", 1, 0)), List.of())),
          "thermal transmittance of mullion");
      OutsideCheck.refused(
          ComponentTransmittance.solve(
              new Module(List.of(new Area("mullion", 1, 2)), List.of(new Joint("edge", 1, 3)))),
          "linear transmittance of edge");
    }
  }

  @Nested
  class Unchanged {
    // Own value: ask a human before editing it.
    @Test
    void ownValue() {
      Module odd =
          new Module(
              List.of(new Area("glass", 1.7, 1.3), new Area("mullion", 0.21, 2.9)),
              List.of(new Joint("edge", 5.3, 0.08)));
      assertThat(solve(odd).transmittance()).isCloseTo(1.6979057591623037, within(1e-9));
    }
  }
}
