package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.analysis.beam.HingedBeam;
import mullwright.analysis.beam.TributaryLoad;
import mullwright.derivation.Derivation;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;

/** Tells how the numbers of a vertical's beam came about. Made when asked for. */
public final class RunTrace {
  private static final String MEASURES = "conventions of measure";

  private RunTrace() {}

  /** A moment of a run at a place and in a case. */
  public static Derivation moment(
      VerticalRun run, SolvedBeam.Peak peak, String name, double moment) {
    return HingedBeam.METHOD.explain(
        name, moment, Kind.MOMENT, inputs(run, peak, "height of the moment"));
  }

  /** The largest deflection of a span. */
  public static Derivation deflection(SpanDeflection span) {
    return HingedBeam.METHOD.explain(
        "deflection",
        span.deflection(),
        Kind.LENGTH,
        inputs(span.run(), span.sag(), "height of the greatest deflection"));
  }

  /** The deflection of an edge of glass off the line between its ends. */
  public static Derivation edge(VerticalRun run, EdgeDeflection edge) {
    return HingedBeam.METHOD.explain(
        "deflection",
        edge.sag().size(),
        Kind.LENGTH,
        inputs(run, edge.sag(), "height of the greatest deflection"));
  }

  /** A reaction of a run at a support. */
  public static Derivation reaction(VerticalRun run, SolvedBeam.Peak peak, String name) {
    return HingedBeam.METHOD.explain(
        name, peak.size(), Kind.FORCE, inputs(run, peak, "height of the support"));
  }

  /** The shear through the sleeve of a splice. */
  public static Derivation shear(VerticalRun run, SolvedBeam.Peak peak) {
    return HingedBeam.METHOD.explain(
        "shear through the sleeve",
        peak.size(),
        Kind.FORCE,
        inputs(run, peak, "height of the splice"));
  }

  private static Derivation[] inputs(VerticalRun run, SolvedBeam.Peak peak, String place) {
    List<Derivation> inputs = new ArrayList<>();
    inputs.add(
        Derivation.computed(
            place, Length.nearest(peak.at()), "above the project's datum", MEASURES));
    span(run, peak.at()).ifPresent(inputs::add);
    inputs.add(
        Derivation.computed(
            "number of supports",
            run.supports().size(),
            Kind.RATIO,
            "from "
                + run.supports().get(0).name()
                + " to "
                + run.supports().get(run.supports().size() - 1).name(),
            "the wall's anchors"));
    if (!run.splices().isEmpty()) {
      inputs.add(
          Derivation.computed(
              "number of splices",
              run.splices().size(),
              Kind.RATIO,
              "each a hinge",
              "common practice"));
    }
    lineLoad(run, peak).forEach(inputs::add);
    return inputs.toArray(Derivation[]::new);
  }

  /** The span a place is in, unless it is beyond the last support. */
  private static Optional<Derivation> span(VerticalRun run, double y) {
    for (int i = 1; i < run.supports().size(); i++) {
      RunSupport below = run.supports().get(i - 1);
      RunSupport above = run.supports().get(i);
      if (below.y() <= y && y <= above.y()) {
        return Optional.of(
            Derivation.computed(
                "span there",
                Length.nearest(above.y() - below.y()),
                "from " + below.name() + " to " + above.name(),
                MEASURES));
      }
    }
    return Optional.empty();
  }

  /** The line load where the peak is, if the case has wind in it. */
  private static List<Derivation> lineLoad(VerticalRun run, SolvedBeam.Peak peak) {
    List<Derivation> found = new ArrayList<>();
    String name = peak.response() == null ? "" : peak.response().name();
    if (name.startsWith("wind")) {
      boolean in = name.startsWith("wind in");
      List<Derivation> sides = new ArrayList<>();
      double sum = 0;
      double y = peak.at();
      StringBuilder formula = new StringBuilder();
      for (Tributary tributary : run.tributaries()) {
        boolean last = y == run.tributaries().get(run.tributaries().size() - 1).to();
        if (tributary.from() <= y && (y < tributary.to() || last && y == tributary.to())) {
          int side = sides.size() / 2 + 1;
          String pressure = "pressure " + side;
          String width = "half bay " + side;
          formula.append(side > 1 ? " + " : "").append(pressure).append(" × ").append(width);
          sides.add(tributary.wind().explain(in, pressure));
          sides.add(
              Derivation.computed(
                  width, tributary.width(), Kind.LENGTH, "½ of the bay beside it", MEASURES));
          sum += in ? tributary.in() : tributary.out();
        }
      }
      if (!sides.isEmpty()) {
        found.add(
            Derivation.computed(
                "line load there",
                sum,
                Kind.FORCE_PER_LENGTH,
                formula.toString(),
                TributaryLoad.LINE_LOAD.source(),
                sides.toArray(Derivation[]::new)));
      }
    }
    boolean brackets = name.contains("brackets");
    for (RunPoint point : run.points()) {
      if (brackets && point.byBracket()) {
        found.add(point("force of the " + point.name(), Math.abs(point.bracket())));
        if (point.couple() != 0) {
          found.add(
              Derivation.computed(
                  "turning of the " + point.name(),
                  Math.abs(point.couple()),
                  Kind.MOMENT,
                  "weight × arm",
                  "statics"));
        }
      } else if (!point.byBracket() && name.startsWith("wind")) {
        double force = name.startsWith("wind in") ? point.in() : point.out();
        found.add(point("force by " + point.name(), Math.abs(force)));
      }
    }
    return found;
  }

  private static Derivation point(String name, double newtons) {
    return Derivation.computed(name, newtons, Kind.FORCE, "acts at one place", "statics");
  }
}
