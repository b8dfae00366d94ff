package mullwright.model;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.ToIntFunction;

/**
 * Where one wall differs from another of the same grid: on which lines something else stands, in
 * which bays something else lies.
 *
 * <p>Where in the text a thing is said makes no difference, since an edit moves all that follows.
 *
 * @param lines by index
 * @param bays by index
 */
public record WallDifference(BitSet lines, BitSet bays) {
  /**
   * The difference of two walls; empty if they differ in what is said of the whole wall, or have
   * not the same grid.
   */
  public static Optional<WallDifference> of(Wall before, Wall after) {
    boolean sameFrame =
        before.name().equals(after.name())
            && before.grid().equals(after.grid())
            && before.system().equals(after.system())
            && before.finish().equals(after.finish())
            && before.criteria().equals(after.criteria())
            && before.fabrication().equals(after.fabrication())
            && same(
                before.installation().stretches(),
                after.installation().stretches(),
                WallDifference::same);
    if (!sameFrame) {
      return Optional.empty();
    }
    WallDifference difference = new WallDifference(new BitSet(), new BitSet());
    difference.compare(before, after);
    return Optional.of(difference);
  }

  private void compare(Wall before, Wall after) {
    Members was = before.members();
    Members is = after.members();
    new Walk<>(Members.Vertical::line, WallDifference::same, lines)
        .along(was.verticals(), is.verticals());
    new Walk<>(Members.Splice::line, WallDifference::same, lines)
        .along(was.splices(), is.splices());
    new Walk<>(Members.Reinforce::line, WallDifference::same, lines)
        .along(was.reinforcements(), is.reinforcements());
    new Walk<>(Members.Bracket::line, WallDifference::same, lines)
        .along(was.brackets(), is.brackets());
    new Walk<>(AnchorUse::line, WallDifference::same, lines)
        .along(before.anchors(), after.anchors());
    new Walk<>(LiteUse::bay, WallDifference::same, bays).along(before.lites(), after.lites());
    int count = Math.max(1, after.grid().bays().size());
    BitSet places = new BitSet();
    new Walk<Members.Horizontal>(
            horizontal -> horizontal.row() * count + horizontal.bay(), WallDifference::same, places)
        .along(was.horizontals(), is.horizontals());
    places.stream().forEach(place -> bays.set(place % count));
  }

  /**
   * Goes along two lists in the order of their places, and marks the places of all that has no
   * equal beside it in the other.
   */
  private record Walk<T>(ToIntFunction<T> place, BiPredicate<T, T> same, BitSet differ) {
    void along(List<T> before, List<T> after) {
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

  private static boolean same(Members.Horizontal one, Members.Horizontal other) {
    return same(one.profile(), other.profile());
  }

  private static boolean same(Members.Vertical one, Members.Vertical other) {
    return same(one.profile(), other.profile())
        && sameHeight(one.from(), other.from())
        && sameHeight(one.to(), other.to());
  }

  private static boolean same(Members.Splice one, Members.Splice other) {
    return same(one.at(), other.at())
        && same(one.gap(), other.gap())
        && sameGiven(one.sleeve(), other.sleeve());
  }

  private static boolean same(Members.Reinforce one, Members.Reinforce other) {
    return same(one.part(), other.part())
        && sameHeight(one.from(), other.from())
        && sameHeight(one.to(), other.to())
        && sameGiven(one.isolation(), other.isolation());
  }

  private static boolean same(Members.Bracket one, Members.Bracket other) {
    return same(one.at(), other.at())
        && same(one.loads(), other.loads(), WallDifference::same)
        && same(one.bolted(), other.bolted(), WallDifference::same);
  }

  private static boolean same(Members.Load one, Members.Load other) {
    return same(one.force(), other.force())
        && one.direction().equals(other.direction())
        && sameGiven(one.arm(), other.arm());
  }

  private static boolean same(Members.Fixing one, Members.Fixing other) {
    return one.count() == other.count() && same(one.fastener(), other.fastener());
  }

  private static boolean same(AnchorUse one, AnchorUse other) {
    return one.kind() == other.kind()
        && same(one.place(), other.place())
        && one.floor().equals(other.floor())
        && one.heightStated() == other.heightStated()
        && sameGiven(one.part(), other.part())
        && same(one.bolted(), other.bolted(), WallDifference::same)
        && sameGiven(one.isolation(), other.isolation())
        && sameGiven(one.bedding(), other.bedding())
        && sameGiven(one.spread(), other.spread())
        && sameGiven(one.offset(), other.offset());
  }

  private static boolean same(LiteUse one, LiteUse other) {
    return one.below() == other.below()
        && one.above() == other.above()
        && one.vision() == other.vision()
        && one.operable() == other.operable()
        && same(one.glass(), other.glass())
        && one.mark().equals(other.mark());
  }

  private static boolean same(Installation.Stretch one, Installation.Stretch other) {
    return one.method() == other.method()
        && one.firstLine() == other.firstLine()
        && one.lastLine() == other.lastLine()
        && one.fromRight() == other.fromRight();
  }

  private static boolean same(Height one, Height other) {
    return one == other
        || one.elevation().equals(other.elevation())
            && one.base().equals(other.base())
            && one.offset().equals(other.offset());
  }

  private static <T> boolean same(Given<T> one, Given<T> other) {
    return one == other
        || one.value().equals(other.value())
            && one.assumed() == other.assumed()
            && one.source().equals(other.source());
  }

  private static boolean sameHeight(Optional<Height> one, Optional<Height> other) {
    return same(one, other, WallDifference::same);
  }

  private static <T> boolean sameGiven(Optional<Given<T>> one, Optional<Given<T>> other) {
    return same(one, other, WallDifference::same);
  }

  private static <T> boolean same(Optional<T> one, Optional<T> other, BiPredicate<T, T> same) {
    return one.isPresent() == other.isPresent()
        && (one.isEmpty() || same.test(one.get(), other.get()));
  }

  private static <T> boolean same(List<T> one, List<T> other, BiPredicate<T, T> same) {
    if (one.size() != other.size()) {
      return false;
    }
    for (int i = 0; i < one.size(); i++) {
      if (!same.test(one.get(i), other.get(i))) {
        return false;
      }
    }
    return true;
  }
}
