package mullwright.analysis.wall;

import java.util.Arrays;
import java.util.List;

/**
 * A horizontal as a beam from vertical to vertical, with all that loads it: a plain value, so that
 * equal ones are solved once.
 *
 * @param span centre to centre of the verticals that hold it [m]
 * @param strong rigidity against wind [N·m²], 0 if its profile does not say
 * @param weak rigidity in the plane of the wall [N·m²], 0 if its profile does not say
 * @param ownWeight its own weight [N/m]
 * @param windGiven true if the project gives any wind
 * @param edges the lites over and under it, from the left, those under it first
 * @param points verticals that end on it and lean on it
 * @param held places where a vertical that ends on it holds it in and out [m]
 * @param propped places where a vertical under it holds it up [m]
 * @param downs verticals that stand on it or hang from it
 */
record HorizontalLoads(
    double span,
    double strong,
    double weak,
    double ownWeight,
    boolean windGiven,
    List<Edge> edges,
    List<Point> points,
    List<Double> held,
    List<Double> propped,
    List<Down> downs) {
  HorizontalLoads {
    edges = List.copyOf(edges);
    points = List.copyOf(points);
    held = List.copyOf(held);
    propped = List.copyOf(propped);
    downs = List.copyOf(downs);
  }

  /** The numbers with their hash. */
  static final class Key {
    private final double[] numbers;
    private final int hash;

    /** Equal rows of numbers are equal keys. */
    Key(double[] numbers) {
      this.numbers = numbers;
      this.hash = Arrays.hashCode(numbers);
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Key key && hash == key.hash && Arrays.equals(numbers, key.numbers);
    }

    @Override
    public int hashCode() {
      return hash;
    }
  }

  /**
   * A lite along the horizontal.
   *
   * @param cell index of the lite in the layout
   * @param above true if it stands on the horizontal, false if it hangs under it
   * @param from left end of its bay [m]; {@code to} right end, centre to centre of verticals
   * @param other its height, centre to centre of rows [m]
   * @param wind what the horizontal takes from it
   * @param weight its weight if it stands on the horizontal [N]
   * @param leftBlock place of the setting block at the left quarter point [m]; {@code rightBlock}
   *     of the other
   */
  record Edge(
      int cell,
      boolean above,
      double from,
      double to,
      double other,
      MemberWind wind,
      double weight,
      double leftBlock,
      double rightBlock) {

    /** The pressures. */
    WindOnWall.Pressure pressure() {
      return wind.pressure();
    }
  }

  /**
   * A vertical that ends on the horizontal and leans on it.
   *
   * @param at place [m]
   * @param in what it brings with wind in [N]; {@code out} with wind out, negative outward
   */
  record Point(double at, double in, double out) {}

  /**
   * A vertical that stands on the horizontal or hangs from it.
   *
   * @param at place [m]
   * @param newtons its weight with what hangs on it [N]
   * @param standing false if it hangs
   */
  record Down(double at, double newtons, boolean standing) {}
}
