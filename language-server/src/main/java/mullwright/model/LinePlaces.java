package mullwright.model;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntPredicate;
import mullwright.syntax.Argument;
import mullwright.syntax.Clause;
import mullwright.syntax.ClauseWord;
import mullwright.syntax.Selection;

/**
 * Numbers things that stand at places of lines (splices, anchors, brackets) and makes the claims of
 * statements about them.
 *
 * <p>The place is what is named: {@code at L2} and {@code at 6" below L2} speak of one thing.
 */
final class LinePlaces {
  private final GridNames names;
  private final Collector collector;
  private final Passing passing;
  private final boolean byFloor;
  private final int lines;
  private final Map<String, Integer> slots = new HashMap<>();
  private final List<String> slotNames = new ArrayList<>();
  private final Map<Claim, Placed> placeOf = new IdentityHashMap<>();

  /** Says which lines pass a place. */
  interface Passing {
    IntPredicate at(Placed place);
  }

  /**
   * @param byFloor true if a floor has one such thing a line, wherever near it
   */
  LinePlaces(GridNames names, boolean byFloor, Passing passing, Collector collector) {
    this.names = names;
    this.byFloor = byFloor;
    this.passing = passing;
    this.collector = collector;
    this.lines = Math.max(1, names.lines().size());
  }

  int line(int key) {
    return key % lines;
  }

  /** {@code line C at L2}. */
  String where(int key) {
    return "line " + names.lineName(line(key)) + " at " + slotNames.get(key / lines);
  }

  /** The place the claim puts its things at. */
  Placed place(Claim claim) {
    return placeOf.get(claim);
  }

  /** The key of a line at a place. */
  int key(int line, Placed place) {
    String slot = slotName(place);
    Integer known = slots.get(slot);
    if (known == null) {
      known = slots.size();
      slots.put(slot, known);
      slotNames.add(slot);
    }
    return known * lines + line;
  }

  private String slotName(Placed place) {
    if (place.floor() >= 0 && (byFloor || place.row() < 0)) {
      return names.floor(place.floor()).name();
    }
    return place.base() != null ? place.base().name() : EqualSpaces.print(place.offset());
  }

  /**
   * One claim for each place the statement names; none if it names no line or place.
   *
   * @param facets sets what the statement says of all its places
   */
  List<Claim> claims(Said said, String keyword, Consumer<Claim> facets) {
    Claim all = new Claim(said, keyword, new BitSet());
    facets.accept(all);
    List<Claim> claims = claims(said, keyword);
    claims.forEach(claim -> claim.setAll(all));
    return claims;
  }

  private List<Claim> claims(Said said, String keyword) {
    Optional<Selection> selection =
        said.argument(Argument.Select.class).map(Argument.Select::selection);
    Optional<Clause.At> at = said.clause(ClauseWord.AT, Clause.At.class);
    if (selection.isEmpty()) {
      return List.of();
    }
    Chosen chosen = new SelectionReader(said, collector).list(selection.get(), names.lines());
    if (at.isEmpty()) {
      if (!said.broken()) {
        collector.missing(said.words(), "where", "at L2", said.origin());
      }
      return List.of();
    }
    List<Placed> found = new PlaceReader(said, names.heights(), collector).all(at.get().places());
    if (chosen.isEmpty() || found.isEmpty()) {
      return List.of();
    }
    long things = (long) found.size() * chosen.indices().length;
    if (things > Limits.THINGS) {
      collector.problem(
          new ModelProblem.TooMany("lines times places", Limits.THINGS, things, said.origin()));
      return List.of();
    }
    BitSet named = new BitSet();
    BitSet passed = new BitSet();
    Map<Integer, Placed> bySlot = new HashMap<>();
    List<Claim> claims = new ArrayList<>();
    for (Placed place : endFirst(found)) {
      int first = key(0, place);
      Placed before = bySlot.putIfAbsent(first, place);
      boolean steps = before != null && stepsFrom(before, place);
      if (before != null && !steps) {
        collector.duplicate(keyword + " at", slotName(place), before.origin(), place.origin());
        continue;
      }
      IntPredicate passes = passing.at(place);
      boolean part = steps(place);
      BitSet reach = new BitSet();
      for (int line : chosen.indices()) {
        if (passes.test(line) && (!part || runsBeside(line, place) && !named.get(first + line))) {
          reach.set(line);
        }
      }
      Bits.moved(reach, 0, lines, first, named);
      passed.or(reach);
      claims.add(claim(said, keyword, first, reach, named, place));
    }
    reportNotPassing(said, chosen, found, passed);
    return claims;
  }

