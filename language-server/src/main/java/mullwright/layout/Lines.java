package mullwright.layout;

import java.util.Arrays;
import mullwright.model.Grid;
import mullwright.model.Members;
import mullwright.model.Wall;
import mullwright.quantity.Length;

/** Where the centre of each line is, and which bays stand beside it. */
final class Lines {
  private final Grid grid;
  private final Length[] centres;
  private final boolean[] corners;
  private final int[] bayLeft;
  private final int[] bayRight;

  Lines(Wall wall, Profiles profiles) {
    grid = wall.grid();
    int count = grid.lines().size();
    centres = new Length[count];
    corners = new boolean[count];
    bayLeft = new int[count];
    bayRight = new int[count];
    Arrays.fill(bayLeft, -1);
    Arrays.fill(bayRight, -1);
    for (Grid.Bay bay : grid.bays()) {
      bayRight[bay.left()] = bay.index();
      bayLeft[bay.right()] = bay.index();
    }
    for (Grid.Corner corner : grid.corners()) {
      corners[corner.line()] = true;
    }
    for (Grid.Line line : grid.lines()) {
      centres[line.index()] = line.x();
    }
    placeEdges(wall, profiles);
  }

  // the lowest run of a line given by its edge says how wide the face is
  private void placeEdges(Wall wall, Profiles profiles) {
    if (grid.lines().stream().noneMatch(Grid.Line::edge)) {
      return;
    }
    boolean[] placed = new boolean[centres.length];
    for (Members.Vertical vertical : wall.members().verticals()) {
      Grid.Line line = grid.lines().get(vertical.line());
      if (line.edge() && !placed[line.index()]) {
        placed[line.index()] = true;
        Length half = profiles.widths(vertical.profile().value()).halfFace();
        centres[line.index()] = line.x().plus(edgeShift(line.index(), half));
      }
    }
  }

  /** From the outer edge of a line's member to its centre; none for a line between two bays. */
  Length edgeShift(int line, Length halfFace) {
    if (bayLeft[line] < 0 && bayRight[line] >= 0) {
      return halfFace;
    }
    return bayLeft[line] >= 0 && bayRight[line] < 0 ? halfFace.negated() : Length.ZERO;
  }

  int count() {
    return centres.length;
  }

  /** Its centre. */
  Length x(int line) {
    return centres[line];
  }

  /** The edge of its vertical's face towards that side. */
  Length near(int line, Side side, Length halfFace) {
    return side == Side.LEFT ? centres[line].minus(halfFace) : centres[line].plus(halfFace);
  }

  /**
   * How far the horizontals of that side reach over its vertical's face: to its centre, where the
   * other bay's take over; to its outer edge if there is no other bay.
   */
  Length far(int line, Side side, Length halfFace) {
    Side other = side == Side.LEFT ? Side.RIGHT : Side.LEFT;
    return bay(line, other) >= 0 ? centres[line] : near(line, other, halfFace);
  }

  /** True if the wall turns there. */
  boolean corner(int line) {
    return corners[line];
  }

  /** Index of the bay on that side, or -1. */
  int bay(int line, Side side) {
    return side == Side.LEFT ? bayLeft[line] : bayRight[line];
  }

  /** The middle of a bay. */
  Length middle(Grid.Bay bay) {
    return centres[bay.left()].plus(centres[bay.right()]).half();
  }

  /** True if the second bay begins at the line the first one ends at. */
  boolean adjoin(int bay, int next) {
    return grid.bays().get(bay).right() == grid.bays().get(next).left();
  }
}
