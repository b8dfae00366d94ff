package mullwright.takeoff;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.VerticalPiece;
import mullwright.layout.VerticalsOnLine;
import mullwright.layout.WallLayout;
import mullwright.model.Given;
import mullwright.model.Grid;
import mullwright.quantity.Length;
import mullwright.quantity.LengthPrinter;
import mullwright.quantity.UnitSystem;

/**
 * The sealed joint along the outer edge of the frame: under the lowest and over the highest
 * horizontals, up the outer side of the end verticals, and up the steps between.
 *
 * <p>Where a door or void reaches out of the frame there is no horizontal and so no joint. The
 * sealant is half as deep as the joint is wide, from 1/4" to 1/2"; the rod behind it is 25 % wider
 * than the joint (common practice).
 */
final class PerimeterSeal {
  private static final Length USUAL_WIDTH = Length.ofInches(1, 2);
  private static final Length LEAST_DEPTH = Length.ofInches(1, 4);
  private static final Length MOST_DEPTH = Length.ofInches(1, 2);

  private final WallLayout layout;
  private final VerticalsOnLine lines;
  private final Optional<Given<Length>> stated;
  private final HorizontalPiece[] lowest;
  private final HorizontalPiece[] highest;

  private PerimeterSeal(WallLayout layout) {
    this.layout = layout;
    this.lines = new VerticalsOnLine(layout);
    this.stated = layout.wall().fabrication().perimeterJoint();
    int bays = layout.wall().grid().bays().size();
    this.lowest = new HorizontalPiece[bays];
    this.highest = new HorizontalPiece[bays];
    findEdges();
  }

  static PerimeterSeal of(WallLayout layout) {
    return new PerimeterSeal(layout);
  }

  private void findEdges() {
    for (HorizontalPiece piece : layout.horizontals()) {
      for (int bay = piece.firstBay(); bay <= piece.lastBay(); bay++) {
        if (lowest[bay] == null || middle(piece).isShorterThan(middle(lowest[bay]))) {
          lowest[bay] = piece;
        }
        if (highest[bay] == null || middle(piece).isLongerThan(middle(highest[bay]))) {
          highest[bay] = piece;
        }
      }
    }
    // an opening that reaches out of the frame leaves no joint there
    layout.cells().stream()
        .filter(cell -> cell.opening().isPresent())
        .forEach(
            cell -> {
              for (int bay = cell.firstBay(); bay <= cell.lastBay(); bay++) {
                if (cell.below() < 0) {
                  lowest[bay] = null;
                }
                if (cell.above() < 0) {
                  highest[bay] = null;
                }
              }
            });
  }

  private static Length middle(HorizontalPiece piece) {
    return piece.yLeft().plus(piece.yRight()).half();
  }

  /** Length of the joint by face. */
  Length[] byFace(Faces faces) {
    Length[] sums = new Length[faces.count()];
    Arrays.fill(sums, Length.ZERO);
    List<Grid.Bay> bays = layout.wall().grid().bays();
    for (Grid.Bay bay : bays) {
      int face = faces.ofBay(bay.index());
      for (HorizontalPiece piece :
          new HorizontalPiece[] {lowest[bay.index()], highest[bay.index()]}) {
        if (piece != null) {
          sums[face] = sums[face].plus(share(piece, bay));
        }
      }
    }
    for (Grid.Line line : layout.wall().grid().lines()) {
      int face = faces.ofLine(line.index());
      sums[face] = sums[face].plus(upright(line));
    }
    return sums;
  }

  /** What a bay has of the edge: from line to line, and to the outer edge of an end vertical. */
  private Length share(HorizontalPiece piece, Grid.Bay bay) {
    Length level = x(bay.right()).minus(x(bay.left()));
    level = level.plus(endFace(bay.left())).plus(endFace(bay.right()));
    Length rise = piece.yRight().minus(piece.yLeft());
    if (rise.signum() == 0) {
      return level;
    }
    double slope = rise.toMetres() / piece.right().minus(piece.left()).toMetres();
    return Length.nearest(level.toMetres() * Math.hypot(1, slope));
  }

  private Length x(int line) {
    List<VerticalPiece> on = lines.of(line);
    return on.isEmpty() ? layout.wall().grid().lines().get(line).x() : on.get(0).x();
  }

  private boolean end(int line) {
    long beside =
        layout.wall().grid().bays().stream()
            .filter(bay -> bay.left() == line || bay.right() == line)
            .count();
    return beside == 1;
  }

  private Length endFace(int line) {
    List<VerticalPiece> on = lines.of(line);
    return end(line) && !on.isEmpty() ? on.get(0).profile().face().value().half() : Length.ZERO;
  }

  // the outer side of an end, from its lowest to its highest edge; between two bays the steps
  private Length upright(Grid.Line line) {
    List<VerticalPiece> on = lines.of(line.index());
    if (on.isEmpty()) {
      return Length.ZERO;
    }
    if (end(line.index())) {
      return on.get(on.size() - 1).top().minus(on.get(0).bottom());
    }
    return step(line.index(), true).plus(step(line.index(), false));
  }

  private Length step(int line, boolean bottom) {
    HorizontalPiece left = null;
    HorizontalPiece right = null;
    for (Grid.Bay bay : layout.wall().grid().bays()) {
      HorizontalPiece edge = bottom ? lowest[bay.index()] : highest[bay.index()];
      left = bay.right() == line ? edge : left;
      right = bay.left() == line ? edge : right;
    }
    return left == null || right == null || left == right
        ? Length.ZERO
        : outer(left, left.yRight(), bottom).minus(outer(right, right.yLeft(), bottom)).abs();
  }

  private static Length outer(HorizontalPiece piece, Length y, boolean bottom) {
    Length half = piece.profile().face().value().half();
    return bottom ? y.minus(half) : y.plus(half);
  }

  private Length width() {
    return stated.map(Given::value).orElse(USUAL_WIDTH);
  }

  private Length depth() {
    return Length.min(MOST_DEPTH, Length.max(LEAST_DEPTH, width().half()));
  }

  /** {@code 1/2" × 1/4"}. */
  String size() {
    return told(width()) + " × " + told(depth());
  }

  /** {@code 5/8"}. */
  String rod() {
    return told(width().scaled(5, 4));
  }

  /** That the width is a default, if it is one. */
  String remark() {
    return stated.isPresent() ? "" : "joint width: default (common practice)";
  }

  private static String told(Length length) {
    return LengthPrinter.in(
        length.ticks() % Length.ofInches(1, 64).ticks() == 0 ? UnitSystem.US : UnitSystem.SI,
        length);
  }
}
