package mullwright.drawing.piece;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import mullwright.drawing.Scale;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

/** A long bar on short paper, and letters moved apart. */
class BrokenAxisTest {
  private static final double NEAR = 1e-9;

  @Test
  void aBarThatFitsIsNotBroken() {
    BrokenAxis axis = new BrokenAxis(new double[] {0, 300, 1000}, Scale.of(10), 100);
    assertThat(axis.breaks()).isEmpty();
    assertThat(axis.length()).isCloseTo(100, within(NEAR));
    assertThat(axis.at(650)).isCloseTo(65, within(NEAR));
  }

  @Test
  void theLongStretchesShareWhatTheShortOnesLeave() {
    // by hand: 10 mm for the first 100; 90 mm are left, 45 each for 900 and 4000
    BrokenAxis axis = new BrokenAxis(new double[] {0, 100, 1000, 5000}, Scale.of(10), 100);
    assertThat(axis.at(100)).isCloseTo(10, within(NEAR));
    assertThat(axis.at(1000)).isCloseTo(55, within(NEAR));
    assertThat(axis.at(5000)).isCloseTo(100, within(NEAR));
    assertThat(axis.breaks()).hasSize(2);
    assertThat(axis.breaks().get(0)).isCloseTo(32.5, within(NEAR)); // the middle of 10 and 55
  }

  @Test
  void lettersThatHaveRoomStayWhereTheyAre() {
    assertThat(Spread.of(new double[] {0, 5, 12}, 4)).containsExactly(0, 5, 12);
  }

  @Test
  void lettersThatHaveNoneMoveAboutTheirMiddle() {
    // by hand: three at 10, a pitch of 4 apart, about 10
    assertThat(Spread.of(new double[] {10, 10, 10}, 4)).containsExactly(6, 10, 14);
  }

  @RepeatedTest(200)
  void spreadKeepsOrderAndPitch(RepetitionInfo repetition) {
    SplittableRandom random = new SplittableRandom(repetition.getCurrentRepetition());
    double[] wanted = random.doubles(1 + random.nextInt(40), 0, 100).sorted().toArray();
    double[] placed = Spread.of(wanted, 3);
    for (int at = 1; at < placed.length; at++) {
      assertThat(placed[at] - placed[at - 1]).isGreaterThanOrEqualTo(3 - NEAR);
    }
    // moved as little as can be: the sum of all moves is nothing
    assertThat(Arrays.stream(placed).sum()).isCloseTo(Arrays.stream(wanted).sum(), within(1e-6));
  }
}
