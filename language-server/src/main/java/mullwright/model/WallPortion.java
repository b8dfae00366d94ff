package mullwright.model;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.function.ToIntFunction;
import mullwright.quantity.Ascending;

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

  /** The bays that are left. */
  private final BitSet held = new BitSet();

  private WallPortion(int firstLine, int lastLine, List<Grid.Bay> bays) {
    this.firstLine = firstLine;
    this.lastLine = lastLine;
    for (Grid.Bay bay : bays) {
      held.set(bay.index(), bay.left() >= firstLine && bay.right() <= lastLine);
    }
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
            inBays(members.horizontals()),
            onLines(members.splices(), Members.Splice::line),
            onLines(members.reinforcements(), Members.Reinforce::line),
            onLines(members.brackets(), Members.Bracket::line)),
        onLines(wall.anchors(), AnchorUse::line),
        lites(wall.lites()),
        wall.installation());
  }

  private Grid grid(Grid grid) {
    List<Grid.Row> rows = new ArrayList<>(grid.rows().size());
    for (Grid.Row row : grid.rows()) {
      rows.add(row.slopes() ? row : row(row));
    }
    List<Grid.Opening> openings = new ArrayList<>();
    for (Grid.Opening opening : grid.openings()) {
      if (opening.bays().stream().allMatch(held::get)) {
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

  /** Of ascending bays those that are left. */
  private List<Integer> kept(List<Integer> of) {
    int first = held.nextSetBit(0);
    return first < 0 ? List.of() : between(of, Integer::intValue, first, held.length() - 1);
  }

  private List<Members.Horizontal> inBays(List<Members.Horizontal> horizontals) {
    if (horizontals instanceof Repeated<Members.Horizontal> repeated) {
      return repeated.where(Members.Horizontal.BAY, held);
    }
    List<Members.Horizontal> kept = new ArrayList<>();
    for (int i = 0; i < horizontals.size(); i++) {
      if (held.get(horizontals.get(i).bay())) {
        kept.add(horizontals.get(i));
      }
    }
    return kept;
  }

  /** Of things by bay from the left, those in bays that are left. */
  private List<LiteUse> lites(List<LiteUse> lites) {
    int first = held.nextSetBit(0);
    return first < 0 ? List.of() : between(lites, LiteUse::bay, first, held.length() - 1);
  }

  private <T> List<T> onLines(List<T> things, ToIntFunction<T> line) {
    return between(things, line, firstLine, lastLine);
  }

  /** Of things in ascending order of their places, those from one place to another. */
  private static <T> List<T> between(List<T> things, ToIntFunction<T> place, int first, int last) {
    return things.subList(before(things, place, first), before(things, place, last + 1));
  }

  /** How many stand before a place. */
  private static <T> int before(List<T> things, ToIntFunction<T> place, int at) {
    return Ascending.leading(things.size(), i -> place.applyAsInt(things.get(i)) < at);
  }
}
