package mullwright.analysis.wall;

import mullwright.layout.HorizontalPiece;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.model.AnchorUse;

/**
 * What a wall weighs, and where all of it comes down [N]. Plates, caps and gaskets are not in it.
 *
 * @param verticals their own weight
 * @param reinforcement bars in them
 * @param horizontals their own weight
 * @param fillings lites, and openings by others whose mass is stated
 * @param brackets what brackets bring
 * @param onDeadLoadAnchors what comes down on dead-load anchors
 * @param onSlidingOnes what slides down on wind-load anchors and clips, since nothing holds it
 * @param onNothing what nothing in the wall holds up
 */
public record WallWeight(
    double verticals,
    double reinforcement,
    double horizontals,
    double fillings,
    double brackets,
    double onDeadLoadAnchors,
    double onSlidingOnes,
    double onNothing) {

  /** All that weighs [N]. */
  public double total() {
    return verticals + reinforcement + horizontals + fillings + brackets;
  }

  static WallWeight of(WallLayout layout, CellWeight cells, WeightPath path) {
    double verticals = 0;
    double reinforcement = 0;
    double brackets = 0;
    for (VerticalPiece piece : layout.verticals()) {
      LengthWeight weight = path.of(piece);
      verticals += weight.own();
      reinforcement += weight.reinforcement();
      brackets += weight.brackets();
    }
    double horizontals = 0;
    for (HorizontalPiece piece : layout.horizontals()) {
      horizontals += WeightPath.perLength(piece.profile()) * piece.length().toMetres();
    }
    double fillings = layout.cells().stream().mapToDouble(cell -> cells.of(cell.index())).sum();
    double dead = 0;
    double sliding = 0;
    for (PlacedAnchor anchor : layout.anchors()) {
      double down = path.on(anchor);
      if (anchor.use().kind() == AnchorUse.Kind.DEAD_LOAD) {
        dead += down;
      } else {
        sliding += down;
      }
    }
    return new WallWeight(
        verticals, reinforcement, horizontals, fillings, brackets, dead, sliding, path.nowhere());
  }
}
