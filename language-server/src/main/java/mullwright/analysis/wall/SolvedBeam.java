package mullwright.analysis.wall;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import mullwright.analysis.beam.BeamAnswer;
import mullwright.analysis.beam.BeamResponse;
import mullwright.analysis.beam.Extremes;
import mullwright.quantity.Ascending;

/**
 * A beam that was solved, with the peaks rules ask of it again and again: each is sought once,
 * however many equal members of however many walls ask.
 *
 * <p>Safe for use by several threads; what it answers never changes.
 */
public final class SolvedBeam {
  private final BeamAnswer answer;
  private final List<BeamResponse> responses;
  private final List<List<BeamResponse.Reaction>> reactions;
  private final Map<Reach, Peak> sags = new ConcurrentHashMap<>();
  private final Map<Reach, Peak> lines = new ConcurrentHashMap<>();
  private final Map<Reach, Peaks> moments = new ConcurrentHashMap<>();

  private volatile Bent bent;

  /** The deflection asked for last: equal horizontals all ask for the same. */
  private volatile Sag last;

  private record Sag(double from, double to, Peak peak) {}

  /** The checks of bending asked for last. */
  private record Bent(VerticalBending.Key key, List<List<BendingCheck>> checks) {}

  private record Reach(double from, double to) {
    @Override
    public boolean equals(Object other) {
      return other instanceof Reach same
          && Double.compare(from, same.from) == 0
          && Double.compare(to, same.to) == 0;
    }

    @Override
    public int hashCode() {
      return Double.hashCode(from) * 31 + Double.hashCode(to);
    }
  }

  /**
   * The value of one case at one place.
   *
   * @param at place [m]
   * @param value in the unit of what was asked for
   * @param response the case that governs
   */
  public record Peak(double at, double value, BeamResponse response) {
    private static Peak of(Extremes.Extreme extreme, BeamResponse response) {
      return new Peak(extreme.at(), extreme.value(), response);
    }

    /** Magnitude of the value. */
    public double size() {
      return Math.abs(value);
    }
  }

  /** The greatest and the least value of all cases. */
  public record Peaks(Peak greatest, Peak least) {
    /** The one of greater magnitude. */
    public Peak largest() {
      return least.size() > greatest.size() ? least : greatest;
    }
  }

  SolvedBeam(BeamAnswer answer) {
    this.answer = answer;
    this.responses =
        answer instanceof BeamAnswer.Solved solved ? solved.responses() : List.<BeamResponse>of();
    this.reactions = responses.stream().map(BeamResponse::reactions).toList();
  }

  /** What the method answers. */
  public BeamAnswer answer() {
    return answer;
  }

  /** One for each case, in the order of the problem; none if the beam does not stand. */
  public List<BeamResponse> responses() {
    return responses;
  }

  /** True if it stands. */
  public boolean stands() {
    return !responses.isEmpty();
  }

  /**
   * The largest deflection [m] off the chord between two places of a beam that stands, of all
   * cases.
   */
  public Peak sag(double from, double to) {
    Sag known = last;
    if (known == null || known.from != from || known.to != to) {
      Peak peak =
          sags.computeIfAbsent(
              new Reach(from, to), reach -> worst(response -> response.sags(from, to).largest()));
      known = new Sag(from, to, peak);
      last = known;
    }
    return known.peak;
  }

  /**
   * How far [m] an end beyond its last support leaves the tangent there, of all cases.
   *
   * <p>The turning of the whole member at its last support is the neighbouring span's, not the
   * end's: an inch beyond a clip would else trip where nothing bends.
   */
  public Peak offTheTangent(double support, double tip) {
    return lines.computeIfAbsent(
        new Reach(support, tip),
        reach ->
            worst(
                response -> {
                  double straight =
                      response.deflectionAt(support) + response.slopeAt(support) * (tip - support);
                  return new Extremes.Extreme(tip, response.deflectionAt(tip) - straight);
                }));
  }

  /** The extreme moments [N·m] between two places of a beam that stands, of all cases. */
  public Peaks moments(double from, double to) {
    return moments.computeIfAbsent(
        new Reach(from, to),
        reach -> {
          Peak greatest = null;
          Peak least = null;
          for (BeamResponse response : responses) {
            Extremes found = response.moments(from, to);
            greatest = higher(greatest, Peak.of(found.greatest(), response), Peak::value);
            least = higher(least, Peak.of(found.least(), response), peak -> -peak.value());
          }
          return new Peaks(greatest, least);
        });
  }

  /** The extreme reactions [N] of a support, of all cases; both 0 where none stands. */
  public Peaks reactions(double at) {
    Peak greatest = null;
    Peak least = null;
    for (int i = 0; i < responses.size(); i++) {
      Peak here = new Peak(at, reaction(reactions.get(i), at), responses.get(i));
      greatest = higher(greatest, here, Peak::value);
      least = higher(least, here, peak -> -peak.value());
    }
    return new Peaks(greatest, least);
  }

  /** Checks of bending, gone through anew only where what decides them has changed. */
  List<List<BendingCheck>> bending(
      VerticalBending.Key key, Supplier<List<List<BendingCheck>>> checks) {
    Bent known = bent;
    if (known == null || !known.key.same(key)) {
      known = new Bent(key, checks.get());
      bent = known;
    }
    return known.checks;
  }

  /** The largest shear [N] just after a place, of all cases. */
  public Peak shear(double at) {
    Peak worst = null;
    for (BeamResponse response : responses) {
      Peak here = new Peak(at, response.shearAt(at), response);
      worst = higher(worst, here, Peak::size);
    }
    return worst;
  }

  private static double reaction(List<BeamResponse.Reaction> reactions, double at) {
    // from below, as the supports of the beam
    int here =
        Ascending.leading(
            reactions.size(), i -> at - reactions.get(i).at() >= RunSupport.SAME_HEIGHT);
    return here < reactions.size()
            && Math.abs(reactions.get(here).at() - at) < RunSupport.SAME_HEIGHT
        ? reactions.get(here).force()
        : 0;
  }

  private Peak worst(java.util.function.Function<BeamResponse, Extremes.Extreme> sought) {
    Peak worst = null;
    for (BeamResponse response : responses) {
      worst = higher(worst, Peak.of(sought.apply(response), response), Peak::size);
    }
    return worst;
  }

  // the first of equal ones, so that the order of the cases decides
  private static Peak higher(Peak one, Peak other, ToDoubleFunction<Peak> by) {
    return one == null || Double.compare(by.applyAsDouble(other), by.applyAsDouble(one)) > 0
        ? other
        : one;
  }
}
