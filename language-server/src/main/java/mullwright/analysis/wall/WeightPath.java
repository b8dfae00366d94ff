package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.layout.Cell;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.RowPieces;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.model.AnchorUse;
import mullwright.model.Grid;
import mullwright.model.Members;
import mullwright.model.Part;
import mullwright.quantity.Ascending;

/**
 * The way of every weight in a wall from what weighs to what holds it up; nothing is lost on it.
 *
 * <p>A lite stands on the horizontal under it, a horizontal on the verticals at its ends and on
 * those under it, a length of vertical where {@link WeightLanding} says. A filling with no
 * horizontal under it is borne by the verticals beside it, half by each. Plates, caps and gaskets
 * are not in it.
 */
final class WeightPath {
  private final WallLayout layout;
  private final WeightHolds holds;
  private final HorizontalWeights horizontals;
  private final List<List<VerticalPiece>> piecesOfLine;

  /** By horizontal: the lengths that hold it up between its ends, from the left. */
  private final Map<Integer, List<VerticalPiece>> propping = new HashMap<>();

  /** By length: what ends or lies on it, as places on {@link HorizontalWeights}. */
  private final List<List<Rest>> restingOn;

  /** By length: the lengths over it that slide down on it. */
  private final List<List<VerticalPiece>> slidingOn;

  /** Lower and upper end by length [m]. */
  private final double[] bottoms;

  private final double[] tops;
  private final double[] reinforcement;
  private final double[] fillings;
  private final double[] brackets;
  private final LengthWeight[] known;
  private final boolean[] begun;
  private final boolean[] asked;
  private final double nowhere;

  private record Rest(int horizontal, int place) {}

  /** What a horizontal brings to a length of vertical [N]. */
  record Brought(HorizontalPiece horizontal, double newtons) {}

  WeightPath(
      WallLayout layout,
      CellWeight weights,
      LineCentres centres,
      RowPieces rows,
      WeightHolds holds,
      BeamMemory memory) {
    this.layout = layout;
    this.holds = holds;
    int lengths = layout.verticals().size();
    this.piecesOfLine = Lists.of(layout.wall().grid().lines().size());
    this.restingOn = Lists.of(lengths);
    this.slidingOn = Lists.of(lengths);
    this.reinforcement = new double[lengths];
    this.fillings = new double[lengths];
    this.brackets = new double[lengths];
    this.known = new LengthWeight[lengths];
    this.begun = new boolean[lengths];
    this.asked = new boolean[layout.horizontals().size()];
    this.bottoms = new double[lengths];
    this.tops = new double[lengths];
    for (VerticalPiece piece : layout.verticals()) {
      piecesOfLine.get(piece.line()).add(piece);
      bottoms[piece.index()] = piece.bottom().toMetres();
      tops[piece.index()] = piece.top().toMetres();
      int propped = holds.propped(piece);
      if (propped >= 0) {
        propping.computeIfAbsent(propped, h -> new ArrayList<>()).add(piece);
      }
    }
    this.horizontals = new HorizontalWeights(layout, centres, rows, memory);
    layout.horizontals().forEach(this::rests);
    for (VerticalPiece piece : layout.verticals()) {
      land(piece);
    }
    double lost = 0;
    for (Cell cell : layout.cells()) {
      double weight = weights.of(cell.index());
      if (weight > 0 && !horizontals.stand(cell, weight)) {
        lost += beside(cell, weight);
      }
    }
    bars();
    brackets();
    for (VerticalPiece piece : layout.verticals()) {
      weigh(piece);
      if (holds.of(piece).landing() instanceof WeightLanding.Nowhere) {
        lost += known[piece.index()].total();
      }
    }
    for (HorizontalPiece piece : layout.horizontals()) {
      double[] ends = ends(piece.index());
      lost += at(piece.leftLine(), piece.yLeft().toMetres()) < 0 ? ends[0] : 0;
      lost += at(piece.rightLine(), piece.yRight().toMetres()) < 0 ? ends[ends.length - 1] : 0;
    }
    this.nowhere = lost;
  }

  private void rests(HorizontalPiece piece) {
    int place = 0;
    rest(at(piece.leftLine(), piece.yLeft().toMetres()), piece, place++);
    for (VerticalPiece vertical : propping.getOrDefault(piece.index(), List.of())) {
      horizontals.rests(piece.index(), vertical);
      rest(vertical.index(), piece, place++);
    }
    rest(at(piece.rightLine(), piece.yRight().toMetres()), piece, place);
  }

  private void rest(int length, HorizontalPiece piece, int place) {
    if (length >= 0) {
      restingOn.get(length).add(new Rest(piece.index(), place));
    }
  }

  /** The length of a line's vertical at a height, or the nearest; -1 if the line has none. */
  private int at(int line, double y) {
    List<VerticalPiece> pieces = piecesOfLine.get(line);
    int over = Ascending.leading(pieces.size(), i -> bottoms[pieces.get(i).index()] <= y);
    // they stand one over the other, so nearly always it is this one
    int under = over == 0 ? -1 : pieces.get(over - 1).index();
    return under >= 0 && y <= tops[under] ? under : nearest(pieces, y);
  }

