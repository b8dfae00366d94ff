package mullwright.analysis.wall;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReferenceArray;
import mullwright.layout.ByHeight;
import mullwright.layout.Cell;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.PlacedAnchor;
import mullwright.model.Grid;
import mullwright.quantity.Length;

/**
 * What meets each grid line near a height. Found when first asked for; several threads may ask, and
 * two that come at once may compute the same.
 */
final class LineHeights {
  private final WallAnalysis analysis;
  private final AtomicReferenceArray<ByHeight<HorizontalPiece>> horizontals;
  private final AtomicReferenceArray<ByHeight<Cell>> cells;
  private final AtomicReferenceArray<ByHeight<PlacedAnchor>> anchors;
  private final AtomicReferenceArray<ByHeight<JointObstacle>> obstacles;

  LineHeights(WallAnalysis analysis) {
    this.analysis = analysis;
    int lines = analysis.layout().wall().grid().lines().size();
    this.horizontals = new AtomicReferenceArray<>(lines);
    this.cells = new AtomicReferenceArray<>(lines);
    this.anchors = new AtomicReferenceArray<>(lines);
    this.obstacles = new AtomicReferenceArray<>(lines);
  }

  /** The horizontals whose centre meets a line between two heights, by row. */
  List<HorizontalPiece> horizontals(int line, Length from, Length to) {
    ByHeight<HorizontalPiece> known = horizontals.get(line);
    if (known == null) {
      List<HorizontalPiece> all = analysis.horizontalsOn(line);
      long[] ends = new long[all.size()];
      for (int i = 0; i < ends.length; i++) {
        HorizontalPiece piece = all.get(i);
        ends[i] = (piece.leftLine() == line ? piece.yLeft() : piece.yRight()).ticks();
      }
      known = new ByHeight<>(all, ends, ends);
      horizontals.set(line, known);
    }
    return known.touching(from, to);
  }

  /** The cells beside a line that touch a stretch of height, by bay and then from below. */
  List<Cell> cells(int line, Length from, Length to) {
    ByHeight<Cell> known = cells.get(line);
    if (known == null) {
      List<Cell> all = analysis.cellsBeside(line);
      long[] bottoms = new long[all.size()];
      long[] tops = new long[all.size()];
      for (int i = 0; i < tops.length; i++) {
        bottoms[i] = all.get(i).bottom().ticks();
        tops[i] = all.get(i).top().ticks();
      }
      known = new ByHeight<>(all, bottoms, tops);
      cells.set(line, known);
    }
    return known.touching(from, to);
  }

  /**
   * The anchors and clips of a line that touch a stretch of height, each from its place to the
   * floor it belongs to, from below.
   */
  List<PlacedAnchor> anchors(int line, Length from, Length to) {
    ByHeight<PlacedAnchor> known = anchors.get(line);
    if (known == null) {
      List<PlacedAnchor> all = analysis.anchorsOf(line);
      List<Grid.Floor> floors = analysis.layout().wall().grid().floors();
      long[] bottoms = new long[all.size()];
      long[] tops = new long[all.size()];
      for (int i = 0; i < tops.length; i++) {
        long place = all.get(i).y().ticks();
        Optional<Integer> floor = all.get(i).use().floor();
        long at = floor.isEmpty() ? place : floors.get(floor.get()).elevation().value().ticks();
        bottoms[i] = Math.min(place, at);
        tops[i] = Math.max(place, at);
      }
      known = new ByHeight<>(all, bottoms, tops);
      anchors.set(line, known);
    }
    return known.touching(from, to);
  }

  /** What is fixed to the vertical of a line and touches a stretch of height. */
  List<JointObstacle> obstacles(int line, Length from, Length to) {
    ByHeight<JointObstacle> known = obstacles.get(line);
    if (known == null) {
      List<JointObstacle> all = JointObstacle.of(analysis, line);
      long[] bottoms = new long[all.size()];
      long[] tops = new long[all.size()];
      for (int i = 0; i < tops.length; i++) {
        bottoms[i] = all.get(i).from().ticks();
        tops[i] = all.get(i).to().ticks();
      }
      known = new ByHeight<>(all, bottoms, tops);
      obstacles.set(line, known);
    }
    return known.touching(from, to);
  }
}
