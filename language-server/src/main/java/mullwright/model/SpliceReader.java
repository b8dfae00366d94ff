package mullwright.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.quantity.Length;
import mullwright.syntax.Clause;
import mullwright.syntax.ClauseWord;
import mullwright.syntax.StatementKind;

/** Reads {@code splice}: where verticals are cut and may move. */
final class SpliceReader {
  private static final Length GAP = Length.ofInches(1, 2);

  private final GridNames names;
  private final SystemParts parts;
  private final Collector collector;

  SpliceReader(GridNames names, SystemParts parts, Collector collector) {
    this.names = names;
    this.parts = parts;
    this.collector = collector;
  }

  /** By line, then from below. */
  List<Members.Splice> read(WallText wall, LineSpans spans, List<Members.Vertical> verticals) {
    LinePlaces places =
        new LinePlaces(
            names, true, (line, place) -> spans.crosses(line, place.at().left()), collector);
    Narrower narrower = new Narrower("splice", places::where, collector);
    for (Said said : wall.all(StatementKind.SPLICE)) {
      places.claims(said, "splice", this::facets).forEach(narrower::add);
    }
    narrower.solve();
    List<List<Members.Vertical>> standing = new ArrayList<>();
    names.grid().lines().forEach(line -> standing.add(new ArrayList<>(1)));
    verticals.forEach(vertical -> standing.get(vertical.line()).add(vertical));
    List<Members.Splice> splices = new ArrayList<>();
    Narrower.Resolved before = null;
    Height at = null;
    Given<Length> gap = null;
    for (int key = 0; key < narrower.keys(); key++) {
      Narrower.Resolved resolved = narrower.at(key);
      if (resolved != null) {
        int line = places.line(key);
        if (resolved != before) {
          at = places.place(resolved.setter(Facet.AT)).height();
          gap =
              resolved
                  .get(Facet.GAP)
                  .orElseGet(() -> Given.assumed(GAP, resolved.origin(), "common practice"));
          before = resolved;
        }
        Optional<Given<String>> sleeve = resolved.get(Facet.SLEEVE);
        if (sleeve.isEmpty()) {
          sleeve = sleeveOf(at, standing.get(line));
        }
        splices.add(new Members.Splice(line, at, gap, sleeve, resolved.origin()));
      }
    }
    narrower.reportShadowed();
    return places.inOrder(splices, Members.Splice::line, Members.Splice::at);
  }

  private void facets(Claim claim) {
    parts.set(claim, Facet.SLEEVE, ClauseWord.SLEEVE, PartKind.SLEEVE);
    claim
        .said
        .clause(ClauseWord.GAP, Clause.Valued.class)
        .ifPresent(
            clause ->
                claim
                    .said
                    .values(collector)
                    .length(clause.value(), "gap")
                    .ifPresent(gap -> claim.set(Facet.GAP, gap, clause.value().range())));
  }

  /** The sleeve its profile takes, else the system's. */
  private Optional<Given<String>> sleeveOf(Height at, List<Members.Vertical> runs) {
    for (Members.Vertical vertical : runs) {
      boolean below =
          vertical.from().map(from -> from.elevation().isShorterThan(at.elevation())).orElse(true);
      boolean above =
          vertical.to().map(to -> to.elevation().isLongerThan(at.elevation())).orElse(true);
      if (below && above) {
        Optional<Given<String>> own =
            parts
                .catalog()
                .find(Part.Profile.class, vertical.profile().value())
                .flatMap(Part.Profile::sleeve);
        if (own.isPresent()) {
          return own;
        }
      }
    }
    return parts.system().map(system -> system.parts().get(PartKind.SLEEVE));
  }
}
