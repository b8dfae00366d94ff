package mullwright.model;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import mullwright.quantity.Length;

/** The rows of a wall, bay by bay, from below. */
final class Rows {
  private final List<Grid.Row> rows;
  private final Bays bays;
  private final List<int[]> byBay = new ArrayList<>();

  /** The stretches of rows of one name, where there are several. */
  private final Map<String, List<Integer>> stepped = new HashMap<>();

  Rows(List<Grid.Row> rows, Bays bays) {
    this.rows = rows;
    this.bays = bays;
    List<List<Integer>> lists = new ArrayList<>();
    boolean slopes = false;
    for (int bay = 0; bay < bays.count(); bay++) {
      lists.add(new ArrayList<>());
    }
    for (Grid.Row row : rows) {
      slopes |= row.slopes();
      for (int bay : row.bays()) {
        lists.get(bay).add(row.index());
      }
    }
    for (int bay = 0; bay < lists.size(); bay++) {
      if (slopes) {
        int at = bay;
        lists.get(bay).sort(Comparator.comparing(row -> middle(row, at)));
      }
      int[] inBay = new int[lists.get(bay).size()];
      for (int i = 0; i < inBay.length; i++) {
        inBay[i] = lists.get(bay).get(i);
      }
      byBay.add(inBay);
    }
    findSteps();
  }

  private void findSteps() {
    Map<String, Integer> first = new HashMap<>();
    for (Grid.Row row : rows) {
      Integer before = first.putIfAbsent(row.name(), row.index());
      if (before != null) {
        stepped.computeIfAbsent(row.name(), name -> new ArrayList<>(List.of(before)));
        stepped.get(row.name()).add(row.index());
      }
    }
  }

  /** True for a row that ends the frame below or above by its name. */
  static boolean isEnd(String base) {
    return base.equals("sill") || base.equals("head");
  }

  List<Grid.Row> all() {
    return rows;
  }

  Grid.Row get(int row) {
    return rows.get(row);
  }

  /** The rows of a bay from below, by index. Not to be changed. */
  int[] of(int bay) {
    return byBay.get(bay);
  }

  /** True if other stretches of the row run in other bays. */
  boolean steps(int row) {
    return stepped.containsKey(rows.get(row).name());
  }

  /** The stretch of a row that runs in that bay, where the row steps from bay to bay. */
  int inBay(int row, int bay) {
    List<Integer> stretches = stepped.get(rows.get(row).name());
    if (stretches != null) {
      for (int stretch : stretches) {
        if (rows.get(stretch).bays().contains(bay)) {
          return stretch;
        }
      }
    }
    return row;
  }

  /** Height of a row's line in the middle of a bay; beyond its reach the line goes on. */
  Length middle(int row, int bay) {
    Grid.Row at = rows.get(row);
    return bays.count() == 0 || !at.slopes()
        ? at.left().elevation()
        : at(row, bays.leftX(bay).plus(bays.rightX(bay)).half());
  }

  /** Height of a row's line at a place along the wall. */
  Length at(int row, Length x) {
    Grid.Row at = rows.get(row);
    Length left = at.left().elevation();
    if (!at.slopes() || at.bays().isEmpty()) {
      return left;
    }
    Length start = bays.leftX(at.bays().get(0));
    Length run = bays.rightX(at.bays().get(at.bays().size() - 1)).minus(start);
    Length rise = at.right().elevation().minus(left);
    return left.plus(rise.scaled(x.minus(start).ticks(), run.ticks()));
  }

  /** Reports rows of one bay that lie at one height or cross, once for each pair of statements. */
  void checkOrder(Collector collector) {
    Set<List<Origin>> told = new HashSet<>();
    for (int bay = 0; bay < byBay.size(); bay++) {
      int[] order = byBay.get(bay);
      for (int i = 1; i < order.length; i++) {
        Grid.Row below = rows.get(order[i - 1]);
        Grid.Row above = rows.get(order[i]);
        Length x = bays.leftX(bay);
        Length end = bays.rightX(bay);
        boolean left = at(above.index(), x).isLongerThan(at(below.index(), x));
        boolean right = at(above.index(), end).isLongerThan(at(below.index(), end));
        if ((!left || !right) && told.add(List.of(below.origin(), above.origin()))) {
          collector.problem(
              new ModelProblem.OutOfOrder(
                  "row", above.name(), below.name(), below.origin(), above.origin()));
        }
      }
    }
  }
}
