package mullwright.takeoff.nesting;

/**
 * The linear programme over cutting patterns: least cost of (fractional) bars that yield every part
 * and keep within limited stocks.
 *
 * <p>A revised simplex with a dense inverse of the basis. One row for each width ({@code >=}
 * wanted) and one for each limited stock ({@code <=} available). Patterns can be added, barred and
 * the right-hand side changed at any time: {@link #solve} restores first the signs of the values by
 * {@link DualSteps}, then those of the reduced costs by {@link PrimalSteps}. Costs are divided by
 * the dearest stock so that tolerances mean the same for every order. Its numbers guide the search;
 * no claim rests on them.
 */
final class PatternLp {
  private static final double NUDGE = 1e-6;
  private static final int ATTEMPTS = 3;

  private final CutModel model;
  private final Effort effort;
  private final int parts;
  private final int[] rowOfStock;
  private final double unit;

  private final PatternColumns columns = new PatternColumns();
  private final PatternBasis basis;
  private final PrimalSteps primal;
  private final DualSteps dual;
  private final double[] nudge;

  /**
   * A programme whose first columns cut one piece each from an unlimited stock.
   *
   * @param singles their cost in bars: 1 if they are patterns like others, more if they only stand
   *     in for what the patterns given cannot do
   */
  PatternLp(CutModel model, double singles, Effort effort) {
    this.model = model;
    this.effort = effort;
    this.parts = model.size();
    this.rowOfStock = new int[model.stocks()];
    int count = parts;
    for (int s = 0; s < model.stocks(); s++) {
      rowOfStock[s] = model.limited(s) ? count++ : -1;
    }
    this.unit = 1.0 / Math.max(1, model.largestCost);
    this.basis = new PatternBasis(columns, parts, count, effort);
    this.primal = new PrimalSteps(columns, basis, effort);
    this.dual = new DualSteps(columns, basis, effort);
    for (int i = 0; i < parts; i++) {
      addSingle(i, singles);
    }
    for (int i = 0; i + 1 < parts; i++) {
      append(new Pattern(-1, new int[] {i, i + 1}, new int[] {-1, 1}), 0);
    }
    exchange(false);
    // a little more of everything, of each a different little, so that few steps stand still
    this.nudge = new double[parts];
    nudge(1, NUDGE, NUDGE);
    setRight(model.demand, model.available);
    basis.reset();
  }

  /** A column that cuts one piece of width {@code i}, so that there always is a solution. */
  private void addSingle(int i, double factor) {
    int cheapest = -1;
    for (int s = 0; s < model.stocks(); s++) {
      if (!model.limited(s)
          && model.fit(i, s) > 0
          && (cheapest < 0 || model.cost[s] < model.cost[cheapest])) {
        cheapest = s;
      }
    }
    append(
        new Pattern(cheapest, new int[] {i}, new int[] {1}), model.cost[cheapest] * unit * factor);
  }

  /**
   * Allows or forbids the use of a wide piece as the next narrower one.
   *
   * <p>Allowed, prices cannot rise as widths fall, which keeps them from wandering while few
   * patterns are known (dual-optimal inequalities); forbidden, every value is a number of bars.
   */
  void exchange(boolean allowed) {
    for (int j = parts; j < firstPattern(); j++) {
      columns.bar(j, !allowed);
    }
  }

  /** Index of the first pattern added. */
  int firstPattern() {
    return parts + Math.max(0, parts - 1);
  }

  /** Adds a pattern and returns its index. */
  int add(Pattern pattern) {
    return append(pattern, model.cost[pattern.stock()] * unit);
  }

  private int append(Pattern pattern, double price) {
    int stockRow = pattern.stock() < 0 ? -1 : rowOfStock[pattern.stock()];
    int j = columns.append(pattern, price, stockRow);
    basis.admit(j);
    return j;
  }

  /**
   * Asks for a little more of everything: between {@code least} and {@code least + spread}, drawn
   * by a fixed rule from {@code seed}. Another seed leads to other prices among those that are
   * best.
   */
  void nudge(int seed, double least, double spread) {
    long mix = seed;
    for (int i = 0; i < parts; i++) {
      mix = mix * 6364136223846793005L + 1442695040888963407L;
      nudge[i] = least + spread * ((mix >>> 40) / (double) (1 << 24));
    }
  }

  /** Sets what is wanted and what is left of limited stocks. */
  void setRight(int[] wanted, int[] left) {
    for (int i = 0; i < parts; i++) {
      basis.right(i, wanted[i] == 0 ? 0 : wanted[i] + nudge[i]);
    }
    for (int s = 0; s < left.length; s++) {
      if (rowOfStock[s] >= 0) {
        basis.right(rowOfStock[s], Math.max(0, left[s]));
      }
    }
  }

  /** Solves to optimality over the patterns not barred; false if numbers or effort gave out. */
  boolean solve() {
    basis.computeValues();
    for (int attempt = 0; attempt < ATTEMPTS; attempt++) {
      if (!dual.restore()) {
        basis.reset();
        basis.computeValues();
      }
      if (primal.improve()) {
        return true;
      }
      if (effort.spent()) {
        return false;
      }
      basis.reset();
      basis.computeValues();
    }
    return false;
  }

  /** Total cost of the current solution in the model's units. */
  double objective() {
    return basis.cost() / unit;
  }

  /** Price of one piece of width {@code i} in fractions of the dearest stock's cost. */
  double price(int i) {
    return basis.dual(i);
  }

  /** Premium of limited stock {@code s} in fractions of the dearest stock's cost, at least 0. */
  double premium(int s) {
    return rowOfStock[s] < 0 ? 0 : Math.max(0, -basis.dual(rowOfStock[s]));
  }

  int rows() {
    return basis.rows();
  }

  int columns() {
    return columns.size();
  }

  Pattern pattern(int j) {
    return columns.pattern(j);
  }

  /** Column in basis position {@code i}, negative for a slack. */
  int basic(int i) {
    return basis.head(i);
  }

  double value(int i) {
    return basis.value(i);
  }

  void bar(int j, boolean is) {
    columns.bar(j, is);
  }

  boolean barred(int j) {
    return columns.barred(j);
  }

  /** Reduced cost of column {@code j} in fractions of the dearest stock's cost. */
  double reducedCost(int j) {
    return basis.reducedCost(j);
  }
}
