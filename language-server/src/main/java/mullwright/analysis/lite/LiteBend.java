package mullwright.analysis.lite;

import java.util.Optional;
import mullwright.analysis.wall.Inputs;
import mullwright.analysis.wall.WallAnalysis;
import mullwright.derivation.Derivation;
import mullwright.layout.Cell;
import mullwright.model.Given;
import mullwright.model.GlassCriteria;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;

/**
 * How far the centre of a lite bends under the wind, and how far it may.
 *
 * <p>The project's limit, as a length or a share of the short side; where it states none, short
 * side ÷ 65 and at most 50 mm (EN 16612, where nothing else is asked, from memory).
 *
 * @param bearing the lite
 * @param bent the pane that bends most
 * @param limit the limit [m]
 * @param stated true if the project states it
 */
public record LiteBend(LiteBearing bearing, LiteBearing.Bent bent, double limit, boolean stated) {
  private static final double USUAL_RATIO = 65;
  private static final Length USUAL_MOST = Length.ofMillimetres(50);
  private static final String USUAL = "EN 16612, where nothing else is asked, from memory";

  /** The lite in a cell; empty if it is not checked or takes no wind. */
  public static Optional<LiteBend> of(WallAnalysis analysis, Cell cell) {
    if (!analysis.wind().given()) {
      return Optional.empty();
    }
    boolean stated = stated(analysis);
    double limit = limit(analysis, cell);
    return LiteBearing.of(analysis, cell)
        .flatMap(
            bearing ->
                bearing
                    .deflection(analysis)
                    .map(bent -> new LiteBend(bearing, bent, limit, stated)));
  }

  private static boolean stated(WallAnalysis analysis) {
    GlassCriteria criteria = analysis.layout().wall().criteria().glass();
    return criteria.mostDeflection().isPresent() || criteria.deflectionRatio().isPresent();
  }

  private static double limit(WallAnalysis analysis, Cell cell) {
    GlassCriteria criteria = analysis.layout().wall().criteria().glass();
    double shorter = shorter(cell).toMetres();
    if (!stated(analysis)) {
      return Math.min(shorter / USUAL_RATIO, USUAL_MOST.toMetres());
    }
    return criteria
        .mostDeflection()
        .map(most -> most.value().toMetres())
        .orElseGet(() -> shorter / criteria.deflectionRatio().get().value());
  }

  /** True if a table shows at once that a lite bends less than it may, with some to spare. */
  public static boolean plainlyWithin(WallAnalysis analysis, Cell cell) {
    double load = analysis.wind().on(cell).largest();
    double limit = limit(analysis, cell);
    return LiteBearing.charted(analysis, cell)
        .filter(
            strength ->
                strength.panes().stream()
                    .allMatch(
                        pane ->
                            Plate.of(
                                        cell.glassWidth().toMetres(),
                                        cell.glassHeight().toMetres(),
                                        pane.thickness())
                                    .chartedDeflection(load * pane.share())
                                <= limit * (1 - LiteBearing.CHART_ERROR)))
        .isPresent();
  }

  private static Length shorter(Cell cell) {
    return Length.min(cell.glassWidth(), cell.glassHeight());
  }

  /** Deflection of the centre [m]. */
  public double deflection() {
    return bent.response().centreDeflection();
  }

  /** True if it bends further than it may. */
  public boolean passed() {
    return deflection() > limit;
  }

  /** How the deflection came about. */
  public Derivation explain(WallAnalysis analysis) {
    Cell cell = bearing.cell();
    UnitStrength.Pane pane = bearing.least().orElseThrow().panes().get(bent.pane());
    Derivation pressure =
        analysis
            .wind()
            .explain(cell)
            .orElseGet(
                () ->
                    Derivation.assumed(
                        "wind", Quantity.ofSi(0, Kind.PRESSURE), Kind.PRESSURE, "none is stated"));
    return Derivation.computed(
        "deflection of the centre",
        Length.nearest(deflection()),
        "large-deflection plate of glass width × glass height × thickness under share × "
            + pressure.name(),
        "thin-plate equations, spectral solution, E and ν of ASTM E1300",
        size("glass width", cell.glassWidth()),
        size("glass height", cell.glassHeight()),
        Derivation.computed(
            "thickness",
            Length.nearest(pane.thickness()),
            "minimum or effective for deflection",
            "ASTM E1300"),
        Derivation.computed(
            "share",
            pane.share(),
            Kind.RATIO,
            "thickness³ of the pane ÷ sum over the panes",
            "ASTM E1300 load share, equal deflection"),
        pressure);
  }

  private static Derivation size(String name, Length value) {
    return Derivation.computed(name, value, "daylight opening + bites", "conventions of measure");
  }

  /** How the limit came about. */
  public Derivation explainLimit(GlassCriteria criteria) {
    if (criteria.mostDeflection().isPresent()) {
      return Inputs.length("deflection limit", criteria.mostDeflection().get());
    }
    Derivation side = size("short side", shorter(bearing.cell()));
    if (criteria.deflectionRatio().isPresent()) {
      Given<Double> ratio = criteria.deflectionRatio().get();
      return Derivation.computed(
          "deflection limit",
          limit,
          Kind.LENGTH,
          "short side ÷ ratio",
          "the project's criteria",
          side,
          Derivation.stated(
              "ratio", Quantity.ofSi(ratio.value(), Kind.RATIO), Kind.RATIO, ratio.origin()));
    }
    return Derivation.computed(
        "deflection limit",
        limit,
        Kind.LENGTH,
        "short side ÷ usual ratio, at most usual length",
        USUAL,
        side,
        Derivation.assumed(
            "usual ratio", Quantity.ofSi(USUAL_RATIO, Kind.RATIO), Kind.RATIO, USUAL),
        Derivation.assumed("usual length", USUAL_MOST, USUAL));
  }
}
