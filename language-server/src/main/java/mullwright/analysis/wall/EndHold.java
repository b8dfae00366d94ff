package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.List;
import mullwright.derivation.Derivation;
import mullwright.layout.VerticalPiece;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;

/**
 * How far an end of a vertical stands beyond the support nearest to it.
 *
 * @param piece the length that has the end
 * @param lower true for the lower end
 * @param end its height [m]
 * @param support the support nearest to it
 * @param span from that support to the next [m]
 */
public record EndHold(
    VerticalPiece piece, boolean lower, double end, RunSupport support, double span) {
  /** Share of the adjacent span an end may stand beyond its support (common practice). */
  public static final double GREATEST_SHARE = 0.25;

  private static final String MEASURES = "conventions of measure";

  /** Both ends of a run, the lower first; none where fewer than two supports hold it. */
  public static List<EndHold> of(VerticalRun run) {
    List<RunSupport> supports = run.supports();
    List<EndHold> ends = new ArrayList<>();
    if (supports.size() < 2) {
      return ends;
    }
    VerticalPiece lowest = run.pieces().get(0);
    VerticalPiece highest = run.pieces().get(run.pieces().size() - 1);
    RunSupport first = supports.get(0);
    RunSupport last = supports.get(supports.size() - 1);
    double firstSpan = supports.get(1).y() - first.y();
    double lastSpan = last.y() - supports.get(supports.size() - 2).y();
    ends.add(new EndHold(lowest, true, lowest.bottom().toMetres(), first, firstSpan));
    ends.add(new EndHold(highest, false, highest.top().toMetres(), last, lastSpan));
    return ends;
  }

  /** How far it stands beyond its support [m], 0 or more. */
  public double overhang() {
    return Math.max(0, lower ? support.y() - end : end - support.y());
  }

  /** True if no support stands within a quarter of the adjacent span. */
  public boolean free() {
    return overhang() > GREATEST_SHARE * span;
  }

  /** {@link #overhang} with how it came about. */
  public Derivation measured() {
    return Derivation.computed(
        "distance from the end to the nearest support",
        Length.nearest(overhang()),
        lower
            ? "height of " + support.name() + " − lower end"
            : "upper end − height of " + support.name(),
        MEASURES);
  }

  /** A quarter of the span. */
  public Derivation limit() {
    return Derivation.computed(
        "greatest distance",
        GREATEST_SHARE * span,
        Kind.LENGTH,
        "0.25 × adjacent span",
        "common practice",
        Derivation.computed(
            "adjacent span", Length.nearest(span), "from that support to the next", MEASURES));
  }
}
