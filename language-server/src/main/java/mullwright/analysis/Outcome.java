package mullwright.analysis;

import java.util.Optional;
import java.util.function.Function;

/**
 * Answer of a method that may decline: the result, or the reason why there is none.
 *
 * @param <T> the method's result
 */
public sealed interface Outcome<T> {

  /**
   * The method's range holds the input.
   *
   * @param value the result
   */
  record Solved<T>(T value) implements Outcome<T> {}

  /**
   * The input lies outside the method's range.
   *
   * @param refusal what was out of range
   */
  record Refused<T>(Refusal refusal) implements Outcome<T> {}

  /** The result, or empty when refused. */
  default Optional<T> solved() {
    return this instanceof Solved<T> s ? Optional.of(s.value()) : Optional.empty();
  }

  /** The refusal, or empty when solved. */
  default Optional<Refusal> refused() {
    return this instanceof Refused<T> r ? Optional.of(r.refusal()) : Optional.empty();
  }

  /** Carries a result on into the next method; a refusal stays as it is. */
  default <U> Outcome<U> then(Function<? super T, Outcome<U>> next) {
    if (this instanceof Refused<T> r) {
      return new Refused<>(r.refusal());
    }
    return next.apply(((Solved<T>) this).value());
  }
}
