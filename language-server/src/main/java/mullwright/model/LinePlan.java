package mullwright.model;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import mullwright.quantity.Length;

/** Where the lines of a wall stand, by name, while they are read; can be mirrored. */
final class LinePlan {
  private final Map<String, Entry> lines = new LinkedHashMap<>();
  private final Map<String, Face> faces = new LinkedHashMap<>();
  private boolean complete = true;

  /**
   * A line.
   *
   * @param x from the datum of the wall
   * @param layer of the statement that puts it there
   */
  record Entry(Symbol symbol, Length x, boolean edge, int layer) {
    String name() {
      return symbol.name();
    }
  }

  /** A face from its first to its last line, by name. */
  record Face(Symbol symbol, String first, String last, int layer) {}

  Entry find(String name) {
    return lines.get(name);
  }

  void put(Entry line) {
    lines.put(line.name(), line);
  }

  Face face(String name) {
    return faces.get(name);
  }

  void put(Face face) {
    faces.put(face.symbol().name(), face);
  }

  List<Face> faces() {
    return new ArrayList<>(faces.values());
  }

  Map<String, Entry> lines() {
    return lines;
  }

  void incomplete() {
    complete = false;
  }

  boolean isComplete() {
    return complete;
  }

  /** From the left; of two at one place the one read first. */
  List<Entry> sorted() {
    List<Entry> sorted = new ArrayList<>(lines.values());
    sorted.sort((one, other) -> one.x().compareTo(other.x()));
    return sorted;
  }

  /** Exchanges left and right; the range the lines cover stays. */
  void mirror() {
    List<Entry> sorted = sorted();
    if (sorted.isEmpty()) {
      return;
    }
    Length both = sorted.get(0).x().plus(sorted.get(sorted.size() - 1).x());
    Collections.reverse(sorted);
    lines.clear();
    for (Entry line : sorted) {
      put(new Entry(line.symbol(), both.minus(line.x()), line.edge(), line.layer()));
    }
    List<Face> turned = faces();
    Collections.reverse(turned);
    faces.clear();
    for (Face face : turned) {
      put(new Face(face.symbol(), face.last(), face.first(), face.layer()));
    }
  }
}
