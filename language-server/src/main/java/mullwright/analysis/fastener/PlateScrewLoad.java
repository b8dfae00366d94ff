package mullwright.analysis.fastener;

import mullwright.analysis.Formula;
import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Pull of wind on one screw of a pressure plate: line load × spacing.
 *
 * <p>Symbols: the line load [N/m] is the suction on the lites at both sides of the plate times the
 * width of each that bears on it; the spacing [m] is that of the screws. Range: suction; what the
 * gaskets press with when the plate is set is not in it. Source: statics; the plate taken as hung
 * from each screw over one spacing is common practice.
 */
public final class PlateScrewLoad {
  /** The pull. */
  public static final Formula PULL =
      new Formula("line load × spacing of the screws", "statics (common practice)");

  private PlateScrewLoad() {}

  /**
   * A plate.
   *
   * @param lineLoad suction on it from both sides [N/m], 0 or more
   * @param spacing of its screws [m], more than 0
   */
  public record Input(double lineLoad, double spacing) {}

  /** Pull on a screw [N]. */
  public static Outcome<Double> solve(Input in) {
    return Guard.range()
        .notNegative("line load", in.lineLoad(), "N/m")
        .positive("spacing of the screws", in.spacing(), "m")
        .then(() -> in.lineLoad() * in.spacing());
  }
}
