package mullwright.model;

import java.util.ArrayList;
import java.util.List;
import mullwright.quantity.Length;

/**
 * The openings of the frame that take a lite: in each bay the spaces between neighbouring rows,
 * once doors, voids, louvres and vents have taken theirs.
 */
final class Cells {
  private final Rows rows;
  private final List<Cell> cells = new ArrayList<>();
  private final int[] first;
  private final List<int[]> standing = new ArrayList<>();
  private final List<List<Grid.Opening>> openings = new ArrayList<>();

  /** One of them: its bay, the row under it and the row over it. */
  record Cell(int bay, int below, int above, long bottom, long top) {}

  Cells(GridNames names) {
    rows = names.order();
    int bays = names.bays().count();
    for (int bay = 0; bay < bays; bay++) {
      openings.add(new ArrayList<>(0));
    }
    for (Grid.Opening opening : names.grid().openings()) {
      opening.bays().forEach(bay -> openings.get(bay).add(opening));
    }
    first = new int[bays + 1];
    for (int bay = 0; bay < bays; bay++) {
      int[] left = standing(bay, openings.get(bay));
      standing.add(left);
      first[bay] = cells.size();
      for (int i = 1; i < left.length; i++) {
        Length bottom = rows.middle(left[i - 1], bay);
        Length top = rows.middle(left[i], bay);
        if (!filled(openings.get(bay), bottom, top)) {
          cells.add(new Cell(bay, left[i - 1], left[i], bottom.ticks(), top.ticks()));
        }
      }
    }
    first[bays] = cells.size();
  }

  /** The rows of a bay that no opening takes away. */
  private int[] standing(int bay, List<Grid.Opening> openings) {
    int[] all = rows.of(bay);
    if (openings.isEmpty()) {
      return all;
    }
    int[] left = new int[all.length];
    int count = 0;
    for (int row : all) {
      Length at = rows.middle(row, bay);
      boolean taken = false;
      for (Grid.Opening opening : openings) {
        taken |= inside(opening, at);
      }
      if (!taken) {
        left[count++] = row;
      }
    }
    return java.util.Arrays.copyOf(left, count);
  }

  private static boolean inside(Grid.Opening opening, Length at) {
    return at.isLongerThan(opening.bottom().elevation())
        && at.isShorterThan(opening.top().elevation());
  }

  private static boolean filled(List<Grid.Opening> openings, Length bottom, Length top) {
    for (Grid.Opening opening : openings) {
      if (!bottom.isShorterThan(opening.bottom().elevation())
          && !top.isLongerThan(opening.top().elevation())) {
        return true;
      }
    }
    return false;
  }

  /** True if a door, void, louvre or vent reaches into a cell. */
  boolean opened(int bay, Cell cell) {
    for (Grid.Opening opening : openings.get(bay)) {
      if (opening.bottom().elevation().ticks() < cell.top()
          && cell.bottom() < opening.top().elevation().ticks()) {
        return true;
      }
    }
    return false;
  }

  int count() {
    return cells.size();
  }

  Cell get(int cell) {
    return cells.get(cell);
  }

  /** The cells of a bay are from here to {@code firstOf(bay + 1)}. */
  int firstOf(int bay) {
    return first[bay];
  }

  /**
   * The lowest cell of a bay that begins at a height or over it; the end of the bay if none does.
   */
  int from(int bay, long height) {
    int low = first[bay];
    int high = first[bay + 1];
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (cells.get(middle).bottom() < height) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** The rows that stand in a bay, from below. */
  int[] standing(int bay) {
    return standing.get(bay);
  }
}
