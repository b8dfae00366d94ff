package mullwright.analysis.wall;

import java.util.function.Supplier;

/**
 * A result computed when first asked for, once: whoever asks while another thread computes it waits
 * for that. If the computation breaks, the next question computes anew.
 */
final class Once<T> {
  private Supplier<T> compute;
  private volatile T result;

  Once(Supplier<T> compute) {
    this.compute = compute;
  }

  T get() {
    // rules ask thousands of times, from two threads: a lock at each would cost more than the
    // answer
    T known = result;
    return known == null ? computed() : known;
  }

  private synchronized T computed() {
    if (result == null) {
      result = compute.get();
      // what it was made from need not be kept alive
      compute = null;
    }
    return result;
  }
}
