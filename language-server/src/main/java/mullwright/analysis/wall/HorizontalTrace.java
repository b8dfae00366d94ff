package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.List;
import mullwright.analysis.beam.DeadLoadSag;
import mullwright.analysis.beam.HingedBeam;
import mullwright.analysis.beam.TributaryLoad;
import mullwright.derivation.Derivation;
import mullwright.quantity.Kind;

/** Tells how the numbers of a horizontal's beam came about. Made when asked for. */
public final class HorizontalTrace {
  private static final String MEASURES = "conventions of measure";
  private static final String SIMPLE = "simple span under the loads of the lites over and under it";

  private static final String OVER_ITS_SUPPORTS =
      "direct stiffness under what it weighs, the lites on their setting blocks and the verticals"
          + " it bears";

  private HorizontalTrace() {}

  /** One lite on it and nothing under it: then the closed form holds. */
  private static boolean simple(HorizontalSpan span) {
    long lites = span.loads().edges().stream().filter(edge -> edge.weight() > 0).count();
    return lites <= 1
        && span.loads().propped().isEmpty()
        && span.loads().downs().isEmpty()
        && span.loads().edges().stream().allMatch(edge -> inTheMiddle(span, edge));
  }

  // to the tenth of a millimetre that is printed
  private static boolean inTheMiddle(HorizontalSpan span, HorizontalLoads.Edge edge) {
    return edge.weight() == 0
        || Math.abs(edge.leftBlock() + edge.rightBlock() - span.length()) < 1e-4;
  }

  /** A moment by wind at a place and in a case. */
  public static Derivation moment(
      HorizontalSpan span, SolvedBeam.Peak peak, String name, double moment) {
    return Derivation.computed(
        name, moment, Kind.MOMENT, SIMPLE, HingedBeam.METHOD.source(), wind(span, peak));
  }

  /** The deflection by wind. */
  public static Derivation deflection(HorizontalSpan span, SolvedBeam.Peak peak) {
    List<Derivation> inputs = new ArrayList<>(List.of(wind(span, peak)));
    inputs.add(Stiffness.explain(span.piece().profile().metal().value()));
    inputs.add(
        Inputs.quantity(
            "second moment", span.piece().profile().ix().orElseThrow(), Kind.SECOND_MOMENT));
    return Derivation.computed(
        "deflection",
        peak.size(),
        Kind.LENGTH,
        SIMPLE,
        HingedBeam.METHOD.source(),
        inputs.toArray(Derivation[]::new));
  }

  private static Derivation[] wind(HorizontalSpan span, SolvedBeam.Peak peak) {
    List<Derivation> inputs = new ArrayList<>();
    inputs.add(length("length of the span", span));
    boolean in = peak.response().name().startsWith("wind in");
    int over = 0;
    int under = 0;
    for (HorizontalLoads.Edge edge : span.loads().edges()) {
      int which = edge.above() ? ++over : ++under;
      double half = Math.min(edge.to() - edge.from(), edge.other()) / 2;
      inputs.add(
          TributaryLoad.PEAK.explain(
              "peak load of the lite "
                  + (edge.above() ? "over it" : "under it")
                  + (which > 1 ? ", " + which : ""),
              (in ? edge.pressure().in() : edge.pressure().out()) * half,
              Kind.FORCE_PER_LENGTH,
              edge.wind().explain(in, "pressure"),
              size("edge", edge.to() - edge.from()),
              size("other dimension", edge.other())));
    }
    for (HorizontalLoads.Point point : span.loads().points()) {
      inputs.add(
          Derivation.computed(
              "force of the vertical that ends on it",
              Math.abs(in ? point.in() : point.out()),
              Kind.FORCE,
              "its reaction there",
              "statics"));
    }
    return inputs.toArray(Derivation[]::new);
  }

  private static Derivation size(String name, double metres) {
    return Derivation.computed(name, metres, Kind.LENGTH, "centre to centre", MEASURES);
  }

  private static Derivation length(String name, HorizontalSpan span) {
    return Derivation.computed(
        name, span.length(), Kind.LENGTH, "centre to centre of the verticals", MEASURES);
  }

  /** The moment by weight. */
  public static Derivation momentByWeight(HorizontalSpan span, String name, double moment) {
    return Derivation.computed(
        name,
        moment,
        Kind.MOMENT,
        simple(span)
            ? "half glass weight × block distance + own weight × span² ÷ 8"
            : OVER_ITS_SUPPORTS,
        simple(span) ? "closed form" : HingedBeam.METHOD.source(),
        weights(span));
  }

  /** The sag by weight. */
  public static Derivation sag(HorizontalSpan span, double metres) {
    List<Derivation> inputs = new ArrayList<>(List.of(weights(span)));
    inputs.add(Stiffness.explain(span.piece().profile().metal().value()));
    inputs.add(
        Inputs.quantity(
            "second moment", span.piece().profile().iy().orElseThrow(), Kind.SECOND_MOMENT));
    return Derivation.computed(
        "sag",
        metres,
        Kind.LENGTH,
        simple(span)
            ? "half glass weight × block distance × (3 × span² − 4 × block distance²)"
                + " ÷ (24 × modulus × second moment)"
                + " + 5 × own weight × span⁴ ÷ (384 × modulus × second moment)"
            : OVER_ITS_SUPPORTS,
        simple(span) ? DeadLoadSag.GLASS.source() : HingedBeam.METHOD.source(),
        inputs.toArray(Derivation[]::new));
  }

  private static Derivation[] weights(HorizontalSpan span) {
    List<Derivation> inputs = new ArrayList<>();
    inputs.add(length("span", span));
    int lite = 0;
    for (HorizontalLoads.Edge edge : span.loads().edges()) {
      if (edge.above() && edge.weight() > 0) {
        String which = ++lite > 1 ? ", lite " + lite : "";
        inputs.add(
            Derivation.computed(
                "half glass weight" + which,
                edge.weight() / 2,
                Kind.FORCE,
                "½ × weight of the lite that stands on it",
                "EN 572-1, 2500 kg/m³"));
        inputs.add(
            Derivation.computed(
                "block distance" + which,
                edge.leftBlock(),
                Kind.LENGTH,
                "setting block at the quarter point of the glass, from the left vertical",
                "flat-glass trade handbook, from memory"));
        if (!simple(span)) {
          inputs.add(
              Derivation.computed(
                  "distance of the other block" + which,
                  edge.rightBlock(),
                  Kind.LENGTH,
                  "setting block at the other quarter point, from the left vertical",
                  "flat-glass trade handbook, from memory"));
        }
      }
    }
    for (HorizontalLoads.Down down : span.loads().downs()) {
      String vertical =
          "weight of the vertical that " + (down.standing() ? "stands on" : "hangs from");
      inputs.add(
          Derivation.computed(
              vertical + " it",
              down.newtons(),
              Kind.FORCE,
              "its own and what hangs on it",
              "statics"));
    }
    inputs.add(
        Derivation.computed(
            "own weight",
            span.loads().ownWeight(),
            Kind.FORCE_PER_LENGTH,
            "mass per length × 9.80665 m/s²",
            "the catalog"));
    return inputs.toArray(Derivation[]::new);
  }
}
