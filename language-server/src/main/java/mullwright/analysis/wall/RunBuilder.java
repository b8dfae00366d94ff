package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import mullwright.analysis.beam.Beam;
import mullwright.analysis.beam.BeamAnswer;
import mullwright.analysis.beam.BeamProblem;
import mullwright.analysis.beam.LoadCase;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.RowPieces;
import mullwright.layout.SpliceJoint;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.model.Part;

/**
 * Makes the beams of a wall's verticals and horizontals.
 *
 * <p>Where a vertical ends on a horizontal that runs through, one bears the other in and out. A
 * vertical that stands by itself and ends no more than {@link EndHold#GREATEST_SHARE} of its span
 * beyond its anchor holds the horizontal; any other leans on it, and the horizontal hands its
 * reaction on to the verticals at its ends. What leans is solved before what bears it.
 */
final class RunBuilder {
  private final WallLayout layout;
  private final BeamMemory memory;
  private final RunSupports held;
  private final RunLoads loads;
  private final LineCentres centres;
  private final WeightPath weight;
  private final List<List<VerticalPiece>> runs = new ArrayList<>();
  private final List<List<RunSupport>> supports = new ArrayList<>();

  private final HorizontalBuilder horizontals;

  /** The runs that lean on a horizontal, by the horizontal's index. */
  private final Map<Integer, List<Integer>> borne = new HashMap<>();

  /** The horizontals that runs lean on, by the line they end on. */
  private final Map<Integer, List<HorizontalPiece>> bearing = new HashMap<>();

  /** The ends of runs that hold a horizontal in and out, by the horizontal's index. */
  private final Map<Integer, List<RunEnd>> holding = new HashMap<>();

  /** The horizontals a run holds, by run. */
  private final Map<Integer, List<RunSupport>> heldBy = new HashMap<>();

  private final HorizontalSpan[] spans;
  private final VerticalRun[] solved;
  private final boolean[] begun;

  /** The end of a run, by run. */
  private record RunEnd(int run, int line) {}

  RunBuilder(
      WallLayout layout,
      WindOnWall wind,
      CellWeight weights,
      RunSupports held,
      WeightPath weight,
      LineCentres centres,
      RowPieces rows,
      BeamMemory memory) {
    this.layout = layout;
    this.memory = memory;
    this.centres = centres;
    this.weight = weight;
    this.held = held;
    this.loads = new RunLoads(layout, wind, centres, rows);
    this.horizontals = new HorizontalBuilder(layout, wind, weights, centres, rows, memory);
    List<VerticalPiece> pieces = new ArrayList<>();
    for (VerticalPiece piece : layout.verticals()) {
      if (!pieces.isEmpty() && piece.spliceBelow() < 0) {
        add(pieces);
        pieces = new ArrayList<>();
      }
      pieces.add(piece);
    }
    if (!pieces.isEmpty()) {
      add(pieces);
    }
    this.solved = new VerticalRun[runs.size()];
    this.begun = new boolean[runs.size()];
    this.spans = new HorizontalSpan[layout.horizontals().size()];
  }

  private void add(List<VerticalPiece> pieces) {
    int run = runs.size();
    int line = pieces.get(0).line();
    List<RunSupport> supporting = new ArrayList<>(held.of(pieces));
    for (RunSupport end : List.copyOf(supporting)) {
      if (end.horizontal() < 0) {
        continue;
      }
      if (standsWithout(pieces, supporting, end)) {
        supporting.remove(end);
        holding
            .computeIfAbsent(end.horizontal(), h -> new ArrayList<>())
            .add(new RunEnd(run, line));
        heldBy.computeIfAbsent(run, r -> new ArrayList<>()).add(end);
      } else {
        leans(layout.horizontals().get(end.horizontal()), run);
      }
    }
    runs.add(pieces);
    supports.add(supporting);
  }

  private void leans(HorizontalPiece horizontal, int run) {
    if (!borne.containsKey(horizontal.index())) {
      bearing.computeIfAbsent(horizontal.leftLine(), l -> new ArrayList<>()).add(horizontal);
      bearing.computeIfAbsent(horizontal.rightLine(), l -> new ArrayList<>()).add(horizontal);
    }
    borne.computeIfAbsent(horizontal.index(), h -> new ArrayList<>()).add(run);
  }

