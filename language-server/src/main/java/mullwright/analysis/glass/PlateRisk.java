package mullwright.analysis.glass;

/**
 * Surface integral of stress in the glass failure prediction model, over the tension face.
 *
 * <p>J = ln{(1/ab)∫[c·σ₁·ab/(E t²)]⁷dA}, where σ₁ is the larger principal stress if in tension and
 * c the {@link BiaxialFactor}. Source: ASTM E1300, basis of the non-factored load charts.
 */
final class PlateRisk {
  private static final GaussRule RULE = GaussRule.of(20);
  private static final PlateStress.Table ALONG = PlateStress.Table.along(RULE.points());
  private static final PlateStress.Table ACROSS = PlateStress.Table.across(RULE.points());

  private PlateRisk() {}

  /** J of an equilibrium. */
  static double of(PlateState state) {
    Sum sum = new Sum();
    new PlateStress(state, ALONG, ACROSS).visit(sum);
    return StrictMath.log(sum.sum);
  }

  /** Sums what each place adds. */
  private static final class Sum implements PlateStress.Visitor {
    private double sum;

    @Override
    public void at(int along, int across, double first, double second) {
      if (first > 0) {
        double square = first * first;
        sum +=
            RULE.weights()[along]
                * RULE.weights()[across]
                * BiaxialFactor.toTheSeventh(second / first)
                * square
                * square
                * square
                * first;
      }
    }
  }
}
