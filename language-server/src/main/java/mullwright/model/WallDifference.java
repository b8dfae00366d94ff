package mullwright.model;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.ToIntFunction;

/**
 * Where one wall differs from another whose lines, floors and rows are the same: on which lines
 * something else stands, in which bays something else lies.
 *
 * <p>Where in the text a thing is said makes no difference, since an edit moves all that follows.
 *
 * @param lines by index
 * @param bays by index
 */
public record WallDifference(BitSet lines, BitSet bays) {
  /** Keeps sets of its own, and hands out copies. */
  public WallDifference {
    lines = (BitSet) lines.clone();
    bays = (BitSet) bays.clone();
  }

  @Override
  public BitSet lines() {
    return (BitSet) lines.clone();
  }

  @Override
  public BitSet bays() {
    return (BitSet) bays.clone();
  }

  /**
   * The difference of two walls; empty if they differ in what is said of the whole wall, or in
   * lines, floors or rows.
   */
  public static Optional<WallDifference> of(Wall before, Wall after) {
    boolean sameFrame =
        before.name().equals(after.name())
            && SameMeaning.grids(before.grid(), after.grid())
            && before.system().equals(after.system())
            && before.finish().equals(after.finish())
            && before.criteria().equals(after.criteria())
            && before.fabrication().equals(after.fabrication())
            && SameMeaning.installations(before.installation(), after.installation());
    if (!sameFrame) {
      return Optional.empty();
    }
    BitSet lines = new BitSet();
    BitSet bays = new BitSet();
    compare(before, after, lines, bays);
    return Optional.of(new WallDifference(lines, bays));
  }

  /** Marks the lines and bays in which the walls differ. */
  private static void compare(Wall before, Wall after, BitSet lines, BitSet bays) {
    SameMeaning same = new SameMeaning();
    openings(before.grid(), after.grid(), lines, bays);
    Members was = before.members();
    Members is = after.members();
    new Walk<>(Members.Vertical::line, same::verticals, lines)
        .along(was.verticals(), is.verticals());
    new Walk<>(Members.Splice::line, same::splices, lines).along(was.splices(), is.splices());
    new Walk<>(Members.Reinforce::line, same::reinforcements, lines)
        .along(was.reinforcements(), is.reinforcements());
    new Walk<>(Members.Bracket::line, same::brackets, lines).along(was.brackets(), is.brackets());
    new Walk<>(AnchorUse::line, same::anchors, lines).along(before.anchors(), after.anchors());
    new Walk<>(LiteUse::bay, same::lites, bays).along(before.lites(), after.lites());
    int count = Math.max(1, after.grid().bays().size());
    BitSet places = new BitSet();
    ToIntFunction<Members.Horizontal> place = at -> at.row() * count + at.bay();
    new Walk<>(place, same::horizontals, places).along(was.horizontals(), is.horizontals());
    places.stream().forEach(at -> bays.set(at % count));
  }

  /** Marks all that an opening reaches which only one of the grids has. */
  private static void openings(Grid before, Grid after, BitSet lines, BitSet bays) {
    if (before == after) {
      return;
    }
    for (Grid grid : List.of(before, after)) {
      Grid other = grid == before ? after : before;
      for (Grid.Opening opening : grid.openings()) {
        if (other.openings().stream().noneMatch(it -> SameMeaning.openings(it, opening))) {
          for (int bay : opening.bays()) {
            bays.set(bay);
            lines.set(grid.bays().get(bay).left(), grid.bays().get(bay).right() + 1);
          }
        }
      }
    }
  }

  /**
   * Goes along two lists in the order of their places, and marks the places of all that has no
   * equal beside it in the other.
   */
  private record Walk<T>(ToIntFunction<T> place, BiPredicate<T, T> same, BitSet differ) {
    void along(List<T> before, List<T> after) {
      if (before == after) {
        return;
      }
      if (before instanceof Repeated<T> one
          && after instanceof Repeated<T> other
          && one.hasPlacesOf(other)) {
        one.differences(other, same, index -> differ.set(place.applyAsInt(one.get(index))));
        return;
      }
      int i = 0;
      int j = 0;
      while (i < before.size() && j < after.size()) {
        T one = before.get(i);
        T other = after.get(j);
        int left = place.applyAsInt(one);
        int right = place.applyAsInt(other);
        if (left != right || !same.test(one, other)) {
          differ.set(Math.min(left, right));
        }
        i += left <= right ? 1 : 0;
        j += right <= left ? 1 : 0;
      }
      rest(before, i);
      rest(after, j);
    }

    private void rest(List<T> things, int from) {
      for (T thing : things.subList(from, things.size())) {
        differ.set(place.applyAsInt(thing));
      }
    }
  }
}