  /** True if the run stands without that end, which is a short one beyond its last anchor. */
  private boolean standsWithout(
      List<VerticalPiece> pieces, List<RunSupport> supporting, RunSupport end) {
    List<RunSupport> others = new ArrayList<>(supporting);
    others.remove(end);
    if (others.size() < 2) {
      return false;
    }
    boolean lower = end.y() < others.get(0).y();
    int last = others.size() - 1;
    double near = others.get(lower ? 0 : last).y();
    double next = others.get(lower ? 1 : last - 1).y();
    if (Math.abs(end.y() - near) > EndHold.GREATEST_SHARE * Math.abs(near - next)) {
      return false;
    }
    Beam alone =
        Beam.uniform(
            from(pieces.get(0)),
            to(pieces.get(pieces.size() - 1)),
            1,
            pins(others),
            hinges(pieces));
    return !(memory.solve(new BeamProblem(alone, List.of())).answer()
        instanceof BeamAnswer.Mechanism);
  }

  private List<Beam.Hinge> hinges(List<VerticalPiece> pieces) {
    return pieces.stream()
        .filter(piece -> piece.spliceAbove() >= 0)
        .map(piece -> new Beam.Hinge(to(piece)))
        .toList();
  }

  private static List<Beam.Support> pins(List<RunSupport> supports) {
    return supports.stream().map(s -> Beam.Support.pin(s.y())).toList();
  }

  /** The horizontals as beams, in the order of the layout; after {@link #runs}. */
  List<HorizontalSpan> spans() {
    for (int horizontal = 0; horizontal < spans.length; horizontal++) {
      span(horizontal);
    }
    return List.of(spans);
  }

  private HorizontalSpan span(int index) {
    if (spans[index] != null) {
      return spans[index];
    }
    HorizontalPiece piece = layout.horizontals().get(index);
    double left = centres.of(piece.leftLine());
    List<HorizontalLoads.Point> points = new ArrayList<>();
    for (int run : borne.getOrDefault(index, List.of())) {
      solve(run);
      if (solved[run] != null) {
        SolvedBeam.Peaks end = ending(solved[run], index);
        points.add(
            new HorizontalLoads.Point(
                centres.of(runs.get(run).get(0).line()) - left,
                Math.max(0, end.greatest().value()),
                Math.min(0, end.least().value())));
      }
    }
    Set<Double> between = new TreeSet<>();
    for (var end : holding.getOrDefault(index, List.of())) {
      between.add(centres.of(end.line()) - left);
    }
    List<Double> propped = new ArrayList<>(0);
    for (VerticalPiece vertical : weight.under(piece)) {
      propped.add(centres.of(vertical.line()) - left);
    }
    List<HorizontalLoads.Down> downs = new ArrayList<>(0);
    for (HorizontalWeights.Borne borne : weight.borne(piece)) {
      downs.add(new HorizontalLoads.Down(borne.at(), borne.newtons(), borne.standsOn(piece)));
    }
    spans[index] = horizontals.span(piece, points, List.copyOf(between), propped, downs);
    return spans[index];
  }

  /** The runs, by line, then from below. */
  List<VerticalRun> runs() {
    for (int run = 0; run < runs.size(); run++) {
      solve(run);
    }
    return List.of(solved);
  }

  private void solve(int run) {
    // two that stand on one another cannot be laid out; if they ever are, neither hangs here
    if (begun[run]) {
      return;
    }
    begun[run] = true;
    List<VerticalPiece> pieces = runs.get(run);
    List<SpliceJoint> splices = new ArrayList<>();
    for (VerticalPiece piece : pieces) {
      if (piece.spliceAbove() >= 0) {
        splices.add(layout.splices().get(piece.spliceAbove()));
      }
    }
    List<Tributary> tributaries = loads.tributaries(pieces, supports.get(run));
    List<RunPoint> points = new ArrayList<>(loads.brackets(pieces, splices));
    points.addAll(handedOn(pieces));
    points.addAll(heldUp(run));
    List<Beam.Stretch> stretches = stretches(pieces);
    double start = from(pieces.get(0));
    double end = to(pieces.get(pieces.size() - 1));
    List<RunBar> bars = RunBar.of(layout, pieces.get(0).line(), start, end);
    bars.forEach(bar -> stretches.add(new Beam.Stretch(bar.from(), bar.to(), bar.rigidity())));
    Optional<SolvedBeam> beam = Optional.empty();
    List<LoadCase> cases = loads.cases(tributaries, points, start, end);
    if (stretches.size() == pieces.size() + bars.size() && !cases.isEmpty()) {
      beam =
          Optional.of(
              memory.solve(
                  new BeamProblem(
                      new Beam(start, end, stretches, pins(supports.get(run)), hinges(pieces)),
                      cases)));
    }
    solved[run] =
        new VerticalRun(
            pieces,
            splices,
            supports.get(run),
            heldBy.getOrDefault(run, List.of()),
            tributaries,
            bars,
            points,
            beam);
  }

