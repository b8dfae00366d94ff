package mullwright.workspace;

import java.util.concurrent.CancellationException;

/** Asks, in loops, whether the answer is still wanted. */
@FunctionalInterface
public interface Cancel {
  /** Nobody takes the question back. */
  Cancel NEVER = () -> false;

  /** True once the answer is no longer wanted. */
  boolean asked();

  /**
   * Ends the computation if its answer is no longer wanted.
   *
   * @throws Cancelled if so
   */
  default void check() {
    if (asked()) {
      throw new Cancelled();
    }
  }

  /** A computation was given up because nobody wants its answer any more. */
  final class Cancelled extends CancellationException {
    private static final long serialVersionUID = 1L;

    Cancelled() {
      super("given up: the answer is no longer wanted");
    }

    // thrown often and never a fault: the way it came is of no interest
    @Override
    public synchronized Throwable fillInStackTrace() {
      return this;
    }
  }
}
