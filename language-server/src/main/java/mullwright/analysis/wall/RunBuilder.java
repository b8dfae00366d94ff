package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import mullwright.analysis.beam.Beam;
import mullwright.analysis.beam.BeamLoad;
import mullwright.analysis.beam.BeamProblem;
import mullwright.analysis.beam.LoadCase;
import mullwright.layout.Cell;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.SpliceJoint;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.model.AnchorUse;
import mullwright.model.Grid;
import mullwright.model.Members;
import mullwright.model.Part;
import mullwright.quantity.Length;

/** Makes the beams of a wall's verticals. */
final class RunBuilder {
  /** Two supports nearer than this are one. */
  private static final double SAME_HEIGHT = 1e-4;

  private final WallLayout layout;
  private final WindOnWall wind;
  private final BeamMemory memory;
  private final List<List<PlacedAnchor>> anchorsOfPiece;
  private final List<List<Cell>> cellsOfLine;
  private final List<List<HorizontalPiece>> throughOfLine;

  RunBuilder(WallLayout layout, BeamMemory memory) {
    this.layout = layout;
    this.memory = memory;
    this.wind = new WindOnWall(layout.wall());
    this.anchorsOfPiece = lists(layout.verticals().size());
    for (PlacedAnchor anchor : layout.anchors()) {
      if (anchor.vertical() >= 0) {
        anchorsOfPiece.get(anchor.vertical()).add(anchor);
      }
    }
    Grid grid = layout.wall().grid();
    this.cellsOfLine = lists(grid.lines().size());
    for (Cell cell : layout.cells()) {
      cellsOfLine.get(grid.bays().get(cell.firstBay()).left()).add(cell);
      cellsOfLine.get(grid.bays().get(cell.lastBay()).right()).add(cell);
    }
    this.throughOfLine = lists(grid.lines().size());
    for (HorizontalPiece horizontal : layout.horizontals()) {
      for (int line = horizontal.leftLine() + 1; line < horizontal.rightLine(); line++) {
        throughOfLine.get(line).add(horizontal);
      }
    }
  }

