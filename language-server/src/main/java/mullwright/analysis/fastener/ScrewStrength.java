package mullwright.analysis.fastener;

import mullwright.analysis.Formula;
import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Further limit states of a tapping screw through one aluminum part into another.
 *
 * <pre>
 * tilting    R_n = 4.2·√(t₂³·D)·F_tu2             for t₂ ≤ t₁
 * pull-out   R_n = K_s·D·L_e·F_ty2                for L_e from 0.060 to 0.125 in
 * pull-over  R_n = C·t₁·F_tu1·(D_ws − D_h)
 * </pre>
 *
 * <p>Symbols: D nominal diameter; t₁ thickness under the head, t₂ of the part that holds the
 * thread, L_e length of thread engaged; D_ws washer or head, D_h hole [m]; F_tu, F_ty tensile
 * ultimate and yield strength [Pa]; K_s, C coefficients, on which editions differ, so the caller
 * states them. Safety factor 3.0 throughout. Source: Aluminum Design Manual, section J.5, from
 * memory.
 */
public final class ScrewStrength {
  /** Safety factor of screws. */
  public static final double SAFETY_FACTOR = 3.0;

  private static final String SOURCE = "Aluminum Design Manual, section J.5, from memory";
  private static final double LEAST_ENGAGEMENT = 0.060 * 0.0254;
  private static final double GREATEST_ENGAGEMENT = 0.125 * 0.0254;
  private static final double HAIR = 1e-12;

  /** Tilting. */
  public static final Formula TILTING =
      new Formula(
          "4.2 × √(thickness of the far part³ × screw diameter) × tensile ultimate strength",
          SOURCE);

  /** Pull-out. */
  public static final Formula PULL_OUT =
      new Formula(
          "thread coefficient × screw diameter × engaged length × tensile yield strength", SOURCE);

  /** Pull-over. */
  public static final Formula PULL_OVER =
      new Formula(
          "head coefficient × thickness under the head × tensile ultimate strength"
              + " × (washer diameter − hole diameter)",
          SOURCE);

  private ScrewStrength() {}

  /**
   * A strength and what may be counted on.
   *
   * @param nominal nominal strength R_n [N]
   * @param allowable R_n/3.0 [N]
   */
  public record Result(double nominal, double allowable) {}

  /**
   * A screw in shear that may tilt.
   *
   * @param diameter nominal diameter [m], more than 0
   * @param nearThickness thickness under the head [m]
   * @param farThickness thickness of the part that holds the thread [m], at most the near one
   * @param farUltimate tensile ultimate strength of that part [Pa], more than 0
   */
  public record Tilting(
      double diameter, double nearThickness, double farThickness, double farUltimate) {}

  /**
   * A screw pulled out of its thread.
   *
   * @param diameter nominal diameter [m], more than 0
   * @param engaged length of thread engaged [m], 0.060 to 0.125 in
   * @param farYield tensile yield strength of the part that holds the thread [Pa], more than 0
   * @param threadCoefficient K_s, commonly about 1.2 from 0.080 in on; more than 0
   */
  public record PullOut(
      double diameter, double engaged, double farYield, double threadCoefficient) {}

  /**
   * A part pulled over the screw's head.
   *
   * @param washer diameter of head or washer [m], more than the hole
   * @param hole diameter of the hole [m], more than 0
   * @param nearThickness thickness under the head [m], more than 0
   * @param nearUltimate tensile ultimate strength of that part [Pa], more than 0
   * @param headCoefficient C, more than 0
   */
  public record PullOver(
      double washer,
      double hole,
      double nearThickness,
      double nearUltimate,
      double headCoefficient) {}

  /** Computes the strength against tilting. */
  public static Outcome<Result> solve(Tilting in) {
    return Guard.range()
        .positive("screw diameter", in.diameter(), "m")
        .positive("thickness of the far part", in.farThickness(), "m")
        .that(
            in.farThickness() <= in.nearThickness() * (1 + HAIR),
            "thickness of the far part",
            in.farThickness(),
            "m",
            "at most that under the head")
        .positive("tensile ultimate strength", in.farUltimate(), "Pa")
        .then(
            () ->
                result(
                    4.2
                        * Math.sqrt(Math.pow(in.farThickness(), 3) * in.diameter())
                        * in.farUltimate()));
  }

  /** Computes the strength against pull-out. */
  public static Outcome<Result> solve(PullOut in) {
    return Guard.range()
        .positive("screw diameter", in.diameter(), "m")
        .that(
            in.engaged() >= LEAST_ENGAGEMENT * (1 - HAIR)
                && in.engaged() <= GREATEST_ENGAGEMENT * (1 + HAIR),
            "engaged length",
            in.engaged(),
            "m",
            "from 0.001524 to 0.003175 m (0.060 to 0.125 in)")
        .positive("tensile yield strength", in.farYield(), "Pa")
        .positive("thread coefficient", in.threadCoefficient(), "")
        .then(() -> result(in.threadCoefficient() * in.diameter() * in.engaged() * in.farYield()));
  }

  /** Computes the strength against pull-over. */
  public static Outcome<Result> solve(PullOver in) {
    return Guard.range()
        .positive("hole diameter", in.hole(), "m")
        .that(
            in.washer() > in.hole() && in.washer() < Double.POSITIVE_INFINITY,
            "washer diameter",
            in.washer(),
            "m",
            "greater than the hole")
        .positive("thickness under the head", in.nearThickness(), "m")
        .positive("tensile ultimate strength", in.nearUltimate(), "Pa")
        .positive("head coefficient", in.headCoefficient(), "")
        .then(
            () ->
                result(
                    in.headCoefficient()
                        * in.nearThickness()
                        * in.nearUltimate()
                        * (in.washer() - in.hole())));
  }

  private static Result result(double nominal) {
    return new Result(nominal, nominal / SAFETY_FACTOR);
  }
}
