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
        new LinePlaces(names, true, place -> spans.crossing(place.at().left()), collector);
    Narrower narrower = new Narrower("splice", places::where, collector);
    for (Said said : wall.all(StatementKind.SPLICE)) {
      places.claims(said, "splice", this::facets).forEach(narrower::add);
    }
    narrower.solve();
    Standing standing = new Standing(verticals);
    Repeated.Builder<Members.Splice> splices =
        new Repeated.Builder<>(narrower.keys(), SpliceReader::onLine);
    Members.Splice[] said = new Members.Splice[narrower.groups()];
    int[] told = new int[said.length];
    for (int key = 0; key < narrower.keys(); key++) {
      int group = narrower.group(key);
      if (group > 0) {
        int line = places.line(key);
        if (said[group] == null || !standing.takesSleeve(line, said[group])) {
          Members.Splice splice = splice(narrower.at(key), said[group], places, standing, line);
          if (splice != said[group]) {
            said[group] = splice;
            told[group] = splices.say(splice);
          }
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
      Standing standing,
      int line) {
    Optional<Given<String>> stated = resolved.get(Facet.SLEEVE);
    if (before != null && stated.isPresent()) {
      return before;
    }
    Height at = before != null ? before.at() : places.place(resolved.setter(Facet.AT)).height();
    Optional<Given<String>> sleeve =
        stated.isPresent() ? stated : standing.sleeve(line, at.elevation());
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

  /** The verticals of each line, which tell the sleeve of a splice that states none. */
  private final class Standing {
    private final List<List<Members.Vertical>> byLine = new ArrayList<>();

    /** By line the sleeve at every height; null where it hangs on the height or none is told. */
    private final List<Given<String>> everywhere = new ArrayList<>();

    Standing(List<Members.Vertical> verticals) {
      names.grid().lines().forEach(line -> byLine.add(new ArrayList<>(1)));
      verticals.forEach(vertical -> byLine.get(vertical.line()).add(vertical));
      for (List<Members.Vertical> on : byLine) {
        boolean one = on.size() == 1 && on.get(0).from().isEmpty() && on.get(0).to().isEmpty();
        everywhere.add(one ? sleeve(on.get(0)).orElse(null) : null);
      }
    }

    /** True if it is known at once that a splice of the line takes the sleeve of another. */
    boolean takesSleeve(int line, Members.Splice other) {
      Given<String> sleeve = everywhere.get(line);
      return sleeve != null && other.sleeve().isPresent() && other.sleeve().get() == sleeve;
    }

    /** The sleeve the profile of the vertical at a height takes, else the system's. */
    Optional<Given<String>> sleeve(int line, Length height) {
      for (Members.Vertical vertical : byLine.get(line)) {
        boolean below =
            vertical.from().map(from -> from.elevation().isShorterThan(height)).orElse(true);
        boolean above = vertical.to().map(to -> to.elevation().isLongerThan(height)).orElse(true);
        if (below && above && own(vertical).isPresent()) {
          return own(vertical);
        }
      }
      return ofSystem();
    }

    private Optional<Given<String>> sleeve(Members.Vertical vertical) {
      return own(vertical).or(this::ofSystem);
    }

    private Optional<Given<String>> own(Members.Vertical vertical) {
      return sleeves.computeIfAbsent(vertical.profile().value(), SpliceReader.this::sleeveOf);
    }

    private Optional<Given<String>> ofSystem() {
      return parts.system().map(system -> system.parts().get(PartKind.SLEEVE));
    }
  }

  private Optional<Given<String>> sleeveOf(String profile) {
    return parts.catalog().find(Part.Profile.class, profile).flatMap(Part.Profile::sleeve);
  }
}
