package mullwright.takeoff.nesting;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import mullwright.takeoff.nesting.NestingProblem.Part;
import mullwright.takeoff.nesting.NestingProblem.Stock;

/**
 * The problem as the solver sees it: widths of merged lengths in falling order, capacities, costs.
 *
 * <p>A width is a length and one kerf, a capacity is a usable length and one kerf, both divided by
 * the greatest common divisor of all widths; the remainder of a capacity can hold nothing. Stocks
 * that hold no part are left out.
 */
final class CutModel {
  private static final long MOST_SHORTAGE = 400_000_000L;

  /** Distinct widths, falling. */
  final long[] width;

  /** Pieces wanted of each width. */
  final int[] demand;

  /** Finished length of each width, as the caller gave it. */
  final long[] length;

  /** Index of each stock in the caller's list; -1 for the {@link #shortage}. */
  final int[] stock;

  /**
   * Index of an invented stock that stands for bars not to be had, so dear that no plan uses it
   * unless it must; -1 if an unlimited stock holds every part, which makes a plan certain.
   */
  final int shortage;

  /** Cost of a shortage bar, 0 if there is none. */
  final long shortageCost;

  final long[] capacity;
  final long[] cost;
  final int[] available;

  /** Most pieces on a bar; no more than any bar could hold by length. */
  final int pieces;

  /** True if {@link #pieces} can bind. */
  final boolean piecesBind;

  /** True if {@link #shortageCost} is above the cost of any plan without shortage. */
  final boolean shortageCertain;

  final long largestCapacity;
  final long largestCost;

  CutModel(NestingProblem problem) {
    TreeMap<Long, Integer> wanted = new TreeMap<>();
    for (Part part : problem.parts()) {
      if (part.count() > 0) {
        wanted.merge(part.length(), part.count(), Math::addExact);
      }
    }
    int m = wanted.size();
    width = new long[m];
    demand = new int[m];
    length = new long[m];
    long step = 0;
    int at = 0;
    for (var entry : wanted.descendingMap().entrySet()) {
      length[at] = entry.getKey();
      width[at] = entry.getKey() + problem.kerf();
      demand[at++] = entry.getValue();
      step = gcd(entry.getKey() + problem.kerf(), step);
    }
    for (int i = 0; i < m; i++) {
      width[i] /= step;
    }
    List<Integer> useful = new ArrayList<>();
    for (int s = 0; s < problem.stocks().size(); s++) {
      Stock candidate = problem.stocks().get(s);
      if (candidate.available() > 0
          && m > 0
          && problem.usable(candidate) >= 0
          && (problem.usable(candidate) + problem.kerf()) / step >= width[m - 1]) {
        useful.add(s);
      }
    }
    long reach = 0;
    long owned = 0;
    long dearestReal = 0;
    boolean allLimited = true;
    for (int s : useful) {
      Stock candidate = problem.stocks().get(s);
      dearestReal = Math.max(dearestReal, candidate.cost());
      if (candidate.limited()) {
        owned += Math.min(MOST_SHORTAGE, candidate.cost() * candidate.available());
      } else {
        allLimited = false;
        reach = Math.max(reach, (problem.usable(candidate) + problem.kerf()) / step);
      }
    }
    boolean mayRunOut = m > 0 && reach < width[0];
    int n = useful.size() + (mayRunOut ? 1 : 0);
    shortage = mayRunOut ? n - 1 : -1;
    long pieceCost = total() * dearestReal;
    long above = 1 + (allLimited ? Math.min(owned, pieceCost) : pieceCost);
    shortageCost = mayRunOut ? Math.min(above, MOST_SHORTAGE) : 0;
    shortageCertain = mayRunOut && above <= MOST_SHORTAGE;
    stock = new int[n];
    capacity = new long[n];
    cost = new long[n];
    available = new int[n];
    long most = 0;
    long dearest = 0;
    for (int k = 0; k < useful.size(); k++) {
      Stock candidate = problem.stocks().get(useful.get(k));
      stock[k] = useful.get(k);
      capacity[k] = (problem.usable(candidate) + problem.kerf()) / step;
      cost[k] = candidate.cost();
      available[k] = candidate.available();
      most = Math.max(most, capacity[k]);
      dearest = Math.max(dearest, cost[k]);
    }
    if (mayRunOut) {
      stock[shortage] = -1;
      capacity[shortage] = Math.max(most, width[0]);
      cost[shortage] = shortageCost;
      available[shortage] = Stock.UNLIMITED;
      most = capacity[shortage];
      dearest = Math.max(dearest, shortageCost);
    }
    largestCapacity = most;
    largestCost = dearest;
    long fit = mostPieces(most);
    piecesBind =
        problem.piecesPerBar() != NestingProblem.ANY_NUMBER && problem.piecesPerBar() < fit;
    pieces = piecesBind ? problem.piecesPerBar() : (int) fit;
  }

  /** Number of distinct widths. */
  int size() {
    return width.length;
  }

  /** Number of stocks that can hold something. */
  int stocks() {
    return stock.length;
  }

  boolean limited(int s) {
    return available[s] != Stock.UNLIMITED;
  }

  /** Most pieces of one width on one bar of stock {@code s}, regardless of demand. */
  int fit(int i, int s) {
    return (int) Math.min(pieces, capacity[s] / width[i]);
  }

  /** True if there is one stock, unlimited, and only length limits a bar: bin packing. */
  boolean plain() {
    return stocks() == 1 && shortage < 0 && !limited(0) && !piecesBind;
  }

  /** Pieces wanted in all. */
  final long total() {
    long sum = 0;
    for (int d : demand) {
      sum += d;
    }
    return sum;
  }

  private long mostPieces(long room) {
    long left = room;
    long count = 0;
    for (int i = size() - 1; i >= 0 && left >= width[i]; i--) {
      long taken = Math.min(demand[i], left / width[i]);
      count += taken;
      left -= taken * width[i];
    }
    return count;
  }

  static long gcd(long a, long b) {
    return b == 0 ? a : gcd(b, a % b);
  }
}
