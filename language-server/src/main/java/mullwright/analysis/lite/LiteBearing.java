package mullwright.analysis.lite;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.analysis.Outcome;
import mullwright.analysis.Refusal;
import mullwright.analysis.glass.LargeDeflectionPlate;
import mullwright.analysis.glass.MinimumThickness;
import mullwright.analysis.wall.WallAnalysis;
import mullwright.analysis.wall.WindOnWall;
import mullwright.layout.Cell;
import mullwright.model.Given;
import mullwright.model.Part;
import mullwright.quantity.Length;

/**
 * What a lite of a wall bears of the wind it takes, and how far it bends.
 *
 * <p>A laminate whose interlayer's shear modulus nobody states bears between two bounds: plies that
 * slip freely, and plies that work as one. Where they differ both are given.
 *
 * @param wind service-level pressures of the zones it touches
 * @param outside why it is not checked, if it is not: a clause
 * @param least strength on the safe side; empty if not checked
 * @param most strength on the other side; the same where nothing is left open
 */
public record LiteBearing(
    Cell cell,
    MakeUp makeUp,
    WindOnWall.Pressure wind,
    Optional<String> outside,
    Optional<UnitStrength> least,
    Optional<UnitStrength> most) {
  /** Shear moduli between which every interlayer lies [Pa]. */
  private static final double SLIPS = 1;

  private static final double HOLDS = 1e12;

  /** By how much what is read from a table may be off. */
  static final double CHART_ERROR = 0.06;

  /** The lite in a cell; empty where no glass of the catalog stands. */
  public static Optional<LiteBearing> of(WallAnalysis analysis, Cell cell) {
    if (cell.opening().isPresent() || cell.use().isEmpty()) {
      return Optional.empty();
    }
    return cell.glass().map(glass -> of(analysis, cell, glass));
  }

  private static LiteBearing of(WallAnalysis analysis, Cell cell, Part.Glass glass) {
    MakeUp makeUp = MakeUp.of(glass);
    WindOnWall.Pressure wind = analysis.wind().on(cell);
    Optional<String> outside =
        cell.rectangular()
            ? makeUp.outside()
            : Optional.of("it is no rectangle, and only its bounding size is known");
    if (outside.isPresent()) {
      return new LiteBearing(cell, makeUp, wind, outside, Optional.empty(), Optional.empty());
    }
    boolean open = makeUp.laminated() && glass.shearModulus().isEmpty();
    double stated = glass.shearModulus().map(Given::value).map(g -> g.toSi()).orElse(SLIPS);
    Outcome<UnitStrength> least = strength(analysis.glass(), cell, makeUp, stated);
    Outcome<UnitStrength> most = open ? strength(analysis.glass(), cell, makeUp, HOLDS) : least;
    return new LiteBearing(
        cell,
        makeUp,
        wind,
        least.refused().or(most::refused).map(Refusal::sentence).map(LiteBearing::clause),
        least.solved(),
        most.solved());
  }

  private static String clause(String sentence) {
    return sentence.substring(0, sentence.length() - 1);
  }

  private static Outcome<UnitStrength> strength(
      GlassMemory memory, Cell cell, MakeUp makeUp, double shearModulus) {
    return unit(cell.glassWidth(), cell.glassHeight(), makeUp, shearModulus).then(memory::strength);
  }

  private static Outcome<GlassUnit> unit(
      Length width, Length height, MakeUp makeUp, double shearModulus) {
    List<GlassUnit.Pane> panes = new ArrayList<>();
    for (MakeUp.Pane pane : makeUp.panes()) {
      List<GlassUnit.Ply> plies = new ArrayList<>();
      for (MakeUp.Ply ply : pane.plies()) {
        Outcome<MinimumThickness.Designation> known =
            MinimumThickness.solve(new MinimumThickness.Nominal(ply.nominal().toMetres()));
        if (known.refused().isPresent()) {
          return new Outcome.Refused<>(known.refused().get());
        }
        plies.add(
            new GlassUnit.Ply(known.solved().orElseThrow().minimum(), ply.treatment().value()));
      }
      panes.add(
          pane.laminated()
              ? new GlassUnit.Pane(plies, pane.interlayers().get(0).toMetres(), shearModulus)
              : new GlassUnit.Pane(plies, 0, 0));
    }
    return new Outcome.Solved<>(new GlassUnit(width.toMetres(), height.toMetres(), panes));
  }

  /**
   * The strength of a lite read from a table, on the safe side by what the table may be off; empty
   * where no glass stands or it is not checked. It tells at once what needs no closer look.
   */
  static Optional<UnitStrength> charted(WallAnalysis analysis, Cell cell) {
    if (cell.opening().isPresent() || cell.use().isEmpty() || !cell.rectangular()) {
      return Optional.empty();
    }
    return cell.glass().flatMap(glass -> analysis.glass().charted(glass, cell));
  }

  static Optional<UnitStrength> charted(Part.Glass glass, Length width, Length height) {
    MakeUp makeUp = MakeUp.of(glass);
    if (makeUp.outside().isPresent()) {
      return Optional.empty();
    }
    double shear = glass.shearModulus().map(g -> g.value().toSi()).orElse(SLIPS);
    return unit(width, height, makeUp, shear).then(UnitStrength::charted).solved();
  }

  /** True if a table shows at once that a lite bears the wind it takes, with some to spare. */
  public static boolean plainlyBears(WallAnalysis analysis, Cell cell) {
    double load = analysis.wind().on(cell).largest();
    return charted(analysis, cell)
        .filter(strength -> strength.resistance() * (1 - CHART_ERROR) >= load)
        .isPresent();
  }

  /** True if its strength lies between two bounds, since no shear modulus is stated. */
  public boolean open() {
    return least.isPresent() && !least.equals(most);
  }

  /** The pane that bends most under the wind, and how far. */
  public record Bent(int pane, double pressure, LargeDeflectionPlate.Response response) {}

  /**
   * Largest deflection under the worse of its pressures, on the safe side; empty if not checked.
   */
  public Optional<Bent> deflection(WallAnalysis analysis) {
    Bent worst = null;
    for (int pane = 0; least.isPresent() && pane < least.get().panes().size(); pane++) {
      UnitStrength.Pane one = least.get().panes().get(pane);
      double pressure = wind.largest() * one.share();
      Plate plate =
          Plate.of(cell.glassWidth().toMetres(), cell.glassHeight().toMetres(), one.thickness());
      Optional<LargeDeflectionPlate.Response> response =
          analysis.glass().under(plate, pressure).solved();
      if (response.isEmpty()) {
        return Optional.empty();
      }
      if (worst == null
          || response.get().centreDeflection() > worst.response().centreDeflection()) {
        worst = new Bent(pane, pressure, response.get());
      }
    }
    return Optional.ofNullable(worst);
  }
}
