package mullwright.analysis.glass;

import java.util.List;
import mullwright.analysis.Outcome;
import mullwright.analysis.Refusal;

/**
 * Minimum thickness that a pane sold under a nominal thickness may have: what strength and
 * deflection are computed with, while mass is computed with the nominal one.
 *
 * <p>Accepts the metric designation or the inch size it is sold under. Source: ASTM E1300 table of
 * nominal and minimum thicknesses (the same as ASTM C1036), from memory.
 */
public final class MinimumThickness {
  private static final double INCH = 0.0254;

  /** Inch sizes need not be exact binary fractions of a metre. */
  private static final double SAME = 1e-6;

  private static final List<Designation> TABLE =
      List.of(
          row(2.5, 3 / 32.0, 2.16),
          // the lamination grade has no inch size of its own
          row(2.7, Double.NaN, 2.59),
          row(3, 1 / 8.0, 2.92),
          row(4, 5 / 32.0, 3.78),
          row(5, 3 / 16.0, 4.57),
          row(6, 1 / 4.0, 5.56),
          row(8, 5 / 16.0, 7.42),
          row(10, 3 / 8.0, 9.02),
          row(12, 1 / 2.0, 11.91),
          row(16, 5 / 8.0, 15.09),
          row(19, 3 / 4.0, 18.26),
          row(22, 7 / 8.0, 21.44),
          row(25, 1.0, 24.61));

  private MinimumThickness() {}

  /**
   * One row of the table.
   *
   * @param metric metric designation [m]
   * @param inch inch size it is sold under [m]; not a number where there is none
   * @param minimum minimum thickness [m]
   */
  public record Designation(double metric, double inch, double minimum) {}

  /**
   * A thickness as a drawing names it.
   *
   * @param thickness nominal thickness, metric or inch [m]
   */
  public record Nominal(double thickness) {}

  /** The row of a nominal thickness. */
  public static Outcome<Designation> solve(Nominal nominal) {
    for (Designation row : TABLE) {
      if (Math.abs(row.metric() - nominal.thickness()) < SAME
          || Math.abs(row.inch() - nominal.thickness()) < SAME) {
        return new Outcome.Solved<>(row);
      }
    }
    return new Outcome.Refused<>(
        new Refusal(
            "nominal glass thickness",
            nominal.thickness(),
            "m",
            "one of 2.5, 2.7, 3, 4, 5, 6, 8, 10, 12, 16, 19, 22, 25 mm or their inch sizes 3/32,"
                + " 1/8, 5/32, 3/16, 1/4, 5/16, 3/8, 1/2, 5/8, 3/4, 7/8, 1"));
  }

  /** All rows, by increasing thickness. */
  public static List<Designation> table() {
    return TABLE;
  }

  private static Designation row(double millimetres, double inches, double minimum) {
    return new Designation(millimetres / 1000, inches * INCH, minimum / 1000);
  }
}
