package mullwright.analysis.beam;

/**
 * The greatest and the least value along a stretch, each with the first place where it occurs.
 *
 * @param greatest the algebraically greatest value
 * @param least the algebraically least value
 */
public record Extremes(Extreme greatest, Extreme least) {

  /**
   * A value and where it occurs.
   *
   * @param at place on the beam [m]
   * @param value the value, in the unit of the quantity asked for
   */
  public record Extreme(double at, double value) {}

  /** The one of greater magnitude; the greatest when they are equal. */
  public Extreme largest() {
    return Math.abs(least.value()) > Math.abs(greatest.value()) ? least : greatest;
  }

  /** Gathers candidates from left to right. */
  static final class Search {
    /** A later value must be better by this share, so that rounding does not choose the place. */
    private static final double CLEARLY = 1e-12;

    private Extreme greatest;
    private Extreme least;

    void offer(double at, double value) {
      if (greatest == null) {
        greatest = new Extreme(at, value);
        least = greatest;
        return;
      }
      if (value - greatest.value() > CLEARLY * Math.abs(value)) {
        greatest = new Extreme(at, value);
      }
      if (least.value() - value > CLEARLY * Math.abs(value)) {
        least = new Extreme(at, value);
      }
    }

    Extremes found() {
      return new Extremes(greatest, least);
    }
  }
}
