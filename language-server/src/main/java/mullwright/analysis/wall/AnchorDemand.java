package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import mullwright.derivation.Derivation;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.VerticalPiece;
import mullwright.model.Given;
import mullwright.model.Part;
import mullwright.quantity.Kind;
import mullwright.quantity.Quantity;

/**
 * What an anchor carries in one direction, beside the capacity its catalog gives for it.
 *
 * @param direction {@code down}, {@code in} or {@code out}
 * @param newtons the force at service level [N], 0 or more
 * @param capacity as the catalog states it
 * @param measured the force with how it came about
 */
public record AnchorDemand(
    String direction, double newtons, Given<Quantity> capacity, Derivation measured) {
  private static final String BEAM = "direct stiffness, splices as hinges (closed form)";

  /** The directions in which it carries more than its capacity; none if nothing was solved. */
  public static List<AnchorDemand> over(WallAnalysis analysis, PlacedAnchor anchor) {
    Optional<AnchorLoad> load = analysis.loadOn(anchor);
    Optional<Part.Anchor> part = anchor.part();
    List<AnchorDemand> demands = new ArrayList<>();
    if (load.isEmpty() || part.isEmpty()) {
      return demands;
    }
    VerticalPiece piece = analysis.layout().verticals().get(anchor.vertical());
    VerticalRun run = analysis.runOf(piece);
    double down = load.get().down();
    double in = load.get().in();
    double out = load.get().out();
    add(demands, part.get(), "down", down, () -> weight(analysis, piece, down));
    add(demands, part.get(), "in", in, () -> wind(run, anchor, "in", in));
    add(demands, part.get(), "out", out, () -> wind(run, anchor, "out", out));
    return demands;
  }

  private static void add(
      List<AnchorDemand> demands,
      Part.Anchor part,
      String direction,
      double newtons,
      Supplier<Derivation> measured) {
    Given<Quantity> capacity = part.capacities().get(direction);
    if (capacity == null || capacity.value().toSi() <= 0) {
      return;
    }
    // how a force came about is written down only where somebody will read it
    if (newtons > capacity.value().toSi()) {
      demands.add(new AnchorDemand(direction, newtons, capacity, measured.get()));
    }
  }

  private static Derivation weight(WallAnalysis analysis, VerticalPiece piece, double newtons) {
    return Derivation.computed(
        "force down",
        newtons,
        Kind.FORCE,
        "weight of the length, shared by its dead-load anchors",
        "statics",
        Derivation.computed(
            "weight of the length",
            analysis.weightOf(piece),
            Kind.FORCE,
            "vertical, half of each horizontal on it, half of what stands on those",
            "statics"));
  }

  private static Derivation wind(
      VerticalRun run, PlacedAnchor anchor, String direction, double newtons) {
    double most = 0;
    double width = 0;
    double y = anchor.y().toMetres();
    for (Tributary tributary : run.tributaries()) {
      boolean in = direction.equals("in");
      double pressure = in ? tributary.pressure().in() : tributary.pressure().out();
      most = Math.max(most, pressure);
      width += tributary.from() <= y && y < tributary.to() ? tributary.width() : 0;
    }
    return Derivation.computed(
        "force " + direction,
        newtons,
        Kind.FORCE,
        "reaction of the vertical under its wind pressures",
        BEAM,
        Derivation.computed(
            "greatest wind pressure " + direction,
            most,
            Kind.PRESSURE,
            "worst zone each lite touches, at service level",
            "the project's criteria"),
        Derivation.computed(
            "width that bears on it",
            width,
            Kind.LENGTH,
            "half the bay on either side",
            "conventions of measure"));
  }

  /** Share of the capacity that is used; more than 1 is over. */
  public double share() {
    return newtons / capacity.value().toSi();
  }

  /** The capacity with where it is stated. */
  public Derivation limit() {
    return Inputs.quantity("capacity " + direction, capacity, Kind.FORCE);
  }
}