  /** What the horizontals bring that a run holds with its ends. */
  private List<RunPoint> heldUp(int run) {
    List<RunPoint> found = new ArrayList<>();
    for (RunSupport end : heldBy.getOrDefault(run, List.of())) {
      HorizontalSpan span = span(end.horizontal());
      double at = centres.of(runs.get(run).get(0).line()) - centres.of(span.piece().leftLine());
      span.wind()
          .map(beam -> beam.reactions(at))
          .ifPresent(
              peaks ->
                  found.add(
                      RunPoint.ofHorizontal(
                          end.y(),
                          Math.max(0, peaks.greatest().value()),
                          Math.min(0, peaks.least().value()),
                          end.name())));
    }
    return found;
  }

  /** What horizontals hand on to a run from verticals that end on them. */
  private List<RunPoint> handedOn(List<VerticalPiece> pieces) {
    double bottom = pieces.get(0).bottom().toMetres();
    double top = pieces.get(pieces.size() - 1).top().toMetres();
    int line = pieces.get(0).line();
    List<RunPoint> found = new ArrayList<>();
    for (HorizontalPiece horizontal : bearing.getOrDefault(line, List.of())) {
      double y = horizontal.yLeft().toMetres();
      if (y < bottom || y > top) {
        continue;
      }
      double left = centres.of(horizontal.leftLine());
      double span = centres.of(horizontal.rightLine()) - left;
      for (int run : borne.get(horizontal.index())) {
        solve(run);
        if (solved[run] != null) {
          double along = (centres.of(runs.get(run).get(0).line()) - left) / span;
          double share = line == horizontal.leftLine() ? 1 - along : along;
          SolvedBeam.Peaks end = ending(solved[run], horizontal.index());
          found.add(
              RunPoint.ofHorizontal(
                  y,
                  share * Math.max(0, end.greatest().value()),
                  share * Math.min(0, end.least().value()),
                  horizontal.name()));
        }
      }
    }
    return found;
  }

  /** The reactions of a run at the horizontal its end butts; nothing if it does not stand. */
  static SolvedBeam.Peaks ending(VerticalRun run, int horizontal) {
    SolvedBeam.Peaks none =
        new SolvedBeam.Peaks(new SolvedBeam.Peak(0, 0, null), new SolvedBeam.Peak(0, 0, null));
    return run.supports().stream()
        .filter(support -> support.horizontal() == horizontal)
        .findFirst()
        .flatMap(support -> run.standing().map(beam -> beam.reactions(support.y())))
        .orElse(none);
  }

  /** One for each length whose profile states its second moment. */
  private List<Beam.Stretch> stretches(List<VerticalPiece> pieces) {
    List<Beam.Stretch> stretches = new ArrayList<>();
    for (VerticalPiece piece : pieces) {
      Part.Profile profile = piece.profile();
      profile
          .ix()
          .ifPresent(
              ix ->
                  stretches.add(
                      new Beam.Stretch(
                          from(piece),
                          to(piece),
                          ix.value().toSi() * Stiffness.modulus(profile.metal().value()))));
    }
    return stretches;
  }

  private double from(VerticalPiece piece) {
    return from(layout, piece);
  }

  private double to(VerticalPiece piece) {
    return to(layout, piece);
  }

  /** Lower end of a length in its beam [m]: the centre of the joint, or its own end. */
  static double from(WallLayout layout, VerticalPiece piece) {
    return piece.spliceBelow() < 0
        ? piece.bottom().toMetres()
        : layout.splices().get(piece.spliceBelow()).y().toMetres();
  }

  /** Upper end of a length in its beam [m]. */
  static double to(WallLayout layout, VerticalPiece piece) {
    return piece.spliceAbove() < 0
        ? piece.top().toMetres()
        : layout.splices().get(piece.spliceAbove()).y().toMetres();
  }
}
