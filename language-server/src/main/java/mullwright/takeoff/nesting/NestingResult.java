package mullwright.takeoff.nesting;

import java.util.List;

/** What came of a {@link NestingProblem}: a plan with its bound, or the reason there is none. */
public sealed interface NestingResult {

  /**
   * A valid plan and how good it is known to be.
   *
   * @param bars the plan; equal bars stand together
   * @param cost total cost of the bars
   * @param lowerBound no plan costs less than this
   * @param proof what {@code lowerBound} rests on
   * @param certificate by which anyone can check that no plan costs less than {@code lowerBound}
   * @param search what was exhausted when the proof is by search, else empty
   * @param work units of work done
   * @param clock true if the search was ended by the clock, so that another machine may find more
   */
  record Planned(
      List<Bar> bars,
      long cost,
      long lowerBound,
      Proof proof,
      Certificate certificate,
      String search,
      long work,
      boolean clock)
      implements NestingResult {
    public Planned {
      bars = List.copyOf(bars);
    }

    /** True if no plan can cost less. */
    public boolean proved() {
      return cost == lowerBound;
    }
  }

  /**
   * No plan.
   *
   * @param reason why, with what to change
   */
  record Refused(Refusal reason) implements NestingResult {}

  /** What a lower bound rests on. */
  enum Proof {
    /** The certificate's prices alone. */
    PRICES,
    /** The certificate's prices and its search of the plans they leave possible. */
    SEARCH
  }

  /**
   * One bar of the plan.
   *
   * <p>{@code sum of cut lengths + kerf + 2 * trim + drop} is the stock length, exactly.
   *
   * @param stock index in {@link NestingProblem#stocks()}
   * @param cuts the pieces in the order they lie on the bar, longest first
   * @param kerf length turned to chips on this bar, trimming cuts not counted
   * @param drop length left over before the trimmed far end
   */
  record Bar(int stock, List<Cut> cuts, long kerf, long drop) {
    public Bar {
      cuts = List.copyOf(cuts);
    }
  }

  /**
   * One piece on a bar.
   *
   * @param part index in {@link NestingProblem#parts()}
   * @param position distance from the bar's untrimmed end to the start of the piece
   */
  record Cut(int part, long position) {}
}
