package mullwright.analysis.strength;

import mullwright.analysis.Formula;
import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Moment shared between a member and the reinforcement in it, bent to one curve.
 *
 * <p>share = E_s·I_s/(E_s·I_s + E_a·I_a); M_s = share·M; the rest stays in the member, and
 * deflection uses the sum of both rigidities.
 *
 * <p>Symbols: E_s·I_s, E_a·I_a rigidity of reinforcement and member [N·m²]; M moment [N·m]. Range:
 * not bonded, in contact at the anchors and at quarter points or closer, running the whole span.
 * Source: textbook.
 */
public final class LoadSharing {
  /** E_s·I_s/(E_s·I_s + E_a·I_a). */
  public static final Formula SHARE =
      new Formula(
          "rigidity of reinforcement ÷ (rigidity of reinforcement + rigidity of member)",
          "closed form");

  private LoadSharing() {}

  /**
   * A reinforced member.
   *
   * @param memberRigidity E_a·I_a [N·m²], more than 0
   * @param reinforcementRigidity E_s·I_s [N·m²], 0 or more
   * @param moment moment on both together [N·m]
   */
  public record Input(double memberRigidity, double reinforcementRigidity, double moment) {}

  /**
   * The shares.
   *
   * @param input what was put in
   * @param share share of the reinforcement, 0 to 1
   * @param memberMoment moment in the member [N·m]
   * @param reinforcementMoment moment in the reinforcement [N·m]
   * @param rigidity rigidity of both together [N·m²]
   */
  public record Result(
      Input input,
      double share,
      double memberMoment,
      double reinforcementMoment,
      double rigidity) {}

  /** Computes the shares. */
  public static Outcome<Result> solve(Input in) {
    return Guard.range()
        .positive("rigidity of the member", in.memberRigidity(), "N·m²")
        .notNegative("rigidity of the reinforcement", in.reinforcementRigidity(), "N·m²")
        .finite("moment", in.moment(), "N·m")
        .then(
            () -> {
              double rigidity = in.memberRigidity() + in.reinforcementRigidity();
              double share = in.reinforcementRigidity() / rigidity;
              double reinforcement = share * in.moment();
              return new Result(in, share, in.moment() - reinforcement, reinforcement, rigidity);
            });
  }
}
