package mullwright.model;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import mullwright.quantity.Length;
import mullwright.syntax.Argument;
import mullwright.syntax.Clause;
import mullwright.syntax.ClauseWord;
import mullwright.syntax.Expression;
import mullwright.syntax.Place;
import mullwright.syntax.Selection;
import mullwright.syntax.StatementKind;
import mullwright.syntax.Word;

/** Reads {@code lines}, {@code line} and {@code face}: which lines there are and where. */
final class LineReader {
  private static final String LINE = "line";

  private final LinePlan plan;
  private final Collector collector;

  LineReader(LinePlan plan, Collector collector) {
    this.plan = plan;
    this.collector = collector;
  }

  /** The names a statement gives to lines. */
  private record Naming(Said said, List<NameMaker.Made> names, Symbol face) {
    boolean isFace() {
      return said.statement().kind() == StatementKind.FACE;
    }

    String first() {
      return names.get(0).name();
    }

    String last() {
      return names.get(names.size() - 1).name();
    }
  }

  /** Puts the statements of one layer over what the plan holds. */
  void read(List<Said> statements) {
    List<Naming> namings = new ArrayList<>();
    for (Said said : statements) {
      Optional<Naming> naming = naming(said);
      if (naming.isPresent() && !naming.get().names().isEmpty()) {
        namings.add(naming.get());
        if (said.broken() || spacesOneName(naming.get())) {
          plan.incomplete();
        }
      } else {
        plan.incomplete();
      }
    }
    Set<String> faceEnds = new HashSet<>();
    for (Naming naming : namings) {
      if (naming.isFace()) {
        faceEnds.add(naming.last());
      }
    }
    InOrder<Naming> order = new InOrder<>();
    boolean anyStart =
        namings.stream().anyMatch(naming -> naming.isFace() && !faceEnds.contains(naming.first()));
    for (Naming naming : namings) {
      boolean joined = anyStart && naming.isFace() && faceEnds.contains(naming.first());
      order.add(naming, defined(naming, joined), needed(naming, joined));
    }
    order.run(this::place, this::circular);
  }

  private Optional<Naming> naming(Said said) {
    Symbol face = null;
    if (said.statement().kind() == StatementKind.FACE) {
      Optional<Word> name = said.argument(Argument.Name.class).map(Argument.Name::word);
      if (name.isEmpty()) {
        return Optional.empty();
      }
      Origin origin = said.spot().at(name.get());
      face = new Symbol(Symbol.Kind.FACE, said.wall(), name.get().text(), origin);
      collector.defines(face, origin);
    }
    if (said.statement().kind() == StatementKind.LINE) {
      return said.argument(Argument.Name.class)
          .map(Argument.Name::word)
          .map(
              word ->
                  new Naming(
                      said,
                      List.of(new NameMaker.Made(word.text(), said.spot().at(word), true)),
                      null));
    }
    Optional<Selection> selection =
        face == null
            ? said.argument(Argument.Select.class).map(Argument.Select::selection)
            : said.clause(ClauseWord.LINES, Clause.Selecting.class)
                .map(Clause.Selecting::selection);
    if (selection.isEmpty()) {
      if (!said.broken()) {
        collector.missing(said.words(), "its lines", "lines 1..5", said.origin());
      }
      return Optional.empty();
    }
    Symbol symbol = face;
    return new NameMaker(said, collector)
        .names(selection.get())
        .map(names -> new Naming(said, names, symbol));
  }

  /** A face without spacing speaks of lines that others place. */
  private static boolean placesNothing(Naming naming) {
    return naming.isFace()
        && !naming.said().has(ClauseWord.SPACED)
        && !naming.said().has(ClauseWord.AT);
  }

  private List<String> defined(Naming naming, boolean joined) {
    List<String> names = new ArrayList<>();
    if (!placesNothing(naming)) {
      for (NameMaker.Made made : naming.names()) {
        names.add(made.name());
      }
      if (joined) {
        names.remove(0);
      }
    }
    return names;
  }

  private List<String> needed(Naming naming, boolean joined) {
    List<String> needs = new ArrayList<>();
    if (placesNothing(naming)) {
      needs.add(naming.first());
      needs.add(naming.last());
    } else if (joined) {
      needs.add(naming.first());
    }
    naming
        .said()
        .clause(ClauseWord.AT, Clause.At.class)
        .ifPresent(
            at -> {
              for (Place place : at.places()) {
                if (place instanceof Place.AtNames named && named.offset().isPresent()) {
                  named.names().items().forEach(item -> needs.add(item.first().text()));
                }
              }
            });
    return needs;
  }

  /** {@code lines A-G spaced 6 @ 5'-0"}: one name, most likely meant as a range. */
  private static boolean spacesOneName(Naming naming) {
    return naming.names().size() == 1
        && naming.said().clause(ClauseWord.SPACED, Clause.Spaced.class).isPresent();
  }

  private void circular(Naming naming, List<String> names) {
    plan.incomplete();
    collector.circular(names, naming.said().origin());
  }

  private void place(Naming naming) {
    Said said = naming.said();
    if (placesNothing(naming)) {
      faceOfKnownLines(naming);
      return;
    }
    Optional<List<Length>> positions = positions(naming);
    if (positions.isEmpty() || said.beyondReach(positions.get(), collector)) {
      plan.incomplete();
      return;
    }
    boolean edge = said.clause(ClauseWord.EDGE, Clause.Flag.class).isPresent();
    int last = naming.names().size() - 1;
    for (int i = 0; i <= last; i++) {
      put(naming, naming.names().get(i), positions.get().get(i), edge && (i == 0 || i == last));
    }
    if (naming.isFace()) {
      putFace(naming);
    }
  }

