package mullwright.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.model.Grid;
import mullwright.model.Height;
import mullwright.model.Members;
import mullwright.model.Origin;
import mullwright.model.Wall;
import mullwright.quantity.Ascending;
import mullwright.quantity.Length;

/**
 * The rows bay by bay: which horizontal is where, once the openings have taken theirs.
 *
 * <p>The grid says where a row runs, the members only what it is made of there; a row without a
 * member stands with an unknown profile.
 */
final class Bars {
  private final Grid grid;
  private final Lines lines;
  private final Map<String, List<Integer>> rowsByName = new HashMap<>();
  private final Bar[][] byRow;
  private final List<List<Bar>> byBay;

  Bars(Wall wall, Profiles profiles, Lines lines) {
    this.grid = wall.grid();
    this.lines = lines;
    this.byRow = new Bar[grid.rows().size()][];
    this.byBay = new ArrayList<>(grid.bays().size());
    for (Grid.Row row : grid.rows()) {
      byRow[row.index()] = new Bar[row.bays().size()];
      rowsByName.computeIfAbsent(row.name(), name -> new ArrayList<>(1)).add(row.index());
    }
    grid.bays().forEach(bay -> byBay.add(new ArrayList<>()));
    place(wall, profiles);
    sort();
    shiftEdges();
  }

  private void place(Wall wall, Profiles profiles) {
    Widths[][] widths = new Widths[byRow.length][];
    Origin[][] origins = new Origin[byRow.length][];
    for (int row = 0; row < byRow.length; row++) {
      widths[row] = new Widths[byRow[row].length];
      origins[row] = new Origin[byRow[row].length];
    }
    for (Members.Horizontal member : wall.members().horizontals()) {
      int at = placeInRow(member.row(), member.bay());
      if (at >= 0) {
        widths[member.row()][at] = profiles.widths(member.profile().value());
        origins[member.row()][at] = member.origin();
      }
    }
    Length[] middles = new Length[grid.bays().size()];
    grid.bays().forEach(bay -> middles[bay.index()] = lines.middle(bay));
    for (Grid.Row row : grid.rows()) {
      RowLine line = lineOf(row);
      for (int at = 0; at < row.bays().size(); at++) {
        int bay = row.bays().get(at);
        Widths known = widths[row.index()][at];
        Bar bar =
            new Bar(
                row.index(),
                bay,
                line,
                Length.ZERO,
                line.yAt(middles[bay]),
                known == null ? Widths.UNKNOWN : known,
                known == null ? row.origin() : origins[row.index()][at]);
        byRow[row.index()][at] = bar;
        byBay.get(bay).add(bar);
      }
    }
  }

  private RowLine lineOf(Grid.Row row) {
    if (row.bays().isEmpty()) {
      return RowLine.level(row.left().elevation());
    }
    Grid.Bay first = grid.bays().get(row.bays().get(0));
    Grid.Bay last = grid.bays().get(row.bays().get(row.bays().size() - 1));
    return RowLine.of(row, grid.lines().get(first.left()).x(), grid.lines().get(last.right()).x());
  }

  private void sort() {
    for (List<Bar> bars : byBay) {
      for (int i = 1; i < bars.size(); i++) {
        if (bars.get(i).middle().isShorterThan(bars.get(i - 1).middle())) {
          bars.sort(Comparator.comparing(Bar::middle));
          break;
        }
      }
    }
  }

  // only the outermost row of a bay has an outer edge
  private void shiftEdges() {
    if (grid.rows().stream().noneMatch(Grid.Row::edge)) {
      return;
    }
    for (List<Bar> bars : byBay) {
      for (int i = 0; i < bars.size(); i++) {
        Bar bar = bars.get(i);
        boolean lowest = i == 0 && bars.size() > 1;
        boolean highest = i > 0 && i == bars.size() - 1;
        if (grid.rows().get(bar.row()).edge() && (lowest || highest)) {
          Length half = bar.line().upright(bar.widths().halfFace());
          Bar shifted = bar.shifted(lowest ? half : half.negated());
          bars.set(i, shifted);
          byRow[bar.row()][placeInRow(bar.row(), bar.bay())] = shifted;
        }
      }
    }
  }

  // negative if the row does not run there; nearly every row runs through all bays
  private int placeInRow(int row, int bay) {
    int runs = byRow[row].length;
    return runs == byBay.size() && bay < runs
        ? bay
        : Collections.binarySearch(grid.rows().get(row).bays(), bay);
  }

  /** Takes those of a bay out whose middle lies strictly between two heights. */
  void drop(int bay, Length bottom, Length top) {
    List<Bar> bars = byBay.get(bay);
    int from = over(bay, bottom);
    int to = from;
    for (; to < bars.size() && bars.get(to).middle().isShorterThan(top); to++) {
      int row = bars.get(to).row();
      byRow[row][placeInRow(row, bay)] = null;
    }
    bars.subList(from, to).clear();
  }

  /** A row's bars from the left, one for each of its bays; null where an opening took it. */
  Bar[] ofRow(int row) {
    return byRow[row];
  }

  /** The bar of that row in that bay, or null if there is none. */
  Bar in(int bay, int row) {
    int at = placeInRow(row, bay);
    return at < 0 ? null : byRow[row][at];
  }

  /** A bay's bars from below. */
  List<Bar> ofBay(int bay) {
    return byBay.get(bay);
  }

  /**
   * Place among a bay's bars of the lowest whose middle is over a height; their count if none is.
   */
  int over(int bay, Length height) {
    List<Bar> bars = byBay.get(bay);
    return Ascending.leading(bars.size(), i -> !bars.get(i).middle().isLongerThan(height));
  }

  /** Place of a bar among those of its bay. */
  int place(Bar bar) {
    List<Bar> bars = byBay.get(bar.bay());
    int place = over(bar.bay(), bar.middle()) - 1;
    while (bars.get(place) != bar) {
      place--;
    }
    return place;
  }

  /** The bar in that bay of the row a height names right at it, with no offset. */
  Optional<Bar> named(Height height, int bay) {
    if (bay < 0 || height.base().isEmpty() || height.offset().signum() != 0) {
      return Optional.empty();
    }
    for (int row : rowsByName.getOrDefault(height.base().get(), List.of())) {
      Bar bar = in(bay, row);
      if (bar != null) {
        return Optional.of(bar);
      }
    }
    return Optional.empty();
  }

  /**
   * The height of a row's centre where the row itself does not run, as beside a door that took it:
   * by one of its bars in another bay, since the height of a row given by an edge is not its
   * centre's.
   */
  Optional<Length> elsewhere(Height height, Length x) {
    if (height.base().isEmpty() || height.offset().signum() != 0) {
      return Optional.empty();
    }
    for (int row : rowsByName.getOrDefault(height.base().get(), List.of())) {
      for (Bar bar : byRow[row]) {
        if (bar != null && bar.line().yAt(x).equals(height.elevation())) {
          return Optional.of(bar.yAt(x));
        }
      }
    }
    return Optional.empty();
  }

  /** The bar whose centre is at that height in the middle of the bay. */
  Optional<Bar> at(Length height, int bay) {
    List<Bar> bars = byBay.get(bay);
    int place = over(bay, height);
    while (place > 0 && bars.get(place - 1).middle().equals(height)) {
      place--;
    }
    return place < bars.size() && bars.get(place).middle().equals(height)
        ? Optional.of(bars.get(place))
        : Optional.empty();
  }
}
