package mullwright.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import mullwright.check.Finding;
import mullwright.check.FoldedFinding;
import mullwright.layout.PieceRef;
import mullwright.quantity.Kind;
import mullwright.quantity.LengthPrinter;
import mullwright.quantity.Quantity;
import mullwright.quantity.QuantityPrinter;
import mullwright.quantity.Rational;
import mullwright.quantity.Unit;
import mullwright.quantity.UnitSystem;
import mullwright.review.FindingChange;
import mullwright.review.GoodsChange;
import mullwright.review.PieceChange;
import mullwright.review.PieceState;
import mullwright.review.ReactionChange;
import mullwright.review.WallReview;
import mullwright.workspace.FileReview;

/** Says a comparison as a document of tables: changes first, then what follows from them. */
public final class ReviewDocument {
  private static final int OTHERS_NAMED = 4;

  private ReviewDocument() {}

  /** The whole comparison. */
  public static Document make(ReviewInput input) {
    List<Document.Section> sections = new ArrayList<>();
    for (FileReview file : input.files()) {
      for (WallReview wall : file.walls()) {
        sections.add(section(input, file, wall));
      }
      text(file).ifPresent(sections::add);
    }
    List<String> closing = new ArrayList<>();
    if (sections.isEmpty()) {
      closing.add("Nothing differs.");
    }
    closing.add(Caution.WORDS);
    return new Document("diff", "From " + input.from() + " to " + input.to(), sections, closing);
  }

  /** What differs outside walls, or that nothing but the text does. */
  private static Optional<Document.Section> text(FileReview file) {
    String name = ReviewInput.name(file);
    List<String> said = new ArrayList<>();
    if (file.renamed()) {
      said.add("The file was called " + file.old().orElseThrow() + ".");
    }
    if (file.walls().isEmpty() && file.textDiffers()) {
      if (file.old().isEmpty()) {
        said.add("The file is new; no wall stands in it.");
      } else if (file.now().isEmpty()) {
        said.add("The file is gone; no wall stood in it.");
      } else {
        said.add("The text differs, no fact of a wall in it does.");
      }
    }
    List<Table> tables = new ArrayList<>();
    findings(
            file.text().tripped().stream().map(f -> new FindingChange(f, List.of())).toList(),
            file.text().mended().stream().map(f -> new FindingChange(f, List.of())).toList())
        .ifPresent(tables::add);
    return said.isEmpty() && tables.isEmpty()
        ? Optional.empty()
        : Optional.of(new Document.Section(name, name, "", said, tables));
  }

  private static Document.Section section(ReviewInput input, FileReview file, WallReview wall) {
    UnitSystem units = input.units(file);
    String name = ReviewInput.name(file);
    List<Table> tables = new ArrayList<>();
    String state = wall.old().isEmpty() ? ", added" : wall.now().isEmpty() ? ", removed" : "";
    changes(wall, units, input.growth()).ifPresent(tables::add);
    pieces(wall, units).ifPresent(tables::add);
    goods(wall, units).ifPresent(tables::add);
    findings(wall.tripped(), wall.mended()).ifPresent(tables::add);
    reactions(wall, units, input.growth()).ifPresent(tables::add);
    return new Document.Section(
        name + ", wall " + wall.name() + state, name, wall.name(), warnings(file), tables);
  }

  private static List<String> warnings(FileReview file) {
    return file.errors() == 0
        ? List.of()
        : List.of(
            "Errors stand in the text of the file, "
                + file.errors()
                + " in all: what follows may be wrong or missing. Run “mullwright check”.");
  }

  private static Optional<Table> changes(WallReview wall, UnitSystem units, double growth) {
    ReviewEffects effects = new ReviewEffects(wall, units, growth);
    List<List<Entry>> rows = new ArrayList<>();
    for (int at = 0; at < wall.changes().size(); at++) {
      rows.add(
          List.of(new Entry.Count(at + 1L), glued(wall.words(at, units)), glued(effects.of(at))));
    }
    return table(
        "changes",
        "Changes",
        List.of(
            Column.count("number", "No."),
            Column.text("change", "Change"),
            Column.text("effects", "What follows")),
        rows);
  }

