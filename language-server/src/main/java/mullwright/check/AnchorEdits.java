package mullwright.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import mullwright.analysis.wall.AnchorsInUse;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.VerticalPiece;
import mullwright.model.AnchorUse;
import mullwright.model.Grid;
import mullwright.model.Origin;
import mullwright.model.Part;
import mullwright.model.PartKind;
import mullwright.syntax.ClauseWord;

/**
 * Edits that add, turn or narrow anchors, in the words the wall already uses for its neighbours.
 *
 * <p>A new statement speaks of one line, so it is narrower than what stands there and wins.
 */
record AnchorEdits(WallFacts facts) {

  /** Adds an anchor of a kind to a length at a floor, with the clauses a neighbour's has. */
  Optional<Fix> add(AnchorUse.Kind kind, VerticalPiece piece, Grid.Floor floor) {
    Optional<AnchorUse> neighbour =
        neighbour(kind, piece, floor)
            .or(() -> neighbour(AnchorUse.Kind.DEAD_LOAD, piece, floor))
            .or(() -> neighbour(AnchorUse.Kind.WIND_LOAD, piece, floor));
    return add(kind, piece, floor.name(), neighbour);
  }

  /** Adds a clip to a length at a row, with the clauses a neighbour's has. */
  Optional<Fix> addClip(VerticalPiece piece, Grid.Row row) {
    Optional<AnchorUse> neighbour = inUse().nearest(AnchorUse.Kind.CLIP, piece.line());
    return add(AnchorUse.Kind.CLIP, piece, row.name(), neighbour);
  }

  /**
   * Makes anchors of a length of another kind: in their own statement if it speaks of no others,
   * else in a narrower one.
   */
  Optional<Fix> turn(VerticalPiece piece, List<PlacedAnchor> anchors, AnchorUse.Kind kind) {
    StatementEdits edits = new StatementEdits(facts.text());
    Map<Origin, List<PlacedAnchor>> byStatement = new LinkedHashMap<>();
    for (PlacedAnchor anchor : anchors) {
      byStatement.computeIfAbsent(anchor.use().origin(), o -> new ArrayList<>()).add(anchor);
    }
    List<Fix.Edit> all = new ArrayList<>();
    for (Map.Entry<Origin, List<PlacedAnchor>> entry : byStatement.entrySet()) {
      List<PlacedAnchor> own = entry.getValue();
      List<Fix.Edit> some =
          own.size() == inUse().count(entry.getKey())
              ? inPlace(entry.getKey(), kind, edits)
              : narrower(entry.getKey(), own, piece, kind, edits);
      if (some.isEmpty()) {
        return Optional.empty();
      }
      all.addAll(some);
    }
    String places = Words.list(anchors.stream().map(a -> Words.place(a, facts)).toList());
    return Optional.of(new Fix("Make it " + kind.spelling() + " at " + places, all));
  }

  private AnchorsInUse inUse() {
    return facts.analysis().anchorsInUse();
  }

  private List<Fix.Edit> inPlace(Origin statement, AnchorUse.Kind kind, StatementEdits edits) {
    List<Fix.Edit> both = new ArrayList<>();
    edits.keyword(statement, kind.spelling()).ifPresent(both::add);
    partFor(kind)
        .map(part -> ClauseWord.PART.spelling() + " " + Words.asName(part))
        .flatMap(clause -> edits.setClause(statement, ClauseWord.PART, clause))
        .ifPresent(both::add);
    return both;
  }

  private List<Fix.Edit> narrower(
      Origin statement,
      List<PlacedAnchor> anchors,
      VerticalPiece piece,
      AnchorUse.Kind kind,
      StatementEdits edits) {
    List<String> places =
        anchors.stream()
            .filter(anchor -> atItsPlace(anchor.use()))
            .flatMap(anchor -> anchor.use().place().base().stream())
            .map(Words::asName)
            .toList();
    if (places.size() < anchors.size() || !edits.standsIn(facts.wall(), statement)) {
      return List.of();
    }
    AnchorUse like = anchors.get(0).use();
    String text = statement(kind, piece, String.join(", ", places), Optional.of(like));
    return edits.addAfter(statement, text).stream().toList();
  }