  /**
   * The places, of a row that steps the stretch first that ends a vertical between two: the lower
   * one, of a head the upper.
   */
  private List<Placed> endFirst(List<Placed> places) {
    if (places.stream().noneMatch(this::steps)) {
      return places;
    }
    Comparator<Placed> upward = Comparator.comparing(place -> place.at().left());
    List<Placed> sorted = new ArrayList<>();
    for (Placed place : places) {
      if (sorted.contains(place)) {
        continue;
      }
      List<Placed> stretches = new ArrayList<>(places);
      stretches.removeIf(other -> other != place && !stepsFrom(place, other));
      boolean head = place.row() >= 0 && names.row(place.row()).base().equals("head");
      stretches.sort(head ? upward.reversed() : upward);
      sorted.addAll(stretches);
    }
    return sorted;
  }

  /** True for a place at a row of which other stretches are elsewhere at other heights. */
  private boolean steps(Placed place) {
    return place.row() >= 0 && names.order().steps(place.row());
  }

  /** True for two stretches of one row, named by the same words. */
  private boolean stepsFrom(Placed one, Placed other) {
    return one.origin().equals(other.origin())
        && steps(one)
        && one.row() != other.row()
        && one.base().name().equals(other.base().name());
  }

  /** True if the row the place is at runs in a bay beside the line. */
  boolean runsBeside(int line, Placed place) {
    List<Integer> bays = names.row(place.row()).bays();
    return bays.contains(names.bays().leftOf(line)) || bays.contains(names.bays().rightOf(line));
  }

  /**
   * A claim about one place.
   *
   * @param first key of the first line there; {@code reach} counts from it
   */
  Claim claim(Said said, String keyword, int first, BitSet reach, BitSet named, Placed place) {
    Claim claim = new Claim(said, keyword, first, reach, named);
    placeOf.put(claim, place);
    said.statement()
        .clause(ClauseWord.AT)
        .ifPresent(
            at ->
                claim.set(Facet.AT, new Facet.Offset(place.offset(), place.stated()), at.range()));
    return claim;
  }

  private void reportNotPassing(Said said, Chosen chosen, List<Placed> places, BitSet passed) {
    if (!names.lines().isComplete()) {
      return; // the lines meant may be those that could not be read
    }
    List<IntPredicate> outright = new ArrayList<>();
    if (!chosen.outright().isEmpty()) {
      places.stream().filter(Placed::outright).map(passing::at).forEach(outright::add);
    }
    List<String> stray = new ArrayList<>();
    for (int line : chosen.indices()) {
      if (chosen.outright().get(line)
          && (!passed.get(line) || outright.stream().anyMatch(passes -> !passes.test(line)))) {
        stray.add(names.lineName(line));
      }
    }
    boolean none = stray.isEmpty() && passed.isEmpty();
    if (!stray.isEmpty() || none) {
      String at = said.spot().text(said.statement().clause(ClauseWord.AT).get().range());
      String what =
          none
              ? "no vertical passes there: " + at
              : (stray.size() == 1 ? "line " : "lines ")
                  + String.join(", ", stray.subList(0, Math.min(8, stray.size())))
                  + (stray.size() == 1 ? " does not pass: " : " do not pass: ")
                  + at;
      collector.misplaced(what, "name lines and places where the verticals pass", said.origin());
    }
  }
}
