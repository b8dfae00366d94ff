package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import mullwright.derivation.Derivation;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.VerticalPiece;
import mullwright.model.Part;

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
    return analysis.bendingOf(piece);
  }

  /** How the moments of a length's checks came about. */
  public static BendingTrace trace(VerticalRun run, BendingCheck check) {
    return new BendingTrace() {
      @Override
      public Derivation strong(String name, double moment) {
        return RunTrace.moment(run, check.peak(), name, moment);
      }

      @Override
      public Derivation weak(String name, double moment) {
        throw new IllegalStateException("a vertical bears no weight across itself");
      }
    };
  }

  /** The checks of every length of a run, from below; equal runs are gone through once. */
  static List<List<BendingCheck>> of(WallAnalysis analysis, VerticalRun run) {
    if (run.standing().isEmpty()) {
      return run.pieces().stream().map(piece -> List.<BendingCheck>of()).toList();
    }
    double[] rows = rows(analysis, run);
    return run.standing()
        .get()
        .bending(
            new Key(run.pieces().stream().map(VerticalPiece::profile).toList(), run.bars(), rows),
            () -> run.pieces().stream().map(piece -> checks(analysis, run, piece, rows)).toList());
  }

  /** What beside the beam itself decides the checks of a run. */
  record Key(List<Part.Profile> profiles, List<RunBar> bars, double[] rows) {
    /** Profiles and bars of one catalog are the same objects until it is edited. */
    boolean same(Key other) {
      boolean same =
          profiles.size() == other.profiles.size()
              && bars.size() == other.bars.size()
              && Arrays.equals(rows, other.rows);
      for (int i = 0; same && i < profiles.size(); i++) {
        same = profiles.get(i) == other.profiles.get(i);
      }
      for (int i = 0; same && i < bars.size(); i++) {
        same =
            bars.get(i).part() == other.bars.get(i).part()
                && bars.get(i).from() == other.bars.get(i).from()
                && bars.get(i).to() == other.bars.get(i).to();
      }
      return same;
    }
  }

  private static List<BendingCheck> checks(
      WallAnalysis analysis, VerticalRun run, VerticalPiece piece, double[] rows) {
    List<BendingCheck> checks = new ArrayList<>();
    SolvedBeam beam = run.standing().orElseThrow();
    double from = RunBuilder.from(analysis.layout(), piece);
    double to = RunBuilder.to(analysis.layout(), piece);
    TreeSet<Double> breaks = new TreeSet<>(List.of(from, to));
    run.supports().forEach(support -> inside(support.y(), from, to, breaks));
    for (RunBar bar : run.bars()) {
      inside(bar.from(), from, to, breaks);
      inside(bar.to(), from, to, breaks);
    }
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
    return List.copyOf(checks);
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
    return new Bending(piece.profile(), peak, bars, 0, unbraced, braces).checks();
  }

  /** Heights of the horizontals that end on a run, with its own ends [m], ascending. */
  private static double[] rows(WallAnalysis analysis, VerticalRun run) {
    int line = run.pieces().get(0).line();
    List<HorizontalPiece> ending = analysis.horizontalsOn(line);
    double[] heights = new double[ending.size() + 2];
    for (int i = 0; i < ending.size(); i++) {
      HorizontalPiece horizontal = ending.get(i);
      heights[i] =
          (horizontal.rightLine() == line ? horizontal.yRight() : horizontal.yLeft()).toMetres();
    }
    heights[ending.size()] = run.pieces().get(0).bottom().toMetres();
    heights[ending.size() + 1] = run.pieces().get(run.pieces().size() - 1).top().toMetres();
    Arrays.sort(heights);
    return heights;
  }

  /** The widest space between braces that reaches into a stretch. */
  private static double widestGap(double[] places, double low, double high) {
    double widest = 0;
    for (int i = 1; i < places.length; i++) {
      if (places[i - 1] < high && places[i] > low) {
        widest = Math.max(widest, places[i] - places[i - 1]);
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
