package mullwright.installation;

import java.util.List;
import mullwright.layout.WallLayout;
import mullwright.model.Grid;
import mullwright.model.Installation;

/**
 * By which method each bay is put up, and in which direction.
 *
 * <p>Stretches are worked in the order written; a bay nobody names is put up stick by stick from
 * the left, after the others (common practice). In a ladder stretch every other bay, counted from
 * the side the work starts at, is a ladder; the bays between are filled in.
 */
final class Stretches {
  private final boolean[] ladder;
  private final boolean[] infill;
  private final int[] placeOfBay;
  private final int[] placeOfLine;
  private final boolean[] fromRight;

  Stretches(WallLayout layout) {
    Grid grid = layout.wall().grid();
    ladder = new boolean[grid.bays().size()];
    infill = new boolean[grid.bays().size()];
    fromRight = new boolean[grid.bays().size()];
    placeOfBay = new int[grid.bays().size()];
    placeOfLine = new int[grid.lines().size()];
    int next = 1;
    for (Installation.Stretch stretch : layout.wall().installation().stretches()) {
      next = place(grid, stretch, next);
    }
    for (Grid.Bay bay : grid.bays()) {
      if (placeOfBay[bay.index()] == 0) {
        next = place(bay, false, next);
      }
    }
  }

  private int place(Grid grid, Installation.Stretch stretch, int next) {
    int first = Math.min(stretch.firstLine(), stretch.lastLine());
    int last = Math.max(stretch.firstLine(), stretch.lastLine());
    List<Grid.Bay> bays =
        grid.bays().stream()
            .filter(bay -> bay.left() >= first && bay.right() <= last)
            .filter(bay -> placeOfBay[bay.index()] == 0)
            .toList();
    for (int i = 0; i < bays.size(); i++) {
      Grid.Bay bay = bays.get(stretch.fromRight() ? bays.size() - 1 - i : i);
      if (stretch.method() == Installation.Method.STICK) {
        next = place(bay, stretch.fromRight(), next);
        continue;
      }
      // a line shared by two belongs to the one set first
      boolean free = placeOfLine[bay.left()] == 0 && placeOfLine[bay.right()] == 0;
      ladder[bay.index()] = free;
      infill[bay.index()] = !free;
      if (free || i == bays.size() - 1) {
        next = place(bay, stretch.fromRight(), next);
      } else {
        placeOfBay[bay.index()] = next++;
      }
    }
    return next;
  }

  private int place(Grid.Bay bay, boolean right, int next) {
    int near = right ? bay.right() : bay.left();
    int far = right ? bay.left() : bay.right();
    int at = next;
    if (placeOfLine[near] == 0) {
      placeOfLine[near] = at++;
    }
    if (placeOfLine[far] == 0) {
      placeOfLine[far] = at++;
    }
    placeOfBay[bay.index()] = at++;
    fromRight[bay.index()] = right;
    return at;
  }

  /** True if the bay is pre-assembled. */
  boolean ladder(int bay) {
    return ladder[bay];
  }

  /** True if the bay is filled in between two ladders. */
  boolean infill(int bay) {
    return infill[bay];
  }

  /** Place of a bay in the work. */
  int ofBay(int bay) {
    return placeOfBay[bay];
  }

  /** Place of a line's verticals in the work; 0 for a line without a bay. */
  int ofLine(int line) {
    return placeOfLine[line];
  }
}
