package mullwright.takeoff.nesting;

/**
 * How long the search for a proved plan may go on.
 *
 * <p>The search is a fixed sequence of steps and a limit only says where it stops. A work limit
 * counts the steps, so the same problem gives the same plan on any machine. A time limit reads the
 * clock, so a slower machine may stop at an earlier plan of the same sequence; where it stands
 * beside a work limit it is a guard that a machine of usual speed does not meet, and {@link
 * NestingResult.Planned#clock()} tells when it was met. A search that ends by proof before its
 * limit gives the same plan under any.
 *
 * @param work most units of work; one unit is about one table cell visited, a nanosecond or less
 * @param nanoseconds most time, {@link Long#MAX_VALUE} for no regard to the clock
 */
public record Limits(long work, long nanoseconds) {
  /** Work that one core of usual speed does in a second. */
  public static final long WORK_OF_A_SECOND = 1_000_000_000L;

  /** How many times longer than meant the guard lets a slow machine go on. */
  private static final int GUARD = 10;

  public Limits {
    if (work < 0 || nanoseconds < 0) {
      throw new IllegalArgumentException("negative limit");
    }
  }

  /** Stops after {@code units} of work: reproducible everywhere. */
  public static Limits work(long units) {
    return new Limits(units, Long.MAX_VALUE);
  }

  /** Stops after {@code milliseconds} on the clock: for measurements. */
  public static Limits milliseconds(long milliseconds) {
    return new Limits(Long.MAX_VALUE, Math.multiplyExact(milliseconds, 1_000_000L));
  }

  /**
   * Stops after the work that a core of usual speed does in so many seconds, 1 to 3600: for
   * reports. A machine ten times slower is stopped by the clock.
   */
  public static Limits report(int seconds) {
    if (seconds < 1 || seconds > 3600) {
      throw new IllegalArgumentException(seconds + " seconds");
    }
    return new Limits(seconds * WORK_OF_A_SECOND, GUARD * seconds * 1_000_000_000L);
  }
}
