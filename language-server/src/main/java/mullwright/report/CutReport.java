package mullwright.report;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import mullwright.quantity.LengthFormat;
import mullwright.quantity.UnitSystem;
import mullwright.takeoff.cutting.CutList;
import mullwright.takeoff.cutting.CutPlan;
import mullwright.takeoff.cutting.CutPlanner;
import mullwright.takeoff.nesting.Limits;

/**
 * How the bars of all walls given are cut: what to buy, the pieces of each bar, drops and waste,
 * and what is known of any better plan.
 *
 * <p>Walls written in one system of units make one section, so that they share bars and what is on
 * hand is spent once. Tables: bars to buy, where their length goes, then the bars of each part in
 * the order its first piece appears in the layouts.
 */
@AutoService(Report.class)
public final class CutReport implements Report {
  /** Seconds of search for a part, unless the reader says otherwise. */
  public static final int SECONDS = 2;

  /**
   * How the report is wanted.
   *
   * @param each true for every bar by itself, piece by piece
   * @param proof true to add the prices behind every bound
   * @param limits of the search for one part
   */
  public record Wanted(boolean each, boolean proof, Limits limits) {}

  @Override
  public String name() {
    return "cut";
  }

  @Override
  public Document make(List<WallAtHand> walls, Options options) {
    return make(walls, new Wanted(options.each(), false, Limits.report(SECONDS)));
  }

  /** The report on those walls. */
  public Document make(List<WallAtHand> walls, Wanted wanted) {
    Map<UnitSystem, List<WallAtHand>> byUnits = new LinkedHashMap<>();
    walls.forEach(
        wall -> byUnits.computeIfAbsent(wall.units(), units -> new ArrayList<>()).add(wall));
    List<String> closing = new ArrayList<>();
    List<Document.Section> sections = new ArrayList<>();
    byUnits.forEach(
        (units, of) -> {
          LengthFormat format = PieceTables.cut(units);
          sections.add(section(of, format, wanted));
          new CutWords(format)
              .saws(of).stream().filter(words -> !closing.contains(words)).forEach(closing::add);
        });
    closing.add(Caution.WORDS);
    return new Document(name(), "Cutting plan", sections, closing);
  }

  private static Document.Section section(
      List<WallAtHand> walls, LengthFormat format, Wanted wanted) {
    CutList list =
        CutList.of(
            walls.stream().map(wall -> wall.facts().layout()).toList(),
            walls.stream().map(Marks::of).toList());
    List<CutPlan> plans = CutPlanner.plan(list, wanted.limits());
    CutTables tables = new CutTables(plans, format, walls.size() > 1);
    List<Table> all = new ArrayList<>(List.of(tables.toBuy(), tables.whereItGoes()));
    all.addAll(wanted.each() ? tables.saws() : tables.bars());
    if (wanted.proof()) {
      all.addAll(new CutProofs(plans, format).tables());
    }
    all.removeIf(table -> table.rows().isEmpty());
    CutWords words = new CutWords(format);
    List<String> warnings = new ArrayList<>();
    walls.forEach(wall -> warnings.addAll(Warnings.ofCutting(wall, list.pools().isEmpty())));
    plans.forEach(plan -> warnings.addAll(words.warnings(plan)));
    warnings.addAll(words.unused(list.rack(), plans));
    String names =
        walls.stream().map(wall -> wall.facts().wall().name()).collect(Collectors.joining(", "));
    return new Document.Section(
        (walls.size() == 1 ? "Wall " : "Walls ") + names,
        walls.stream().map(WallAtHand::file).distinct().collect(Collectors.joining(", ")),
        names,
        warnings.stream().distinct().toList(),
        all);
  }
}
