package mullwright.analysis.wall;

import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.IntFunction;

/**
 * Results by number, each computed when first asked for. Several threads may ask; one that comes
 * while another computes may compute the same again.
 */
final class Kept<T> {
  private final AtomicReferenceArray<T> results;
  private final IntFunction<T> compute;

  Kept(int count, IntFunction<T> compute) {
    this.results = new AtomicReferenceArray<>(count);
    this.compute = compute;
  }

  T get(int number) {
    T known = results.get(number);
    if (known == null) {
      known = compute.apply(number);
      results.set(number, known);
    }
    return known;
  }
}
