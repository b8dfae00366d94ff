package mullwright.analysis.lite;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;
import mullwright.analysis.glass.GlassTypeFactor;
import mullwright.analysis.glass.HeatTreatment;
import mullwright.analysis.glass.LaminatedThickness;

/**
 * Load resistance of a lite under a 3 s load, ply by ply: non-factored load × glass type factor ×
 * load share factor; the weakest ply governs.
 *
 * <p>Panes of a sealed unit deflect alike: each takes the share t³/Σt³ of the load, t its minimum
 * thickness, of a laminate its effective thickness for deflection (ASTM E1300 has tables of its own
 * for laminates in units; they are not used). A ply of a laminate is looked at with its effective
 * thickness for stress. Source: ASTM E1300 procedure.
 *
 * @param panes in the order of the unit
 * @param plies all plies, from outdoors
 */
public record UnitStrength(List<Pane> panes, List<Ply> plies) {
  public UnitStrength {
    panes = List.copyOf(panes);
    plies = List.copyOf(plies);
  }

  /**
   * A pane.
   *
   * @param thickness minimum or effective thickness for deflection [m]
   * @param share part of the load on the unit it takes
   */
  public record Pane(double thickness, double share) {}

  /**
   * A ply.
   *
   * @param pane index of its pane
   * @param ply index in its pane
   * @param treatment heat treatment
   * @param thickness minimum or effective thickness for stress [m]
   * @param nonFactoredLoad of the pane annealed and alone, as this ply governs it [Pa]
   * @param typeFactor glass type factor
   * @param shareFactor load share factor; 1 for a single lite
   */
  public record Ply(
      int pane,
      int ply,
      HeatTreatment treatment,
      double thickness,
      double nonFactoredLoad,
      double typeFactor,
      double shareFactor) {
    /** Load on the unit at which this ply has the accepted chance of breakage [Pa]. */
    public double resistance() {
      return nonFactoredLoad * typeFactor * shareFactor;
    }
  }

  /** The ply that governs. */
  public Ply governing() {
    Ply governing = plies.get(0);
    for (Ply ply : plies) {
      governing = ply.resistance() < governing.resistance() ? ply : governing;
    }
    return governing;
  }

  /** Load resistance [Pa]. */
  public double resistance() {
    return governing().resistance();
  }

  /** Thicknesses of a pane: for deflection, and of each ply for stress. */
  private record Thick(double deflection, List<Double> stress) {}

  static Outcome<UnitStrength> solve(GlassUnit unit, GlassMemory memory) {
    return solve(
        unit,
        plate ->
            memory.resistance(plate).then(alone -> new Outcome.Solved<>(alone.nonFactoredLoad())));
  }

  /** The same with loads read from a table, within 5 %. */
  static Outcome<UnitStrength> charted(GlassUnit unit) {
    return solve(
        unit,
        plate ->
            Guard.range()
                .positive("load of the table", plate.chartedLoad(), "Pa")
                .then(plate::chartedLoad));
  }

  private static Outcome<UnitStrength> solve(
      GlassUnit unit, Function<Plate, Outcome<Double>> nonFactoredLoad) {
    List<Thick> thick = new ArrayList<>();
    double cubes = 0;
    for (GlassUnit.Pane pane : unit.panes()) {
      Outcome<Thick> one = thickness(unit, pane);
      if (one.refused().isPresent()) {
        return new Outcome.Refused<>(one.refused().get());
      }
      thick.add(one.solved().orElseThrow());
      cubes += cube(one.solved().orElseThrow().deflection());
    }
    List<Pane> panes = new ArrayList<>();
    List<Ply> plies = new ArrayList<>();
    for (int pane = 0; pane < thick.size(); pane++) {
      double share = cube(thick.get(pane).deflection()) / cubes;
      panes.add(new Pane(thick.get(pane).deflection(), share));
      for (int ply = 0; ply < thick.get(pane).stress().size(); ply++) {
        double thickness = thick.get(pane).stress().get(ply);
        HeatTreatment treatment = unit.panes().get(pane).plies().get(ply).treatment();
        Outcome<Double> alone =
            nonFactoredLoad.apply(Plate.of(unit.width(), unit.height(), thickness));
        Outcome<Double> type = typeFactor(unit, pane, treatment);
        if (alone.refused().isPresent() || type.refused().isPresent()) {
          return new Outcome.Refused<>(alone.refused().or(type::refused).orElseThrow());
        }
        plies.add(
            new Ply(
                pane,
                ply,
                treatment,
                thickness,
                alone.solved().orElseThrow(),
                type.solved().orElseThrow(),
                1 / share));
      }
    }
    return new Outcome.Solved<>(new UnitStrength(panes, plies));
  }

  private static Outcome<Thick> thickness(GlassUnit unit, GlassUnit.Pane pane) {
    if (pane.plies().size() == 1) {
      double only = pane.plies().get(0).thickness();
      return new Outcome.Solved<>(new Thick(only, List.of(only)));
    }
    return LaminatedThickness.solve(
            new LaminatedThickness.Laminate(
                pane.plies().get(0).thickness(),
                pane.plies().get(1).thickness(),
                pane.interlayer(),
                pane.shearModulus(),
                Math.min(unit.width(), unit.height())))
        .then(
            effective ->
                new Outcome.Solved<>(
                    new Thick(
                        effective.forDeflection(),
                        List.of(effective.forStressFirst(), effective.forStressSecond()))));
  }

  // of a laminate in a unit the weaker of its plies stands for the other lite
  private static Outcome<Double> typeFactor(GlassUnit unit, int pane, HeatTreatment treatment) {
    if (unit.panes().size() == 1) {
      return GlassTypeFactor.solve(new GlassTypeFactor.Single(treatment, GlassTypeFactor.SHORT));
    }
    List<GlassUnit.Ply> plies = unit.panes().get(1 - pane).plies();
    HeatTreatment other = plies.get(0).treatment();
    for (GlassUnit.Ply ply : plies) {
      other = ply.treatment().compareTo(other) < 0 ? ply.treatment() : other;
    }
    return GlassTypeFactor.solve(
        new GlassTypeFactor.InDoubleUnit(treatment, other, GlassTypeFactor.SHORT));
  }

  private static double cube(double value) {
    return value * value * value;
  }
}
