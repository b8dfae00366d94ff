package mullwright.model;

import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;
import mullwright.quantity.Length;
import mullwright.syntax.Argument;
import mullwright.syntax.Clause;
import mullwright.syntax.ClauseWord;
import mullwright.syntax.Place;
import mullwright.syntax.StatementKind;
import mullwright.syntax.Word;

/** Reads the {@code anchors} block: anchors and clips by line and place. */
final class AnchorsReader {
  private static final Map<StatementKind, AnchorUse.Kind> KINDS =
      Map.of(
          StatementKind.DEAD_LOAD, AnchorUse.Kind.DEAD_LOAD,
          StatementKind.WIND_LOAD, AnchorUse.Kind.WIND_LOAD,
          StatementKind.CLIP, AnchorUse.Kind.CLIP);

  private final GridNames names;
  private final SystemParts parts;
  private final LineSpans spans;
  private final List<Members.Splice> splices;
  private final Collector collector;
  private final LinePlaces places;

  /** Where anchors below splices stand, by key. */
  private final Map<Integer, Placed> below = new HashMap<>();

  /** Stands for a place that is another for each line. */
  private final Placed belowSplices =
      new Placed(Slope.level(Length.ZERO), null, Length.ZERO, false, false, null);

  AnchorsReader(
      GridNames names,
      SystemParts parts,
      LineSpans spans,
      List<Members.Splice> splices,
      Collector collector) {
    this.names = names;
    this.parts = parts;
    this.spans = spans;
    this.splices = splices;
    this.collector = collector;
    this.places = new LinePlaces(names, false, this::passing, collector);
  }

  /** By line, then from below. */
  List<AnchorUse> read(WallText wall) {
    Narrower narrower = new Narrower("anchor", places::where, collector);
    List<Said> statements =
        wall.all(StatementKind.DEAD_LOAD, StatementKind.WIND_LOAD, StatementKind.CLIP);
    for (Said said : statements) {
      claims(said).forEach(narrower::add);
    }
    narrower.solve();
    Repeated.Builder<AnchorUse> anchors =
        new Repeated.Builder<>(narrower.keys(), AnchorsReader::onLine);
    int[] told = new int[narrower.groups()];
    Arrays.fill(told, -1);
    BitSet differing = new BitSet();
    for (int key = 0; key < narrower.keys(); key++) {
      int group = narrower.group(key);
      if (group > 0) {
        if (told[group] < 0 || differing.get(group)) {
          Narrower.Resolved resolved = narrower.at(key);
          told[group] = anchors.say(anchor(resolved, key));
          // of each line another place, if it is told by the line's splices
          differing.set(group, places.place(resolved.setter(Facet.AT)) == belowSplices);
        }
        anchors.add(told[group], places.line(key), 0, 0);
      }
    }
    narrower.reportShadowed();
    return anchors.list(
        Math.max(1, names.lines().size()), anchor -> anchor.place().elevation().ticks());
  }

  private static AnchorUse onLine(AnchorUse same, int line, int none, int nothing) {
    return new AnchorUse(
        same.kind(),
        line,
        same.place(),
        same.floor(),
        same.heightStated(),
        same.part(),
        same.bolted(),
        same.isolation(),
        same.bedding(),
        same.spread(),
        same.offset(),
        same.origin());
  }

  /** What statements say of an anchor, whatever line it is on. */
  private AnchorUse anchor(Narrower.Resolved resolved, int key) {
    AnchorUse.Kind kind = KINDS.get(resolved.said().statement().kind());
    Claim setter = resolved.setter(Facet.AT);
    Placed place = places.place(setter);
    if (place == belowSplices) {
      place = below.get(key);
    }
    Height height = place.height();
    Optional<Integer> floor = place.floor() < 0 ? Optional.empty() : Optional.of(place.floor());
    return new AnchorUse(
        kind,
        -1,
        height,
        floor,
        place.stated(),
        resolved.get(Facet.PART).or(() -> clipOf(kind, height)),
        SystemParts.fixing(resolved),
        resolved.get(Facet.ISOLATION),
        resolved.get(Facet.BEDDING),
        resolved.get(Facet.SPREAD),
        resolved.get(Facet.OFFSET),
        resolved.origin());
  }

  /** True if it speaks of places that splices tell. */
  static boolean belowSplices(Said said) {
    return said.clause(ClauseWord.AT, Clause.At.class)
        .map(at -> at.places().stream().anyMatch(Place.FloorBelowSplices.class::isInstance))
        .orElse(false);
  }

  private List<Claim> claims(Said said) {
    String keyword = KINDS.get(said.statement().kind()).spelling();
    return belowSplices(said) ? below(said, keyword) : places.claims(said, keyword, this::facets);
  }

