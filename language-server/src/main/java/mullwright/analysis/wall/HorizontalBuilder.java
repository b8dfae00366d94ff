package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.layout.Cell;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.WallLayout;
import mullwright.model.Given;
import mullwright.model.Grid;
import mullwright.model.Part;
import mullwright.quantity.Quantity;

/** Makes the beams of a wall's horizontals. */
final class HorizontalBuilder {
  private static final HorizontalBeams NOT_CHECKED =
      new HorizontalBeams(Optional.empty(), Optional.empty());

  private final WallLayout layout;
  private final CellWind wind;
  private final CellWeight weights;
  private final LineCentres centres;
  private final BeamMemory memory;

  /** By row, then by bay: the cell over the row, and the cell under it; -1 for none. */
  private final int[][] over;

  private final int[][] under;

  HorizontalBuilder(
      WallLayout layout,
      CellWind wind,
      CellWeight weights,
      LineCentres centres,
      BeamMemory memory) {
    this.layout = layout;
    this.wind = wind;
    this.weights = weights;
    this.centres = centres;
    this.memory = memory;
    this.over = none();
    this.under = none();
    for (Cell cell : layout.cells()) {
      fill(over, cell.below(), cell);
      fill(under, cell.above(), cell);
    }
  }

  private int[][] none() {
    Grid grid = layout.wall().grid();
    int[][] cells = new int[grid.rows().size()][grid.bays().size()];
    for (int[] row : cells) {
      java.util.Arrays.fill(row, -1);
    }
    return cells;
  }

  private static void fill(int[][] cells, int row, Cell cell) {
    for (int bay = cell.firstBay();
        row >= 0 && row < cells.length && bay <= cell.lastBay();
        bay++) {
      cells[row][bay] = cell.index();
    }
  }

  /** A horizontal with the verticals that lean on it, and those that hold it. */
  HorizontalSpan span(
      HorizontalPiece piece,
      List<HorizontalLoads.Point> points,
      List<Double> held,
      List<Double> propped) {
    List<Integer> above = beside(over, piece);
    List<Integer> below = beside(under, piece);
    double left = centres.of(piece.leftLine());
    double span = centres.of(piece.rightLine()) - left;
    List<HorizontalLoads.Edge> edges = new ArrayList<>(2);
    below.forEach(cell -> edge(cell, false, left, span, edges));
    above.forEach(cell -> edge(cell, true, left, span, edges));
    Part.Profile profile = piece.profile();
    double modulus = Stiffness.modulus(profile.metal().value());
    HorizontalLoads loads =
        new HorizontalLoads(
            span,
            si(profile.ix()) * modulus,
            si(profile.iy()) * modulus,
            DeadWeight.perLength(profile),
            wind.given(),
            edges,
            points,
            held,
            propped);
    boolean level = piece.yLeft().equals(piece.yRight());
    return new HorizontalSpan(
        piece, loads, above, below, level && span > 0 ? memory.solve(loads) : NOT_CHECKED);
  }

  private static double si(Optional<Given<Quantity>> given) {
    return given.map(quantity -> quantity.value().toSi()).orElse(0.0);
  }

  private static List<Integer> beside(int[][] cells, HorizontalPiece piece) {
    List<Integer> found = new ArrayList<>(1);
    for (int bay = piece.firstBay(); bay <= piece.lastBay(); bay++) {
      int cell = cells[piece.row()][bay];
      if (cell >= 0 && (found.isEmpty() || found.get(found.size() - 1) != cell)) {
        found.add(cell);
      }
    }
    return found;
  }

  private void edge(
      int index, boolean above, double start, double span, List<HorizontalLoads.Edge> edges) {
    Cell cell = layout.cells().get(index);
    if (cell.opening().filter(o -> o.kind() == Grid.OpeningKind.VOID).isPresent()) {
      return;
    }
    double from = Math.max(0, centres.left(cell) - start);
    double to = Math.min(span, centres.right(cell) - start);
    double height = height(cell);
    if (from < to && height > 0) {
      double quarter = cell.glassWidth().toMetres() / 4;
      double middle = (from + to) / 2;
      edges.add(
          new HorizontalLoads.Edge(
              above,
              from,
              to,
              height,
              wind.on(index),
              above ? weights.of(index) : 0,
              Math.max(from, middle - quarter),
              Math.min(to, middle + quarter)));
    }
  }

  /** Centre to centre of the rows round a cell [m]; its daylight where one slopes. */
  private double height(Cell cell) {
    List<Grid.Row> rows = layout.wall().grid().rows();
    boolean level =
        cell.below() >= 0
            && cell.above() >= 0
            && cell.above() < rows.size()
            && !rows.get(cell.below()).slopes()
            && !rows.get(cell.above()).slopes();
    return level
        ? rows.get(cell.above()).left().elevation().toMetres()
            - rows.get(cell.below()).left().elevation().toMetres()
        : cell.daylightHeight().toMetres();
  }
}
