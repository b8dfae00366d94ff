package mullwright.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import mullwright.analysis.glass.SafetyGlazing.Condition;
import mullwright.analysis.lite.LiteSafety;
import mullwright.layout.Cell;
import mullwright.layout.WallLayout;
import mullwright.quantity.Kind;
import mullwright.quantity.Quantity;
import mullwright.quantity.QuantityPrinter;
import mullwright.quantity.UnitSystem;

/**
 * Safety glazing of lites: of the place that requires it, or comes nearest to it, the conditions
 * one by one with what the lite has, then the verdict. Lites whose conditions read alike stand
 * together.
 */
final class LiteSafetyRows {
  private final LiteSafety.Places places;
  private final UnitSystem units;
  private final boolean each;
  private final Map<List<List<String>>, List<String>> lites = new LinkedHashMap<>();

  LiteSafetyRows(WallLayout layout, UnitSystem units, boolean each) {
    this.places = LiteSafety.places(layout);
    this.units = units;
    this.each = each;
  }

  /** Adds the lite in a cell with glass. */
  void add(Cell cell) {
    places
        .of(cell)
        .shown()
        .ifPresent(
            seen -> {
              List<List<String>> lines = new ArrayList<>();
              seen.conditions().forEach(condition -> lines.add(line(condition, seen)));
              lines.add(verdict(cell, seen));
              if (each) {
                lines.add(List.of(cell.name()));
              }
              lites.computeIfAbsent(lines, any -> new ArrayList<>()).add(cell.name());
            });
  }

  private List<String> line(Condition condition, LiteSafety.Seen seen) {
    Kind kind = condition.unit().equals("m²") ? Kind.AREA : Kind.LENGTH;
    boolean taken = seen.reaches() && condition.words().startsWith("a walking");
    return List.of(
        condition.words() + (taken ? ": the floor is taken to reach the wall" : ""),
        QuantityPrinter.in(units, Quantity.ofSi(condition.measured(), kind), kind),
        condition.met() ? "yes" : "no");
  }

  private List<String> verdict(Cell cell, LiteSafety.Seen seen) {
    boolean rated = cell.glass().isPresent() && cell.glass().get().safety().value();
    return List.of(
        "safety glazing required by "
            + seen.clause()
            + (rated
                ? "; the glass is stated as safety rated"
                : "; the glass is not stated as safety rated"),
        "",
        seen.required() ? "yes" : "no");
  }

  Table table() {
    List<List<Entry>> rows = new ArrayList<>();
    lites.forEach(
        (lines, names) ->
            lines.stream()
                .filter(line -> line.size() > 1)
                .forEach(
                    line ->
                        rows.add(
                            List.of(
                                new Entry.Names(names),
                                Entry.text(line.get(0)),
                                Entry.text(line.get(1)),
                                Entry.text(line.get(2))))));
    return new Table(
        "lites-safety",
        "Lites: safety glazing, seen from the floor or door that asks most",
        List.of(
            Column.names("piece", each ? "Lite" : "Lites"),
            Column.text("condition", "Condition"),
            Column.text("has", "Has"),
            Column.text("met", "Met")),
        rows,
        List.of());
  }
}
