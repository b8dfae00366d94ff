package mullwright.model;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import mullwright.quantity.Length;
import mullwright.syntax.Expression;
import mullwright.syntax.Place;
import mullwright.syntax.Selection;
import mullwright.syntax.Word;

/** Finds the heights a place names: above or below floors and rows, or from the datum. */
final class PlaceReader {
  private final Said said;
  private final Heights heights;
  private final Collector collector;

  PlaceReader(Said said, Heights heights, Collector collector) {
    this.said = said;
    this.heights = heights;
    this.collector = collector;
  }

  /** All heights the places name, in the order written. */
  List<Placed> all(List<Place> places) {
    List<Placed> found = new ArrayList<>();
    for (Place place : places) {
      found.addAll(all(place));
    }
    return found;
  }

  /** All heights the place names. */
  List<Placed> all(Place place) {
    Origin origin = said.spot().at(place.range());
    if (place instanceof Place.FromDatum datum) {
      return fromDatum(datum.length(), origin);
    }
    if (place instanceof Place.AtNames named) {
      Optional<Word> let = letName(named);
      return let.isPresent()
          ? fromDatum(new Expression.Reference(let.get()), origin)
          : atNames(named, origin);
    }
    collector.misplaced(
        "\"floor below splices\" is no height of its own", "only anchors stand there", origin);
    return List.of();
  }

  /** The one height the place names; several are reported. */
  Optional<Placed> one(Place place) {
    return one(place, all(place));
  }

  /**
   * The one height the place names beside those bays: where a row steps, that of its stretch there.
   *
   * @param lower whether the lower of two stretches counts, where both lie beside the bays
   */
  Optional<Placed> one(Place place, Rows rows, BitSet bays, boolean lower) {
    List<Placed> found = all(place);
    if (found.size() > 1 && found.stream().map(Placed::row).allMatch(row -> row >= 0)) {
      List<Placed> beside = new ArrayList<>(found);
      beside.removeIf(one -> rows.get(one.row()).bays().stream().noneMatch(bays::get));
      if (beside.stream().map(one -> one.base().name()).distinct().count() == 1) {
        Comparator<Placed> upward = Comparator.comparing(one -> one.at().left());
        return beside.stream().min(lower ? upward : upward.reversed());
      }
    }
    return one(place, found);
  }

  private Optional<Placed> one(Place place, List<Placed> found) {
    if (found.size() > 1) {
      String text = said.spot().text(place.range());
      collector.misplaced(
          '"' + text + "\" stands for " + found.size() + " places",
          "one place is needed here, as L2." + text,
          said.spot().at(place.range()));
      return Optional.empty();
    }
    return found.stream().findFirst();
  }

  private List<Placed> fromDatum(Expression expression, Origin origin) {
    return said.values(collector)
        .length(expression, "height")
        .map(length -> new Placed(Slope.level(length), null, length, true, true, origin))
        .map(List::of)
        .orElse(List.of());
  }

  private List<Placed> atNames(Place.AtNames named, Origin origin) {
    Place.Direction direction = named.direction();
    if (direction == Place.Direction.LEFT_OF || direction == Place.Direction.RIGHT_OF) {
      collector.misplaced(
          '"' + said.spot().text(named.range()) + "\" is no height",
          "a height is above or below a floor or row",
          origin);
      return List.of();
    }
    Optional<Length> offset =
        named.offset().flatMap(length -> said.values(collector).length(length, "height"));
    Chosen chosen = new SelectionReader(said, collector).list(named.names(), heights.names());
    if (named.offset().isPresent() && offset.isEmpty()) {
      return List.of();
    }
    Length up =
        direction == Place.Direction.BELOW
            ? offset.orElse(Length.ZERO).negated()
            : offset.orElse(Length.ZERO);
    List<Placed> found = new ArrayList<>(chosen.indices().length);
    for (int index : chosen.indices()) {
      Heights.Base base = heights.get(index);
      Slope at = base.at().plus(up);
      if (said.beyondReach(List.of(at.left(), at.right()), collector)) {
        return List.of();
      }
      boolean outright = chosen.outright().get(index);
      found.add(new Placed(at, base, up, offset.isPresent(), outright, origin));
    }
    return found;
  }

  /** The name of a {@code let} where a place is written as a lone name. */
  private Optional<Word> letName(Place.AtNames named) {
    Selection names = named.names();
    if (named.offset().isPresent()
        || names.all()
        || names.items().size() != 1
        || names.items().get(0).isRange()
        || names.every().isPresent()
        || !names.except().isEmpty()) {
      return Optional.empty();
    }
    Word word = names.items().get(0).first();
    boolean let = !heights.names().has(word.text()) && said.scope().find(word.text()) != null;
    return let ? Optional.of(word) : Optional.empty();
  }
}
