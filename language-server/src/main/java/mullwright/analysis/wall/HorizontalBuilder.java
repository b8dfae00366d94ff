package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import mullwright.layout.Cell;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.RowPieces;
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
  private final WindOnWall wind;
  private final CellWeight weights;
  private final LineCentres centres;
  private final BeamMemory memory;
  private final RowPieces rows;

  /** By row, then by bay: the cell over the row, and the cell under it; -1 for none. */
  private final int[][] over;

  private final int[][] under;

  /** By cell: what it is to a horizontal, in a row; see {@link #CELL}. */
  private final double[][] cells;

  /** By profile: its rigidity both ways and its weight per length. */
  private final Map<Part.Profile, double[]> profiles = new IdentityHashMap<>();

  /** Left, right, height, quarter of the glass, weight, middle of the glass; null for a void. */
  private static final int CELL = 6;

  /** How many numbers a cell puts into the key of a horizontal: its own, its side, two of wind. */
  private static final int KEYED = CELL + 3;

  HorizontalBuilder(
      WallLayout layout,
      WindOnWall wind,
      CellWeight weights,
      LineCentres centres,
      RowPieces rows,
      BeamMemory memory) {
    this.rows = rows;
    this.layout = layout;
    this.wind = wind;
    this.weights = weights;
    this.centres = centres;
    this.memory = memory;
    this.over = none();
    this.under = none();
    this.cells = new double[layout.cells().size()][];
    for (Cell cell : layout.cells()) {
      cells[cell.index()] = numbers(cell);
      fill(over, cell.below(), cell);
      fill(under, cell.above(), cell);
    }
  }

  private int[][] none() {
    Grid grid = layout.wall().grid();
    int[][] cells = new int[grid.rows().size()][grid.bays().size()];
    for (int[] row : cells) {
      Arrays.fill(row, -1);
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

  private double[] numbers(Cell cell) {
    double height = height(cell);
    if (cell.opening().filter(o -> o.kind() == Grid.OpeningKind.VOID).isPresent() || height <= 0) {
      return null;
    }
    return new double[] {
      centres.left(cell),
      centres.right(cell),
      height,
      cell.glassWidth().toMetres() / 4,
      weights.of(cell.index()),
      HorizontalWeights.middle(cell)
    };
  }

  /** A horizontal with the verticals that lean on it, and those that hold it. */
  HorizontalSpan span(
      HorizontalPiece piece,
      List<HorizontalLoads.Point> points,
      List<Double> held,
      List<Double> propped,
      List<HorizontalLoads.Down> downs) {
    double left = centres.of(piece.leftLine());
    double span = centres.of(piece.rightLine()) - left;
    Optional<MemberWind.Strip> strip =
        wind.fromSite() && span > 0 ? Optional.of(strip(piece, left, span)) : Optional.empty();
    Supplier<HorizontalLoads> loads =
        () -> loads(piece, left, span, strip, points, held, propped, downs);
    boolean level = piece.yLeft().equals(piece.yRight());
    double[] row =
        new double
            [4
                + 2 * (piece.lastBay() - piece.firstBay() + 1) * KEYED
                + 3 * points.size()
                + held.size()
                + propped.size()
                + 2 * downs.size()
                + 4];
    double[] bar = profiles.computeIfAbsent(piece.profile(), HorizontalBuilder::numbers);
    row[0] = span;
    System.arraycopy(bar, 0, row, 1, bar.length);
    int at = 4;
    double weight = 0;
    int[][] sides = new int[2][];
    for (int side = 0; side < 2; side++) {
      int last = -1;
      int found = 0;
      int[] there = new int[piece.lastBay() - piece.firstBay() + 1];
      for (int bay = piece.firstBay(); bay <= piece.lastBay(); bay++) {
        int cell = (side == 0 ? under : over)[piece.row()][bay];
        if (cell >= 0 && cell != last && cells[cell] != null) {
          double[] numbers = cells[cell];
          row[at] = side + 1;
          row[at + 1] = numbers[0] - left;
          row[at + 2] = numbers[1] - left;
          System.arraycopy(numbers, 2, row, at + 3, CELL - 2);
          row[at + CELL] -= left;
          WindOnWall.Pressure pressure = wind(cell, strip).pressure();
          row[at + CELL + 1] = pressure.in();
          row[at + CELL + 2] = pressure.out();
          at += KEYED;
          there[found++] = cell;
          weight += side == 1 ? numbers[4] : 0;
        }
        last = cell;
      }
      sides[side] = found == there.length ? there : Arrays.copyOf(there, found);
    }
    for (HorizontalLoads.Point point : points) {
      row[at++] = point.at();
      row[at++] = point.in();
      row[at++] = point.out();
    }
    row[at++] = held.size();
    for (double place : held) {
      row[at++] = place;
    }
    row[at++] = propped.size();
    for (double place : propped) {
      row[at++] = place;
    }
    row[at++] = downs.size();
    double borne = 0;
    for (HorizontalLoads.Down down : downs) {
      row[at++] = down.at();
      row[at++] = down.newtons();
      borne += down.newtons();
    }
    row[at] = wind.given() ? 1 : 0;
    HorizontalBeams beams =
        level && span > 0 ? memory.solve(new HorizontalLoads.Key(row), loads) : NOT_CHECKED;
    return new HorizontalSpan(
        piece, span, weight, borne, sides[1], sides[0], held, propped, beams, loads);
  }

  private HorizontalLoads loads(
      HorizontalPiece piece,
      double left,
      double span,
      Optional<MemberWind.Strip> strip,
      List<HorizontalLoads.Point> points,
      List<Double> held,
      List<Double> propped,
      List<HorizontalLoads.Down> downs) {
    List<HorizontalLoads.Edge> edges = new ArrayList<>(2);
    beside(under, piece).forEach(cell -> edge(cell, false, left, span, strip, edges));
    beside(over, piece).forEach(cell -> edge(cell, true, left, span, strip, edges));
    double[] bar = profiles.computeIfAbsent(piece.profile(), HorizontalBuilder::numbers);
    return new HorizontalLoads(
        span, bar[0], bar[1], bar[2], wind.given(), edges, points, held, propped, downs);
  }

  private static double[] numbers(Part.Profile profile) {
    double modulus = Stiffness.modulus(profile.metal().value());
    return new double[] {
      si(profile.ix()) * modulus, si(profile.iy()) * modulus, WeightPath.perLength(profile)
    };
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

  /** Length of the span and the mean width that loads it, each lite parted by 45° lines. */
  private MemberWind.Strip strip(HorizontalPiece piece, double left, double span) {
    double loaded = 0;
    for (int[][] side : List.of(under, over)) {
      for (int index : beside(side, piece)) {
        double[] cell = cells[index];
        double edge =
            cell == null ? 0 : Math.min(span, cell[1] - left) - Math.max(0, cell[0] - left);
        if (edge > 0) {
          double ramp = Math.min(edge, cell[2]) / 2;
          loaded += ramp * (edge - ramp);
        }
      }
    }
    return new MemberWind.Strip(span, loaded / span);
  }

  private MemberWind wind(int cell, Optional<MemberWind.Strip> strip) {
    Cell lite = layout.cells().get(cell);
    return strip.isPresent()
        ? MemberWind.of(wind, lite, strip.get())
        : MemberWind.ofLite(wind, lite);
  }

  private void edge(
      int index,
      boolean above,
      double start,
      double span,
      Optional<MemberWind.Strip> strip,
      List<HorizontalLoads.Edge> edges) {
    double[] cell = cells[index];
    if (cell == null) {
      return;
    }
    double from = Math.max(0, cell[0] - start);
    double to = Math.min(span, cell[1] - start);
    if (from < to) {
      double middle = cell[5] - start;
      edges.add(
          new HorizontalLoads.Edge(
              index,
              above,
              from,
              to,
              cell[2],
              wind(index, strip),
              above ? cell[4] : 0,
              Math.max(from, middle - cell[3]),
              Math.min(to, middle + cell[3])));
    }
  }

  /** Centre to centre of the rows round a cell [m]; its daylight where one slopes. */
  private double height(Cell cell) {
    Optional<HorizontalPiece> below = rows.under(cell);
    Optional<HorizontalPiece> above = rows.over(cell);
    return below.isEmpty() || above.isEmpty() || slopes(below.get()) || slopes(above.get())
        ? cell.daylightHeight().toMetres()
        : above.get().yLeft().minus(below.get().yLeft()).toMetres();
  }

  private static boolean slopes(HorizontalPiece piece) {
    return !piece.yLeft().equals(piece.yRight());
  }
}