  /**
   * Gives an anchor a clause with a part's name: in its own statement if all anchors of that want
   * it, else in a narrower statement of its own.
   */
  Optional<Fix.Edit> give(
      PlacedAnchor anchor, ClauseWord word, String part, Predicate<PlacedAnchor> wantsIt) {
    StatementEdits edits = new StatementEdits(facts.text());
    Origin statement = anchor.use().origin();
    String clause = word.spelling() + " " + Words.asName(part);
    boolean all = inUse().of(statement).stream().allMatch(wantsIt);
    if (all) {
      return edits.setClause(statement, word, clause);
    }
    Optional<String> place = anchor.use().place().base().filter(p -> atItsPlace(anchor.use()));
    return place
        .filter(p -> edits.standsIn(facts.wall(), statement))
        .flatMap(
            p ->
                edits.addAfter(
                    statement,
                    anchor.use().kind().spelling()
                        + " "
                        + Words.asName(line(anchor.use().line()))
                        + " at "
                        + Words.asName(p)
                        + " "
                        + clause));
  }

  private static boolean atItsPlace(AnchorUse use) {
    return use.place().offset().signum() == 0;
  }

  private Optional<Fix> add(
      AnchorUse.Kind kind, VerticalPiece piece, String place, Optional<AnchorUse> like) {
    StatementEdits edits = new StatementEdits(facts.text());
    String text = statement(kind, piece, Words.asName(place), like);
    String title = "Add " + kind.spelling() + " " + line(piece.line()) + " at " + place;
    return like.map(AnchorUse::origin)
        .filter(origin -> edits.standsIn(facts.wall(), origin))
        .or(() -> edits.lastAnchor(facts.wall()))
        .flatMap(origin -> edits.addAfter(origin, text))
        .map(edit -> new Fix(title, List.of(edit)));
  }

  private String line(int line) {
    return facts.wall().grid().lines().get(line).name();
  }

  private String statement(
      AnchorUse.Kind kind, VerticalPiece piece, String places, Optional<AnchorUse> like) {
    StringBuilder text = new StringBuilder(kind.spelling());
    text.append(' ').append(Words.asName(line(piece.line()))).append(" at ").append(places);
    like.filter(use -> use.kind() == kind)
        .filter(use -> new StatementEdits(facts.text()).has(use.origin(), ClauseWord.PART))
        .flatMap(use -> use.part().map(given -> given.value()))
        .or(() -> partFor(kind))
        .ifPresent(name -> clause(text, ClauseWord.PART, Words.asName(name)));
    like.ifPresent(use -> clauses(text, use, kind, piece));
    return text.toString();
  }

  private void clauses(
      StringBuilder text, AnchorUse like, AnchorUse.Kind kind, VerticalPiece piece) {
    like.bolted()
        .ifPresent(
            fixing ->
                clause(
                    text,
                    ClauseWord.BOLTED,
                    fixing.count() + " x " + Words.asName(fixing.fastener().value())));
    like.isolation()
        .ifPresent(name -> clause(text, ClauseWord.ISOLATED_BY, Words.asName(name.value())));
    like.bedding()
        .ifPresent(name -> clause(text, ClauseWord.BEDDED_ON, Words.asName(name.value())));
    if (kind != AnchorUse.Kind.CLIP && piece.endMember()) {
      spreadPlates().stream()
          .findFirst()
          .ifPresent(name -> clause(text, ClauseWord.SPREAD_BY, Words.asName(name)));
    }
  }

  private static void clause(StringBuilder text, ClauseWord word, String rest) {
    text.append(' ').append(word.spelling()).append(' ').append(rest);
  }

  /** The anchor nearest along the wall of that kind, at that floor rather than elsewhere. */
  private Optional<AnchorUse> neighbour(
      AnchorUse.Kind kind, VerticalPiece piece, Grid.Floor floor) {
    return inUse().nearest(kind, piece.line(), floor.index());
  }

  private Optional<String> partFor(AnchorUse.Kind kind) {
    return facts.catalog().all(PartKind.ANCHOR).stream()
        .filter(Part.Anchor.class::isInstance)
        .map(Part.Anchor.class::cast)
        .filter(part -> part.use().map(use -> use.value().equals(kind.spelling())).orElse(true))
        .map(Part.Anchor::name)
        .findFirst();
  }

  /** The spread plates of the catalog, those the wall uses already first. */
  List<String> spreadPlates() {
    return inUseFirst(PartKind.SPREAD_PLATE, inUse()::spreads);
  }

  /** The isolations of the catalog, those the wall uses already first. */
  List<String> isolations() {
    return inUseFirst(PartKind.ISOLATION, inUse()::isolates);
  }

  private List<String> inUseFirst(PartKind kind, Predicate<String> used) {
    return facts.catalog().all(kind).stream()
        .map(Part::name)
        .sorted(Comparator.comparing(name -> !used.test(name)))
        .toList();
  }
}
