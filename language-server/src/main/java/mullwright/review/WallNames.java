package mullwright.review;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import mullwright.model.Grid;
import mullwright.model.Height;
import mullwright.model.Wall;

/**
 * What lines, floors and rows of a wall are called in a comparison: by the name they have in the
 * newer wall if they are in both.
 *
 * @param lines by index, as {@code floors} and {@code rows}
 * @param places floors and rows by the name the wall's own text gives them
 */
record WallNames(
    List<String> lines, List<String> floors, List<String> rows, Map<String, Name> places) {

  /** A wall by itself, or the newer of two. */
  static WallNames of(Wall wall) {
    Grid grid = wall.grid();
    return named(
        wall,
        unlike(grid.lines().stream().map(Grid.Line::name).toList()),
        unlike(grid.floors().stream().map(Grid.Floor::name).toList()),
        unlike(grid.rows().stream().map(Grid.Row::name).toList()));
  }

  /** The older of two, so that a renamed thing is called as in the newer. */
  static WallNames ofOlder(Wall old, Wall now) {
    WallNames newer = of(now);
    List<String> lines =
        matched(
            old.grid().lines().stream().map(Grid.Line::name).toList(),
            newer.lines,
            old.grid().lines().stream().map(line -> line.x().ticks()).toList(),
            now.grid().lines().stream().map(line -> line.x().ticks()).toList());
    List<String> floors =
        matched(
            old.grid().floors().stream().map(Grid.Floor::name).toList(),
            newer.floors,
            old.grid().floors().stream().map(f -> f.elevation().value().ticks()).toList(),
            now.grid().floors().stream().map(f -> f.elevation().value().ticks()).toList());
    return named(old, lines, floors, rows(old, now, floors, newer));
  }

  private static WallNames named(
      Wall wall, List<String> lines, List<String> floors, List<String> rows) {
    Map<String, Name> places = new HashMap<>();
    for (Grid.Row row : wall.grid().rows()) {
      places.putIfAbsent(row.name(), Name.row(rows.get(row.index())));
    }
    for (Grid.Floor floor : wall.grid().floors()) {
      places.put(floor.name(), Name.floor(floors.get(floor.index())));
    }
    return new WallNames(List.copyOf(lines), List.copyOf(floors), List.copyOf(rows), places);
  }

  /** What a height is measured from, as called here. */
  Optional<Name> base(Height height) {
    return height.base().map(name -> places.getOrDefault(name, Name.other(name)));
  }

  /** A place as called here. */
  Value.Place place(Height height) {
    return new Value.Place(base(height), height.offset());
  }

  /** The line on the left of a bay. */
  String left(Wall wall, int bay) {
    return lines.get(wall.grid().bays().get(bay).left());
  }

  /** The line on the right of a bay. */
  String right(Wall wall, int bay) {
    return lines.get(wall.grid().bays().get(bay).right());
  }

  /**
   * Names of the older list: its own where the newer list has the same; where a thing lies just
   * where a new name lies, or as far from the same neighbour, or alone between the same two, that
   * new name.
   */
  private static List<String> matched(
      List<String> old, List<String> now, List<Long> oldAt, List<Long> nowAt) {
    Set<String> kept = new HashSet<>(now);
    Set<String> free = new HashSet<>(now);
    free.removeAll(old);
    List<String> ids = new ArrayList<>();
    for (int i = 0; i < old.size(); i++) {
      if (kept.contains(old.get(i))) {
        ids.add(old.get(i));
        continue;
      }
      String renamed = null;
      for (int j = 0; j < now.size() && renamed == null; j++) {
        boolean inPlace = oldAt.get(i).equals(nowAt.get(j));
        boolean afterSame =
            i > 0
                && j > 0
                && ids.get(i - 1).equals(now.get(j - 1))
                && oldAt.get(i) - oldAt.get(i - 1) == nowAt.get(j) - nowAt.get(j - 1);
        boolean alone =
            Objects.equals(i == 0 ? null : ids.get(i - 1), j == 0 ? null : now.get(j - 1))
                && Objects.equals(
                    i + 1 == old.size() ? null : old.get(i + 1),
                    j + 1 == now.size() ? null : now.get(j + 1));
        if (free.contains(now.get(j)) && (inPlace || afterSame || alone)) {
          renamed = now.get(j);
        }
      }
      free.remove(renamed);
      ids.add(renamed == null ? old.get(i) : renamed);
    }
    return unlike(ids);
  }

  private record RowKey(String floor, String word) {}

  private static List<String> rows(Wall old, Wall now, List<String> oldFloors, WallNames newer) {
    Map<RowKey, String> byWord = new HashMap<>();
    Map<RowKey, String> byPlace = new HashMap<>();
    for (Grid.Row row : now.grid().rows()) {
      String id = newer.rows.get(row.index());
      byWord.putIfAbsent(new RowKey(floor(row, newer.floors), row.base()), id);
      byPlace.putIfAbsent(new RowKey(floor(row, newer.floors), heights(row)), id);
    }
    List<String> ids = new ArrayList<>();
    Set<String> taken = new HashSet<>();
    for (Grid.Row row : old.grid().rows()) {
      String id = byWord.get(new RowKey(floor(row, oldFloors), row.base()));
      ids.add(id);
      taken.add(id);
    }
    for (Grid.Row row : old.grid().rows()) {
      if (ids.get(row.index()) == null) {
        String there = byPlace.get(new RowKey(floor(row, oldFloors), heights(row)));
        ids.set(row.index(), there != null && taken.add(there) ? there : row.name());
      }
    }
    return unlike(ids);
  }

  private static String floor(Grid.Row row, List<String> floors) {
    return row.floor().map(floors::get).orElse("");
  }

  private static String heights(Grid.Row row) {
    return row.left().offset().ticks() + " " + row.right().offset().ticks() + row.edge();
  }

  /** The same, but none twice: a name that stands for two things gets a stroke the second time. */
  private static List<String> unlike(List<String> names) {
    Set<String> seen = new HashSet<>();
    List<String> ids = new ArrayList<>();
    for (String name : names) {
      String id = name;
      while (!seen.add(id)) {
        id += "′";
      }
      ids.add(id);
    }
    return ids;
  }
}
