package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.derivation.Derivation;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.VerticalPiece;
import mullwright.model.Given;
import mullwright.model.Part;
import mullwright.quantity.Kind;
import mullwright.quantity.Quantity;

/**
 * What an anchor carries in one direction, beside the capacity its catalog gives for it, if it
 * does.
 *
 * @param anchor the anchor
 * @param direction {@code down}, {@code in} or {@code out}
 * @param newtons the force at service level [N], more than 0
 * @param capacity as the catalog states it
 * @param peak the reaction that governs, for wind; empty for weight
 */
public record AnchorDemand(
    WallAnalysis analysis,
    PlacedAnchor anchor,
    String direction,
    double newtons,
    Optional<Given<Quantity>> capacity,
    Optional<SolvedBeam.Peak> peak) {

  /** All directions in which it carries anything. */
  public static List<AnchorDemand> all(WallAnalysis analysis, PlacedAnchor anchor) {
    List<AnchorDemand> demands = new ArrayList<>();
    if (anchor.vertical() < 0) {
      return demands;
    }
    VerticalRun run = analysis.runOf(analysis.layout().verticals().get(anchor.vertical()));
    run.standing()
        .map(beam -> beam.reactions(anchor.y().toMetres()))
        .ifPresent(
            peaks -> {
              add(demands, analysis, anchor, "in", peaks.greatest().value(), peaks.greatest());
              add(demands, analysis, anchor, "out", -peaks.least().value(), peaks.least());
            });
    double down = analysis.loadOn(anchor).map(AnchorLoad::down).orElse(0.0);
    add(demands, analysis, anchor, "down", down, null);
    return demands;
  }

  private static void add(
      List<AnchorDemand> demands,
      WallAnalysis analysis,
      PlacedAnchor anchor,
      String direction,
      double newtons,
      SolvedBeam.Peak peak) {
    if (newtons > 0) {
      Optional<Given<Quantity>> capacity =
          anchor
              .part()
              .map(Part.Anchor::capacities)
              .flatMap(given -> Optional.ofNullable(given.get(direction)))
              .filter(given -> given.value().toSi() > 0);
      demands.add(
          new AnchorDemand(
              analysis, anchor, direction, newtons, capacity, Optional.ofNullable(peak)));
    }
  }

  /** True if it carries more than its capacity. */
  public boolean passed() {
    return share() > 1 + 1e-9;
  }

  /** Share of the capacity that is used; more than 1 is over; 0 where none is given. */
  public double share() {
    return capacity.map(given -> newtons / given.value().toSi()).orElse(0.0);
  }

  /** The case that governs. */
  public String loads() {
    return peak.map(reaction -> reaction.response().name()).orElse("weight");
  }

  /** The force with how it came about. */
  public Derivation explain() {
    VerticalPiece piece = analysis.layout().verticals().get(anchor.vertical());
    String name = "force " + direction;
    return peak.map(reaction -> RunTrace.reaction(analysis.runOf(piece), reaction, name))
        .orElseGet(() -> WeightTrace.on(analysis, anchor, name, newtons));
  }

  /** The capacity with where it is stated. */
  public Derivation limit() {
    return Inputs.quantity("capacity " + direction, capacity.orElseThrow(), Kind.FORCE);
  }
}
