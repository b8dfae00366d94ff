package mullwright.takeoff.nesting;

import java.util.List;

/**
 * What is to be cut and the stock it may be cut from; all lengths in one unit of the caller's
 * choice.
 *
 * <p>Pieces fit on a bar when {@code sum(length + kerf) <= stock - 2 * trim + kerf}: every piece
 * but the last is followed by a saw cut, and the last may end on the trimmed end (closed form of
 * {@code sum(length) + (n - 1) * kerf <= stock - 2 * trim}).
 *
 * @param stocks the bars that may be cut, unlimited or remnants on the rack
 * @param parts the pieces wanted; two entries may have the same length
 * @param kerf width of the saw cut, at least 0
 * @param trim waste cut off each end of every bar, at least 0
 * @param piecesPerBar most pieces on one bar, or {@link #ANY_NUMBER}
 */
public record NestingProblem(
    List<Stock> stocks, List<Part> parts, long kerf, long trim, int piecesPerBar) {

  /** Value of {@link #piecesPerBar} when only length limits a bar. */
  public static final int ANY_NUMBER = 0;

  /**
   * A stock length.
   *
   * @param length full length of a bar, greater than 0
   * @param cost of one bar, at least 0; greater than 0 when the number of bars is unlimited
   * @param available bars to be had, or {@link #UNLIMITED}
   */
  public record Stock(long length, long cost, int available) {

    /** Value of {@link #available} when as many bars as wanted can be bought. */
    public static final int UNLIMITED = Integer.MAX_VALUE;

    public Stock {
      if (length <= 0 || cost < 0 || available < 0) {
        throw new IllegalArgumentException(
            "no such stock: length " + length + ", cost " + cost + ", available " + available);
      }
    }

    /** A stock that can be bought in any number. */
    public static Stock unlimited(long length, long cost) {
      return new Stock(length, cost, UNLIMITED);
    }

    /** True if only {@link #available} bars are to be had. */
    public boolean limited() {
      return available != UNLIMITED;
    }
  }

  /**
   * A length to be cut.
   *
   * @param length finished length, greater than 0
   * @param count how many, at least 0
   */
  public record Part(long length, int count) {
    public Part {
      if (length <= 0 || count < 0) {
        throw new IllegalArgumentException("no such part: length " + length + ", count " + count);
      }
    }
  }

  public NestingProblem {
    if (kerf < 0 || trim < 0 || piecesPerBar < 0) {
      throw new IllegalArgumentException(
          "no such saw: kerf " + kerf + ", trim " + trim + ", pieces per bar " + piecesPerBar);
    }
    stocks = List.copyOf(stocks);
    parts = List.copyOf(parts);
  }

  /** A problem with one stock of cost 1, so that cost counts bars, and no limit of pieces. */
  public static NestingProblem oneStock(long length, List<Part> parts, long kerf, long trim) {
    return new NestingProblem(List.of(Stock.unlimited(length, 1)), parts, kerf, trim, ANY_NUMBER);
  }

  /** Length of a bar of {@code stock} between its trimmed ends; negative if trim eats it up. */
  public long usable(Stock stock) {
    return stock.length() - 2 * trim;
  }
}
