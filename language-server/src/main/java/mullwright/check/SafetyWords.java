package mullwright.check;

import java.util.ArrayList;
import java.util.List;
import mullwright.analysis.glass.SafetyGlazing.Condition;
import mullwright.analysis.lite.LiteSafety;
import mullwright.layout.Cell;
import mullwright.layout.WallLayout;
import mullwright.quantity.Kind;
import mullwright.quantity.Quantity;
import mullwright.quantity.QuantityPrinter;
import mullwright.quantity.UnitSystem;

/**
 * Tells whether a lite needs safety glazing, never without the conditions and what they were held
 * against.
 */
public final class SafetyWords {
  private SafetyWords() {}

  /** One line of verdict, one a condition, one of what was not examined; none without glass. */
  public static List<String> lines(WallLayout layout, Cell cell, UnitSystem units) {
    List<String> lines = new ArrayList<>();
    if (cell.glass().isEmpty() || cell.opening().isPresent()) {
      return lines;
    }
    LiteSafety.of(layout, cell)
        .shown()
        .ifPresent(
            seen -> {
              lines.add(
                  "safety glazing "
                      + (seen.required() ? "required" : "not required")
                      + " by "
                      + seen.clause()
                      + ", seen from "
                      + seen.from()
                      + (cell.glass().get().safety().value()
                          ? "; the glass is stated as safety rated"
                          : "; the glass is not stated as safety rated"));
              seen.conditions().forEach(condition -> lines.add(line(condition, seen, units)));
              lines.add("not examined: " + String.join("; ", seen.notExamined()));
            });
    return lines;
  }

  private static String line(Condition condition, LiteSafety.Seen seen, UnitSystem units) {
    Kind kind = condition.unit().equals("m²") ? Kind.AREA : Kind.LENGTH;
    boolean taken = seen.reaches() && condition.words().startsWith("a walking");
    return condition.words()
        + ": "
        + (condition.met() ? "yes, " : "no, ")
        + QuantityPrinter.both(Quantity.ofSi(condition.measured(), kind), kind, units)
        + (taken ? ", the floor is taken to reach the wall" : "");
  }
}
