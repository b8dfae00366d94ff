package mullwright.model;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.quantity.Length;
import mullwright.syntax.Argument;
import mullwright.syntax.Clause;
import mullwright.syntax.ClauseWord;
import mullwright.syntax.Expression;
import mullwright.syntax.Place;
import mullwright.syntax.Selection;
import mullwright.syntax.StatementKind;
import mullwright.syntax.Word;

/** Reads {@code floor}, {@code floors} and {@code slab}: elevations, slab depths and edges. */
final class FloorReader {
  private final Collector collector;
  private final Map<String, Entry> floors = new LinkedHashMap<>();
  private boolean complete = true;

  FloorReader(Collector collector) {
    this.collector = collector;
  }

  /** A floor while it is read. */
  private record Entry(Symbol symbol, Given<Length> elevation, int layer) {}

  /** The names a statement gives to floors. */
  private record Naming(Said said, List<NameMaker.Made> names) {}

  /** The floors from below. */
  List<Grid.Floor> read(List<Said> statements, List<Said> slabs) {
    List<Naming> namings = new ArrayList<>();
    InOrder<Naming> order = new InOrder<>();
    for (Said said : statements) {
      Optional<List<NameMaker.Made>> names = names(said);
      if (names.isEmpty() || names.get().isEmpty()) {
        complete = false;
        continue;
      }
      complete &= !said.broken();
      Naming naming = new Naming(said, names.get());
      namings.add(naming);
      order.add(naming, names.get().stream().map(NameMaker.Made::name).toList(), needed(said));
    }
    order.run(this::place, this::circular);
    List<Entry> sorted = new ArrayList<>(floors.values());
    sorted.sort((one, other) -> one.elevation().value().compareTo(other.elevation().value()));
    checkOrder(sorted);
    NameIndex index = new NameIndex("floor");
    sorted.forEach(entry -> index.add(entry.symbol(), entry.symbol().name()));
    if (!complete) {
      index.incomplete();
    }
    return floors(sorted, slabClaims(namings, slabs, index));
  }

  boolean isComplete() {
    return complete;
  }

  Symbol symbol(String floor) {
    return floors.get(floor).symbol();
  }

  private Optional<List<NameMaker.Made>> names(Said said) {
    if (said.statement().kind() == StatementKind.FLOOR) {
      return said.argument(Argument.Name.class)
          .map(Argument.Name::word)
          .map(word -> List.of(new NameMaker.Made(word.text(), said.spot().at(word), true)));
    }
    return said.argument(Argument.Select.class)
        .map(Argument.Select::selection)
        .flatMap(selection -> new NameMaker(said, collector).names(selection));
  }

  private static List<String> needed(Said said) {
    List<String> needs = new ArrayList<>();
    said.clause(ClauseWord.AT, Clause.At.class)
        .ifPresent(
            at -> {
              for (Place place : at.places()) {
                if (place instanceof Place.AtNames named) {
                  named.names().items().forEach(item -> needs.add(item.first().text()));
                }
              }
            });
    return needs;
  }

  private void circular(Naming naming, List<String> names) {
    complete = false;
    collector.circular(names, naming.said().origin());
  }

  private void place(Naming naming) {
    Said said = naming.said();
    List<Place> places =
        said.clause(ClauseWord.AT, Clause.At.class).map(Clause.At::places).orElse(List.of());
    Optional<Clause.Spaced> spaced = said.clause(ClauseWord.SPACED, Clause.Spaced.class);
    if (spaced.isEmpty() && places.isEmpty()) {
      if (!said.broken()) {
        int names = naming.names().size();
        String offer = names == 1 ? "at 13'-0\"" : "spaced " + (names - 1) + " @ 13'-0\"";
        collector.missing(said.words(), "its elevation", offer, said.origin());
      }
      complete = false;
      return;
    }
    Optional<List<Given<Length>>> elevations =
        spaced.isPresent() ? stacked(naming, spaced.get(), places) : stated(naming, places);
    if (elevations.isEmpty()
        || said.beyondReach(elevations.get().stream().map(Given::value).toList(), collector)) {
      complete = false;
      return;
    }
    for (int i = 0; i < elevations.get().size(); i++) {
      put(said, naming.names().get(i), elevations.get().get(i));
    }
  }

  private Optional<List<Given<Length>>> stacked(
      Naming naming, Clause.Spaced spaced, List<Place> places) {
    Said said = naming.said();
    Optional<Length> start =
        places.isEmpty() ? Optional.of(Length.ZERO) : elevation(said, places.get(0));
    Optional<List<Length>> spaces =
        new StepReader(said, collector).spaces(spaced, "floors", naming.names().size());
    if (start.isEmpty() || spaces.isEmpty()) {
      return Optional.empty();
    }
    Origin origin = said.spot().at(spaced.range());
    List<Given<Length>> elevations = new ArrayList<>();
    Length at = start.get();
    elevations.add(Given.stated(at, origin));
    for (Length space : spaces.get()) {
      at = at.plus(space);
      elevations.add(Given.stated(at, origin));
    }
    return Optional.of(elevations);
  }

  private Optional<List<Given<Length>>> stated(Naming naming, List<Place> places) {
    Said said = naming.said();
    int names = naming.names().size();
    if (places.size() != names) {
      collector.problem(
          new ModelProblem.CountMismatch(
              "elevations of the floors",
              names,
              places.size(),
              "one elevation for each name",
              said.origin()));
      if (places.size() < names) {
        complete = false;
      }
    }
    List<Given<Length>> elevations = new ArrayList<>();
    for (int i = 0; i < Math.min(names, places.size()); i++) {
      Optional<Length> at = elevation(said, places.get(i));
      if (at.isEmpty()) {
        return Optional.empty();
      }
      elevations.add(Given.stated(at.get(), said.spot().at(places.get(i).range())));
    }
    return Optional.of(elevations);
  }