  private static <T> List<List<T>> lists(int count) {
    List<List<T>> lists = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      lists.add(new ArrayList<>());
    }
    return lists;
  }

  /** The runs, by line, then from below. */
  List<VerticalRun> runs() {
    List<VerticalRun> runs = new ArrayList<>();
    List<VerticalPiece> pieces = new ArrayList<>();
    for (VerticalPiece piece : layout.verticals()) {
      if (!pieces.isEmpty() && piece.spliceBelow() < 0) {
        runs.add(run(pieces));
        pieces = new ArrayList<>();
      }
      pieces.add(piece);
    }
    if (!pieces.isEmpty()) {
      runs.add(run(pieces));
    }
    return runs;
  }

  private VerticalRun run(List<VerticalPiece> pieces) {
    List<SpliceJoint> splices = new ArrayList<>();
    for (VerticalPiece piece : pieces) {
      if (piece.spliceAbove() >= 0) {
        splices.add(layout.splices().get(piece.spliceAbove()));
      }
    }
    List<RunSupport> supports = supports(pieces);
    List<Tributary> tributaries = tributaries(pieces);
    Optional<BeamProblem> problem = problem(pieces, splices, supports, tributaries);
    return new VerticalRun(pieces, splices, supports, tributaries, problem.map(memory::solve));
  }

  private List<RunSupport> supports(List<VerticalPiece> pieces) {
    List<RunSupport> found = new ArrayList<>();
    for (VerticalPiece piece : pieces) {
      for (PlacedAnchor anchor : anchorsOfPiece.get(piece.index())) {
        boolean dead = anchor.use().kind() == AnchorUse.Kind.DEAD_LOAD;
        add(found, new RunSupport(anchor.y().toMetres(), anchor.index(), dead, anchor.name()));
      }
    }
    buttedEnd(pieces.get(0), true).ifPresent(support -> add(found, support));
    buttedEnd(pieces.get(pieces.size() - 1), false).ifPresent(support -> add(found, support));
    found.sort(Comparator.comparingDouble(RunSupport::y));
    return found;
  }

  private static void add(List<RunSupport> found, RunSupport support) {
    for (int i = 0; i < found.size(); i++) {
      RunSupport other = found.get(i);
      if (Math.abs(other.y() - support.y()) < SAME_HEIGHT) {
        if (support.deadLoad() && !other.deadLoad()) {
          found.set(i, support);
        }
        return;
      }
    }
    found.add(support);
  }

  // an end that butts a horizontal running through is held in and out by it
  private Optional<RunSupport> buttedEnd(VerticalPiece piece, boolean lower) {
    Length end = lower ? piece.bottom() : piece.top();
    for (HorizontalPiece horizontal : throughOfLine.get(piece.line())) {
      Length half = horizontal.profile().face().value().half();
      Length edge = lower ? horizontal.yLeft().plus(half) : horizontal.yLeft().minus(half);
      if (Math.abs(edge.minus(end).toMetres()) < SAME_HEIGHT) {
        return Optional.of(new RunSupport(end.toMetres(), -1, false, horizontal.name()));
      }
    }
    return Optional.empty();
  }

  private List<Tributary> tributaries(List<VerticalPiece> pieces) {
    double bottom = pieces.get(0).bottom().toMetres();
    double top = pieces.get(pieces.size() - 1).top().toMetres();
    List<Tributary> found = new ArrayList<>();
    for (Cell cell : cellsOfLine.get(pieces.get(0).line())) {
      boolean open = cell.opening().filter(o -> o.kind() == Grid.OpeningKind.VOID).isPresent();
      double from = Math.max(bottom, rowHeight(cell.below(), cell.bottom()));
      double to = Math.min(top, rowHeight(cell.above(), cell.top()));
      if (!open && from < to) {
        found.add(new Tributary(cell.index(), from, to, width(cell) / 2, wind.on(cell)));
      }
    }
    found.sort(Comparator.comparingDouble(Tributary::from).thenComparingInt(Tributary::cell));
    return found;
  }

  private double rowHeight(int row, Length daylightEdge) {
    List<Grid.Row> rows = layout.wall().grid().rows();
    if (row < 0 || row >= rows.size() || rows.get(row).slopes()) {
      return daylightEdge.toMetres();
    }
    return rows.get(row).left().elevation().toMetres();
  }

  private double width(Cell cell) {
    Grid grid = layout.wall().grid();
    double width = 0;
    for (int bay = cell.firstBay(); bay <= cell.lastBay(); bay++) {
      width += grid.bays().get(bay).width().toMetres();
    }
    return width;
  }

  private Optional<BeamProblem> problem(
      List<VerticalPiece> pieces,
      List<SpliceJoint> splices,
      List<RunSupport> supports,
      List<Tributary> tributaries) {
    if (!wind.given() || tributaries.isEmpty()) {
      return Optional.empty();
    }
    List<Beam.Stretch> stretches = new ArrayList<>();
    for (VerticalPiece piece : pieces) {
      Part.Profile profile = piece.profile();
      if (profile.ix().isEmpty()) {
        return Optional.empty();
      }
      double from =
          piece == pieces.get(0) ? piece.bottom().toMetres() : splice(piece.spliceBelow());
      double to = piece.spliceAbove() < 0 ? piece.top().toMetres() : splice(piece.spliceAbove());
      double rigidity =
          profile.ix().get().value().toSi() * Stiffness.modulus(profile.metal().value());
      stretches.add(new Beam.Stretch(from, to, rigidity));
    }
    double start = stretches.get(0).from();
    double end = stretches.get(stretches.size() - 1).to();
    stretches.addAll(reinforcement(pieces, start, end));
    Beam beam =
        new Beam(
            start,
            end,
            stretches,
            supports.stream().map(s -> Beam.Support.pin(s.y())).toList(),
            splices.stream().map(s -> new Beam.Hinge(s.y().toMetres())).toList());
    List<BeamLoad> in = new ArrayList<>();
    List<BeamLoad> out = new ArrayList<>();
    for (Tributary tributary : tributaries) {
      double from = Math.max(start, tributary.from());
      double to = Math.min(end, tributary.to());
      if (from < to) {
        in.add(BeamLoad.Distributed.uniform(from, to, tributary.in()));
        out.add(BeamLoad.Distributed.uniform(from, to, -tributary.out()));
      }
    }
    return Optional.of(
        new BeamProblem(beam, List.of(new LoadCase("wind in", in), new LoadCase("wind out", out))));
  }

  private double splice(int index) {
    return layout.splices().get(index).y().toMetres();
  }

  private List<Beam.Stretch> reinforcement(List<VerticalPiece> pieces, double start, double end) {
    List<Beam.Stretch> found = new ArrayList<>();
    int line = pieces.get(0).line();
    for (Members.Reinforce reinforce : layout.wall().members().reinforcements()) {
      if (reinforce.line() != line) {
        continue;
      }
      Optional<Part.Reinforcement> part =
          layout.catalog().find(Part.Reinforcement.class, reinforce.part().value());
      double from = reinforce.from().map(h -> h.elevation().toMetres()).orElse(start);
      double to = reinforce.to().map(h -> h.elevation().toMetres()).orElse(end);
      if (part.isEmpty() || part.get().ix().isEmpty()) {
        continue;
      }
      double rigidity =
          part.get().ix().get().value().toSi() * Stiffness.modulus(part.get().metal().value());
      if (Math.max(from, start) < Math.min(to, end)) {
        found.add(new Beam.Stretch(Math.max(from, start), Math.min(to, end), rigidity));
      }
    }
    return found;
  }
}
