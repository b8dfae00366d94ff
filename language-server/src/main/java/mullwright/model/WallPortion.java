package mullwright.model;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;

/**
 * Cuts a wall down to what stands on some neighbouring lines and in the bays between them.
 *
 * <p>Lines, bays, floors and rows keep their indices, and all that is said of the whole wall stays:
 * a place has the same name, the same distance from the wall's ends and the same wind. Rows run
 * through the bays that are left only; a sloped row keeps its bays, since it climbs from its first
 * to its last.
 */
public final class WallPortion {
  private final int firstLine;
  private final int lastLine;
  private final List<Grid.Bay> bays;

  private WallPortion(int firstLine, int lastLine, List<Grid.Bay> bays) {
    this.firstLine = firstLine;
    this.lastLine = lastLine;
    this.bays = bays;
  }

  /** The wall from one line to another, both included, by index. */
  public static Wall of(Wall wall, int firstLine, int lastLine) {
    return new WallPortion(firstLine, lastLine, wall.grid().bays()).cut(wall);
  }

  private Wall cut(Wall wall) {
    Members members = wall.members();
    return new Wall(
        wall.name(),
        wall.origin(),
        wall.system(),
        wall.finish(),
        wall.criteria(),
        wall.fabrication(),
        grid(wall.grid()),
        new Members(
            onLines(members.verticals(), Members.Vertical::line),
            inBays(members.horizontals(), Members.Horizontal::bay),
            onLines(members.splices(), Members.Splice::line),
            onLines(members.reinforcements(), Members.Reinforce::line),
            onLines(members.brackets(), Members.Bracket::line)),
        onLines(wall.anchors(), AnchorUse::line),
        inBays(wall.lites(), LiteUse::bay),
        wall.installation());
  }

  private Grid grid(Grid grid) {
    List<Grid.Row> rows = new ArrayList<>(grid.rows().size());
    for (Grid.Row row : grid.rows()) {
      rows.add(row.slopes() ? row : row(row));
    }
    List<Grid.Opening> openings = new ArrayList<>();
    for (Grid.Opening opening : grid.openings()) {
      if (opening.bays().stream().allMatch(this::holds)) {
        openings.add(opening);
      }
    }
    return new Grid(
        grid.faces(),
        grid.lines(),
        grid.bays(),
        grid.corners(),
        grid.joints(),
        grid.floors(),
        rows,
        openings);
  }

  private Grid.Row row(Grid.Row row) {
    return new Grid.Row(
        row.index(),
        row.name(),
        row.base(),
        row.floor(),
        row.left(),
        row.right(),
        row.edge(),
        kept(row.bays()),
        row.origin());
  }

  /** Those of ascending bays that are left. */
  private List<Integer> kept(List<Integer> of) {
    int from = 0;
    int to = of.size();
    if (to == bays.size()) {
      // a row through all bays: each has its own number as its place
      while (from < to && bays.get(from).left() < firstLine) {
        from++;
      }
      while (to > from && bays.get(to - 1).right() > lastLine) {
        to--;
      }
      return of.subList(from, to);
    }
    List<Integer> kept = new ArrayList<>();
    for (int bay : of) {
      if (holds(bay)) {
        kept.add(bay);
      }
    }
    return kept;
  }

  private boolean holds(int bay) {
    return bays.get(bay).left() >= firstLine && bays.get(bay).right() <= lastLine;
  }

  private <T> List<T> inBays(List<T> things, ToIntFunction<T> bay) {
    List<T> kept = new ArrayList<>();
    for (T thing : things) {
      if (holds(bay.applyAsInt(thing))) {
        kept.add(thing);
      }
    }
    return kept;
  }

  private <T> List<T> onLines(List<T> things, ToIntFunction<T> line) {
    List<T> kept = new ArrayList<>();
    for (T thing : things) {
      int at = line.applyAsInt(thing);
      if (firstLine <= at && at <= lastLine) {
        kept.add(thing);
      }
    }
    return kept;
  }
}
