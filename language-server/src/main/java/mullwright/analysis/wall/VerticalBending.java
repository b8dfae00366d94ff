package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import mullwright.derivation.Derivation;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.VerticalPiece;

/**
 * Bending of a length of vertical, stretch by stretch between its supports, joints and the ends of
 * its reinforcement, each way held against everything it may be held against.
 *
 * <p>Unbraced lengths: the outer flange is held sideways by the horizontals that end on it, the
 * inner one by its anchors only (common practice, on the safe side).
 */
public final class VerticalBending {
  private VerticalBending() {}

  /** All checks of a length; none if its run was not solved or its catalog states too little. */
  public static List<BendingCheck> of(WallAnalysis analysis, VerticalPiece piece) {
    VerticalRun run = analysis.runOf(piece);
    List<BendingCheck> checks = new ArrayList<>();
    if (run.standing().isEmpty()) {
      return checks;
    }
    SolvedBeam beam = run.standing().get();
    double from = RunBuilder.from(analysis.layout(), piece);
    double to = RunBuilder.to(analysis.layout(), piece);
    TreeSet<Double> breaks = new TreeSet<>(List.of(from, to));
    run.supports().forEach(support -> inside(support.y(), from, to, breaks));
    for (RunBar bar : run.bars()) {
      inside(bar.from(), from, to, breaks);
      inside(bar.to(), from, to, breaks);
    }
    List<Double> rows = rows(analysis, run);
    double low = from;
    for (double high : breaks.tailSet(from, false)) {
      SolvedBeam.Peaks peaks = beam.moments(low, high);
      if (peaks.greatest().value() > 0) {
        double gap = widestGap(rows, low, high);
        checks.addAll(
            bending(run, piece, peaks.greatest(), low, high, gap, "from horizontal to horizontal"));
      }
      if (peaks.least().value() < 0) {
        double gap = span(run, low, high);
        checks.addAll(bending(run, piece, peaks.least(), low, high, gap, "from anchor to anchor"));
      }
      low = high;
    }
    return checks;
  }

  private static void inside(double y, double from, double to, TreeSet<Double> breaks) {
    if (y > from && y < to) {
      breaks.add(y);
    }
  }

  private static List<BendingCheck> bending(
      VerticalRun run,
      VerticalPiece piece,
      SolvedBeam.Peak peak,
      double low,
      double high,
      double unbraced,
      String braces) {
    double middle = (low + high) / 2;
    List<RunBar> bars =
        run.bars().stream().filter(bar -> bar.from() < middle && middle < bar.to()).toList();
    BendingTrace trace =
        new BendingTrace() {
          @Override
          public Derivation strong(String name, double moment) {
            return RunTrace.moment(run, peak, name, moment);
          }

          @Override
          public Derivation weak(String name, double moment) {
            throw new IllegalStateException("a vertical bears no weight across itself");
          }
        };
    return new Bending(piece.profile(), peak, bars, 0, unbraced, braces, trace).checks();
  }

  /** Heights of the horizontals that end on a run, with its own ends [m], ascending. */
  private static List<Double> rows(WallAnalysis analysis, VerticalRun run) {
    TreeSet<Double> heights = new TreeSet<>();
    int line = run.pieces().get(0).line();
    for (HorizontalPiece horizontal : analysis.horizontalsOn(line)) {
      boolean ends = horizontal.rightLine() == line;
      heights.add((ends ? horizontal.yRight() : horizontal.yLeft()).toMetres());
    }
    heights.add(run.pieces().get(0).bottom().toMetres());
    heights.add(run.pieces().get(run.pieces().size() - 1).top().toMetres());
    return List.copyOf(heights);
  }

  /** The widest space between braces that reaches into a stretch. */
  private static double widestGap(List<Double> places, double low, double high) {
    double widest = 0;
    for (int i = 1; i < places.size(); i++) {
      if (places.get(i - 1) < high && places.get(i) > low) {
        widest = Math.max(widest, places.get(i) - places.get(i - 1));
      }
    }
    return widest;
  }

  /** Between the supports round a stretch, or from the last one to the end of the run. */
  private static double span(VerticalRun run, double low, double high) {
    double below = run.pieces().get(0).bottom().toMetres();
    double above = run.pieces().get(run.pieces().size() - 1).top().toMetres();
    double middle = (low + high) / 2;
    for (RunSupport support : run.supports()) {
      below = support.y() < middle ? Math.max(below, support.y()) : below;
      above = support.y() > middle ? Math.min(above, support.y()) : above;
    }
    return above - below;
  }
}
