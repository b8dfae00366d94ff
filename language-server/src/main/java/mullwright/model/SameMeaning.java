package mullwright.model;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;

/** Tells whether two things of a wall say the same, wherever in the text they are said. */
final class SameMeaning {
  private final BiPredicate<Height, Height> place = new Again<>(SameMeaning::height);
  private final BiPredicate<Optional<Height>, Optional<Height>> reach =
      optional(SameMeaning::height);
  private final BiPredicate<Given<String>, Given<String>> name = new Again<>(SameMeaning::given);
  private final BiPredicate<Given<Length>, Given<Length>> gap = new Again<>(SameMeaning::given);
  private final BiPredicate<Optional<Given<Length>>, Optional<Given<Length>>> offset =
      optional(SameMeaning::given);
  private final BiPredicate<Optional<Given<String>>, Optional<Given<String>>> part =
      optional(SameMeaning::given);
  private final BiPredicate<Optional<Given<String>>, Optional<Given<String>>> isolation =
      optional(SameMeaning::given);
  private final BiPredicate<Optional<Given<String>>, Optional<Given<String>>> bedding =
      optional(SameMeaning::given);
  private final BiPredicate<Optional<Given<String>>, Optional<Given<String>>> spread =
      optional(SameMeaning::given);
  private final BiPredicate<Optional<Members.Fixing>, Optional<Members.Fixing>> bolts =
      optional(SameMeaning::fixing);

  /**
   * Compares as another does, and remembers what it found the same: one statement says the same of
   * many things.
   */
  private static final class Again<T> implements BiPredicate<T, T> {
    private final BiPredicate<T, T> compare;
    private final Map<T, T> same = new IdentityHashMap<>();
    private T one;
    private T other;

    Again(BiPredicate<T, T> compare) {
      this.compare = compare;
    }

    @Override
    public boolean test(T left, T right) {
      if (left == right || left == one && right == other) {
        return true;
      }
      if (same.get(left) != right) {
        if (!compare.test(left, right)) {
          return false;
        }
        same.put(left, right);
      }
      one = left;
      other = right;
      return true;
    }
  }

  private static <T> BiPredicate<Optional<T>, Optional<T>> optional(BiPredicate<T, T> compare) {
    return new Again<>((one, other) -> both(one, other, compare));
  }

  /** True if both are there and the same, or neither is there. */
  private static <T> boolean both(Optional<T> one, Optional<T> other, BiPredicate<T, T> same) {
    return one.isPresent() == other.isPresent()
        && (one.isEmpty() || same.test(one.get(), other.get()));
  }

  boolean horizontals(Members.Horizontal one, Members.Horizontal other) {
    return name.test(one.profile(), other.profile());
  }

  boolean verticals(Members.Vertical one, Members.Vertical other) {
    return name.test(one.profile(), other.profile())
        && reach.test(one.from(), other.from())
        && reach.test(one.to(), other.to());
  }

  boolean splices(Members.Splice one, Members.Splice other) {
    return place.test(one.at(), other.at())
        && gap.test(one.gap(), other.gap())
        && part.test(one.sleeve(), other.sleeve());
  }

  boolean reinforcements(Members.Reinforce one, Members.Reinforce other) {
    return name.test(one.part(), other.part())
        && reach.test(one.from(), other.from())
        && reach.test(one.to(), other.to())
        && isolation.test(one.isolation(), other.isolation());
  }

  boolean brackets(Members.Bracket one, Members.Bracket other) {
    return place.test(one.at(), other.at())
        && all(one.loads(), other.loads(), this::loads)
        && bolts.test(one.bolted(), other.bolted());
  }

  private boolean loads(Members.Load one, Members.Load other) {
    BiPredicate<Given<Quantity>, Given<Quantity>> force = SameMeaning::given;
    return force.test(one.force(), other.force())
        && one.direction().equals(other.direction())
        && offset.test(one.arm(), other.arm());
  }

