package mullwright.report;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.ServiceLoader;

/**
 * The numbers behind the checks of a wall, for the engineer who reviews them.
 *
 * <p>What they stand on, then member by member: verticals, horizontals, splices, anchors, lites;
 * then how the governing ones came about, and what was not checked. Rows in the order the pieces
 * appear in the layout; equal ones together unless each is asked for.
 */
@AutoService(Report.class)
public final class CalculationsReport implements Report {
  @Override
  public String name() {
    return "calculations";
  }

  @Override
  public Document make(List<WallAtHand> walls, Options options) {
    List<CalculationSection> parts =
        ServiceLoader.load(CalculationSection.class, CalculationsReport.class.getClassLoader())
            .stream()
            .map(ServiceLoader.Provider::get)
            .sorted(
                Comparator.comparingInt(CalculationSection::order)
                    .thenComparing(part -> part.getClass().getName()))
            .toList();
    return new Document(
        name(),
        "Calculations",
        walls.stream().map(wall -> section(wall, parts, options)).toList(),
        List.of(Caution.WORDS));
  }

  private static Document.Section section(
      WallAtHand wall, List<CalculationSection> parts, Options options) {
    String name = wall.facts().wall().name();
    List<Table> tables = new ArrayList<>();
    parts.forEach(part -> tables.addAll(part.tables(wall, options)));
    tables.removeIf(table -> table.rows().isEmpty());
    List<String> warnings = new ArrayList<>(List.of(Caution.WORDS));
    if (wall.errors() > 0) {
      warnings.add(
          (wall.errors() == 1 ? "1 error stands" : wall.errors() + " errors stand")
              + " in this wall: numbers may be over their limits, wrong or missing. Run “mullwright"
              + " check "
              + wall.file()
              + "”.");
    }
    return new Document.Section("Wall " + name, wall.file(), name, warnings, tables);
  }
}
