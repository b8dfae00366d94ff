package mullwright.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/**
 * A value of a method held against one from outside, within a stated relative tolerance.
 *
 * @param what the case in words
 * @param computed what the method answers
 * @param expected what the source says
 * @param tolerance accepted difference over the expected value
 * @param source where the expected value comes from
 */
public record OutsideCheck(
    String what, double computed, double expected, double tolerance, String source) {

  /** Holds the two values together. */
  public void hold() {
    assertThat(computed)
        .as("%s (%s)", what, source)
        .isCloseTo(expected, within(Math.abs(expected) * tolerance));
  }

  /** Relative difference. */
  public double difference() {
    return expected == 0 ? Math.abs(computed) : Math.abs(computed / expected - 1);
  }

  /** The value of an outcome that must not be a refusal. */
  public static <T> T solved(Outcome<T> outcome) {
    return outcome
        .solved()
        .orElseThrow(() -> new AssertionError(outcome.refused().orElseThrow().sentence()));
  }

  /** Demands a refusal whose sentence names the quantity. */
  public static void refused(Outcome<?> outcome, String quantity) {
    assertThat(outcome.refused()).isPresent();
    assertThat(outcome.refused().orElseThrow().sentence()).startsWith(quantity + " is ");
  }

  @Override
  public String toString() {
    return what + ", " + source;
  }
}
