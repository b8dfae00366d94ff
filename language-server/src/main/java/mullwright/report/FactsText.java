package mullwright.report;

import java.util.Map;
import mullwright.check.WallFacts;
import mullwright.quantity.UnitSystem;
import mullwright.review.Fact;
import mullwright.review.FactSheet;
import mullwright.review.Topic;
import mullwright.review.Value;
import mullwright.review.WallFactsReader;

/**
 * Writes what a wall states, one fact a line in a fixed order: a text that differs only where the
 * wall does, for version control to compare line by line.
 */
public final class FactsText {
  private FactsText() {}

  /**
   * The facts of a wall.
   *
   * @param parts true to tell the parts it is made of as well
   */
  public static String of(WallFacts wall, UnitSystem units, boolean parts) {
    FactSheet sheet = WallFactsReader.read(wall);
    StringBuilder out = new StringBuilder("wall " + wall.wall().name() + "\n");
    for (Map.Entry<Fact, Value> entry : sheet.facts().entrySet()) {
      Fact fact = entry.getKey();
      boolean told = parts || fact.subject().topic() != Topic.PART;
      boolean says =
          !fact.property().equals("name") && !entry.getValue().equals(new Value.Words(""));
      if (told && says && !(fact.property().isEmpty() && sheet.of(fact.subject()).size() > 1)) {
        String value = fact.property().isEmpty() ? "" : ": " + entry.getValue().exactly(units);
        out.append("  ").append(TextWidth.harmless(fact + value)).append('\n');
      }
    }
    return out.toString();
  }

  /** The system of units a file is told in. */
  public static UnitSystem units(java.util.Optional<mullwright.syntax.ParsedFile> file) {
    return FileUnits.of(file);
  }
}
