package mullwright.analysis.movement;

import mullwright.analysis.Formula;
import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * How wide a splice of a given gap is on the hottest and the coldest day, and at the very worst.
 *
 * <p>The days count heat alone; the worst adds slab, shortening and tolerance. Symbols as in {@link
 * SpliceGap}. Source: statics.
 */
public final class SpliceRange {
  /** Gap less what heat closes. */
  public static final Formula HOTTEST_DAY =
      new Formula("gap when set − thermal closing", "closed form");

  /** Gap and what cold opens. */
  public static final Formula COLDEST_DAY =
      new Formula("gap when set + thermal opening", "closed form");

  /** Gap less everything that can close it. */
  public static final Formula LEAST =
      new Formula(
          "gap when set − thermal closing − slab deflection − shortening − tolerance",
          "closed form");

  /** Gap and everything that can open it. */
  public static final Formula GREATEST =
      new Formula(
          "gap when set + thermal opening + upward slab movement + tolerance", "closed form");

  private SpliceRange() {}

  /**
   * A splice as detailed.
   *
   * @param gap gap when set [m], 0 or more
   * @param movement movement of the two sides
   * @param tolerance tolerance of cutting and erecting [m], 0 or more
   */
  public record Input(double gap, SpliceMovement movement, double tolerance) {}

  /**
   * The widths; negative where the lengths would press on one another.
   *
   * @param input what was put in
   * @param hottestDay width on the hottest day, heat alone [m]
   * @param coldestDay width on the coldest day, cold alone [m]
   * @param least width with everything closing [m]
   * @param greatest width with everything opening [m]
   */
  public record Result(
      Input input, double hottestDay, double coldestDay, double least, double greatest) {

    /** Whether the two lengths touch at the worst. */
    public boolean closes() {
      return least <= 0;
    }
  }

  /** Computes the widths. */
  public static Outcome<Result> solve(Input in) {
    SpliceMovement movement = in.movement();
    return movement
        .check(Guard.range())
        .notNegative("gap when set", in.gap(), "m")
        .notNegative("tolerance", in.tolerance(), "m")
        .then(
            () ->
                new Result(
                    in,
                    in.gap() - movement.thermalClosing(),
                    in.gap() + movement.thermalOpening(),
                    in.gap() - movement.closing() - in.tolerance(),
                    in.gap() + movement.opening() + in.tolerance()));
  }
}
