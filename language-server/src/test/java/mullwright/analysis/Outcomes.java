package mullwright.analysis;

import static org.assertj.core.api.Assertions.assertThat;

/** Takes outcomes apart in tests. */
public final class Outcomes {
  private Outcomes() {}

  /** The result of a method that must not refuse. */
  public static <T> T solved(Outcome<T> outcome) {
    assertThat(outcome.refused()).isEmpty();
    return outcome.solved().orElseThrow();
  }

  /** The sentence of a method that must refuse. */
  public static String refused(Outcome<?> outcome) {
    assertThat(outcome.solved()).isEmpty();
    return outcome.refused().orElseThrow().sentence();
  }
}
