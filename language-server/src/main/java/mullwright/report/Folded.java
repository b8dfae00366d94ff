package mullwright.report;

import java.util.ArrayList;
import java.util.List;

/**
 * A table for people: columns that say the same in every row are said once, columns that say
 * nothing are left out.
 *
 * @param said what is said once, {@code Finish: bronze outside}
 * @param kept which columns stay, by index
 */
record Folded(List<String> said, List<Integer> kept) {
  static Folded of(Table table) {
    List<String> said = new ArrayList<>();
    List<Integer> kept = new ArrayList<>();
    for (int at = 0; at < table.columns().size(); at++) {
      int index = at;
      Column column = table.columns().get(at);
      boolean empty = table.rows().stream().allMatch(row -> row.get(index) instanceof Entry.None);
      boolean same = table.rows().stream().map(row -> row.get(index)).distinct().count() == 1;
      if (!empty && column.folds() && same) {
        said.add(column.heading() + ": " + Printed.plain(table.rows().get(0).get(at), column));
      } else if (!empty) {
        kept.add(at);
      }
    }
    return new Folded(said, kept);
  }
}