  private void faceOfKnownLines(Naming naming) {
    for (NameMaker.Made made : naming.names()) {
      LinePlan.Entry line = plan.find(made.name());
      if (line == null) {
        if (plan.isComplete()) {
          collector.unknown(LINE, made.name(), plan.lines().keySet(), made.definition());
        }
        return;
      }
      if (made.outright()) {
        collector.names(line.symbol(), made.definition());
      }
    }
    putFace(naming);
  }

  private void putFace(Naming naming) {
    LinePlan.Face before = plan.face(naming.face().name());
    int layer = naming.said().layer();
    if (before != null && before.layer() == layer) {
      collector.duplicate(
          "face", naming.face().name(), before.symbol().definition(), naming.face().definition());
      return;
    }
    plan.put(new LinePlan.Face(naming.face(), naming.first(), naming.last(), layer));
  }

  private void put(Naming naming, NameMaker.Made made, Length x, boolean edge) {
    Said said = naming.said();
    LinePlan.Entry before = plan.find(made.name());
    if (before != null && before.layer() == said.layer()) {
      boolean corner =
          naming.isFace() && made.name().equals(naming.first()) && before.x().equals(x);
      if (corner) {
        if (made.outright()) {
          collector.names(before.symbol(), made.definition());
        }
        return;
      }
      collector.duplicate(LINE, made.name(), before.symbol().definition(), made.definition());
      return;
    }
    Symbol symbol = new Symbol(Symbol.Kind.LINE, said.wall(), made.name(), made.definition());
    if (made.outright()) {
      collector.defines(symbol, made.definition());
    }
    plan.put(new LinePlan.Entry(symbol, x, edge, said.layer()));
  }

  private Optional<List<Length>> positions(Naming naming) {
    Said said = naming.said();
    Optional<Clause.Spaced> spaced = said.clause(ClauseWord.SPACED, Clause.Spaced.class);
    List<Place> places =
        said.clause(ClauseWord.AT, Clause.At.class).map(Clause.At::places).orElse(List.of());
    if (spaced.isEmpty()) {
      return stated(naming, places);
    }
    Optional<Length> start = start(naming, places);
    Optional<List<Length>> spaces =
        new StepReader(said, collector).spaces(spaced.get(), "lines", naming.names().size());
    if (start.isEmpty() || spaces.isEmpty()) {
      return Optional.empty();
    }
    List<Length> positions = new ArrayList<>();
    Length x = start.get();
    positions.add(x);
    for (Length space : spaces.get()) {
      x = x.plus(space);
      positions.add(x);
    }
    return Optional.of(positions);
  }

  private Optional<Length> start(Naming naming, List<Place> places) {
    if (!places.isEmpty()) {
      return position(naming.said(), places.get(0));
    }
    if (naming.isFace()) {
      LinePlan.Entry shared = plan.find(naming.first());
      if (shared != null && shared.layer() == naming.said().layer()) {
        return Optional.of(shared.x());
      }
      List<LinePlan.Face> faces = plan.faces();
      LinePlan.Face last = faces.isEmpty() ? null : faces.get(faces.size() - 1);
      if (last != null && last.layer() == naming.said().layer()) {
        return Optional.of(plan.find(last.last()).x());
      }
    }
    return Optional.of(Length.ZERO);
  }

  private Optional<List<Length>> stated(Naming naming, List<Place> places) {
    Said said = naming.said();
    int names = naming.names().size();
    if (places.isEmpty()) {
      if (!said.broken()) {
        String offer = names == 1 ? "at 5'-0\"" : "spaced " + (names - 1) + " @ 5'-0\"";
        collector.missing(said.words(), "where it stands", offer, said.origin());
      }
      return Optional.empty();
    }
    if (places.size() != names) {
      collector.problem(
          new ModelProblem.CountMismatch(
              "positions of the lines",
              names,
              places.size(),
              "one position for each name",
              said.origin()));
    }
    List<Length> positions = new ArrayList<>();
    for (int i = 0; i < Math.min(names, places.size()); i++) {
      Optional<Length> x = position(said, places.get(i));
      if (x.isEmpty()) {
        return Optional.empty();
      }
      positions.add(x.get());
    }
    return positions.size() == names ? Optional.of(positions) : Optional.empty();
  }

  /** A position along the wall: from its datum, or left or right of a line. */
  private Optional<Length> position(Said said, Place place) {
    if (place instanceof Place.FromDatum datum) {
      return said.values(collector).length(datum.length(), "position");
    }
    if (!(place instanceof Place.AtNames named)
        || named.names().items().size() != 1
        || named.names().items().get(0).isRange()) {
      outOfPlace(said, place, "a line stands right or left of one other line");
      return Optional.empty();
    }
    Word word = named.names().items().get(0).first();
    if (named.offset().isEmpty()) {
      return said.values(collector).length(new Expression.Reference(word), "position");
    }
    boolean right = named.direction() == Place.Direction.RIGHT_OF;
    if (!right && named.direction() != Place.Direction.LEFT_OF) {
      outOfPlace(said, place, "a line stands right or left of one other line");
      return Optional.empty();
    }
    Optional<Length> offset = said.values(collector).length(named.offset().get(), "position");
    LinePlan.Entry line = plan.find(word.text());
    if (line == null) {
      if (plan.isComplete()) {
        collector.unknown(LINE, word.text(), plan.lines().keySet(), said.spot().at(word));
      }
      return Optional.empty();
    }
    collector.names(line.symbol(), said.spot().at(word));
    return offset.map(length -> right ? line.x().plus(length) : line.x().minus(length));
  }

  private void outOfPlace(Said said, Place place, String why) {
    String what = '"' + said.spot().text(place.range()) + "\" is no place for a line";
    collector.misplaced(what, why, said.spot().at(place.range()));
  }
}
