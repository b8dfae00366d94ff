package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import mullwright.analysis.beam.Beam;
import mullwright.analysis.beam.BeamLoad;
import mullwright.analysis.beam.BeamProblem;
import mullwright.analysis.beam.HingedBeam;
import mullwright.analysis.beam.LoadCase;
import mullwright.analysis.beam.TributaryLoad;
import mullwright.model.Part;

/**
 * What a horizontal answers: about its strong axis to wind on the lites beside it, parted at 45°;
 * about its weak axis to the weight of what stands on it, at the setting blocks, and its own.
 *
 * <p>Wind: the cases {@code wind in} and {@code wind out}; empty if no wind is given, nothing loads
 * it or its profile states no second moment. Weight: the case {@code weight}, positive down; empty
 * without a second moment in the plane of the wall.
 */
final class HorizontalBeams {
  private final Optional<SolvedBeam> wind;
  private final Optional<SolvedBeam> weight;
  private volatile Bent bent;

  /** The checks of bending asked for last; profiles are the same objects until they are edited. */
  private record Bent(Part.Profile profile, List<BendingCheck> checks) {}

  HorizontalBeams(Optional<SolvedBeam> wind, Optional<SolvedBeam> weight) {
    this.wind = wind;
    this.weight = weight;
  }

  Optional<SolvedBeam> wind() {
    return wind;
  }

  Optional<SolvedBeam> weight() {
    return weight;
  }

  /** Checks of bending, gone through anew only for another profile. */
  List<BendingCheck> bending(Part.Profile profile, Supplier<List<BendingCheck>> checks) {
    Bent known = bent;
    if (known == null || known.profile != profile) {
      known = new Bent(profile, List.copyOf(checks.get()));
      bent = known;
    }
    return known.checks;
  }

  static HorizontalBeams of(HorizontalLoads loads) {
    return new HorizontalBeams(wind(loads), weight(loads));
  }

  private static Optional<SolvedBeam> wind(HorizontalLoads loads) {
    List<BeamLoad> in = new ArrayList<>();
    List<BeamLoad> out = new ArrayList<>();
    for (HorizontalLoads.Edge edge : loads.edges()) {
      in.addAll(shape(edge, edge.pressure().in()));
      out.addAll(shape(edge, -edge.pressure().out()));
    }
    for (HorizontalLoads.Point point : loads.points()) {
      in.add(new BeamLoad.PointForce(point.at(), point.in()));
      out.add(new BeamLoad.PointForce(point.at(), point.out()));
    }
    boolean bends = loads.windGiven() && loads.strong() > 0 && !in.isEmpty();
    return bends
        ? solve(
            loads.span(),
            loads.strong(),
            loads.held(),
            List.of(new LoadCase("wind in", in), new LoadCase("wind out", out)))
        : Optional.empty();
  }

  private static List<BeamLoad> shape(HorizontalLoads.Edge edge, double pressure) {
    return TributaryLoad.solve(
            new TributaryLoad.Input(pressure, edge.to() - edge.from(), edge.other()))
        .solved()
        .map(shape -> shape.loads(edge.from()))
        .orElse(List.of());
  }

  private static Optional<SolvedBeam> weight(HorizontalLoads loads) {
    if (loads.weak() <= 0) {
      return Optional.empty();
    }
    List<BeamLoad> down = new ArrayList<>();
    down.add(BeamLoad.Distributed.uniform(0, loads.span(), loads.ownWeight()));
    for (HorizontalLoads.Edge edge : loads.edges()) {
      if (edge.weight() > 0) {
        down.add(new BeamLoad.PointForce(edge.leftBlock(), edge.weight() / 2));
        down.add(new BeamLoad.PointForce(edge.rightBlock(), edge.weight() / 2));
      }
    }
    for (HorizontalLoads.Down borne : loads.downs()) {
      down.add(new BeamLoad.PointForce(borne.at(), borne.newtons()));
    }
    return solve(
        loads.span(), loads.weak(), loads.propped(), List.of(new LoadCase("weight", down)));
  }

  private static Optional<SolvedBeam> solve(
      double span, double rigidity, List<Double> between, List<LoadCase> cases) {
    List<Beam.Support> supports = new ArrayList<>();
    supports.add(Beam.Support.pin(0));
    between.forEach(place -> supports.add(Beam.Support.pin(place)));
    supports.add(Beam.Support.pin(span));
    Beam beam = Beam.uniform(0, span, rigidity, supports, List.of());
    return Optional.of(new SolvedBeam(HingedBeam.solve(new BeamProblem(beam, cases))))
        .filter(SolvedBeam::stands);
  }
}
