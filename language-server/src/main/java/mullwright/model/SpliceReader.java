package mullwright.model;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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

  /** The sleeve each profile takes, asked for by every splice. */
  private final Map<String, Optional<Given<String>>> sleeves = new HashMap<>();

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
    Repeated.Builder<Members.Splice> splices =
        new Repeated.Builder<>(narrower.keys(), SpliceReader::onLine);
    Members.Splice[] said = new Members.Splice[narrower.groups()];
    int[] told = new int[said.length];
    for (int key = 0; key < narrower.keys(); key++) {
      Narrower.Resolved resolved = narrower.at(key);
      if (resolved != null) {
        int line = places.line(key);
        int group = narrower.group(key);
        Members.Splice splice = splice(resolved, said[group], places, standing.get(line));
        if (splice != said[group]) {
          said[group] = splice;
          told[group] = splices.say(splice);
        }
        splices.add(told[group], line, 0, 0);
      }
    }
    narrower.reportShadowed();
    return splices.list(
        Math.max(1, names.lines().size()), splice -> splice.at().elevation().ticks());
  }

  /**
   * What statements say of a splice, whatever line it is in.
   *
   * @param before what they say of the last one they speak of, or null
   */
  private Members.Splice splice(
      Narrower.Resolved resolved,
      Members.Splice before,
      LinePlaces places,
      List<Members.Vertical> runs) {
    Optional<Given<String>> stated = resolved.get(Facet.SLEEVE);
    if (before != null && stated.isPresent()) {
      return before;
    }
    Height at = before != null ? before.at() : places.place(resolved.setter(Facet.AT)).height();
    Optional<Given<String>> sleeve = stated.isPresent() ? stated : sleeveOf(at, runs);
    if (before != null && before.sleeve().equals(sleeve)) {
      return before;
    }
    Given<Length> gap =
        resolved
            .get(Facet.GAP)
            .orElseGet(() -> Given.assumed(GAP, resolved.origin(), "common practice"));
    return new Members.Splice(-1, at, gap, sleeve, resolved.origin());
  }

  private static Members.Splice onLine(Members.Splice same, int line, int none, int nothing) {
    return new Members.Splice(line, same.at(), same.gap(), same.sleeve(), same.origin());
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
            sleeves.computeIfAbsent(vertical.profile().value(), this::sleeveOf);
        if (own.isPresent()) {
          return own;
        }
      }
    }
    return parts.system().map(system -> system.parts().get(PartKind.SLEEVE));
  }

  private Optional<Given<String>> sleeveOf(String profile) {
    return parts.catalog().find(Part.Profile.class, profile).flatMap(Part.Profile::sleeve);
  }
}
