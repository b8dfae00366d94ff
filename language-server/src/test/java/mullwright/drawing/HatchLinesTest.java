package mullwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class HatchLinesTest {
  private static double length(List<double[]> lines) {
    return lines.stream().mapToDouble(l -> Math.hypot(l[2] - l[0], l[3] - l[1])).sum();
  }

  @Test
  void linesFillTheArea() {
    // closed form: as many lines as fit square to them, so length of lines × spacing → area
    double[] area = new Box(0, 0, 100, 80).corners();
    for (double angle : new double[] {0, 30, 45, 60, 90, 135}) {
      Hatch hatch = Hatch.slanting("x", angle, 0.5);
      assertThat(length(HatchLines.of(area, hatch, List.of())) * 0.5).isCloseTo(8000, within(40.0));
    }
  }

  @Test
  void clearRoomStaysFree() {
    double[] area = new Box(0, 0, 100, 80).corners();
    Box clear = new Box(40, 30, 60, 50);
    List<double[]> lines = HatchLines.of(area, Hatch.slanting("x", 45, 0.5), List.of(clear));
    // closed form: 100 × 80 less the clear 20 × 20
    assertThat(length(lines) * 0.5).isCloseTo(8000 - 400, within(40.0));
    for (double[] line : lines) {
      double x = (line[0] + line[2]) / 2;
      double y = (line[1] + line[3]) / 2;
      assertThat(clear.grown(-0.01).holds(x, y)).isFalse();
    }
  }

  @Test
  void neighboursHatchThrough() {
    Hatch hatch = Hatch.slanting("x", 45, 2.5);
    List<double[]> whole = HatchLines.of(new Box(0, 0, 40, 20).corners(), hatch, List.of());
    List<double[]> left = HatchLines.of(new Box(0, 0, 20, 20).corners(), hatch, List.of());
    List<double[]> right = HatchLines.of(new Box(20, 0, 40, 20).corners(), hatch, List.of());
    assertThat(length(left) + length(right)).isCloseTo(length(whole), within(1e-6));
  }

  @Test
  void anAreaThatIsNotConvexIsHatchedInside() {
    // an L: 20 × 20 less 10 × 10
    double[] area = {0, 0, 20, 0, 20, 10, 10, 10, 10, 20, 0, 20};
    assertThat(length(HatchLines.of(area, Hatch.slanting("x", 45, 0.1), List.of())) * 0.1)
        .isCloseTo(300, within(3.0));
  }
}
