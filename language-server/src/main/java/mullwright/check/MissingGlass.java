package mullwright.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.layout.Cell;
import mullwright.model.LiteUse;
import mullwright.model.Part;
import mullwright.model.PartKind;
import mullwright.syntax.StatementKind;

/**
 * Edits that fill openings which nothing fills: one statement for all that lie between the same
 * rows, with a glass that the wall has already; where it has none, with one of the catalog.
 */
final class MissingGlass {
  private static final int OFFERED = 3;

  private final WallFacts facts;
  private final Map<Rows, List<Cell>> empty = new LinkedHashMap<>();
  private final Map<Rows, List<Fix>> known = new HashMap<>();

  private record Rows(int below, int above) {}

  private record Filling(boolean vision, String glass) {
    static Filling of(LiteUse use) {
      return new Filling(use.vision(), use.glass().value());
    }

    String words() {
      StatementKind kind = vision ? StatementKind.VISION : StatementKind.SPANDREL;
      return kind.spelling() + " " + Words.asName(glass);
    }
  }

  MissingGlass(WallFacts facts) {
    this.facts = facts;
    for (Cell cell : facts.layout().cells()) {
      if (cell.use().isEmpty() && cell.opening().isEmpty()) {
        empty
            .computeIfAbsent(new Rows(cell.below(), cell.above()), rows -> new ArrayList<>())
            .add(cell);
      }
    }
  }

  /** The edits that fill an opening and those beside it, the best first. */
  List<Fix> fixes(Cell it) {
    return known.computeIfAbsent(new Rows(it.below(), it.above()), this::make);
  }

  /** The edit that fills all bays of an opening as some of them are filled. */
  static Optional<Fix> whole(Cell it, LiteUse use, WallFacts facts) {
    Filling filling = Filling.of(use);
    StatementEdits edits = new StatementEdits(facts.text());
    String all = new BayRanges(facts.wall().grid()).clauses(List.of(it));
    return Optional.of(use.origin())
        .filter(origin -> edits.standsIn(facts.wall(), origin))
        .flatMap(origin -> edits.addAfter(origin, filling.words() + " " + all))
        .map(edit -> new Fix("Fill it all with " + filling.glass(), List.of(edit)));
  }

  private List<Fix> make(Rows rows) {
    List<Fix> fixes = new ArrayList<>();
    StatementEdits edits = new StatementEdits(facts.text());
    for (Filling filling : fillings(rows)) {
      edits
          .addLite(facts.wall(), filling.words() + " " + where(rows))
          .map(edit -> new Fix("Fill it with " + filling.words(), List.of(edit)))
          .ifPresent(fixes::add);
    }
    return fixes;
  }

  private String where(Rows rows) {
    boolean nothing = facts.layout().cells().stream().allMatch(cell -> cell.use().isEmpty());
    return nothing ? "all" : new BayRanges(facts.wall().grid()).clauses(empty.get(rows));
  }

  /** What the wall puts between the same rows first, then what it has most of. */
  private List<Filling> fillings(Rows rows) {
    Map<Filling, Integer> uses = new LinkedHashMap<>();
    for (LiteUse use : facts.wall().lites()) {
      boolean known = facts.catalog().find(Part.Glass.class, use.glass().value()).isPresent();
      if (!use.operable() && known) {
        boolean beside = use.below() == rows.below() && use.above() == rows.above();
        uses.merge(Filling.of(use), beside ? facts.wall().lites().size() : 1, Integer::sum);
      }
    }
    if (uses.isEmpty()) {
      return ofCatalog().stream().toList();
    }
    return uses.entrySet().stream()
        .sorted(Comparator.comparing(entry -> -entry.getValue()))
        .map(Map.Entry::getKey)
        .limit(OFFERED)
        .toList();
  }

  private Optional<Filling> ofCatalog() {
    List<Filling> all = new ArrayList<>();
    for (Part part : facts.catalog().all(PartKind.GLASS)) {
      if (part instanceof Part.Glass glass) {
        all.add(new Filling(!glass.opacified().value(), glass.name()));
      }
    }
    return all.stream().filter(Filling::vision).findFirst().or(() -> all.stream().findFirst());
  }
}
