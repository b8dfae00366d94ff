package mullwright.takeoff.nesting;

/** Counts the work done on one problem and says when its limit is reached. */
final class Effort {
  private final long most;
  private final long start;
  private final long nanoseconds;
  private long done;
  private boolean spent;
  private boolean clock;

  Effort(Limits limits) {
    this.most = limits.work();
    this.nanoseconds = limits.nanoseconds();
    this.start = nanoseconds == Long.MAX_VALUE ? 0 : System.nanoTime();
  }

  /** Adds {@code units} of work. */
  void add(long units) {
    done += units;
  }

  /** Work done so far. */
  long done() {
    return done;
  }

  /** True once the limit is reached, and ever after. */
  boolean spent() {
    if (!spent) {
      spent = done >= most;
      if (!spent && nanoseconds != Long.MAX_VALUE) {
        clock = System.nanoTime() - start >= nanoseconds;
        spent = clock;
      }
    }
    return spent;
  }

  /** True if the limit reached is the clock's. */
  boolean clock() {
    return clock;
  }
}
