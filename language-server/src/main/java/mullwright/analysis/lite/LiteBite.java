package mullwright.analysis.lite;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.analysis.movement.Expansion;
import mullwright.analysis.wall.Inputs;
import mullwright.analysis.wall.WallAnalysis;
import mullwright.derivation.Derivation;
import mullwright.layout.Cell;
import mullwright.model.Criteria;
import mullwright.model.Given;
import mullwright.model.Part;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;

/**
 * Bite and clearance left at each edge of a lite when cutting, erecting and heat are against it.
 *
 * <p>The lite stands on blocks: at its bottom edge only the place of the member counts, at its top
 * the whole tolerance of its size and the whole difference of expansion, at its sides half of each.
 * Heat widens the frame more than the glass and takes bite; cold narrows it and takes clearance.
 * Without a stated temperature heat and cold count nothing.
 */
public final class LiteBite {
  /** Place of a member: 1/16" (common practice). */
  private static final Length PLACE = Length.ofInches(1, 16);

  /** Tolerance of a size cut from glass up to 6 mm, and of thicker glass (ASTM C1036). */
  private static final Length THIN = Length.ofInches(1, 16);

  private static final Length THICK = Length.ofInches(3, 32);
  private static final Length THIN_LIMIT = Length.ofMillimetres(6);
  private static final String CUT = "ASTM C1036, from memory";
  private static final String PRACTICE = "common practice";

  private LiteBite() {}

  /**
   * What is left at an edge.
   *
   * @param edge {@code left}, {@code right}, {@code bottom} or {@code top}
   * @param bite bite left [m]
   * @param clearance clearance between glass and metal left [m]
   */
  public record Left(
      String edge,
      Given<Length> stated,
      double bite,
      Given<Length> statedClearance,
      double clearance,
      Part.Profile profile,
      Optional<Given<Criteria.Temperature>> temperature,
      Length size,
      double hot,
      double cold,
      Length cut) {

    private boolean upright() {
      return edge.equals("left") || edge.equals("right");
    }

    /** How the bite came about. */
    public Derivation explainBite() {
      return explain("bite left", bite, "bite", stated, hot);
    }

    /** How the clearance came about. */
    public Derivation explainClearance() {
      return explain("clearance left", clearance, "edge clearance", statedClearance, cold);
    }

    private Derivation explain(
        String name, double value, String from, Given<Length> given, double movement) {
      List<Derivation> inputs = new ArrayList<>();
      inputs.add(Inputs.length(from, given));
      inputs.add(Derivation.assumed("place tolerance", PLACE, PRACTICE));
      String formula = from + " − place tolerance";
      if (!edge.equals("bottom")) {
        inputs.add(Derivation.assumed("size tolerance", cut, CUT));
        inputs.add(movement(movement));
        formula += upright() ? " − size tolerance ÷ 2 − movement" : " − size tolerance − movement";
      }
      return Derivation.computed(
          name, value, Kind.LENGTH, formula, PRACTICE, inputs.toArray(Derivation[]::new));
    }

    private Derivation movement(double movement) {
      if (temperature.isEmpty()) {
        return Derivation.assumed("movement", Length.ZERO, "no metal temperature is stated");
      }
      return Derivation.computed(
          "movement",
          movement,
          Kind.LENGTH,
          upright()
              ? "difference of expansion of frame and glass × glass width ÷ 2"
              : "difference of expansion of frame and glass × glass height",
          "closed form, expansion from handbooks, from memory",
          Derivation.computed(
              upright() ? "glass width" : "glass height",
              size,
              "daylight opening + bites",
              "conventions of measure"));
    }
  }

  /** How far the metal gets warmer and colder than it was set [K]; 0 where nothing is stated. */
  private record Heat(Optional<Given<Criteria.Temperature>> stated, double warmer, double colder) {
    static Heat of(Optional<Given<Criteria.Temperature>> stated) {
      if (stated.isEmpty()) {
        return new Heat(stated, 0, 0);
      }
      Criteria.Temperature temperature = stated.get().value();
      double set = temperature.set().toSi();
      return new Heat(
          stated,
          Math.max(0, temperature.most().toSi() - set),
          Math.max(0, set - temperature.least().toSi()));
    }
  }

  /** What is left at the four edges; empty where no glass stands or a member is not known. */
  public static List<Left> of(WallAnalysis analysis, Cell cell) {
    if (cell.glass().isEmpty() || cell.opening().isPresent() || !cell.rectangular()) {
      return List.of();
    }
    CellEdges.Edges edges = analysis.edges().of(cell);
    if (!edges.whole()) {
      return List.of();
    }
    Part.Glass glass = cell.glass().get();
    Heat heat = Heat.of(analysis.layout().wall().criteria().temperature());
    Length cut = tolerance(glass);
    return List.of(
        left("left", cell, glass, edges.leftProfile(), false, heat, cut),
        left("right", cell, glass, edges.rightProfile(), true, heat, cut),
        left("bottom", cell, glass, edges.belowProfile(), false, heat, cut),
        left("top", cell, glass, edges.aboveProfile(), true, heat, cut));
  }

  private static Left left(
      String edge,
      Cell cell,
      Part.Glass glass,
      Part.Profile profile,
      boolean lower,
      Heat heat,
      Length cut) {
    boolean upright = edge.equals("left") || edge.equals("right");
    boolean bottom = edge.equals("bottom");
    Given<Length> bite = glass.bite().orElse(lower ? profile.biteLeft() : profile.biteRight());
    Given<Length> clearance = lower ? profile.clearanceLeft() : profile.clearanceRight();
    Length size = upright ? cell.glassWidth() : cell.glassHeight();
    double difference =
        (profile.metal().value().equals("steel") ? Expansion.STEEL : Expansion.ALUMINUM)
                .coefficient()
            - Expansion.GLASS.coefficient();
    double part = bottom ? 0 : upright ? 0.5 : 1;
    double hot = heat.warmer * difference * size.toMetres() * part;
    double cold = heat.colder * difference * size.toMetres() * part;
    double lost = PLACE.toMetres() + part * cut.toMetres();
    return new Left(
        edge,
        bite,
        bite.value().toMetres() - lost - hot,
        clearance,
        clearance.value().toMetres() - lost - cold,
        profile,
        heat.stated,
        size,
        hot,
        cold,
        cut);
  }

  private static Length tolerance(Part.Glass glass) {
    for (Part.Layer layer : glass.layers()) {
      if (layer.what().equals("ply") && layer.thickness().isLongerThan(THIN_LIMIT)) {
        return THICK;
      }
    }
    return THIN;
  }
}
