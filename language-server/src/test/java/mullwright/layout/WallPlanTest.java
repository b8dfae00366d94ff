package mullwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import mullwright.model.Given;
import mullwright.model.Grid;
import mullwright.model.Origin;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;
import mullwright.quantity.Rational;
import mullwright.quantity.Unit;
import mullwright.syntax.TextRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where faces stand in plan, against figures that close. */
class WallPlanTest {
  private static final Origin NOWHERE = new Origin("", 0, new TextRange(0, 0));
  private static final double NEAR = 1e-9;

  /** Lines a metre apart, with corners of that included angle at all inner ones. */
  private static WallPlan polygon(int sides, int degrees) {
    List<Grid.Line> lines = new ArrayList<>();
    List<Grid.Bay> bays = new ArrayList<>();
    List<Grid.Corner> corners = new ArrayList<>();
    for (int at = 0; at <= sides; at++) {
      lines.add(
          new Grid.Line(at, "" + at, Length.ofMillimetres(1000L * at), false, false, NOWHERE));
      if (at < sides) {
        bays.add(new Grid.Bay(at, at, at + 1, Length.ofMillimetres(1000)));
      }
      if (at > 0 && at < sides) {
        corners.add(
            new Grid.Corner(
                at, Given.stated(Quantity.of(Rational.of(degrees), Unit.DEGREE), NOWHERE)));
      }
    }
    return new WallPlan(
        new Grid(List.of(), lines, bays, corners, List.of(), List.of(), List.of(), List.of()));
  }

  @ParameterizedTest
  // elementary geometry: the inner angle of a regular polygon of n sides is (n − 2) 180° / n
  @CsvSource({"3, 60", "4, 90", "5, 108", "6, 120", "4, 270", "6, 240"})
  void aRegularPolygonComesBackToItsStart(int sides, int degrees) {
    WallPlan.Spot end =
        polygon(sides, degrees).inBay(sides - 1, Length.ofMillimetres(1000L * sides));
    assertThat(end.x()).isCloseTo(0, within(NEAR));
    assertThat(end.y()).isCloseTo(0, within(NEAR));
  }

  @Test
  void anOutsideCornerKeepsTheRoomInside() {
    WallPlan plan = polygon(4, 90);
    // the middle of the second side, half a metre into the room, is the middle of the square
    WallPlan.Spot middle = plan.inBay(1, Length.ofMillimetres(1500)).inward(500);
    assertThat(middle.x()).isCloseTo(500, within(NEAR));
    assertThat(middle.y()).isCloseTo(500, within(NEAR));
  }

  @Test
  void atACornerTheWayIntoTheRoomHalvesTheAngle() {
    WallPlan plan = polygon(4, 90);
    WallPlan.Spot in = plan.onLine(1, Length.ofMillimetres(1000)).inward(StrictMath.sqrt(2) * 500);
    assertThat(in.x()).isCloseTo(500, within(NEAR));
    assertThat(in.y()).isCloseTo(500, within(NEAR));
    assertThat(plan.turn(1)).isCloseTo(Math.PI / 2, within(NEAR));
    assertThat(plan.turn(0)).isZero();
  }
}
