package mullwright.analysis.wind;

import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Effective wind area of a member by ASCE 7: span × width, the width being what loads it but at
 * least a third of the span. A lite takes its own area instead.
 *
 * <p>Source: ASCE 7, section 26.2, definition, from memory.
 */
public final class EffectiveWindArea {
  private EffectiveWindArea() {}

  /**
   * A member.
   *
   * @param span span [m]
   * @param width width that loads it [m]
   */
  public record Member(double span, double width) {}

  /** Effective wind area [m²]. */
  public static Outcome<Double> solve(Member member) {
    return Guard.range()
        .positive("span", member.span(), "m")
        .positive("tributary width", member.width(), "m")
        .then(() -> member.span() * Math.max(member.width(), member.span() / 3));
  }
}
