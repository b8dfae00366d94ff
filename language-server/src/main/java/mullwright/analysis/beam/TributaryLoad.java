package mullwright.analysis.beam;

import java.util.List;
import mullwright.analysis.Formula;
import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Load that one lite under pressure brings to one of its edges, parted by 45° lines from the
 * corners.
 *
 * <p>The half width that bears on an edge rises from nil at each corner to h/2 at most: an edge no
 * longer than the other dimension takes a triangle of peak p·l/2 in its middle, a longer one a
 * trapezoid of peak p·h/2 with ramps of h/2.
 *
 * <p>Symbols: p pressure [Pa]; l length of the edge, h the other dimension of the lite [m]. Both
 * lites beside a member bring their own. The four edges together take p·l·h. Range: rectangular
 * lites. Source: geometry; the 45° parting is common practice.
 */
public final class TributaryLoad {
  /** Peak of the trapezoid or triangle. */
  public static final Formula PEAK =
      new Formula("pressure × min(edge, other dimension) ÷ 2", "common practice (45° parting)");

  /** Line load on a vertical taken as uniform. */
  public static final Formula LINE_LOAD =
      new Formula("pressure × (bay on one side + bay on the other side) ÷ 2", "common practice");

  private TributaryLoad() {}

  /**
   * An edge of a lite.
   *
   * @param pressure pressure [Pa], of either sign
   * @param edge length of the edge [m], more than 0
   * @param other the lite's other dimension [m], more than 0
   */
  public record Input(double pressure, double edge, double other) {}

  /**
   * The load's shape along the edge.
   *
   * @param input what was put in
   * @param peak greatest intensity [N/m], of the pressure's sign
   * @param ramp length over which it rises at each end [m]; half the edge for a triangle
   */
  public record Result(Input input, double peak, double ramp) {

    /** Whether the shape has no level part. */
    public boolean triangle() {
      return ramp == input.edge() / 2;
    }

    /** Resultant [N]. */
    public double total() {
      return peak * (input.edge() - ramp);
    }

    /** The shape as loads of a beam on which the edge starts at a place [m]. */
    public List<BeamLoad> loads(double start) {
      double end = start + input.edge();
      BeamLoad rise = new BeamLoad.Distributed(start, start + ramp, 0, peak);
      BeamLoad fall = new BeamLoad.Distributed(end - ramp, end, peak, 0);
      return triangle()
          ? List.of(rise, fall)
          : List.of(rise, BeamLoad.Distributed.uniform(start + ramp, end - ramp, peak), fall);
    }
  }

  /** Computes the shape. */
  public static Outcome<Result> solve(Input in) {
    return Guard.range()
        .finite("pressure", in.pressure(), "Pa")
        .positive("edge of the lite", in.edge(), "m")
        .positive("other dimension of the lite", in.other(), "m")
        .then(
            () -> {
              double ramp = Math.min(in.edge(), in.other()) / 2;
              return new Result(in, in.pressure() * ramp, ramp);
            });
  }

  /**
   * Uniform line load on a vertical [N/m] from the bays on its two sides, each with the pressure of
   * its own lites: usual and on the safe side.
   *
   * @param pressureLeft pressure on the left bay [Pa]
   * @param bayLeft left bay, centre to centre [m]; 0 for none
   * @param pressureRight pressure on the right bay [Pa]
   * @param bayRight right bay, centre to centre [m]; 0 for none
   */
  public static double lineLoad(
      double pressureLeft, double bayLeft, double pressureRight, double bayRight) {
    return (pressureLeft * bayLeft + pressureRight * bayRight) / 2;
  }
}
