package mullwright.report;

import java.util.List;
import java.util.Optional;
import mullwright.drawing.Drawing;
import mullwright.drawing.Paper;
import mullwright.drawing.Scale;
import mullwright.drawing.Sheet;

/**
 * One kind of drawing of a wall, such as its elevation. Its class is found by itself
 * ({@code @AutoService(DrawingView.class)}).
 */
public interface DrawingView {
  /** What it is asked for by: {@code elevation}. */
  String name();

  /** Where its sheets stand in a set; the elevation is 100. */
  int order();

  /** The sheets of a wall; not yet numbered through the set. */
  List<Sheet> sheets(DrawnWall wall, Wanted wanted);

  /** The same uncut and without a sheet: one drawing, or several that stand by themselves. */
  List<Drawing> uncut(DrawnWall wall, Wanted wanted);

  /**
   * How drawings are wanted.
   *
   * @param scale empty for the largest usual one that fits
   * @param keynotes true to key what the rules found
   */
  record Wanted(Paper paper, Optional<Scale> scale, boolean keynotes) {}
}
