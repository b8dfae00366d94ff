package mullwright.takeoff.nesting;

/**
 * A plan at once: bar after bar is filled longest piece first, the stock chosen by cost for length
 * used.
 *
 * <p>With one stock this is first fit decreasing. A bar that can be repeated is repeated as often
 * as all its pieces are wanted, so that long orders take no longer than short ones.
 */
final class Greedy {
  private Greedy() {}

  /**
   * Completes {@code draft}; false if the stock runs out first, the draft then being unfinished.
   */
  static boolean complete(Draft draft, Effort effort) {
    CutModel model = draft.model;
    while (draft.pieces() > 0) {
      Pattern best = null;
      double bestRate = 0;
      for (int s = 0; s < model.stocks(); s++) {
        if (draft.left[s] <= 0) {
          continue;
        }
        Pattern bar = fill(draft, s);
        effort.add(model.size());
        if (bar.part().length == 0) {
          continue;
        }
        double rate = model.cost[s] / (double) bar.filled(model);
        if (best == null
            || rate < bestRate
            || (rate == bestRate && bar.filled(model) > best.filled(model))) {
          best = bar;
          bestRate = rate;
        }
      }
      if (best == null) {
        return false;
      }
      int times = best.times(draft.wanted);
      if (model.limited(best.stock())) {
        times = Math.min(times, draft.left[best.stock()]);
      }
      draft.cut(best, times);
    }
    return draft.complete();
  }

  private static Pattern fill(Draft draft, int s) {
    CutModel model = draft.model;
    int[] counts = new int[model.size()];
    long room = model.capacity[s];
    int pieces = model.pieces;
    for (int i = 0; i < counts.length; i++) {
      if (draft.wanted[i] > 0 && model.width[i] <= room) {
        int n = (int) Math.min(Math.min(draft.wanted[i], pieces), room / model.width[i]);
        counts[i] = n;
        room -= n * model.width[i];
        pieces -= n;
      }
    }
    return Pattern.of(s, counts);
  }
}
