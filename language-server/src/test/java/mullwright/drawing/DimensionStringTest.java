package mullwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class DimensionStringTest {
  private static Recorded painted(DimensionString string) {
    Recorded recorded = new Recorded();
    recorded.beginLayer(Layer.DIMENSION);
    string.paint(recorded);
    return recorded;
  }

  private static DimensionString.Part part(double start, double end, String text) {
    return new DimensionString.Part(start, end, text);
  }

  @Test
  void figuresStandInTheMiddleAboveTheLine() {
    // ISO 129-1: above the line and clear of it (from memory)
    Recorded recorded = painted(DimensionString.level(-9, 0, List.of(part(0, 30, "5'-0\""))));
    assertThat(recorded.texts).hasSize(1);
    assertThat(recorded.texts.get(0).x()).isEqualTo(15);
    assertThat(recorded.texts.get(0).y()).isGreaterThan(-9);
    assertThat(recorded.texts.get(0).angle()).isZero();
  }

  @Test
  void heightsAreReadFromTheRight() {
    Recorded recorded = painted(DimensionString.upright(-9, 0, List.of(part(0, 30, "5'-0\""))));
    // ISO 129-1: figures are read from the bottom or the right (from memory)
    assertThat(recorded.texts.get(0).angle()).isEqualTo(90);
    assertThat(recorded.texts.get(0).y()).isEqualTo(15);
    assertThat(recorded.texts.get(0).box().right()).isLessThanOrEqualTo(-9);
  }

  @Test
  void aCommonEndIsMarkedOnce() {
    Recorded recorded =
        painted(
            DimensionString.level(-9, 0, List.of(part(0, 30, "5'-0\""), part(30, 60, "5'-0\""))));
    long extensions =
        recorded.lines.stream().filter(line -> line.x1() == line.x2() && line.x1() == 30).count();
    assertThat(extensions).isEqualTo(1);
  }

  @Test
  void aFigureWiderThanItsPartIsTurned() {
    Recorded recorded =
        painted(
            DimensionString.upright(
                -20, 0, List.of(part(0, 5, "2'-3 1/2\""), part(5, 40, "6'-6\""))));
    Recorded.Text turned = recorded.texts.get(0);
    assertThat(turned.angle()).isZero();
    assertThat(turned.box().left()).isGreaterThan(-20);
    assertThat(turned.box().bottom()).isGreaterThan(0);
    assertThat(turned.box().top()).isLessThan(5);
    assertThat(recorded.texts.get(1).angle()).isEqualTo(90);
  }

  @Test
  void figuresWithoutRoomStandBesideEachOther() {
    Recorded recorded =
        painted(
            DimensionString.level(
                -9,
                0,
                List.of(
                    part(0, 2, "11 15/16\""),
                    part(2, 4, "11 15/16\""),
                    part(4, 6, "11 15/16\""),
                    part(6, 60, "9'-0\""))));
    assertThat(recorded.texts).hasSize(4);
    for (Recorded.Text one : recorded.texts) {
      for (Recorded.Text other : recorded.texts) {
        assertThat(one != other && one.box().overlaps(other.box()))
            .as("%s over %s", one, other)
            .isFalse();
      }
    }
  }
}
