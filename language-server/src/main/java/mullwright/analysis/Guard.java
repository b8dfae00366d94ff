package mullwright.analysis;

import java.util.Optional;
import java.util.function.Supplier;

/**
 * Holds a method's inputs against its range and remembers the first that lies outside.
 *
 * <pre>{@code
 * return Guard.range()
 *     .positive("span", in.span(), "m")
 *     .then(() -> new Result(...));
 * }</pre>
 */
public final class Guard {
  private Refusal first;

  private Guard() {}

  /** Starts with nothing refused. */
  public static Guard range() {
    return new Guard();
  }

  /** Refuses what is not finite or not greater than zero. */
  public Guard positive(String quantity, double given, String unit) {
    return that(Double.isFinite(given) && given > 0, quantity, given, unit, "greater than 0");
  }

  /** Refuses what is not finite or less than zero. */
  public Guard notNegative(String quantity, double given, String unit) {
    return that(Double.isFinite(given) && given >= 0, quantity, given, unit, "0 or more");
  }

  /** Refuses infinities and what is not a number. */
  public Guard finite(String quantity, double given, String unit) {
    return that(Double.isFinite(given), quantity, given, unit, "a finite number");
  }

  /** Refuses when a condition on the quantity does not hold. */
  public Guard that(boolean holds, String quantity, double given, String unit, String accepted) {
    if (first == null && !holds) {
      first = new Refusal(quantity, given, unit, accepted);
    }
    return this;
  }

  /** The first thing refused, or empty. */
  public Optional<Refusal> refused() {
    return Optional.ofNullable(first);
  }

  /** Computes the result when nothing was refused. */
  public <R> Outcome<R> then(Supplier<R> method) {
    return first == null ? new Outcome.Solved<>(method.get()) : new Outcome.Refused<>(first);
  }
}