  /** A floor's elevation: from the datum, or above or below another floor. */
  private Optional<Length> elevation(Said said, Place place) {
    if (place instanceof Place.FromDatum datum) {
      return said.values(collector).length(datum.length(), "elevation");
    }
    boolean single =
        place instanceof Place.AtNames at
            && at.names().items().size() == 1
            && !at.names().items().get(0).isRange();
    boolean level =
        place instanceof Place.AtNames at
            && at.direction() != Place.Direction.LEFT_OF
            && at.direction() != Place.Direction.RIGHT_OF;
    if (!single || !level) {
      collector.misplaced(
          '"' + said.spot().text(place.range()) + "\" is no place for a floor",
          "a floor is above or below one other floor",
          said.spot().at(place.range()));
      return Optional.empty();
    }
    Place.AtNames named = (Place.AtNames) place;
    Word word = named.names().items().get(0).first();
    Entry floor = floors.get(word.text());
    if (floor == null && named.offset().isEmpty()) {
      return said.values(collector).length(new Expression.Reference(word), "elevation");
    }
    if (floor == null) {
      if (complete) {
        collector.unknown("floor", word.text(), floors.keySet(), said.spot().at(word));
      }
      return Optional.empty();
    }
    collector.names(floor.symbol(), said.spot().at(word));
    Length base = floor.elevation().value();
    if (named.offset().isEmpty()) {
      return Optional.of(base);
    }
    return said.values(collector)
        .length(named.offset().get(), "elevation")
        .map(up -> named.direction() == Place.Direction.BELOW ? base.minus(up) : base.plus(up));
  }

  private void put(Said said, NameMaker.Made made, Given<Length> elevation) {
    Entry before = floors.get(made.name());
    if (before != null && before.layer() == said.layer()) {
      collector.duplicate("floor", made.name(), before.symbol().definition(), made.definition());
      return;
    }
    Symbol symbol = new Symbol(Symbol.Kind.FLOOR, said.wall(), made.name(), made.definition());
    if (made.outright()) {
      collector.defines(symbol, made.definition());
    }
    floors.put(made.name(), new Entry(symbol, elevation, said.layer()));
  }

  private void checkOrder(List<Entry> sorted) {
    for (int i = 1; i < sorted.size(); i++) {
      Entry below = sorted.get(i - 1);
      Entry above = sorted.get(i);
      if (below.elevation().value().equals(above.elevation().value())) {
        collector.problem(
            new ModelProblem.OutOfOrder(
                "floor",
                above.symbol().name(),
                below.symbol().name(),
                below.symbol().definition(),
                above.symbol().definition()));
      }
    }
  }

  private Narrower slabClaims(List<Naming> namings, List<Said> slabs, NameIndex index) {
    Narrower narrower = new Narrower("slab", key -> index.names().get(key), collector);
    List<Claim> claims = new ArrayList<>();
    for (Naming naming : namings) {
      BitSet reach = new BitSet();
      for (NameMaker.Made made : naming.names()) {
        for (int floor : index.find(made.name())) {
          reach.set(floor);
        }
      }
      Claim claim = new Claim(naming.said(), "slab", reach);
      slabDepth(claim);
      slabEdge(claim);
      if (claim.sets(Facet.SLAB) || claim.sets(Facet.EDGE)) {
        claims.add(claim);
      }
    }
    for (Said said : slabs) {
      Optional<Selection> selection =
          said.argument(Argument.Select.class).map(Argument.Select::selection);
      Optional<Expression> depth =
          said.argument(Argument.Value.class).map(Argument.Value::expression);
      if (selection.isPresent()) {
        BitSet reach = new SelectionReader(said, collector).list(selection.get(), index).set();
        Claim claim = new Claim(said, "slab", reach);
        depth.ifPresent(
            value ->
                said.values(collector)
                    .length(value, "slab depth")
                    .ifPresent(length -> claim.set(Facet.SLAB, length, value.range())));
        slabEdge(claim);
        claims.add(claim);
      }
    }
    claims.forEach(narrower::add);
    narrower.solve();
    return narrower;
  }

  private void slabDepth(Claim claim) {
    claim
        .said
        .clause(ClauseWord.SLAB, Clause.Valued.class)
        .ifPresent(
            clause ->
                claim
                    .said
                    .values(collector)
                    .length(clause.value(), "slab depth")
                    .ifPresent(length -> claim.set(Facet.SLAB, length, clause.value().range())));
  }

  private void slabEdge(Claim claim) {
    claim
        .said
        .clause(ClauseWord.EDGE, Clause.Valued.class)
        .ifPresent(
            clause ->
                claim
                    .said
                    .values(collector)
                    .length(clause.value(), "slab edge")
                    .ifPresent(
                        length -> {
                          boolean before =
                              clause.direction().map(Word::text).orElse("").equals("before");
                          Length behind = before ? length.negated() : length;
                          claim.set(Facet.EDGE, behind, clause.range());
                        }));
  }

  private List<Grid.Floor> floors(List<Entry> sorted, Narrower slabs) {
    List<Grid.Floor> made = new ArrayList<>(sorted.size());
    for (int i = 0; i < sorted.size(); i++) {
      Entry entry = sorted.get(i);
      Narrower.Resolved slab = slabs.at(i);
      made.add(
          new Grid.Floor(
              i,
              entry.symbol().name(),
              entry.elevation(),
              slab == null ? Optional.empty() : slab.get(Facet.SLAB),
              slab == null ? Optional.empty() : slab.get(Facet.EDGE),
              entry.symbol().definition()));
    }
    slabs.reportShadowed();
    return made;
  }
}
