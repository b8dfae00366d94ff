package mullwright.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import mullwright.quantity.Ascending;

/**
 * The openings of the frame that take a lite: in each bay the spaces between neighbouring rows,
 * once doors, voids, louvres and vents have taken theirs.
 */
final class Cells {
  private final Rows rows;
  private final boolean level;
  private final List<Cell> cells = new ArrayList<>();
  private final int[] first;
  private final int[] places;
  private final List<int[]> standing = new ArrayList<>();
  private final List<OpeningTops> openings = new ArrayList<>();

  /** One of them: its bay, the row under it and the row over it. */
  record Cell(int bay, int below, int above, long bottom, long top) {}

  Cells(GridNames names) {
    rows = names.order();
    level = names.grid().rows().stream().noneMatch(Grid.Row::slopes);
    int bays = names.bays().count();
    List<List<Grid.Opening>> inBay = new ArrayList<>();
    for (int bay = 0; bay < bays; bay++) {
      inBay.add(new ArrayList<>(0));
    }
    for (Grid.Opening opening : names.grid().openings()) {
      opening.bays().forEach(bay -> inBay.get(bay).add(opening));
    }
    inBay.forEach(of -> openings.add(new OpeningTops(of)));
    first = new int[bays + 1];
    for (int bay = 0; bay < bays; bay++) {
      OpeningTops tops = openings.get(bay);
      int[] left = inBay.get(bay).isEmpty() ? rows.of(bay) : standing(bay, tops);
      standing.add(left);
      first[bay] = cells.size();
      for (int i = 1; i < left.length; i++) {
        long bottom = rows.middle(left[i - 1], bay).ticks();
        long top = rows.middle(left[i], bay).ticks();
        // an opening that begins at the lower row or under it and goes up to the upper fills it
        if (tops.ofThoseUnder(bottom + 1) < top) {
          cells.add(new Cell(bay, left[i - 1], left[i], bottom, top));
        }
      }
    }
    first[bays] = cells.size();
    places = new int[Repeated.NUMBERS * cells.size()];
    for (int cell = 0; cell < cells.size(); cell++) {
      places[Repeated.NUMBERS * cell] = cells.get(cell).bay();
      places[Repeated.NUMBERS * cell + 1] = cells.get(cell).below();
      places[Repeated.NUMBERS * cell + 2] = cells.get(cell).above();
    }
  }

  /** The rows of a bay that no opening takes away. */
  private int[] standing(int bay, OpeningTops openings) {
    int[] all = rows.of(bay);
    int[] left = new int[all.length];
    int count = 0;
    for (int row : all) {
      long at = rows.middle(row, bay).ticks();
      if (openings.ofThoseUnder(at) <= at) {
        left[count++] = row;
      }
    }
    return Arrays.copyOf(left, count);
  }

  /** True if two bays have the very same cells, without openings and at the same heights. */
  boolean alike(int one, int other) {
    return level
        && openings.get(one).isEmpty()
        && openings.get(other).isEmpty()
        && Arrays.equals(standing.get(one), standing.get(other));
  }

  /** True if a door, void, louvre or vent reaches into a cell. */
  boolean opened(int bay, Cell cell) {
    return openings.get(bay).ofThoseUnder(cell.top()) > cell.bottom();
  }

  int count() {
    return cells.size();
  }

  Cell get(int cell) {
    return cells.get(cell);
  }

  /**
   * Of each cell its bay, the row under it and the row over it, one after the other; not to be
   * written to.
   */
  int[] places() {
    return places;
  }

  /** The cells of a bay are from here to {@code firstOf(bay + 1)}. */
  int firstOf(int bay) {
    return first[bay];
  }

  /**
   * The lowest cell of a bay that begins at a height or over it; the end of the bay if none does.
   */
  int from(int bay, long height) {
    return Ascending.leading(first[bay], first[bay + 1], cell -> cells.get(cell).bottom() < height);
  }

  /** The rows that stand in a bay, from below. */
  int[] standing(int bay) {
    return standing.get(bay);
  }
}
