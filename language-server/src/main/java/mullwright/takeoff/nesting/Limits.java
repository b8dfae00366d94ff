package mullwright.takeoff.nesting;

/**
 * How long the search for a proved plan may go on.
 *
 * <p>The search is a fixed sequence of steps and a limit only says where it stops. A work limit
 * counts the steps, so the same problem gives the same plan on any machine: reports use it. A time
 * limit reads the clock, so a slower machine may stop at an earlier plan of the same sequence:
 * measurements use it. A search that ends by proof before its limit gives the same plan under both.
 *
 * @param work most units of work; one unit is about one table cell visited, a nanosecond or two
 * @param nanoseconds most time, {@link Long#MAX_VALUE} for no regard to the clock
 */
public record Limits(long work, long nanoseconds) {

  /** The limit of a report: about two seconds of one core, whatever the machine. */
  public static final Limits REPORT = work(2_000_000_000L);

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
}