  boolean anchors(AnchorUse one, AnchorUse other) {
    return one.kind() == other.kind()
        && place.test(one.place(), other.place())
        && one.floor().equals(other.floor())
        && one.heightStated() == other.heightStated()
        && part.test(one.part(), other.part())
        && bolts.test(one.bolted(), other.bolted())
        && isolation.test(one.isolation(), other.isolation())
        && bedding.test(one.bedding(), other.bedding())
        && spread.test(one.spread(), other.spread())
        && offset.test(one.offset(), other.offset());
  }

  boolean lites(LiteUse one, LiteUse other) {
    return one.below() == other.below()
        && one.above() == other.above()
        && one.vision() == other.vision()
        && one.operable() == other.operable()
        && name.test(one.glass(), other.glass())
        && one.mark().equals(other.mark());
  }

  /** True if lines, floors and rows are the same; openings need not be. */
  static boolean grids(Grid one, Grid other) {
    return one == other
        || all(one.faces(), other.faces(), SameMeaning::faces)
            && all(one.lines(), other.lines(), SameMeaning::lines)
            && one.bays().equals(other.bays())
            && all(one.corners(), other.corners(), SameMeaning::corners)
            && all(one.joints(), other.joints(), SameMeaning::joints)
            && all(one.floors(), other.floors(), SameMeaning::floors)
            && all(one.rows(), other.rows(), SameMeaning::rows);
  }

  private static boolean faces(Grid.Face one, Grid.Face other) {
    return one.name().equals(other.name())
        && one.firstLine() == other.firstLine()
        && one.lastLine() == other.lastLine();
  }

  private static boolean lines(Grid.Line one, Grid.Line other) {
    return one.name().equals(other.name())
        && one.x().equals(other.x())
        && one.edge() == other.edge()
        && one.end() == other.end();
  }

  private static boolean corners(Grid.Corner one, Grid.Corner other) {
    return one.line() == other.line() && given(one.angle(), other.angle());
  }

  private static boolean joints(Grid.Joint one, Grid.Joint other) {
    return one.left() == other.left() && one.right() == other.right();
  }

  private static boolean floors(Grid.Floor one, Grid.Floor other) {
    return one.name().equals(other.name())
        && given(one.elevation(), other.elevation())
        && both(one.slab(), other.slab(), SameMeaning::given)
        && both(one.edge(), other.edge(), SameMeaning::given);
  }

  private static boolean rows(Grid.Row one, Grid.Row other) {
    return one.name().equals(other.name())
        && one.base().equals(other.base())
        && one.floor().equals(other.floor())
        && height(one.left(), other.left())
        && height(one.right(), other.right())
        && one.edge() == other.edge()
        && one.bays().equals(other.bays());
  }

  /** True if one takes the place of the other. */
  static boolean openings(Grid.Opening one, Grid.Opening other) {
    return one.kind() == other.kind()
        && one.name().equals(other.name())
        && one.bays().equals(other.bays())
        && height(one.bottom(), other.bottom())
        && height(one.top(), other.top())
        && one.byOthers() == other.byOthers()
        && both(one.clear(), other.clear(), SameMeaning::given)
        && both(one.mass(), other.mass(), SameMeaning::given);
  }

  /** True if the work goes on in the same way over the same lines. */
  static boolean installations(Installation one, Installation other) {
    return all(
        one.stretches(),
        other.stretches(),
        (left, right) ->
            left.method() == right.method()
                && left.firstLine() == right.firstLine()
                && left.lastLine() == right.lastLine()
                && left.fromRight() == right.fromRight());
  }

  private static boolean height(Height one, Height other) {
    return one.elevation().equals(other.elevation())
        && one.base().equals(other.base())
        && one.offset().equals(other.offset());
  }

  private static <T> boolean given(Given<T> one, Given<T> other) {
    return one.value().equals(other.value())
        && one.assumed() == other.assumed()
        && one.source().equals(other.source());
  }

  private static boolean fixing(Members.Fixing one, Members.Fixing other) {
    return one.count() == other.count() && given(one.fastener(), other.fastener());
  }

  private static <T> boolean all(List<T> one, List<T> other, BiPredicate<T, T> same) {
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
