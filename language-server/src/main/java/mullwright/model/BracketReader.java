package mullwright.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;
import mullwright.syntax.Argument;
import mullwright.syntax.Clause;
import mullwright.syntax.ClauseWord;
import mullwright.syntax.StatementKind;

/** Reads {@code bracket} with its forces, and the names {@code end-dam} gives. */
final class BracketReader {
  private final GridNames names;
  private final SystemParts parts;
  private final Collector collector;

  BracketReader(GridNames names, SystemParts parts, Collector collector) {
    this.names = names;
    this.parts = parts;
    this.collector = collector;
  }

  /** By line, then from below. */
  List<Members.Bracket> read(WallText wall, LineSpans spans) {
    LinePlaces places =
        new LinePlaces(
            names, false, place -> spans.passing(place.at().left(), place.at().left()), collector);
    Narrower narrower = new Narrower("bracket", places::where, collector);
    for (Said said : wall.all(StatementKind.BRACKET)) {
      places.claims(said, "bracket", this::facets).forEach(narrower::add);
      parts.named(said, ClauseWord.PART, PartKind.ANCHOR, PartKind.CLIP);
    }
    narrower.solve();
    List<Members.Bracket> brackets = new ArrayList<>();
    for (int key = 0; key < narrower.keys(); key++) {
      Narrower.Resolved resolved = narrower.at(key);
      if (resolved != null) {
        Height at = places.place(resolved.setter(Facet.AT)).height();
        List<Members.Load> loads =
            resolved.get(Facet.LOADS).map(given -> given.value().loads()).orElse(List.of());
        brackets.add(
            new Members.Bracket(
                places.line(key), at, loads, SystemParts.fixing(resolved), resolved.origin()));
      }
    }
    narrower.reportShadowed();
    brackets.sort(BracketReader::fromLeftAndBelow);
    return brackets;
  }

  private static int fromLeftAndBelow(Members.Bracket one, Members.Bracket other) {
    return one.line() == other.line()
        ? one.at().elevation().compareTo(other.at().elevation())
        : Integer.compare(one.line(), other.line());
  }

  private void facets(Claim claim) {
    Said said = claim.said;
    loads(said)
        .ifPresent(
            loads ->
                claim.set(
                    Facet.LOADS, loads, said.statement().clause(ClauseWord.LOADS).get().range()));
    parts.bolts(claim);
  }

  private Optional<BracketLoads> loads(Said said) {
    Optional<Clause.Loads> clause = said.clause(ClauseWord.LOADS, Clause.Loads.class);
    if (clause.isEmpty()) {
      if (!said.broken()) {
        collector.missing(said.words(), "its loads", "150 N down at 600 out", said.origin());
      }
      return Optional.empty();
    }
    List<Members.Load> loads = new ArrayList<>();
    for (Clause.Loads.Load load : clause.get().loads()) {
      ExpressionReader values = said.values(collector);
      Optional<Quantity> force = values.quantity(load.force(), Kind.FORCE, "force");
      Optional<Given<Length>> arm = load.arm().flatMap(length -> values.given(length, "arm"));
      if (force.isEmpty() || load.arm().isPresent() && arm.isEmpty()) {
        return Optional.empty();
      }
      Given<Quantity> given = Given.stated(force.get(), said.spot().at(load.force().range()));
      loads.add(new Members.Load(given, direction(load, said), arm));
    }
    return Optional.of(new BracketLoads(loads));
  }

  private static String direction(Clause.Loads.Load load, Said said) {
    String direction = load.direction().text();
    if (said.mirrored() && direction.equals("left")) {
      return "right";
    }
    return said.mirrored() && direction.equals("right") ? "left" : direction;
  }

  /** End dams are taken for their names only. */
  void endDams(WallText wall) {
    for (Said said : wall.all(StatementKind.END_DAM)) {
      said.argument(Argument.Select.class)
          .ifPresent(
              lines -> new SelectionReader(said, collector).list(lines.selection(), names.lines()));
      said.clause(ClauseWord.AT, Clause.At.class)
          .ifPresent(at -> new PlaceReader(said, names.heights(), collector).all(at.places()));
      parts.named(said, ClauseWord.PART, PartKind.ZONE_DAM);
    }
  }
}