  private static Optional<Table> table(
      String name, String title, List<Column> columns, List<List<Entry>> rows) {
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(new Table(name, title, columns, rows, List.of()));
  }

  private record MarkKey(
      PieceChange.What what,
      PieceRef.Kind kind,
      String noun,
      Optional<PieceState.Make> before,
      Optional<PieceState.Make> after) {}

  private static Optional<Table> pieces(WallReview wall, UnitSystem units) {
    Map<MarkKey, List<PieceChange>> groups = new LinkedHashMap<>();
    for (PieceChange piece : wall.pieces()) {
      MarkKey key =
          new MarkKey(
              piece.what(),
              piece.key().kind(),
              ReviewEffects.noun(piece.key().kind(), piece.key().more()),
              piece.before().map(PieceState::make),
              piece.after().map(PieceState::make));
      groups.computeIfAbsent(key, any -> new ArrayList<>()).add(piece);
    }
    List<List<Entry>> rows = new ArrayList<>();
    groups.forEach(
        (key, pieces) -> {
          PieceChange first = pieces.get(0);
          rows.add(
              List.of(
                  Entry.text(key.what().name().toLowerCase(java.util.Locale.ROOT)),
                  Entry.text(
                      arrow(
                          first.before().map(PieceState::mark),
                          first.after().map(PieceState::mark))),
                  new Entry.Count(pieces.size()),
                  Entry.text(
                      arrow(
                          key.before().map(PieceState.Make::part),
                          key.after().map(PieceState.Make::part))),
                  glued(
                      arrow(
                          key.before().map(make -> size(make, units)),
                          key.after().map(make -> size(make, units)))),
                  new Entry.Names(pieces.stream().map(piece -> piece.state().name()).toList()),
                  Entry.text(numbers(first.causes()))));
        });
    return table(
        "pieces",
        "Pieces",
        List.of(
            Column.text("state", "State"),
            Column.text("mark", "Mark"),
            Column.count("count", "Count"),
            Column.text("part", "Part"),
            Column.text("size", "Size"),
            Column.names("pieces", "Pieces"),
            Column.text("by", "By")),
        rows);
  }

  /** Text whose figures are not broken over two lines. */
  private static Entry glued(String text) {
    return Entry.text(
        text.replaceAll(
            "(?<=\\d) (?=\\d+/\\d+\"|mm\\b|psf\\b|ft2?\\b|m2?\\b|kPa\\b|lbf?\\b|k?N\\b)",
            "" + TextWidth.GLUE));
  }

  private static String arrow(Optional<String> before, Optional<String> after) {
    if (before.isEmpty() || after.isEmpty() || before.equals(after)) {
      return after.or(() -> before).orElse("");
    }
    return before.get() + " → " + after.get();
  }

  private static String size(PieceState.Make make, UnitSystem units) {
    String length = LengthPrinter.in(units, make.length());
    return make.height().map(h -> length + " × " + LengthPrinter.in(units, h)).orElse(length);
  }

  /** Changes by the numbers they are told under. */
  static String numbers(List<Integer> causes) {
    return causes.stream().map(at -> Integer.toString(at + 1)).collect(Collectors.joining(", "));
  }

  private static Optional<Table> goods(WallReview wall, UnitSystem units) {
    List<List<Entry>> rows = new ArrayList<>();
    for (GoodsChange change : wall.goods()) {
      rows.add(
          List.of(
              Entry.text(change.item().kind()),
              Entry.text(change.item().name()),
              new Entry.Count(change.before().count()),
              new Entry.Count(change.after().count()),
              Entry.text(signed(change.count())),
              glued(amount(change, units))));
    }
    return table(
        "goods",
        "Bars, glass and hardware (net, as in the takeoff)",
        List.of(
            Column.text("kind", "Kind"),
            Column.text("name", "Name"),
            Column.count("before", "Was"),
            Column.count("after", "Is"),
            Column.text("more", "Pieces"),
            Column.text("amount", "Length or area")),
        rows);
  }

  private static String signed(long count) {
    return count > 0 ? "+" + count : count < 0 ? "−" + -count : "±0";
  }

