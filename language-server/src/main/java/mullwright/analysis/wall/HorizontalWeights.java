package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.analysis.beam.Beam;
import mullwright.analysis.beam.BeamLoad;
import mullwright.analysis.beam.BeamProblem;
import mullwright.analysis.beam.LoadCase;
import mullwright.layout.Cell;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.RowPieces;
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
  private final RowPieces rows;

  /** By horizontal: the lites on it [N], and their moment about its left end [N·m]. */
  private final double[] lites;

  private final double[] turning;

  /** By horizontal: its lites at their blocks, only where verticals under it part them. */
  private final Map<Integer, List<double[]>> points = new HashMap<>();

  private final Map<Integer, List<Borne>> borne = new HashMap<>();
  private final Map<Integer, List<VerticalPiece>> under = new HashMap<>();
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

  HorizontalWeights(WallLayout layout, LineCentres centres, RowPieces rows, BeamMemory memory) {
    this.layout = layout;
    this.centres = centres;
    this.rows = rows;
    this.memory = memory;
    int count = layout.horizontals().size();
    this.lites = new double[count];
    this.turning = new double[count];
    this.reactions = new double[count][];
  }

  /** A vertical holds a horizontal up between its ends; told from the left. */
  void rests(int horizontal, VerticalPiece piece) {
    under.computeIfAbsent(horizontal, h -> new ArrayList<>(1)).add(piece);
    points.computeIfAbsent(horizontal, h -> new ArrayList<>());
  }

  List<VerticalPiece> under(int horizontal) {
    return under.getOrDefault(horizontal, List.of());
  }

  /** A vertical comes down on a horizontal. */
  void bear(int horizontal, VerticalPiece piece) {
    double left = centres.of(layout.horizontals().get(horizontal).leftLine());
    borne
        .computeIfAbsent(horizontal, h -> new ArrayList<>(1))
        .add(new Borne(piece, centres.of(piece.line()) - left));
  }

  List<Borne> borne(int horizontal) {
    return borne.getOrDefault(horizontal, List.of());
  }

  /** Stands a filling on what is under it, at its setting blocks; false if nothing is. */
  boolean stand(Cell cell, double weight) {
    if (cell.below() < 0) {
      return false;
    }
    double middle = middle(cell);
    double quarter = cell.glassWidth().toMetres() / 4;
    Optional<HorizontalPiece> left = under(cell, middle - quarter);
    Optional<HorizontalPiece> right = under(cell, middle + quarter);
    if (left.isEmpty() && right.isEmpty()) {
      return false;
    }
    point(left.or(() -> right).get(), middle - quarter, weight / 2);
    point(right.or(() -> left).get(), middle + quarter, weight / 2);
    return true;
  }

  /** Middle of what is set in a cell [m]; not of its bay where the members beside it differ. */
  static double middle(Cell cell) {
    return cell.left().plus(cell.right()).plus(cell.biteRight()).minus(cell.biteLeft()).toMetres()
        / 2;
  }

  private Optional<HorizontalPiece> under(Cell cell, double x) {
    List<Grid.Bay> bays = layout.wall().grid().bays();
    for (int bay = cell.firstBay(); bay < cell.lastBay(); bay++) {
      if (x <= centres.of(bays.get(bay).right())) {
        return rows.in(cell.below(), bay);
      }
    }
    return rows.in(cell.below(), cell.lastBay());
  }

  private void point(HorizontalPiece piece, double x, double force) {
    int horizontal = piece.index();
    double at = x - centres.of(piece.leftLine());
    lites[horizontal] += force;
    turning[horizontal] += force * at;
    if (points.containsKey(horizontal)) {
      points.get(horizontal).add(new double[] {at, force});
    }
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
    List<VerticalPiece> props = under(horizontal);
    if (props.isEmpty()) {
      return overEnds(horizontal, span, own, 2);
    }
    List<double[]> loads = new ArrayList<>(points.get(horizontal));
    borne(horizontal).forEach(b -> loads.add(new double[] {b.at(), b.newtons()}));
    List<Double> places = new ArrayList<>();
    places.add(0.0);
    props.forEach(v -> places.add(centres.of(v.line()) - start));
    places.add(span);
    SolvedBeam solved = overProps(span, own, loads, places);
    return solved.stands()
        ? places.stream().mapToDouble(at -> solved.reactions(at).greatest().value()).toArray()
        : overEnds(horizontal, span, own, places.size());
  }

  private double[] overEnds(int horizontal, double span, double own, int places) {
    double all = lites[horizontal];
    double about = turning[horizontal];
    for (Borne vertical : borne(horizontal)) {
      all += vertical.newtons();
      about += vertical.newtons() * vertical.at();
    }
    double right = span > 0 ? about / span : all / 2;
    double[] ends = new double[places];
    ends[0] = own / 2 + all - right;
    ends[places - 1] = own / 2 + right;
    return ends;
  }

  private SolvedBeam overProps(double span, double own, List<double[]> loads, List<Double> places) {
    List<BeamLoad> down = new ArrayList<>();
    down.add(BeamLoad.Distributed.uniform(0, span, own / span));
    for (double[] load : loads) {
      double at = Math.max(0, Math.min(span, load[0]));
      down.add(new BeamLoad.PointForce(at, load[1]));
    }
    List<Beam.Support> pins = places.stream().map(Beam.Support::pin).toList();
    return memory.solve(
        new BeamProblem(
            Beam.uniform(0, span, 1, pins, List.of()), List.of(new LoadCase("weight", down))));
  }
}
