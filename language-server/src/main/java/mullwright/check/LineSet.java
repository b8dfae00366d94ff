package mullwright.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import mullwright.model.Origin;
import mullwright.syntax.Segment;
import mullwright.syntax.TextRange;

/** Lines of texts, found by what stands in them, however many there are. */
final class LineSet {
  private final Map<Place, List<TextRange>> near = new HashMap<>();
  private final Set<Line> all = new HashSet<>();

  /** A segment of a file. */
  record Place(String file, int segment) {
    static Place of(Origin origin) {
      return new Place(origin.file(), origin.segment());
    }
  }

  /** A line, by where it starts and ends in its segment. */
  record Line(Place place, TextRange range) {}

  /** The line an origin begins on. */
  static Line line(Segment segment, Origin at) {
    String text = segment.text();
    int within = Math.min(at.range().start(), text.length());
    int start = within == 0 ? 0 : text.lastIndexOf('\n', within - 1) + 1;
    int end = text.indexOf('\n', within);
    return new Line(Place.of(at), new TextRange(start, end < 0 ? text.length() : end));
  }

  /** The text of that line. */
  static String text(Segment segment, Origin at) {
    TextRange range = line(segment, at).range();
    return segment.text().substring(range.start(), range.end());
  }

  void add(Segment segment, Origin at) {
    Line line = line(segment, at);
    if (all.add(line)) {
      near.computeIfAbsent(line.place(), place -> new ArrayList<>()).add(line.range());
    }
  }

  boolean isEmpty() {
    return all.isEmpty();
  }

  /** True if the line an origin begins on is one of these. */
  boolean holds(Segment segment, Origin at) {
    return all.contains(line(segment, at));
  }

  /** Those of the segment an origin is in. */
  List<TextRange> near(Origin at) {
    return near.getOrDefault(Place.of(at), List.of());
  }
}