  private int nearest(List<VerticalPiece> pieces, double y) {
    int nearest = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int i = pieces.size() - 1; i >= 0; i--) {
      int piece = pieces.get(i).index();
      double off = Math.max(bottoms[piece] - y, y - tops[piece]);
      if (off <= 0) {
        return piece;
      }
      if (off < least) {
        least = off;
        nearest = piece;
      }
    }
    return nearest;
  }

  private void land(VerticalPiece piece) {
    WeightLanding landing = holds.of(piece).landing();
    if (landing instanceof WeightLanding.OnHorizontal on) {
      horizontals.bear(on.support().horizontal(), piece);
    } else if (landing instanceof WeightLanding.OnClosedJoint on) {
      slidingOn.get(on.below().index()).add(piece);
    }
  }

  /** Hangs a filling on the verticals beside it, and tells what of it nothing bears [N]. */
  private double beside(Cell cell, double weight) {
    Grid grid = layout.wall().grid();
    double sill = cell.bottom().toMetres();
    int left = at(grid.bays().get(cell.firstBay()).left(), sill);
    int right = at(grid.bays().get(cell.lastBay()).right(), sill);
    if (left < 0 && right < 0) {
      return weight;
    }
    fillings[left < 0 ? right : left] += weight / 2;
    fillings[right < 0 ? left : right] += weight / 2;
    return 0;
  }

  private void bars() {
    for (Members.Reinforce bar : layout.wall().members().reinforcements()) {
      Optional<Part.Reinforcement> part =
          layout.catalog().find(Part.Reinforcement.class, bar.part().value());
      double along =
          part.flatMap(Part.Reinforcement::massPerLength).map(m -> m.value().toSi()).orElse(0.0);
      for (VerticalPiece piece : piecesOfLine.get(bar.line())) {
        double bottom = bottoms[piece.index()];
        double top = tops[piece.index()];
        double from =
            Math.max(bottom, bar.from().map(h -> h.elevation().toMetres()).orElse(bottom));
        double to = Math.min(top, bar.to().map(h -> h.elevation().toMetres()).orElse(top));
        reinforcement[piece.index()] += along * CellWeight.G * Math.max(0, to - from);
      }
    }
  }

  private void brackets() {
    for (Members.Bracket bracket : layout.wall().members().brackets()) {
      double down = 0;
      for (Members.Load load : bracket.loads()) {
        double force = load.force().value().toSi();
        down += load.direction().equals("down") ? force : 0;
        down -= load.direction().equals("up") ? force : 0;
      }
      int piece = at(bracket.line(), bracket.at().elevation().toMetres());
      if (piece >= 0) {
        brackets[piece] += down;
      }
    }
  }

  /** What a length carries down. */
  LengthWeight of(VerticalPiece piece) {
    return known[piece.index()];
  }

  // a whole chain of lengths that slide down on one another goes one by one, from above
  private double weigh(VerticalPiece piece) {
    List<VerticalPiece> chain = new ArrayList<>(List.of(piece));
    for (int i = 0; i < chain.size(); i++) {
      chain.addAll(slidingOn.get(chain.get(i).index()));
    }
    for (int i = chain.size() - 1; i >= 0; i--) {
      sum(chain.get(i));
    }
    return known[piece.index()] == null ? 0 : known[piece.index()].total();
  }

  private void sum(VerticalPiece piece) {
    int index = piece.index();
    // lengths that bear one another in a ring: the one begun first goes without the others
    if (begun[index]) {
      return;
    }
    begun[index] = true;
    double ending = 0;
    for (Rest rest : restingOn.get(index)) {
      ending += ends(rest.horizontal())[rest.place()];
    }
    double above = 0;
    for (VerticalPiece sliding : slidingOn.get(index)) {
      above += known[sliding.index()].total();
    }
    known[index] =
        new LengthWeight(
            perLength(piece.profile()) * piece.length().toMetres(),
            reinforcement[index],
            ending,
            fillings[index],
            above,
            brackets[index]);
  }

  private double[] ends(int horizontal) {
    if (!asked[horizontal]) {
      asked[horizontal] = true;
      horizontals.borne(horizontal).forEach(down -> down.weigh(weigh(down.piece())));
    }
    return horizontals.reactions(horizontal);
  }

  /** What each horizontal brings to a length that ends on it or lies on it. */
  List<Brought> brought(VerticalPiece piece) {
    List<Brought> found = new ArrayList<>();
    for (Rest rest : restingOn.get(piece.index())) {
      found.add(
          new Brought(
              layout.horizontals().get(rest.horizontal()), ends(rest.horizontal())[rest.place()]));
    }
    return found;
  }

  /** What a horizontal brings to its left end, to the verticals under it, and to its right end. */
  double[] reactions(HorizontalPiece piece) {
    return ends(piece.index()).clone();
  }

  /** The verticals that stand on a horizontal or hang from it, with their weight. */
  List<HorizontalWeights.Borne> borne(HorizontalPiece piece) {
    return horizontals.borne(piece.index());
  }

  /** The lengths under a horizontal that hold it up between its ends, from the left. */
  List<VerticalPiece> under(HorizontalPiece piece) {
    return horizontals.under(piece.index());
  }

  /** Weight of a profile on its length [N/m]; 0 where its catalog states no mass. */
  static double perLength(Part.Profile profile) {
    return profile.massPerLength().map(m -> m.value().toSi() * CellWeight.G).orElse(0.0);
  }

  /** Weight that comes down on an anchor or clip [N]. */
  double on(PlacedAnchor anchor) {
    if (anchor.vertical() < 0) {
      return 0;
    }
    VerticalPiece piece = layout.verticals().get(anchor.vertical());
    WeightLanding landing = holds.of(piece).landing();
    if (landing instanceof WeightLanding.HangsFromAnchors from) {
      boolean dead = anchor.use().kind() == AnchorUse.Kind.DEAD_LOAD;
      return dead ? of(piece).total() / from.anchors().size() : 0;
    }
    return landing instanceof WeightLanding.OnSlotEnd end && end.anchor().index() == anchor.index()
        ? of(piece).total()
        : 0;
  }

  /** Weight that nothing holds up [N]. */
  double nowhere() {
    return nowhere;
  }
}
