package mullwright.analysis.anchor;

import java.util.List;

/**
 * Whether one continuous length hangs from exactly one dead-load anchor.
 *
 * <p>With none it rests on nothing of its own; with two it cannot grow with heat between them. All
 * other anchors slide along it and hold it in and out only. Source: statics; common practice.
 */
public final class AnchorCount {
  private AnchorCount() {}

  /** What an anchor does along the length. */
  public enum Kind {
    /** Carries weight: it holds along the length as well as in and out. */
    DEAD_LOAD,
    /** Slides along the length: it holds in and out only. */
    WIND_LOAD
  }

  /** What follows from the count. */
  public enum Verdict {
    /** Exactly one dead-load anchor. */
    HANGS_FREE,
    /** No dead-load anchor. */
    UNSUPPORTED,
    /** Two or more dead-load anchors: growth is locked between them. */
    LOCKED
  }

  /**
   * The count.
   *
   * @param deadLoad number of dead-load anchors
   * @param windLoad number of wind-load anchors
   * @param verdict what follows
   */
  public record Result(int deadLoad, int windLoad, Verdict verdict) {}

  /** Counts the anchors of one continuous length. */
  public static Result solve(List<Kind> anchors) {
    int deadLoad = 0;
    for (Kind kind : anchors) {
      deadLoad += kind == Kind.DEAD_LOAD ? 1 : 0;
    }
    Verdict verdict =
        deadLoad == 1 ? Verdict.HANGS_FREE : deadLoad == 0 ? Verdict.UNSUPPORTED : Verdict.LOCKED;
    return new Result(deadLoad, anchors.size() - deadLoad, verdict);
  }
}
