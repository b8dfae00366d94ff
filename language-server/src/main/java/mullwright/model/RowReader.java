package mullwright.model;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import mullwright.syntax.Argument;
import mullwright.syntax.Clause;
import mullwright.syntax.ClauseWord;
import mullwright.syntax.Place;
import mullwright.syntax.Selection;
import mullwright.syntax.Word;

/**
 * Reads {@code row}: rows by name, repeated over floors, with exceptions by floor and bay.
 *
 * <p>All statements of one bare name are read together, since one may be the exception of another.
 */
final class RowReader {
  private final Heights heights;
  private final BayReach reach;
  private final Collector collector;
  private final List<RowGroup> groups = new ArrayList<>();
  private boolean complete = true;
  private long things;

  /**
   * @param heights the floors; the rows are added
   */
  RowReader(Heights heights, BayReach reach, Collector collector) {
    this.heights = heights;
    this.reach = reach;
    this.collector = collector;
  }

  /** All rows from below, by their left ends; the bays they run through are told by the reader. */
  List<RowGroup.Instance> read(List<Said> statements) {
    Map<String, RowGroup> byName = new LinkedHashMap<>();
    for (Said said : statements) {
      Optional<Word> name = said.argument(Argument.Name.class).map(Argument.Name::word);
      if (name.isEmpty()) {
        complete = false;
        continue;
      }
      complete &= !said.broken();
      String base = base(name.get().text());
      RowGroup group =
          byName.computeIfAbsent(
              base,
              key ->
                  new RowGroup(
                      new Symbol(Symbol.Kind.ROW, said.wall(), base, said.spot().at(name.get()))));
      collector.defines(group.symbol(), said.spot().at(name.get()));
      group.add(said);
    }
    groups.addAll(byName.values());
    InOrder<RowGroup> order = new InOrder<>();
    for (RowGroup group : groups) {
      order.add(group, List.of(group.symbol().name()), needed(group));
    }
    order.run(
        this::place,
        (group, names) -> {
          complete = false;
          collector.circular(names, group.statements().get(0).origin());
        });
    List<RowGroup.Instance> rows = new ArrayList<>();
    groups.forEach(group -> rows.addAll(group.instances()));
    rows.sort((one, other) -> one.at().left().compareTo(other.at().left()));
    return rows;
  }

  boolean isComplete() {
    return complete;
  }

  List<RowGroup> groups() {
    return groups;
  }

  /** The name without the floor it may begin with. */
  private String base(String name) {
    int dot = name.indexOf('.');
    boolean floor = dot > 0 && heights.names().has(name.substring(0, dot));
    return floor ? name.substring(dot + 1) : name;
  }

  private Set<String> needed(RowGroup group) {
    Set<String> needs = new HashSet<>();
    for (Said said : group.statements()) {
      said.clause(ClauseWord.AT, Clause.At.class)
          .ifPresent(
              at -> {
                at.places().forEach(place -> needed(place, needs));
                at.to().ifPresent(place -> needed(place, needs));
              });
    }
    return needs;
  }

  private void needed(Place place, Set<String> needs) {
    if (place instanceof Place.AtNames named) {
      for (Selection.Item item : named.names().items()) {
        needed(item.first().text(), needs);
        if (item.isRange()) {
          needed(item.last().text(), needs);
        }
      }
    }
  }

  private void needed(String name, Set<String> needs) {
    if (!heights.names().has(name)) {
      needs.add(base(name));
    }
  }

  private void place(RowGroup group) {
    Narrower narrower = new Narrower("row", key -> group.where(key, heights, reach), collector);
    Map<Object, Origin> single = new HashMap<>();
    for (Said said : group.statements()) {
      Optional<List<RowGroup.Spread>> spread = spread(said, group);
      if (spread.isEmpty()) {
        complete = false;
        continue;
      }
      BitSet bays = reach.of(said, heights.names(), collector);
      things += (long) spread.get().size() * bays.cardinality();
      if (things > Limits.THINGS) {
        tooMany(said);
        continue;
      }
      if (spread.get().size() == 1) {
        List<Object> thing = List.of(said.layer(), spread.get().get(0).slot(), bays);
        Origin first = single.putIfAbsent(thing, said.origin());
        if (first != null) {
          collector.duplicate("row", group.symbol().name(), first, said.origin());
          complete = false;
          continue;
        }
      }
      claims(said, spread.get(), bays, group).forEach(narrower::add);
    }
    narrower.solve();
    group.settle(narrower, heights, reach);
    narrower.reportShadowed();
    for (RowGroup.Instance row : group.instances()) {
      row.addTo(heights, -1);
    }
  }

  private void tooMany(Said said) {
    if (complete) {
      collector.problem(
          new ModelProblem.TooMany("rows times bays", Limits.THINGS, things, said.origin()));
    }
    complete = false;
  }

  private List<Claim> claims(Said said, List<RowGroup.Spread> spread, BitSet bays, RowGroup group) {
    boolean edge = said.clause(ClauseWord.EDGE, Clause.Flag.class).isPresent();
    if (edge && !Rows.isEnd(group.symbol().name())) {
      collector.misplaced(
          "the row " + group.symbol().name() + " cannot be given by its edge",
          "only sill and head have an outer edge",
          said.origin());
      edge = false;
    }
    BitSet named = new BitSet();
    spread.forEach(one -> reach.each(one.slot(), bays, named));
    List<Claim> claims = new ArrayList<>(spread.size());
    for (RowGroup.Spread one : spread) {
      Claim claim = new Claim(said, "row", reach.first(one.slot()), bays, named);
      Facet.RowPlace place = new Facet.RowPlace(one.at(), edge);
      claim.set(Facet.ROW_PLACE, place, said.statement().clause(ClauseWord.AT).get().range());
      group.remember(claim, one, bays);
      claims.add(claim);
    }
    return claims;
  }

  /** The heights a statement gives, one a floor. */
  private Optional<List<RowGroup.Spread>> spread(Said said, RowGroup group) {
    Optional<Clause.At> at = said.clause(ClauseWord.AT, Clause.At.class);
    if (at.isEmpty()) {
      if (!said.broken()) {
        collector.missing(said.words(), "its height", "at 3'-0\" above L1", said.origin());
      }
      return Optional.empty();
    }
    PlaceReader places = new PlaceReader(said, heights, collector);
    BayExcept except = reach.except(heights.names());
    List<Placed> left = places.all(at.get().places().stream().map(except::heightsOnly).toList());
    List<Placed> right = at.get().to().map(except::heightsOnly).map(places::all).orElse(left);
    if (left.isEmpty() || right.isEmpty()) {
      return Optional.empty();
    }
    if (right.size() != left.size() && right.size() != 1) {
      collector.problem(
          new ModelProblem.CountMismatch(
              "right ends of the row",
              left.size(),
              right.size(),
              "as many places after to as before it",
              said.spot().at(at.get().range())));
      return Optional.empty();
    }
    if (said.mirrored() && at.get().to().isPresent()) {
      List<Placed> turned = left;
      left = right;
      right = turned;
    }
    List<RowGroup.Spread> spread = new ArrayList<>();
    Set<Integer> slots = new HashSet<>();
    for (int i = 0; i < Math.max(left.size(), right.size()); i++) {
      Placed one = left.get(Math.min(i, left.size() - 1));
      Placed other = right.get(Math.min(i, right.size() - 1));
      int slot = group.slot(one);
      if (slots.add(slot)) {
        spread.add(new RowGroup.Spread(slot, one, other));
      } else {
        collector.duplicate("row", group.symbol().name(), said.origin(), one.origin());
      }
    }
    return Optional.of(spread);
  }
}
