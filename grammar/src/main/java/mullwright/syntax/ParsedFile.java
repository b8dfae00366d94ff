package mullwright.syntax;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A file of wall text, read: its segments, their trees and what is wrong in them.
 *
 * <p>Reading never fails: any text gives a file. An edit gives a new file that shares all segments
 * the edit did not touch, the very same objects, so whoever remembers results by segment keeps
 * them.
 */
public final class ParsedFile {
  private final String text;
  private final List<Segment> segments;
  private final int[] starts;
  private LineTable lines;

  private ParsedFile(String text, List<Segment> segments) {
    this.text = text;
    this.segments = List.copyOf(segments);
    this.starts = new int[segments.size() + 1];
    for (int i = 0; i < segments.size(); i++) {
      starts[i + 1] = starts[i] + segments.get(i).text().length();
    }
  }

  /** Reads a text. */
  public static ParsedFile parse(String text) {
    if (text.length() > SyntaxLimits.FILE_LENGTH) {
      return tooLong(text);
    }
    List<Segment> segments = new ArrayList<>();
    SegmentCutter cutter = new SegmentCutter(text, 0);
    while (cutter.hasNext()) {
      segments.add(SegmentReader.read(text, cutter.next()));
    }
    return new ParsedFile(text, segments.isEmpty() ? List.of(empty()) : segments);
  }

  private static Segment empty() {
    return new Segment("", List.of(), List.of(), List.of());
  }

  private static ParsedFile tooLong(String text) {
    SyntaxProblem problem =
        new SyntaxProblem.TooMuch("length", SyntaxLimits.FILE_LENGTH, new TextRange(0, 1));
    return new ParsedFile(text, List.of(new Segment(text, List.of(), List.of(), List.of(problem))));
  }

  /** The whole text. */
  public String text() {
    return text;
  }

  /** All segments in order; together they are the text. There is always at least one. */
  public List<Segment> segments() {
    return segments;
  }

  /** Where a segment starts in the text. */
  public int segmentStart(int index) {
    return starts[index];
  }

  /** The segment an offset lies in; between two, the later; past the end, the last. */
  public int segmentAt(int offset) {
    int found = Arrays.binarySearch(starts, 0, segments.size(), Math.max(0, offset));
    return found >= 0 ? found : -found - 2;
  }

  /** A range inside a segment, counted from the start of the text. */
  public TextRange absolute(int segmentIndex, TextRange range) {
    int start = starts[segmentIndex];
    return new TextRange(start + range.start(), start + range.end());
  }

  /** Where lines start. */
  public LineTable lines() {
    if (lines == null) {
      lines = LineTable.of(text);
    }
    return lines;
  }
}
