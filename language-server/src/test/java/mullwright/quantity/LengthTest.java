package mullwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The arithmetic of exact lengths. */
class LengthTest {
  private static final Length SIXTY_FOURTH = Length.ofInches(1, 64);

  @Test
  void anInchIsTwentyFivePointFourMillimetres() {
    assertThat(Length.ofInches(1)).isEqualTo(Length.ofMillimetres(254, 10));
    assertThat(SIXTY_FOURTH).isEqualTo(Length.ofNanometres(396_875)); // by hand
    assertThat(Length.ofInches(5, 2)).isEqualTo(Length.ofNanometres(63_500_000)); // by hand
  }

  @Test
  void halvesOf64thsAreExactFourTimesOver() {
    Length part = SIXTY_FOURTH;
    for (int i = 0; i < 4; i++) {
      Length half = part.half();
      assertThat(half.times(2)).isEqualTo(part);
      part = half;
    }
    assertThat(part.millimetres()).isEqualTo(new BigDecimal("0.0248046875")); // 25.4 / 1024
  }

  @Test
  void whatIsLeftBetweenTwoFacesIsExact() {
    // half of 2 1/2 and half of 2 33/64 off 60: 57 63/128, which no 64th holds
    Length left = Length.ofInches(5, 2);
    Length right = Length.ofInches(161, 64);
    assertThat(Length.ofInches(60).lessHalves(left, right))
        .isEqualTo(Length.ofInches(57 * 128 + 63, 128));
  }

  @Test
  void aTieStaysATieThroughTheHalfFace() {
    // 1/64 and 3/64 leave 31/32 of the inch, exactly between two sixteenths, so it goes up
    Length clear = Length.ofInches(1).lessHalves(SIXTY_FOURTH, Length.ofInches(3, 64));
    assertThat(clear).isEqualTo(Length.ofInches(31, 32));
    assertThat(LengthFormat.inches(Step.SIXTEENTH).print(clear)).isEqualTo("1\"");
  }

  @Test
  void splittingGivesTheRestToTheLastPart() {
    Length overall = Length.ofInches(360);
    List<Length> parts = overall.split(7);
    assertThat(parts).hasSize(7);
    assertThat(parts.subList(0, 6)).containsOnly(parts.get(0));
    assertThat(parts.get(6).minus(parts.get(0))).isBetween(Length.ZERO, new Length(6));
    assertThat(parts.stream().reduce(Length.ZERO, Length::plus)).isEqualTo(overall);
    assertThat(overall.split(1)).containsExactly(overall);
    assertThatThrownBy(() -> overall.split(0)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void scalingRoundsToTheNearestTickHalfToEven() {
    assertThat(new Length(5).scaled(1, 2)).isEqualTo(new Length(2));
    assertThat(new Length(7).scaled(1, 2)).isEqualTo(new Length(4));
    assertThat(new Length(-5).scaled(1, 3)).isEqualTo(new Length(-2));
    assertThat(Length.ofInches(60).scaled(1, 4)).isEqualTo(Length.ofInches(15));
    assertThat(Length.LIMIT.scaled(97, 96).ticks()).isEqualTo(161_666_666_666_667L); // by hand
  }

  @Test
  void anOverflowIsNeverAWrongNumber() {
    Length huge = new Length(Long.MAX_VALUE);
    assertThatThrownBy(() -> huge.plus(new Length(1))).isInstanceOf(ArithmeticException.class);
    assertThatThrownBy(() -> huge.times(2)).isInstanceOf(ArithmeticException.class);
    assertThatThrownBy(() -> huge.scaled(3, 2)).isInstanceOf(ArithmeticException.class);
    assertThatThrownBy(() -> new Length(Long.MIN_VALUE).abs())
        .isInstanceOf(ArithmeticException.class);
    assertThatThrownBy(() -> Length.ofInches(Long.MAX_VALUE))
        .isInstanceOf(ArithmeticException.class);
    assertThatThrownBy(() -> Length.nearest(1e12)).isInstanceOf(ArithmeticException.class);
    assertThatThrownBy(() -> Length.nearest(Double.NaN)).isInstanceOf(NumberFormatException.class);
  }

  @Test
  void fiftySevenThousandTimesTheLimitStillFits() {
    assertThat(Length.LIMIT.times(57_000).toMetres()).isEqualTo(5.7e8);
  }

  @Test
  void aConstantMustBeExact() {
    assertThatThrownBy(() -> Length.ofInches(1, 3)).isInstanceOf(ArithmeticException.class);
    assertThatThrownBy(() -> Length.ofMillimetres(1, 7)).isInstanceOf(ArithmeticException.class);
  }

  @Test
  void orderAndSign() {
    Length one = Length.ofInches(1);
    Length two = Length.ofInches(2);
    assertThat(one).isLessThan(two);
    assertThat(one.isShorterThan(two)).isTrue();
    assertThat(one.isShorterThan(one)).isFalse();
    assertThat(two.isLongerThan(one)).isTrue();
    assertThat(Length.min(one, two)).isEqualTo(one);
    assertThat(Length.max(one, two)).isEqualTo(two);
    assertThat(one.minus(two).abs()).isEqualTo(one);
    assertThat(one.negated().signum()).isEqualTo(-1);
  }

  @Test
  void asFloatingPointNumbers() {
    Length length = Length.ofInches(1139, 16);
    assertThat(length.toInches()).isEqualTo(71.1875);
    assertThat(length.toMillimetres()).isEqualTo(1808.1625);
    assertThat(length.toMetres()).isEqualTo(1.8081625);
    assertThat(Length.nearest(length.toMetres())).isEqualTo(length);
  }
}
