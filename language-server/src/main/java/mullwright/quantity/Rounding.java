package mullwright.quantity;

/**
 * Which multiple of a step a length is printed as.
 *
 * <p>Rounding never feeds back into a computation. Which direction is safe is the caller's
 * knowledge: glass sizes and clearances go down, required gaps up, cut lengths to the nearest
 * (common practice).
 */
public enum Rounding {
  /** The nearest, half up on the magnitude. */
  NEAREST,
  /** The next one below, also for a negative length: a clearance never looks larger than it is. */
  DOWN,
  /** The next one above, also for a negative length. */
  UP;

  /**
   * The multiple of the step.
   *
   * @throws IllegalArgumentException unless the step is above zero
   */
  public Length round(Length value, Length step) {
    if (step.signum() <= 0) {
      throw new IllegalArgumentException("step: " + step);
    }
    return new Length(Math.multiplyExact(count(value.ticks(), step.ticks()), step.ticks()));
  }

  private long count(long value, long step) {
    long below = Math.floorDiv(value, step);
    long rest = Math.floorMod(value, step);
    if (this == DOWN || rest == 0) {
      return below;
    }
    if (this == UP) {
      return below + 1;
    }
    long other = step - rest;
    return rest > other || (rest == other && value > 0) ? below + 1 : below;
  }
}
