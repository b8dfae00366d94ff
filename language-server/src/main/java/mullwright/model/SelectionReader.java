package mullwright.model;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import mullwright.syntax.Selection;
import mullwright.syntax.Word;

/**
 * Finds what a selection names: lines, floors and rows as lists, bays and the like as the spaces
 * between. Names that are not there are reported and left out.
 */
final class SelectionReader {
  private final Said said;
  private final Collector collector;

  SelectionReader(Said said, Collector collector) {
    this.said = said;
    this.collector = collector;
  }

  /** The named things, in the order written; {@code A..F} is a list in the order of the grid. */
  Chosen list(Selection selection, NameIndex names) {
    Chosen.Builder chosen = new Chosen.Builder();
    BitSet outright = new BitSet();
    if (selection.all() && names.all() > 0) {
      int last = names.all() - 1;
      chosen.addAll(said.mirrored() ? last : 0, said.mirrored() ? 0 : last);
    }
    for (Selection.Item item : selection.items()) {
      listItem(item, names, chosen, outright);
    }
    Chosen.Builder except = new Chosen.Builder();
    for (Selection.Item item : selection.except()) {
      listItem(item, names, except, new BitSet());
    }
    BitSet out = except.build(1, new BitSet(), outright).set();
    return chosen.build(every(selection), out, outright);
  }

  private void listItem(
      Selection.Item item, NameIndex names, Chosen.Builder chosen, BitSet outright) {
    if (!item.isRange()) {
      for (int index : names.named(item.first(), said, collector)) {
        chosen.add(index);
        outright.set(index);
      }
      return;
    }
    for (int[] pair : pairs(item, names)) {
      chosen.addAll(pair[0], pair[1]);
      outright.set(pair[0]);
      outright.set(pair[1]);
    }
  }

  /**
   * From what to what a range goes. Where a name stands for many (rows repeated over floors), each
   * goes with the next one above it that has the other name. A row that steps counts as one, from
   * its lowest stretch or to its highest.
   */
  private List<int[]> pairs(Selection.Item item, NameIndex names) {
    int[] first = names.named(item.first(), said, collector);
    int[] last = names.named(item.last(), said, collector);
    List<int[]> pairs = new ArrayList<>();
    if (first.length == 0 || last.length == 0) {
      return pairs;
    }
    if (!names.together(first[0], last[0])) {
      outOfPlace(item, "a range goes from floor to floor or from row to row");
      return pairs;
    }
    List<int[]> starts = stretches(first, names);
    List<int[]> ends = stretches(last, names);
    if (starts.size() == 1 && ends.size() == 1) {
      pairs.add(new int[] {starts.get(0)[0], ends.get(0)[1]});
      return pairs;
    }
    int at = 0;
    for (int i = 0; i < starts.size(); i++) {
      int start = starts.get(i)[0];
      while (at < ends.size() && ends.get(at)[1] <= start) {
        at++;
      }
      boolean beforeTheNext =
          at < ends.size() && (i + 1 == starts.size() || ends.get(at)[0] <= starts.get(i + 1)[0]);
      if (beforeTheNext) {
        pairs.add(new int[] {start, ends.get(at)[1]});
      }
    }
    if (pairs.isEmpty()) {
      String why = "no " + item.last().text() + " is the next above a " + item.first().text();
      outOfPlace(item, why);
    }
    return pairs;
  }

  /** The lowest and the highest index of each thing of one name. */
  private static List<int[]> stretches(int[] indices, NameIndex names) {
    Map<String, int[]> byName = new LinkedHashMap<>();
    for (int index : indices) {
      byName.computeIfAbsent(names.label(index), name -> new int[] {index, index})[1] = index;
    }
    return List.copyOf(byName.values());
  }

  /** The bays between the named lines. */
  Chosen bays(Selection selection, NameIndex lines, Bays bays) {
    Chosen.Builder chosen = new Chosen.Builder();
    if (selection.all() && bays.count() > 0) {
      int last = bays.count() - 1;
      chosen.addAll(said.mirrored() ? last : 0, said.mirrored() ? 0 : last);
    }
    for (Selection.Item item : selection.items()) {
      bayItem(item, lines, bays, chosen);
    }
    Chosen.Builder except = new Chosen.Builder();
    for (Selection.Item item : selection.except()) {
      bayItem(item, lines, bays, except);
    }
    BitSet out = except.build(1, new BitSet(), new BitSet()).set();
    return chosen.build(every(selection), out, new BitSet());
  }

  private void bayItem(Selection.Item item, NameIndex lines, Bays bays, Chosen.Builder chosen) {
    int[] first = lines.named(item.first(), said, collector);
    int[] last = item.isRange() ? lines.named(item.last(), said, collector) : first;
    if (first.length == 0 || last.length == 0) {
      return;
    }
    int from = Math.min(first[0], last[0]);
    int to = Math.max(first[0], last[0]);
    boolean any = false;
    for (int step = 0; step < to - from; step++) {
      int line = first[0] <= last[0] ? from + step : to - 1 - step;
      int bay = bays.rightOf(line);
      if (bay >= 0) {
        chosen.add(bay);
        any = true;
      }
    }
    if (!any) {
      String why =
          from == to ? "a bay lies between two lines, as A..B" : "no bay lies between these lines";
      outOfPlace(item, why);
    }
  }

  /** The spaces between the named rows, each from its lower to its upper row, by index. */
  List<int[]> spaces(Selection selection, NameIndex rows) {
    List<int[]> spaces = new ArrayList<>();
    if (selection.all() && rows.size() > 0) {
      spaces.add(new int[] {0, rows.size() - 1});
    }
    for (Selection.Item item : selection.items()) {
      spaceItem(item, rows, spaces);
    }
    int every = every(selection);
    if (every == 1) {
      return spaces;
    }
    List<int[]> kept = new ArrayList<>();
    for (int i = 0; i < spaces.size(); i += every) {
      kept.add(spaces.get(i));
    }
    return kept;
  }

  /** The spaces taken out again. */
  List<int[]> exceptedSpaces(Selection selection, NameIndex rows) {
    List<int[]> spaces = new ArrayList<>();
    for (Selection.Item item : selection.except()) {
      spaceItem(item, rows, spaces);
    }
    return spaces;
  }

  private void spaceItem(Selection.Item item, NameIndex rows, List<int[]> spaces) {
    if (!item.isRange()) {
      if (rows.named(item.first(), said, collector).length > 0) {
        outOfPlace(item, "a space lies between two rows, as R1..R2");
      }
      return;
    }
    for (int[] pair : pairs(item, rows)) {
      if (pair[0] == pair[1]) {
        outOfPlace(item, "a space lies between two rows, as R1..R2");
      } else if (pair[0] > pair[1]) {
        reversed(item, rows.what());
        spaces.add(new int[] {pair[1], pair[0]});
      } else {
        spaces.add(pair);
      }
    }
  }

  private void reversed(Selection.Item item, String what) {
    Word first = item.first();
    Word last = item.last();
    collector.problem(
        new ModelProblem.OutOfOrder(
            what, last.text(), first.text(), said.spot().at(first), said.spot().at(last)));
  }

  private void outOfPlace(Selection.Item item, String why) {
    String what = '"' + said.spot().text(item.range()) + "\" names nothing";
    collector.misplaced(what, why, said.spot().at(item.range()));
  }

  private int every(Selection selection) {
    return selection
        .every()
        .flatMap(n -> said.values(collector).count(n, "every", Limits.THINGS))
        .orElse(1);
  }
}
