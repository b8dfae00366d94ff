package mullwright.analysis.glass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import mullwright.analysis.OutsideCheck;
import mullwright.analysis.glass.SettingBlocks.Blocks;
import mullwright.analysis.glass.SettingBlocks.Lite;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

public class SettingBlocksTest {
  private static final double INCH = 0.0254;

  private static Blocks inches(double width, double height) {
    return OutsideCheck.solved(SettingBlocks.solve(new Lite(width * INCH, height * INCH)));
  }

  public static List<OutsideCheck> checks() {
    Blocks small = inches(58.5, 70.5);
    Blocks large = inches(72, 120);
    Blocks metric = OutsideCheck.solved(SettingBlocks.solve(new Lite(2, 3)));
    return List.of(
        // handbook CHECK 7.2 (closed form, recomputed)
        check("block of 58.5 × 70.5 in", small.length() / INCH, 4, 1e-9),
        check("block of 72 × 120 in", large.length() / INCH, 6.0, 1e-9),
        check("left centre of 58.5 in", small.firstCentre() / INCH, 14.625, 1e-9),
        check("right centre of 58.5 in", small.secondCentre() / INCH, 43.875, 1e-9),
        // the metric wording of the rule, 27.3 mm a square metre
        check("block of 6 m²", metric.length() * 1000, 6 * 27.3, 0.002));
  }

  private static OutsideCheck check(String what, double computed, double expected, double within) {
    return new OutsideCheck(what, computed, expected, within, "flat-glass trade rule, recomputed");
  }

  @Nested
  class FromOutside {
    @ParameterizedTest
    @MethodSource("mullwright.analysis.glass.SettingBlocksTest#checks")
    void blocks(OutsideCheck check) {
      check.hold();
    }
  }

  @Nested
  class Contract {
    @Test
    void blocksAreSymmetricAndGrowWithTheArea() {
      double before = 0;
      for (double height = 40; height < 200; height += 20) {
        Blocks blocks = inches(60, height);
        assertThat(blocks.firstCentre() + blocks.secondCentre())
            .isCloseTo(60 * INCH, within(1e-12));
        assertThat(blocks.length()).isGreaterThanOrEqualTo(before);
        before = blocks.length();
      }
      assertThat(before).isGreaterThan(4 * INCH);
    }

    @Test
    void movedBlocksStaySixInchesFromTheCorner() {
      for (double width : new double[] {30, 48, 72, 120}) {
        Blocks blocks = inches(width, 60);
        boolean clear = blocks.nearestCentre() - blocks.length() / 2 >= 6 * INCH - 1e-12;
        assertThat(clear || blocks.nearestCentre() == blocks.firstCentre()).isTrue();
        assertThat(blocks.nearestCentre()).isLessThanOrEqualTo(blocks.firstCentre());
      }
    }

    @Test
    void refusesALiteTooNarrowForTwoBlocks() {
      OutsideCheck.refused(SettingBlocks.solve(new Lite(7 * INCH, 2)), "width");
      OutsideCheck.refused(SettingBlocks.solve(new Lite(1, -2)), "height");
    }
  }

  @Nested
  class Unchanged {
    // Own value: ask a human before editing it.
    @Test
    void ownValue() {
      assertThat(inches(60, 100).nearestCentre() / INCH)
          .isCloseTo(6 + 100 * 60 / 1440.0 / 2, within(1e-9));
    }
  }
}
