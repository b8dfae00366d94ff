package mullwright.analysis.lite;

import java.util.List;
import java.util.Optional;
import mullwright.analysis.drift.GlassDrift;
import mullwright.analysis.wall.Inputs;
import mullwright.analysis.wall.WallAnalysis;
import mullwright.derivation.Derivation;
import mullwright.layout.Cell;
import mullwright.model.Criteria;
import mullwright.model.Given;
import mullwright.model.Grid;
import mullwright.model.Part;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;

/**
 * Whether a lite of a wall clears its frame when the storey drifts.
 *
 * <p>Clearances are those of the profiles at its four edges, the mean of two opposite ones. A drift
 * given as a length is that of each storey the lite reaches into, spread evenly over its height;
 * the worst storey counts.
 */
public final class LiteDrift {
  private final Cell cell;
  private final CellEdges.Edges edges;
  private final Criteria criteria;
  private final Storey storey;
  private final GlassDrift.Result result;

  /** A storey between two floors, if there are any, with its drift over its height. */
  private record Storey(List<Grid.Floor> between, Length height, double ratio) {
    String name() {
      return between.get(0).name() + " to " + between.get(1).name();
    }
  }

  private LiteDrift(
      Cell cell,
      CellEdges.Edges edges,
      Criteria criteria,
      Storey storey,
      GlassDrift.Result result) {
    this.cell = cell;
    this.edges = edges;
    this.criteria = criteria;
    this.storey = storey;
    this.result = result;
  }

  /**
   * The lite in a cell; empty if no drift is stated, if it is no rectangle, or if a drift is stated
   * as a length and there is no storey to measure it by.
   */
  public static Optional<LiteDrift> of(WallAnalysis analysis, Cell cell) {
    Criteria criteria = analysis.layout().wall().criteria();
    boolean stated = criteria.storyDrift().isPresent() || criteria.storyDriftRatio().isPresent();
    if (!stated || cell.use().isEmpty() || cell.opening().isPresent() || !cell.rectangular()) {
      return Optional.empty();
    }
    CellEdges.Edges edges = analysis.edges().of(cell);
    Optional<Storey> storey = storey(analysis.layout().wall().grid(), cell, criteria);
    if (!edges.whole() || storey.isEmpty()) {
      return Optional.empty();
    }
    double height = cell.glassHeight().toMetres();
    return GlassDrift.solve(
            new GlassDrift.Input(
                height,
                cell.glassWidth().toMetres(),
                mean(left(edges), right(edges)),
                mean(below(edges), above(edges)),
                storey.get().ratio() * height,
                criteria.glass().importance().value()))
        .solved()
        .map(result -> new LiteDrift(cell, edges, criteria, storey.get(), result));
  }

  private static Given<Length> left(CellEdges.Edges edges) {
    return edges.leftProfile().clearanceRight();
  }

  private static Given<Length> right(CellEdges.Edges edges) {
    return edges.rightProfile().clearanceLeft();
  }

  private static Given<Length> below(CellEdges.Edges edges) {
    return edges.belowProfile().clearanceRight();
  }

  private static Given<Length> above(CellEdges.Edges edges) {
    return edges.aboveProfile().clearanceLeft();
  }

  private static double mean(Given<Length> one, Given<Length> other) {
    return (one.value().toMetres() + other.value().toMetres()) / 2;
  }

  private static Optional<Storey> storey(Grid grid, Cell cell, Criteria criteria) {
    if (criteria.storyDriftRatio().isPresent()) {
      return Optional.of(
          new Storey(List.of(), cell.glassHeight(), criteria.storyDriftRatio().get().value()));
    }
    double drift = criteria.storyDrift().orElseThrow().value().toMetres();
    List<Grid.Floor> floors = grid.floors();
    Storey worst = null;
    // below the first floor and above the last one the nearest storey counts
    int lowest = Math.min(grid.floorsUpTo(cell.bottom()), floors.size() - 1);
    for (int i = Math.max(1, lowest); i < floors.size(); i++) {
      Length from = floors.get(i - 1).elevation().value();
      Length to = floors.get(i).elevation().value();
      if (i > 1 && !cell.top().isLongerThan(from)) {
        break;
      }
      Length height = to.minus(from);
      if (height.signum() > 0) {
        double ratio = drift / height.toMetres();
        if (worst == null || ratio > worst.ratio()) {
          worst = new Storey(floors.subList(i - 1, i + 1), height, ratio);
        }
      }
    }
    return Optional.ofNullable(worst);
  }

  /** Clearance and demand. */
  public GlassDrift.Result result() {
    return result;
  }

  /** How the drift at which the glass first touches came about. */
  public Derivation clearDrift() {
    return GlassDrift.CLEAR_DRIFT.explain(
        "clear drift",
        result.clearDrift(),
        Kind.LENGTH,
        mean("side clearance", left(edges), right(edges), "left", "right"),
        mean("top and bottom clearance", below(edges), above(edges), "bottom", "top"),
        size("glass height", cell.glassHeight()),
        size("glass width", cell.glassWidth()));
  }

  private static Derivation size(String name, Length value) {
    return Derivation.computed(name, value, "daylight opening + bites", "conventions of measure");
  }

  private static Derivation mean(
      String name, Given<Length> one, Given<Length> other, String first, String second) {
    return Derivation.computed(
        name,
        mean(one, other),
        Kind.LENGTH,
        "(" + first + " clearance + " + second + " clearance) ÷ 2",
        "closed form",
        Inputs.length(first + " clearance", one),
        Inputs.length(second + " clearance", other));
  }

  /** How the drift the glass must clear came about. */
  public Derivation demand() {
    Given<Double> importance = criteria.glass().importance();
    Given<Quantity> factor =
        new Given<>(
            Quantity.ofSi(importance.value(), Kind.RATIO),
            importance.origin(),
            importance.assumed(),
            importance.source());
    return GlassDrift.DEMAND.explain(
        "drift to clear",
        result.demand(),
        Kind.LENGTH,
        Inputs.quantity("importance factor", factor, Kind.RATIO),
        drift());
  }

  private Derivation drift() {
    Derivation height = size("glass height", cell.glassHeight());
    if (criteria.storyDriftRatio().isPresent()) {
      Given<Double> ratio = criteria.storyDriftRatio().get();
      return Derivation.computed(
          "drift",
          result.input().drift(),
          Kind.LENGTH,
          "story drift × glass height",
          "closed form",
          Derivation.stated(
              "story drift", Quantity.ofSi(ratio.value(), Kind.RATIO), Kind.RATIO, ratio.origin()),
          height);
    }
    return Derivation.computed(
        "drift",
        result.input().drift(),
        Kind.LENGTH,
        "story drift × glass height ÷ storey height",
        "closed form, storey " + storey.name(),
        Inputs.length("story drift", criteria.storyDrift().orElseThrow()),
        height,
        Derivation.computed(
            "storey height", storey.height(), "floor to floor", "conventions of measure"));
  }

  /** The profiles whose clearances count. */
  public List<Part.Profile> profiles() {
    return List.of(
        edges.leftProfile(), edges.rightProfile(), edges.belowProfile(), edges.aboveProfile());
  }
}
