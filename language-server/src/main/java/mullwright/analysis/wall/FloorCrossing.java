package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.List;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.model.Given;
import mullwright.model.Grid;
import mullwright.quantity.Length;

/**
 * A length of vertical passing a floor, with the anchors it has there.
 *
 * <p>It passes where the top of the slab lies strictly between its ends. An anchor is there if its
 * place names the floor, or if it sits in the zone from {@link #BEYOND} above the top of the slab
 * to as much below its underside.
 *
 * @param anchors those of the line that are there, from below
 */
public record FloorCrossing(
    VerticalPiece piece,
    Grid.Floor floor,
    Length zoneBottom,
    Length zoneTop,
    List<PlacedAnchor> anchors) {
  /** How far beyond the slab an anchor still belongs to it: 12" (common practice). */
  public static final Length BEYOND = Length.ofInches(12);

  public FloorCrossing {
    anchors = List.copyOf(anchors);
  }

  /** The floors a length passes, from below. */
  public static List<FloorCrossing> of(WallAnalysis analysis, VerticalPiece piece) {
    List<FloorCrossing> found = new ArrayList<>();
    Length from = joint(analysis.layout(), piece.spliceBelow(), piece.bottom());
    Length to = joint(analysis.layout(), piece.spliceAbove(), piece.top());
    Grid grid = analysis.layout().wall().grid();
    int highest = grid.floorsUpTo(to);
    int lowest = highest;
    while (lowest > 0 && !grid.floors().get(lowest - 1).elevation().value().isShorterThan(from)) {
      lowest--;
    }
    for (Grid.Floor floor : grid.floors().subList(lowest, highest)) {
      Length top = floor.elevation().value();
      boolean atJoint = piece.spliceBelow() >= 0 && top.equals(from);
      if ((top.isLongerThan(from) || atJoint) && top.isShorterThan(to)) {
        found.add(crossing(analysis, piece, floor));
      }
    }
    return found;
  }

  // a floor in the open joint belongs to the length over it
  private static Length joint(WallLayout layout, int splice, Length end) {
    return splice < 0 ? end : layout.splices().get(splice).y();
  }

  private static FloorCrossing crossing(
      WallAnalysis analysis, VerticalPiece piece, Grid.Floor floor) {
    Length top = floor.elevation().value();
    Length slab = floor.slab().map(Given::value).orElse(Length.ZERO);
    Length zoneTop = top.plus(BEYOND);
    Length zoneBottom = top.minus(slab).minus(BEYOND);
    List<PlacedAnchor> anchors = new ArrayList<>();
    for (PlacedAnchor anchor : analysis.anchorsNear(piece.line(), zoneBottom, zoneTop)) {
      boolean named = anchor.use().floor().filter(f -> f == floor.index()).isPresent();
      boolean near = !anchor.y().isShorterThan(zoneBottom) && !anchor.y().isLongerThan(zoneTop);
      if (anchor.vertical() >= 0 && (named || near)) {
        anchors.add(anchor);
      }
    }
    return new FloorCrossing(piece, floor, zoneBottom, zoneTop, anchors);
  }
}
