package mullwright.takeoff.nesting;

/**
 * The bounds L1 and L2 of bin packing (Knapsack Problems, 1990, chapter 8), as prices, for one
 * unlimited stock.
 *
 * <p>For a threshold K up to half the capacity C, pieces wider than C - K share their bar with
 * nothing that counts and are worth a whole bar. Of the rest either those wider than C / 2 are
 * worth a bar each, since no two fit together, or each piece from K up is worth its width. The best
 * of these is L2; K = 0 gives L1, total width over capacity.
 */
final class ArithmeticBound {
  private ArithmeticBound() {}

  /** The better of L1 and L2 for a {@link CutModel#plain() plain} model. */
  static Bound of(CutModel model) {
    long capacity = model.capacity[0];
    long best = -1;
    long bestK = 0;
    boolean bestWide = false;
    for (int t = model.size(); t >= 0; t--) {
      long k = t == model.size() ? 0 : model.width[t];
      if (2 * k > capacity) {
        break;
      }
      for (int wide = 0; wide < 2; wide++) {
        long sum = 0;
        for (int i = 0; i < model.size(); i++) {
          sum += model.demand[i] * worth(model.width[i], capacity, k, wide == 1);
        }
        if (sum > best) {
          best = sum;
          bestK = k;
          bestWide = wide == 1;
        }
      }
    }
    long[] price = new long[model.size()];
    for (int i = 0; i < price.length; i++) {
      price[i] = model.cost[0] * worth(model.width[i], capacity, bestK, bestWide);
    }
    return new Bound(price, capacity, new long[1], model.cost[0] * best);
  }

  private static long worth(long width, long capacity, long k, boolean wide) {
    if (width > capacity - k) {
      return capacity;
    }
    if (wide) {
      return 2 * width > capacity ? capacity : 0;
    }
    return width >= k ? width : 0;
  }
}
