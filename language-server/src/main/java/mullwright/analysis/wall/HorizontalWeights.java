package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import mullwright.analysis.beam.Beam;
import mullwright.analysis.beam.BeamLoad;
import mullwright.analysis.beam.BeamProblem;
import mullwright.analysis.beam.LoadCase;
import mullwright.layout.Cell;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.model.Grid;

/**
 * What weighs on each horizontal, and what it brings to its ends and to the verticals under it.
 *
 * <p>Between two ends by statics alone; with verticals under it as a beam of one rigidity, which
 * the reactions do not depend on.
 */
final class HorizontalWeights {
  private final WallLayout layout;
  private final LineCentres centres;
  private final BeamMemory memory;
  private final int[][] pieceAt;
  private final List<List<double[]>> points;
  private final List<List<Borne>> borne;
  private final List<List<VerticalPiece>> under;
  private final double[][] reactions;

  /** A vertical on a horizontal. */
  static final class Borne {
    private final VerticalPiece piece;
    private final double at;
    private double newtons;

    private Borne(VerticalPiece piece, double at) {
      this.piece = piece;
      this.at = at;
    }

    /** The vertical. */
    VerticalPiece piece() {
      return piece;
    }

    /** Where, from the centre of the left vertical [m]. */
    double at() {
      return at;
    }

    /** Its weight with what hangs on it [N]. */
    double newtons() {
      return newtons;
    }

    /** True if it stands on that horizontal, false if it hangs from it. */
    boolean standsOn(HorizontalPiece horizontal) {
      return piece.top().isLongerThan(horizontal.yLeft());
    }

    void weigh(double total) {
      newtons = total;
    }
  }

  HorizontalWeights(WallLayout layout, LineCentres centres, BeamMemory memory) {
    this.layout = layout;
    this.centres = centres;
    this.memory = memory;
    int count = layout.horizontals().size();
    this.points = Lists.of(count);
    this.borne = Lists.of(count);
    this.under = Lists.of(count);
    this.reactions = new double[count][];
    Grid grid = layout.wall().grid();
    this.pieceAt = new int[grid.rows().size()][grid.bays().size()];
    for (int[] row : pieceAt) {
      Arrays.fill(row, -1);
    }
    for (HorizontalPiece piece : layout.horizontals()) {
      Arrays.fill(pieceAt[piece.row()], piece.firstBay(), piece.lastBay() + 1, piece.index());
    }
  }

  /** The verticals that hold a horizontal up between its ends, as indices from the left. */
  void rests(HorizontalPiece piece, List<Integer> lengths) {
    lengths.forEach(length -> under.get(piece.index()).add(layout.verticals().get(length)));
  }

  List<VerticalPiece> under(int horizontal) {
    return under.get(horizontal);
  }

  /** A vertical comes down on a horizontal. */
  void bear(int horizontal, VerticalPiece piece) {
    double left = centres.of(layout.horizontals().get(horizontal).leftLine());
    borne.get(horizontal).add(new Borne(piece, centres.of(piece.line()) - left));
  }

  List<Borne> borne(int horizontal) {
    return borne.get(horizontal);
  }

  /** Stands a filling on what is under it, at its setting blocks; false if nothing is. */
  boolean stand(Cell cell, double weight) {
    if (cell.below() < 0 || cell.below() >= pieceAt.length) {
      return false;
    }
    double middle = (centres.left(cell) + centres.right(cell)) / 2;
    double quarter = cell.glassWidth().toMetres() / 4;
    int left = under(cell, middle - quarter);
    int right = under(cell, middle + quarter);
    if (left < 0 && right < 0) {
      return false;
    }
    point(left < 0 ? right : left, middle - quarter, weight / 2);
    point(right < 0 ? left : right, middle + quarter, weight / 2);
    return true;
  }

  private int under(Cell cell, double x) {
    List<Grid.Bay> bays = layout.wall().grid().bays();
    for (int bay = cell.firstBay(); bay < cell.lastBay(); bay++) {
      if (x <= centres.of(bays.get(bay).right())) {
        return pieceAt[cell.below()][bay];
      }
    }
    return pieceAt[cell.below()][cell.lastBay()];
  }

  private void point(int horizontal, double x, double force) {
    double left = centres.of(layout.horizontals().get(horizontal).leftLine());
    points.get(horizontal).add(new double[] {x - left, force});
  }

  /** Reactions at the left end, at the verticals under it from the left, and at the right end. */
  double[] reactions(int horizontal) {
    if (reactions[horizontal] == null) {
      reactions[horizontal] = solve(horizontal);
    }
    return reactions[horizontal];
  }

  private double[] solve(int horizontal) {
    HorizontalPiece piece = layout.horizontals().get(horizontal);
    double start = centres.of(piece.leftLine());
    double span = centres.of(piece.rightLine()) - start;
    double own = WeightPath.perLength(piece.profile()) * piece.length().toMetres();
    List<double[]> loads = new ArrayList<>(points.get(horizontal));
    borne.get(horizontal).forEach(b -> loads.add(new double[] {b.at(), b.newtons()}));
    List<Double> places = new ArrayList<>();
    places.add(0.0);
    under.get(horizontal).forEach(v -> places.add(centres.of(v.line()) - start));
    places.add(span);
    if (places.size() > 2) {
      return overProps(span, own, loads, places);
    }
    return overEnds(span, own, loads, places.size());
  }

  private static double[] overEnds(double span, double own, List<double[]> loads, int places) {
    double[] ends = new double[places];
    int last = places - 1;
    ends[0] = own / 2;
    ends[last] = own / 2;
    for (double[] load : loads) {
      double share = span > 0 ? Math.max(0, Math.min(1, load[0] / span)) : 0.5;
      ends[0] += load[1] * (1 - share);
      ends[last] += load[1] * share;
    }
    return ends;
  }

  private double[] overProps(double span, double own, List<double[]> loads, List<Double> places) {
    List<BeamLoad> down = new ArrayList<>();
    down.add(BeamLoad.Distributed.uniform(0, span, own / span));
    for (double[] load : loads) {
      double at = Math.max(0, Math.min(span, load[0]));
      down.add(new BeamLoad.PointForce(at, load[1]));
    }
    List<Beam.Support> pins = places.stream().map(Beam.Support::pin).toList();
    SolvedBeam solved =
        memory.solve(
            new BeamProblem(
                Beam.uniform(0, span, 1, pins, List.of()), List.of(new LoadCase("weight", down))));
    if (!solved.stands()) {
      return overEnds(span, own, loads, places.size());
    }
    return places.stream().mapToDouble(at -> solved.reactions(at).greatest().value()).toArray();
  }
}
