package mullwright.analysis.fastener;

import java.util.List;
import java.util.OptionalDouble;
import mullwright.analysis.Formula;
import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * How far off a chain of tolerances can be: worst case Σ|t|, and root of the sum of squares.
 *
 * <p>The root of the sum of squares, √Σt², holds for independent, centred processes, and only for
 * three terms or more of like size; a factor of 1.0 to 1.5 covers processes that are not centred
 * (common practice). t half-width of each tolerance [m]. Source: textbook.
 */
public final class ToleranceStack {
  /** Fewest terms for which the statistical sum is given. */
  public static final int FEWEST_TERMS = 3;

  /** Σ|t|. */
  public static final Formula WORST = new Formula("sum of the tolerances", "closed form");

  /** factor·√Σt². */
  public static final Formula STATISTICAL =
      new Formula("centring factor × √(sum of the squared tolerances)", "closed form");

  private ToleranceStack() {}

  /**
   * A chain.
   *
   * @param tolerances half-width of each tolerance [m], 0 or more
   * @param centringFactor 1.0 for centred processes, up to 1.5
   */
  public record Input(List<Double> tolerances, double centringFactor) {

    /** Keeps its own copy of the list. */
    public Input {
      tolerances = List.copyOf(tolerances);
    }
  }

  /**
   * The sums.
   *
   * @param input what was put in
   * @param worst worst case [m]
   * @param statistical root of the sum of squares times the factor [m]; empty for fewer than {@link
   *     #FEWEST_TERMS} terms
   */
  public record Result(Input input, double worst, OptionalDouble statistical) {}

  /** Computes both sums. */
  public static Outcome<Result> solve(Input in) {
    Guard guard =
        Guard.range()
            .that(
                in.centringFactor() >= 1 && in.centringFactor() <= 1.5,
                "centring factor",
                in.centringFactor(),
                "",
                "from 1.0 to 1.5");
    for (double tolerance : in.tolerances()) {
      guard.notNegative("tolerance", tolerance, "m");
    }
    return guard.then(() -> compute(in));
  }

  private static Result compute(Input in) {
    double worst = 0;
    double squares = 0;
    for (double tolerance : in.tolerances()) {
      worst += tolerance;
      squares += tolerance * tolerance;
    }
    OptionalDouble statistical =
        in.tolerances().size() < FEWEST_TERMS
            ? OptionalDouble.empty()
            : OptionalDouble.of(in.centringFactor() * Math.sqrt(squares));
    return new Result(in, worst, statistical);
  }
}
