package mullwright.analysis.drift;

import mullwright.analysis.Formula;
import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * In-plane drift at which glass first touches its frame, against the drift of the building.
 *
 * <pre>
 * D_clear = 2·c₁·(1 + h_p·c₂/(b_p·c₁)) = 2·c₁ + 2·c₂·h_p/b_p
 * exempt if D_clear ≥ 1.25·I_e·D_p; else Δ_fallout ≥ max(1.25·I_e·D_p, 1/2 in) by test
 * </pre>
 *
 * <p>Symbols: h_p, b_p height and width of the rectangular glass [m]; c₁ mean clearance at its two
 * vertical edges, c₂ mean of those at its top and bottom [m]; D_p relative displacement over the
 * height of the panel [m]; I_e importance factor. Some editions write the exemption without I_e;
 * with it the safe side is kept. Range: rectangular lites, dry or wet glazed with room to move.
 * Source: ASCE 7, section 13.5.9, from memory.
 */
public final class GlassDrift {
  private static final String SOURCE = "ASCE 7, section 13.5.9, from memory";
  private static final double HALF_INCH = 0.5 * 0.0254;

  /** D_clear. */
  public static final Formula CLEAR_DRIFT =
      new Formula(
          "2 × side clearance + 2 × top and bottom clearance × glass height ÷ glass width", SOURCE);

  /** 1.25·I_e·D_p. */
  public static final Formula DEMAND = new Formula("1.25 × importance factor × drift", SOURCE);

  private GlassDrift() {}

  /**
   * A lite in its frame.
   *
   * @param height glass height [m], more than 0
   * @param width glass width [m], more than 0
   * @param sideClearance mean clearance of the two vertical edges [m], 0 or more
   * @param topBottomClearance mean clearance of top and bottom edge [m], 0 or more
   * @param drift relative displacement over the height of the panel, D_p [m], 0 or more
   * @param importance importance factor I_e, 1.0 or more
   */
  public record Input(
      double height,
      double width,
      double sideClearance,
      double topBottomClearance,
      double drift,
      double importance) {}

  /**
   * Clearance and demand.
   *
   * @param input what was put in
   * @param clearDrift drift at first contact, D_clear [m]
   * @param demand drift it must reach, 1.25·I_e·D_p [m]
   */
  public record Result(Input input, double clearDrift, double demand) {

    /** Whether the clearance alone exempts the lite from a fallout test. */
    public boolean exempt() {
      return clearDrift >= demand;
    }

    /** Drift without fallout a test must show if the lite is not exempt [m]. */
    public double falloutDrift() {
      return Math.max(demand, HALF_INCH);
    }
  }

  /** Computes clearance and demand. */
  public static Outcome<Result> solve(Input in) {
    return Guard.range()
        .positive("glass height", in.height(), "m")
        .positive("glass width", in.width(), "m")
        .notNegative("side clearance", in.sideClearance(), "m")
        .notNegative("top and bottom clearance", in.topBottomClearance(), "m")
        .notNegative("drift", in.drift(), "m")
        .that(
            in.importance() >= 1 && in.importance() <= 1.5,
            "importance factor",
            in.importance(),
            "",
            "from 1.0 to 1.5")
        .then(
            () ->
                new Result(
                    in,
                    2 * in.sideClearance() + 2 * in.topBottomClearance() * in.height() / in.width(),
                    1.25 * in.importance() * in.drift()));
  }
}
