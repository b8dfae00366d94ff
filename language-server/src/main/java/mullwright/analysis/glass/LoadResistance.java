package mullwright.analysis.glass;

import mullwright.analysis.Outcome;

/**
 * Load resistance of a single lite or of a sealed double unit, by the procedure of ASTM E1300:
 * non-factored load × glass type factor, and × load share factor in a unit, whose resistance is
 * that of its weaker lite.
 *
 * <p>The non-factored load is computed by {@link GlassFailurePrediction} for 3 s and 8 breakages in
 * 1000; the type factor brings treatment and duration in. Monolithic lites held on four edges;
 * units under a 3 s load, because the load share of long loads is another table. Outside: laminated
 * lites in units, triple units, patterned, wired and sandblasted glass.
 */
public final class LoadResistance {
  private LoadResistance() {}

  /**
   * A single lite.
   *
   * @param width one side [m]
   * @param height the other side [m]
   * @param thickness minimum thickness [m]
   * @param treatment heat treatment
   * @param duration {@link GlassTypeFactor#SHORT} or {@link GlassTypeFactor#LONG} [s]
   */
  public record SingleLite(
      double width, double height, double thickness, HeatTreatment treatment, double duration) {}

  /**
   * A sealed double unit under a 3 s load.
   *
   * @param width one side [m]
   * @param height the other side [m]
   * @param first one lite
   * @param second the other lite
   */
  public record DoubleUnit(double width, double height, Pane first, Pane second) {}

  /**
   * One lite of a unit.
   *
   * @param thickness minimum thickness [m]
   * @param treatment heat treatment
   */
  public record Pane(double thickness, HeatTreatment treatment) {}

  /**
   * How a resistance came about.
   *
   * @param nonFactoredLoad of the lite annealed and alone, 3 s [Pa]
   * @param typeFactor glass type factor
   * @param shareFactor load share factor; 1 for a single lite
   * @param resistance their product [Pa]
   */
  public record Resistance(
      double nonFactoredLoad, double typeFactor, double shareFactor, double resistance) {}

  /**
   * Resistance of a unit.
   *
   * @param first as governed by the first lite
   * @param second as governed by the second lite
   */
  public record UnitResistance(Resistance first, Resistance second) {
    /** Resistance of the unit, that of its weaker lite [Pa]. */
    public double resistance() {
      return Math.min(first.resistance(), second.resistance());
    }
  }

  /** Load resistance of a single lite. */
  public static Outcome<Resistance> solve(SingleLite lite) {
    return GlassTypeFactor.solve(new GlassTypeFactor.Single(lite.treatment(), lite.duration()))
        .then(type -> resistance(lite.width(), lite.height(), lite.thickness(), type, 1));
  }

  /** Load resistance of a double unit. */
  public static Outcome<UnitResistance> solve(DoubleUnit unit) {
    return LoadShare.solve(new LoadShare.Unit(unit.first().thickness(), unit.second().thickness()))
        .then(
            share ->
                pane(unit, unit.first(), unit.second(), share.first())
                    .then(
                        first ->
                            pane(unit, unit.second(), unit.first(), share.second())
                                .then(
                                    second ->
                                        new Outcome.Solved<>(new UnitResistance(first, second)))));
  }

  private static Outcome<Resistance> pane(DoubleUnit unit, Pane pane, Pane other, double share) {
    return GlassTypeFactor.solve(
            new GlassTypeFactor.InDoubleUnit(
                pane.treatment(), other.treatment(), GlassTypeFactor.SHORT))
        .then(type -> resistance(unit.width(), unit.height(), pane.thickness(), type, share));
  }

  private static Outcome<Resistance> resistance(
      double width, double height, double thickness, double type, double share) {
    return GlassFailurePrediction.solve(
            GlassFailurePrediction.Lite.charted(width, height, thickness))
        .then(
            lite ->
                new Outcome.Solved<>(
                    new Resistance(
                        lite.nonFactoredLoad(),
                        type,
                        share,
                        lite.nonFactoredLoad() * type * share)));
  }
}
