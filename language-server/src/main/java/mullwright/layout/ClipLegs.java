package mullwright.layout;

import java.util.ArrayList;
import java.util.List;

/**
 * The form of a clip: one leg where there is a bay on one side only (ends, joints, doors), two legs
 * between.
 *
 * @param sides the sides its legs are on
 */
public record ClipLegs(List<HoleSide> sides) {
  public ClipLegs {
    sides = List.copyOf(sides);
  }

  /** True if it has two. */
  public boolean two() {
    return sides.size() == 2;
  }

  /**
   * The form of a clip where it sits: a side counts if a horizontal comes to the vertical there
   * within a face of the clip's height; if none does on either side, what is set along the
   * vertical.
   *
   * @param clip one that holds a vertical
   */
  public static ClipLegs of(WallLayout layout, PlacedAnchor clip, HorizontalsOnLine ends) {
    VerticalPiece piece = layout.verticals().get(clip.vertical());
    boolean left = meets(piece, HoleSide.LEFT, clip, ends);
    boolean right = meets(piece, HoleSide.RIGHT, clip, ends);
    if (!left && !right) {
      left = piece.bayLeft();
      right = piece.bayRight() || !left;
    }
    List<HoleSide> sides = new ArrayList<>(2);
    if (left) {
      sides.add(HoleSide.LEFT);
    }
    if (right) {
      sides.add(HoleSide.RIGHT);
    }
    return new ClipLegs(sides);
  }

  private static boolean meets(
      VerticalPiece piece, HoleSide side, PlacedAnchor clip, HorizontalsOnLine ends) {
    return ends.near(piece.line(), side, clip.y(), piece.profile().face().value());
  }
}
