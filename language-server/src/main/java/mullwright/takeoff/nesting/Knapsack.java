package mullwright.takeoff.nesting;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Finds the bars worth most at given integer prices: a table over filled length, width by width.
 *
 * <p>Widths are divided by {@link #factor} first. Rounded up, every filling found fits its bar and
 * the table is a quick search for patterns. Rounded down, the table can only overrate a bar, so its
 * worth is a safe upper bound. With factor 1 both are exact. No width is used more often than the
 * given bounds allow; a count is split into powers of two so that each row of the table decides on
 * one chunk.
 */
final class Knapsack {
  /** Cells of the largest table kept: about 100 MB. */
  static final long MOST_CELLS = 24_000_000;

  private final CutModel model;
  private final long factor;
  private final int[] width;
  private final int[] capacity;
  private final int cells;
  private final int layers;
  private final Effort effort;

  private int chunks;
  private final int[] first;
  private int[] chunkPart = new int[64];
  private int[] chunkPieces = new int[64];
  private int[] chunkWidth = new int[64];
  private int[] chunkWorth = new int[64];

  /** best[k][layer][c]: most worth in room c using chunks before k; one layer if not counted. */
  private int[][][] best = new int[0][][];

  private int[] shifted;

  private Knapsack(CutModel model, long factor, boolean roundUp, Effort effort) {
    this.model = model;
    this.factor = factor;
    this.effort = effort;
    this.width = new int[model.size()];
    for (int i = 0; i < width.length; i++) {
      width[i] =
          Math.toIntExact(
              roundUp ? (model.width[i] + factor - 1) / factor : model.width[i] / factor);
    }
    this.first = new int[model.size()];
    this.capacity = new int[model.stocks()];
    int most = 0;
    for (int s = 0; s < capacity.length; s++) {
      capacity[s] = Math.toIntExact(model.capacity[s] / factor);
      most = Math.max(most, capacity[s]);
    }
    this.cells = most + 1;
    this.layers = model.piecesBind ? model.pieces + 1 : 1;
    this.shifted = new int[cells];
  }

  /** A table whose worth is never below the truth, exact if it is small enough to be. */
  static Knapsack upper(CutModel model, Effort effort) {
    long rows = 1;
    for (int i = 0; i < model.size(); i++) {
      int most = 0;
      for (int s = 0; s < model.stocks(); s++) {
        most = Math.max(most, Math.min(model.demand[i], model.fit(i, s)));
      }
      rows += 32 - Integer.numberOfLeadingZeros(most);
    }
    long perRow = Math.max(2, MOST_CELLS / (rows * (model.piecesBind ? model.pieces + 1 : 1)));
    long factor = (model.largestCapacity + perRow) / perRow;
    return new Knapsack(model, Math.max(1, factor), false, effort);
  }

  /** A table of about {@code cells} cells whose fillings always fit. */
  static Knapsack quick(CutModel model, int cells, Effort effort) {
    return new Knapsack(
        model, Math.max(1, (model.largestCapacity + cells - 1) / cells), true, effort);
  }

  long factor() {
    return factor;
  }

  /** No bar of this table is worth more than this, in the unit of {@code price}. */
  double ceiling(double[] price, int[] bound) {
    double free = 0;
    double rate = 0;
    for (int i = 0; i < width.length; i++) {
      if (width[i] == 0) {
        free += bound[i] * price[i];
      } else if (bound[i] > 0) {
        rate = Math.max(rate, price[i] / width[i]);
      }
    }
    return free + rate * cells;
  }

  /**
   * Fills the table for {@code worth} of one piece of each width, at most {@code bound} of each.
   */
  void run(long[] worth, int[] bound) {
    split(worth, bound);
    if (best.length < chunks + 1) {
      int[][][] larger = Arrays.copyOf(best, chunks + 1);
      for (int k = best.length; k <= chunks; k++) {
        larger[k] = new int[layers][cells];
      }
      best = larger;
    }
    for (int[] layer : best[0]) {
      Arrays.fill(layer, 0);
    }
    for (int k = 0; k < chunks; k++) {
      for (int p = 0; p < layers; p++) {
        int before = layers == 1 ? 0 : p - chunkPieces[k];
        int[] from = best[k][p];
        int[] to = best[k + 1][p];
        if (before < 0) {
          System.arraycopy(from, 0, to, 0, cells);
        } else {
          extend(from, best[k][before], to, chunkWidth[k], chunkWorth[k]);
        }
      }
    }
    effort.add((long) chunks * layers * cells / 2);
  }

  private void extend(int[] without, int[] fewer, int[] to, int room, int worth) {
    System.arraycopy(without, 0, to, 0, room);
    System.arraycopy(fewer, 0, shifted, room, cells - room);
    best(without, shifted, to, room, worth);
  }

  /** Kept apart and plain so that the compiler turns it into vector instructions. */
  private static void best(int[] without, int[] with, int[] to, int from, int worth) {
    for (int c = from; c < to.length; c++) {
      to[c] = Math.max(without[c], with[c] + worth);
    }
  }

  private void split(long[] worth, int[] bound) {
    chunks = 0;
    for (int i = width.length - 1; i >= 0; i--) {
      first[i] = chunks;
      if (worth[i] <= 0 || bound[i] <= 0) {
        continue;
      }
      int fit = width[i] == 0 ? bound[i] : (cells - 1) / width[i];
      int left = Math.min(Math.min(bound[i], model.pieces), fit);
      for (int size = 1; left > 0; size *= 2) {
        int pieces = Math.min(size, left);
        left -= pieces;
        if (chunks == chunkPart.length) {
          chunkPart = Arrays.copyOf(chunkPart, 2 * chunks);
          chunkPieces = Arrays.copyOf(chunkPieces, 2 * chunks);
          chunkWidth = Arrays.copyOf(chunkWidth, 2 * chunks);
          chunkWorth = Arrays.copyOf(chunkWorth, 2 * chunks);
        }
        chunkPart[chunks] = i;
        chunkPieces[chunks] = pieces;
        chunkWidth[chunks] = pieces * width[i];
        chunkWorth[chunks] = Math.toIntExact(pieces * worth[i]);
        chunks++;
      }
    }
  }

  /** Most worth on a bar of stock {@code s}. */
  int worth(int s) {
    return best[chunks][layers - 1][capacity[s]];
  }

  /** Width of a piece of {@code i} in cells. */
  int width(int i) {
    return width[i];
  }

  /** Cells of a bar of stock {@code s}. */
  int capacity(int s) {
    return capacity[s];
  }

  /**
   * Most worth of pieces narrower than {@code i}, at most {@code pieces}, in {@code room} cells.
   */
  int narrower(int i, int pieces, int room) {
    return best[first[i]][layers == 1 ? 0 : pieces][room];
  }

  /**
   * Adds to {@code found} the patterns of stock {@code s} worth more than {@code floor}: for each
   * chunk the best bar whose last chunk it is, at most {@code most} of them, the best first.
   */
  void collect(int s, int floor, int most, List<Pattern> found) {
    int[] values = new int[chunks];
    int n = 0;
    long[] order = new long[chunks];
    for (int k = 0; k < chunks; k++) {
      int room = capacity[s] - chunkWidth[k];
      int layer = layers == 1 ? 0 : layers - 1 - chunkPieces[k];
      if (room >= 0 && layer >= 0) {
        values[k] = best[k][layer][room] + chunkWorth[k];
        if (values[k] > floor) {
          order[n++] = ((long) values[k] << 32) | k;
        }
      }
    }
    Arrays.sort(order, 0, n);
    Set<Pattern> seen = new HashSet<>();
    for (int r = n - 1; r >= 0 && seen.size() < most; r--) {
      Pattern pattern = trace(s, (int) order[r]);
      if (pattern.fits(model) && seen.add(pattern)) {
        found.add(pattern);
      }
    }
    effort.add(20L * n);
  }

  private Pattern trace(int s, int last) {
    int[] counts = new int[model.size()];
    int room = capacity[s] - chunkWidth[last];
    int layer = layers == 1 ? 0 : layers - 1 - chunkPieces[last];
    counts[chunkPart[last]] += chunkPieces[last];
    for (int k = last - 1; k >= 0; k--) {
      if (best[k + 1][layer][room] != best[k][layer][room]) {
        room -= chunkWidth[k];
        layer -= layers == 1 ? 0 : chunkPieces[k];
        counts[chunkPart[k]] += chunkPieces[k];
      }
    }
    return Pattern.of(s, counts);
  }
}
