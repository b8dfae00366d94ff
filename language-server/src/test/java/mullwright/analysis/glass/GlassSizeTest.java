package mullwright.analysis.glass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import mullwright.analysis.OutsideCheck;
import mullwright.analysis.glass.GlassSize.Edge;
import mullwright.analysis.glass.GlassSize.Opening;
import mullwright.analysis.glass.GlassSize.Size;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

public class GlassSizeTest {
  private static final double INCH = 0.0254;

  private static Size solve(Opening opening) {
    return OutsideCheck.solved(GlassSize.solve(opening));
  }

  /** Half of a 2 1/2 in face, half of a 1/2 in tongue, and a bite, all in inches. */
  private static Edge edge(double bite) {
    return new Edge(1.25 * INCH, 0.25 * INCH, bite * INCH);
  }

  public static List<OutsideCheck> checks() {
    Size width = solve(new Opening(60 * INCH, edge(0.5), edge(0.5)));
    Size height = solve(new Opening(72 * INCH, edge(0.5), edge(0.5)));
    return List.of(
        // handbook CHECK 7.1 (closed form, recomputed)
        check("daylight width", width.daylightOpening(), 57.5),
        check("glass width", width.glass(), 58.5),
        check("daylight height", height.daylightOpening(), 69.5),
        check("glass height", height.glass(), 70.5),
        // 0.75 in from glass to centre line, less the half tongue
        check("edge clearance", width.firstClearance(), 0.75 - 0.25));
  }

  private static OutsideCheck check(String what, double metres, double inches) {
    return new OutsideCheck(what, metres / INCH, inches, 1e-12, "plain geometry, recomputed");
  }

  @Nested
  class FromOutside {
    @ParameterizedTest
    @MethodSource("mullwright.analysis.glass.GlassSizeTest#checks")
    void sizes(OutsideCheck check) {
      check.hold();
    }
  }

  @Nested
  class Contract {
    @Test
    void spacingIsUsedUpExactly() {
      Edge first = new Edge(0.032, 0.006, 0.013);
      Edge second = new Edge(0.030, 0.007, 0.011);
      Size size = solve(new Opening(1.5, first, second));
      double used =
          first.halfTongue()
              + size.firstClearance()
              + size.glass()
              + size.secondClearance()
              + second.halfTongue();
      assertThat(used).isCloseTo(1.5, within(1e-12));
    }

    @Test
    void deeperBiteTakesFromTheClearanceUntilItIsNegative() {
      assertThat(solve(new Opening(1.5, edge(1.1), edge(0.5))).firstClearance()).isNegative();
    }

    @Test
    void refusesAnOpeningThatIsNone() {
      OutsideCheck.refused(
          GlassSize.solve(new Opening(0.05, edge(0.5), edge(0.5))), "daylight opening");
      OutsideCheck.refused(
          GlassSize.solve(new Opening(1, new Edge(-0.01, 0, 0), edge(0.5))), "half sightline");
    }
  }

  @Nested
  class Unchanged {
    // Own value: ask a human before editing it.
    @Test
    void ownValue() {
      Size size = solve(new Opening(1.5, new Edge(0.032, 0.006, 0.013), edge(0.5)));
      assertThat(size.glass()).isCloseTo(1.46195, within(1e-12));
    }
  }
}
