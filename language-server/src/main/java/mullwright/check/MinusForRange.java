package mullwright.check;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import mullwright.model.Grid;
import mullwright.model.ModelProblem;
import mullwright.model.Origin;
import mullwright.syntax.TextRange;

/** A minus between two floors or rows where the two dots of a range are meant. */
final class MinusForRange {
  private static final Pattern MINUS =
      Pattern.compile("[ \\t]+[-\u2212][ \\t]+([\\p{L}_][\\p{L}\\p{N}_.-]*)");

  private MinusForRange() {}

  /** Writes the range, if a value nothing has is the first of two such names; else nothing. */
  static Optional<Fix> mend(ModelProblem.UnknownName unknown, TextFacts facts) {
    Origin at = unknown.origin();
    String text = facts.segment(at).map(segment -> segment.text()).orElse("");
    int end = at.range().end();
    Matcher after = MINUS.matcher(text).region(Math.min(end, text.length()), text.length());
    if (!unknown.what().equals("value")
        || !after.lookingAt()
        || !isPlace(unknown.name(), facts)
        || !isPlace(after.group(1), facts)) {
      return Optional.empty();
    }
    TextRange both = new TextRange(at.range().start(), after.end());
    String range = unknown.name() + ".." + after.group(1);
    return Optional.of(Fixes.replace(new Origin(at.file(), at.segment(), both), range));
  }

  private static boolean isPlace(String name, TextFacts facts) {
    return facts.model().walls().stream()
        .map(wall -> wall.grid())
        .anyMatch(grid -> hasFloor(grid, name) || hasRow(grid, name));
  }

  private static boolean hasFloor(Grid grid, String name) {
    return grid.floors().stream().anyMatch(floor -> floor.name().equals(name));
  }

  private static boolean hasRow(Grid grid, String name) {
    return grid.rows().stream().anyMatch(row -> row.name().equals(name));
  }
}
