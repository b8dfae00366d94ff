package mullwright.model;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import mullwright.syntax.TextRange;
import mullwright.syntax.Word;

/**
 * The names of one kind of thing in the order of the grid: which indices a name stands for.
 *
 * <p>A line or floor has one index; a row's bare name may stand for many.
 */
final class NameIndex {
  private static final int[] NONE = {};

  private final String what;
  private final Map<String, int[]> indices = new HashMap<>();
  private final Map<String, Symbol> symbols = new HashMap<>();
  private final Map<String, Symbol> fronts = new HashMap<>();
  private final List<String> names = new ArrayList<>();
  private final List<String> labels = new ArrayList<>();
  private int size;
  private boolean complete = true;
  private int firstGroup = -1;

  /**
   * @param what the word for such a thing, {@code line}
   */
  NameIndex(String what) {
    this.what = what;
  }

  /** The next thing in order, by one or more names. */
  void add(Symbol symbol, String... spellings) {
    for (String spelling : spellings) {
      int[] before = indices.get(spelling);
      if (before == null) {
        indices.put(spelling, new int[] {size});
        names.add(spelling);
        symbols.put(spelling, symbol);
      } else if (before[before.length - 1] != size) {
        int[] more = java.util.Arrays.copyOf(before, before.length + 1);
        more[before.length] = size;
        indices.put(spelling, more);
      }
    }
    labels.add(spellings[spellings.length - 1]);
    size++;
  }

  /** The fullest name of a thing; a row that steps has one name and several indices. */
  String label(int index) {
    return labels.get(index);
  }

  /**
   * Says that what comes is of another sort: {@code all} and ranges stay on one side of this
   * border.
   */
  void groupEnds() {
    firstGroup = size;
  }

  /** How many {@code all} means. */
  int all() {
    return firstGroup < 0 ? size : firstGroup;
  }

  /** True if a range may go from the one to the other. */
  boolean together(int one, int other) {
    return firstGroup < 0 || one < firstGroup == other < firstGroup;
  }

  /** Says that a statement that makes names could not be read: unknown names are then no news. */
  void incomplete() {
    complete = false;
  }

  boolean isComplete() {
    return complete;
  }

  String what() {
    return what;
  }

  int size() {
    return size;
  }

  boolean has(String name) {
    return indices.containsKey(name);
  }

  /** Ascending; empty if nothing has the name. Not to be changed. */
  int[] find(String name) {
    return indices.getOrDefault(name, NONE);
  }

  Symbol symbol(String name) {
    return symbols.get(name);
  }

  /** All names in the order first met. */
  List<String> names() {
    return names;
  }

  /** Says that the dotted name begins with the name of that floor. */
  void front(String dotted, Symbol floor) {
    fronts.putIfAbsent(dotted, floor);
  }

  /**
   * What the name stands for, with its references; empty with a problem if nothing has it.
   *
   * @param said the statement that names it
   */
  int[] named(Word word, Said said, Collector collector) {
    String name = word.text();
    int[] found = find(name);
    Spot spot = said.spot();
    if (found.length == 0) {
      if (complete) {
        collector.unknown(what, name, names, spot.at(word));
      }
      return NONE;
    }
    Symbol symbol = symbols.get(name);
    Symbol floor = fronts.get(name);
    if (floor == null) {
      collector.names(symbol, spot.at(word));
    } else {
      int start = word.range().start() + (word.quoted() ? 1 : 0);
      int dot = start + name.indexOf('.', floor.name().length());
      collector.names(floor, spot.at(new TextRange(start, dot)));
      collector.names(symbol, spot.at(new TextRange(dot + 1, start + name.length())));
    }
    return found;
  }
}
