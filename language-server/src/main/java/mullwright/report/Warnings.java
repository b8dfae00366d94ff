package mullwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import mullwright.layout.Impossible;

/** What a reader must know before he uses the tables of a wall. */
final class Warnings {
  private Warnings() {}

  /**
   * The warnings of a wall.
   *
   * @param done what must not be done yet: {@code made}, {@code ordered}
   * @param empty true if there is nothing to tell
   */
  static List<String> of(Report.WallAtHand wall, String done, boolean empty) {
    return of(wall, done, "figures", empty ? "Nothing can be told of this wall yet" : "");
  }

  /** The warnings of a wall whose pieces are listed to be cut. */
  static List<String> ofCutting(Report.WallAtHand wall, boolean empty) {
    return of(wall, "cut", "lengths", empty ? "No piece can be cut from this wall yet" : "");
  }

  private static List<String> of(Report.WallAtHand wall, String done, String told, String nothing) {
    List<String> warnings = new ArrayList<>();
    if (wall.errors() > 0) {
      String errors = wall.errors() == 1 ? "1 error stands" : wall.errors() + " errors stand";
      warnings.add(
          "Not to be "
              + done
              + " from: "
              + errors
              + " in this wall, so "
              + told
              + " may be wrong or missing. Run “mullwright check "
              + wall.file()
              + "” and mend them first.");
    }
    List<Impossible> impossible = wall.facts().layout().impossible();
    if (!impossible.isEmpty()) {
      warnings.add(
          "Left out, since the wall as written leaves no place for them: "
              + impossible.stream()
                  .map(Impossible::name)
                  .distinct()
                  .collect(Collectors.joining("; "))
              + ".");
    }
    if (!nothing.isEmpty()) {
      warnings.add(
          nothing
              + ": it needs lines, rows and members whose profiles"
              + " are in a catalog it uses.");
    }
    return warnings;
  }
}