  private static String amount(GoodsChange change, UnitSystem units) {
    Rational length = change.after().metres().minus(change.before().metres());
    Rational area = change.after().squareMetres().minus(change.before().squareMetres());
    boolean us = units == UnitSystem.US;
    if (change.byArea()) {
      return decimal(area, us ? Unit.SQUARE_FOOT : Unit.SQUARE_METRE, us ? "ft2" : "m2");
    }
    return change.byLength() ? decimal(length, us ? Unit.FOOT : Unit.METRE, us ? "ft" : "m") : "";
  }

  private static String decimal(Rational amount, Unit unit, String symbol) {
    BigDecimal number = amount.dividedBy(unit.factor()).toDecimal(2, RoundingMode.HALF_UP);
    String sign = number.signum() > 0 ? "+" : number.signum() < 0 ? "−" : "±";
    return sign + number.abs().toPlainString() + " " + symbol;
  }

  private static Optional<Table> findings(List<FindingChange> tripped, List<FindingChange> mended) {
    List<List<Entry>> rows = new ArrayList<>();
    folded("tripped", tripped, rows);
    folded("mended", mended, rows);
    return table(
        "checks",
        "Checks",
        List.of(
            Column.text("state", "State"),
            Column.text("rule", "Rule"),
            Column.text("severity", "Severity"),
            Column.text("what", "What"),
            Column.text("by", "By")),
        rows);
  }

  private static void folded(String state, List<FindingChange> changes, List<List<Entry>> rows) {
    Map<Finding, FindingChange> byFinding = new LinkedHashMap<>();
    changes.forEach(change -> byFinding.putIfAbsent(change.finding(), change));
    for (FoldedFinding folded : FoldedFinding.fold(List.copyOf(byFinding.keySet()))) {
      Finding shown = folded.shown();
      String piece = shown.piece().isEmpty() ? "" : shown.piece() + ": ";
      String more = folded.more(OTHERS_NAMED);
      rows.add(
          List.of(
              Entry.text(state),
              Entry.text(shown.rule()),
              Entry.text(shown.severity().name().toLowerCase(java.util.Locale.ROOT)),
              glued(piece + shown.what() + (more.isEmpty() ? "" : " (" + more + ")")),
              Entry.text(numbers(byFinding.get(shown).causes()))));
    }
  }

  private record ReactionKey(String at, String direction, List<Integer> causes) {}

  /** Reactions of like anchors at one place together, the one that grew most shown. */
  private static Optional<Table> reactions(WallReview wall, UnitSystem units, double growth) {
    Map<ReactionKey, List<ReactionChange>> groups = new LinkedHashMap<>();
    for (ReactionChange reaction : wall.reactions()) {
      if (reaction.grewOver(growth)) {
        // the place stands after the line: "clip of vertical C at sill"
        String at = reaction.anchor().replaceFirst("of vertical [^ ]+ ", "");
        groups
            .computeIfAbsent(
                new ReactionKey(at, reaction.direction(), reaction.causes()),
                any -> new ArrayList<>())
            .add(reaction);
      }
    }
    List<List<Entry>> rows = new ArrayList<>();
    for (List<ReactionChange> group : groups.values()) {
      group.sort(Comparator.comparing(ReactionChange::growth).reversed());
      ReactionChange most = group.get(0);
      rows.add(
          List.of(
              new Entry.Names(group.stream().map(ReactionChange::anchor).toList()),
              Entry.text(most.direction()),
              glued(force(most.before(), units) + " → " + force(most.after(), units)),
              Entry.text(percent(most)),
              Entry.text(numbers(most.causes()))));
    }
    return table(
        "reactions",
        "Reactions that grew by more than " + Math.round(growth * 100) + " %",
        List.of(
            Column.names("anchor", "Anchor"),
            Column.text("direction", "Direction"),
            Column.text("force", "Force"),
            Column.text("growth", "Growth"),
            Column.text("by", "By")),
        rows);
  }

  private static String percent(ReactionChange reaction) {
    return Double.isInfinite(reaction.growth())
        ? "from none"
        : "+" + Math.round(reaction.growth() * 100) + " %";
  }

  private static String force(double newtons, UnitSystem units) {
    return QuantityPrinter.in(units, Quantity.ofSi(newtons, Kind.FORCE), Kind.FORCE);
  }
}
