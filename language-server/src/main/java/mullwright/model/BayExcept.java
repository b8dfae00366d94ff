package mullwright.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.syntax.Clause;
import mullwright.syntax.ClauseWord;
import mullwright.syntax.Place;
import mullwright.syntax.Selection;

/**
 * Tells apart what a row's place excepts: floors ({@code above L2..L9 except L5}) from bays ({@code
 * above L1 except C..D}), where no floor or row has such a name.
 */
final class BayExcept {
  private final NameIndex heights;
  private final NameIndex lines;

  BayExcept(NameIndex heights, NameIndex lines) {
    this.heights = heights;
    this.lines = lines;
  }

  /** The place with only the floors and rows it excepts. */
  Place heightsOnly(Place place) {
    if (!(place instanceof Place.AtNames named)
        || named.names().except().stream().noneMatch(this::isBay)) {
      return place;
    }
    List<Selection.Item> kept = new ArrayList<>(named.names().except());
    kept.removeIf(this::isBay);
    Selection names = named.names();
    return new Place.AtNames(
        named.offset(),
        named.direction(),
        new Selection(names.all(), names.items(), kept, names.every(), names.range()),
        named.range());
  }

  /** The bays the statement's place excepts; empty if it excepts none. */
  Optional<Selection> bays(Said said) {
    List<Selection.Item> items = new ArrayList<>();
    said.clause(ClauseWord.AT, Clause.At.class)
        .ifPresent(
            at -> {
              at.places().forEach(place -> addBays(place, items));
              at.to().ifPresent(place -> addBays(place, items));
            });
    if (items.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Selection(
            false,
            items,
            List.of(),
            Optional.empty(),
            items.get(0).range().to(items.get(items.size() - 1).range())));
  }

  private void addBays(Place place, List<Selection.Item> items) {
    if (place instanceof Place.AtNames named) {
      named.names().except().stream().filter(this::isBay).forEach(items::add);
    }
  }

  private boolean isBay(Selection.Item item) {
    String first = item.first().text();
    String last = item.isRange() ? item.last().text() : first;
    return !heights.has(first) && !heights.has(last) && lines.has(first) && lines.has(last);
  }
}
