package mullwright.takeoff.nesting;

/**
 * Dual steps: negative values and barred patterns leave until there is none.
 *
 * <p>Patterns whose reduced cost is negative stay out of it; primal steps bring them in later.
 */
final class DualSteps {
  private static final double INFEASIBLE = 1e-9;
  private static final double PIVOT = 1e-8;
  private static final double TIE = 1e-11;

  private final PatternColumns columns;
  private final PatternBasis basis;
  private final Effort effort;
  private final int rows;
  private double[] reduced = new double[0];
  private double[] along = new double[0];

  private int enter;
  private double least;
  private double size;

  DualSteps(PatternColumns columns, PatternBasis basis, Effort effort) {
    this.columns = columns;
    this.basis = basis;
    this.effort = effort;
    this.rows = basis.rows();
  }

  /** Goes to the end; false if there is no way on, or numbers or effort gave out. */
  boolean restore() {
    boolean prepared = false;
    for (int round = 0; ; round++) {
      int leave = leaving();
      if (leave < 0) {
        return true;
      }
      if (round > 20 * rows + 200 || effort.spent()) {
        return false;
      }
      if (!prepared || basis.worn()) {
        if (basis.worn() && !basis.refresh()) {
          return false;
        }
        prepare();
        prepared = true;
      }
      choose(leave);
      if (enter == PrimalSteps.NONE) {
        return false;
      }
      exchange(leave);
    }
  }

  /** The row whose value is farthest from what it may be, -1 if all may be as they are. */
  private int leaving() {
    int leave = -1;
    double worst = INFEASIBLE;
    for (int i = 0; i < rows; i++) {
      double wrong = basis.barred(i) ? Math.abs(basis.value(i)) : -basis.value(i);
      if (wrong > worst) {
        worst = wrong;
        leave = i;
      }
    }
    return leave;
  }

  private void prepare() {
    if (reduced.length < columns.room()) {
      reduced = new double[columns.room()];
      along = new double[columns.room()];
    }
    basis.computeDuals();
    for (int j = 0; j < columns.size(); j++) {
      reduced[j] = basis.outside(j) ? basis.reducedCost(j) : 0;
    }
  }

  /** Finds the column or slack that is to enter where that row leaves. */
  private void choose(int leave) {
    // the leaving value must rise to zero (sign 1) or fall to zero (sign -1)
    double sign = basis.value(leave) < 0 ? 1 : -1;
    double[] row = basis.row(leave);
    enter = PrimalSteps.NONE;
    least = Double.MAX_VALUE;
    size = 0;
    for (int r = 0; r < rows; r++) {
      if (basis.slackOutside(r)) {
        offer(~r, -sign * basis.slackAlong(row, r), basis.slackReduced(r));
      }
    }
    for (int j = 0; j < columns.size(); j++) {
      if (basis.mayEnter(j)) {
        along[j] = columns.along(row, j);
        offer(j, along[j] * -sign, reduced[j]);
      }
    }
    effort.add(5L * columns.size() + (long) rows * rows / 2);
  }

  private void offer(int column, double a, double reducedCost) {
    if (a > PIVOT && reducedCost > -PrimalSteps.REDUCED) {
      double ratio = Math.max(0, reducedCost) / a;
      if (ratio < least - TIE || (ratio <= least + TIE && a > size)) {
        least = Math.min(least, ratio);
        size = a;
        enter = column;
      }
    }
  }

  private void exchange(int leave) {
    basis.direction(enter);
    double slope = enter >= 0 ? reduced[enter] : basis.slackReduced(~enter);
    double shift = slope / basis.step(leave);
    basis.shiftDuals(shift, leave);
    for (int j = 0; j < columns.size(); j++) {
      if (basis.mayEnter(j)) {
        reduced[j] -= shift * along[j];
      }
    }
    int out = basis.head(leave);
    if (out >= 0) {
      reduced[out] = -shift;
    }
    basis.pivot(enter, leave, basis.value(leave) / basis.step(leave));
  }
}
