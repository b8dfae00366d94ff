package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.List;
import mullwright.derivation.Derivation;

/**
 * Bending of a horizontal: by wind about its strong axis, by what stands on it about its weak one,
 * both at once.
 *
 * <p>The unbraced length is its span: glass is no brace (on the safe side).
 */
public final class HorizontalBending {
  private HorizontalBending() {}

  /** All checks of a horizontal; none if it was not solved or its catalog states too little. */
  public static List<BendingCheck> of(HorizontalSpan span) {
    return span.beams().bending(span.piece().profile(), () -> checks(span));
  }

  private static List<BendingCheck> checks(HorizontalSpan span) {
    double weak =
        span.weight().map(beam -> beam.moments(0, span.length()).largest().size()).orElse(0.0);
    List<SolvedBeam.Peak> peaks = new ArrayList<>();
    span.wind()
        .ifPresent(
            beam -> {
              SolvedBeam.Peaks both = beam.moments(0, span.length());
              add(both.greatest(), peaks);
              add(both.least(), peaks);
            });
    if (peaks.isEmpty() && span.weight().isPresent()) {
      SolvedBeam.Peak still = span.weight().get().moments(0, span.length()).largest();
      peaks.add(new SolvedBeam.Peak(still.at(), 0, still.response()));
    }
    List<BendingCheck> checks = new ArrayList<>();
    for (SolvedBeam.Peak peak : peaks) {
      checks.addAll(
          new Bending(
                  span.piece().profile(),
                  peak,
                  List.of(),
                  weak,
                  span.length(),
                  "from vertical to vertical")
              .checks());
    }
    return checks;
  }

  private static void add(SolvedBeam.Peak peak, List<SolvedBeam.Peak> peaks) {
    if (peak.value() != 0) {
      peaks.add(peak);
    }
  }

  /** How the moments of a horizontal's checks came about. */
  public static BendingTrace trace(HorizontalSpan span, BendingCheck check) {
    return new BendingTrace() {
      @Override
      public Derivation strong(String name, double moment) {
        return HorizontalTrace.moment(span, check.peak(), name, moment);
      }

      @Override
      public Derivation weak(String name, double moment) {
        return HorizontalTrace.momentByWeight(span, name, moment);
      }
    };
  }
}