  /** Anchors at the nearest floor under each splice of the lines named. */
  private List<Claim> below(Said said, String keyword) {
    Optional<Argument.Select> select = said.argument(Argument.Select.class);
    if (select.isEmpty()) {
      return List.of();
    }
    Chosen lines =
        new SelectionReader(said, collector).list(select.get().selection(), names.lines());
    BitSet chosen = lines.set();
    BitSet reach = new BitSet();
    BitSet found = new BitSet();
    Origin origin = said.spot().at(said.statement().clause(ClauseWord.AT).get().range());
    for (Members.Splice splice : splices) {
      int floor = chosen.get(splice.line()) ? floorUnder(splice.at().elevation()) : -1;
      if (floor >= 0) {
        Heights.Base base = names.heights().get(floor);
        Placed place = new Placed(base.at(), base, Length.ZERO, false, false, origin);
        int key = places.key(splice.line(), place);
        reach.set(key);
        below.put(key, place);
        found.set(splice.line());
      }
    }
    for (int line : lines.indices()) {
      if (lines.outright().get(line) && !found.get(line)) {
        collector.misplaced(
            "line " + names.lineName(line) + " has no splice",
            "floor below splices is a place of spliced lines only",
            said.origin());
      }
    }
    Claim claim = places.claim(said, keyword, 0, reach, reach, belowSplices);
    facets(claim);
    return List.of(claim);
  }

  private int floorUnder(Length height) {
    int under = -1;
    for (Grid.Floor floor : names.grid().floors()) {
      if (!floor.elevation().value().isLongerThan(height)) {
        under = floor.index();
      }
    }
    return under;
  }

  /** An anchor at a floor may sit anywhere over the slab's depth, as its part says. */
  private IntPredicate passing(Placed place) {
    if (place.row() >= 0) {
      return line -> passes(line, place);
    }
    Length at = place.at().left();
    if (place.floor() < 0 || place.stated()) {
      return spans.passing(at, at);
    }
    Length slab = names.floor(place.floor()).slab().map(Given::value).orElse(Length.ZERO);
    return spans.passing(at.minus(slab), at);
  }

  /** True if a line passes a place at a row, which a sloped row has elsewhere on each line. */
  private boolean passes(int line, Placed place) {
    Length there = names.order().at(place.row(), names.grid().lines().get(line).x());
    Length height = there.plus(place.offset());
    return places.runsBeside(line, place) && spans.passes(line, height, height);
  }

  private void facets(Claim claim) {
    boolean clip = claim.said.statement().kind() == StatementKind.CLIP;
    parts.set(claim, Facet.PART, ClauseWord.PART, clip ? PartKind.CLIP : PartKind.ANCHOR);
    parts.set(claim, Facet.ISOLATION, ClauseWord.ISOLATED_BY, PartKind.ISOLATION);
    parts.set(claim, Facet.BEDDING, ClauseWord.BEDDED_ON, PartKind.ISOLATION);
    parts.set(claim, Facet.SPREAD, ClauseWord.SPREAD_BY, PartKind.SPREAD_PLATE);
    parts.bolts(claim);
    claim
        .said
        .clause(ClauseWord.OFFSET, Clause.Valued.class)
        .ifPresent(clause -> offset(claim, clause));
  }

  private void offset(Claim claim, Clause.Valued clause) {
    Optional<Length> aside = claim.said.values(collector).length(clause.value(), "offset");
    String direction = clause.direction().map(Word::text).orElse("");
    if (!direction.equals("left") && !direction.equals("right")) {
      collector.missing(
          claim.said.words(),
          "which way it is offset",
          "offset 1 1/2\" right",
          claim.said.spot().at(clause.range()));
      return;
    }
    boolean right = direction.equals("right") != claim.said.mirrored();
    aside.ifPresent(
        length -> claim.set(Facet.OFFSET, right ? length : length.negated(), clause.range()));
  }

  /** The system's clip for sill or head. */
  private Optional<Given<String>> clipOf(AnchorUse.Kind kind, Height place) {
    if (kind != AnchorUse.Kind.CLIP || parts.system().isEmpty()) {
      return Optional.empty();
    }
    Part.WallSystem system = parts.system().get();
    String base = place.base().orElse("");
    Optional<Given<String>> own = Optional.empty();
    if (base.equals("sill") || base.endsWith(".sill")) {
      own = system.sillClip();
    } else if (base.equals("head") || base.endsWith(".head")) {
      own = system.headClip();
    }
    return own.or(() -> Optional.ofNullable(system.parts().get(PartKind.CLIP)));
  }
}
