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
    return parse(text, () -> {});
  }

  /**
   * Reads a text that may be long.
   *
   * @param goesOn called after each top-level statement
   */
  public static ParsedFile parse(String text, Runnable goesOn) {
    if (text.length() > SyntaxLimits.FILE_LENGTH) {
      return tooLong(text);
    }
    List<Segment> segments = new ArrayList<>();
    SegmentCutter cutter = new SegmentCutter(text, 0);
    while (cutter.hasNext()) {
      segments.add(SegmentReader.read(text, cutter.next()));
      goesOn.run();
    }
    return new ParsedFile(text, segments.isEmpty() ? List.of(empty()) : segments);
  }

  /**
   * The file after an edit: the text from {@code start} to {@code end} gives way to {@code
   * replacement}.
   *
   * @throws IndexOutOfBoundsException if there is no such stretch of text
   */
  public ParsedFile edit(int start, int end, String replacement) {
    String edited =
        new StringBuilder(text.length() - (end - start) + replacement.length())
            .append(text, 0, start)
            .append(replacement)
            .append(text, end, text.length())
            .toString();
    if (edited.isEmpty() || Math.max(edited.length(), text.length()) > SyntaxLimits.FILE_LENGTH) {
      return parse(edited);
    }
    int shift = edited.length() - text.length();
    // where a segment ends may hang on the first words of the next, so begin one early
    int first = Math.max(0, segmentAt(start - 1) - 1);
    if (endsComment(edited, start, start + replacement.length())) {
      first = Math.max(0, Math.min(first, firstOpenComment() - 1));
    }
    List<Segment> after = new ArrayList<>(segments.subList(0, first));
    SegmentCutter cutter = new SegmentCutter(edited, starts[first]);
    int kept = segments.size();
    while (cutter.hasNext()) {
      SegmentCutter.Cut cut = cutter.next();
      int next = after.size();
      boolean untouched =
          cut.end() <= start && next < segments.size() && cut.end() == starts[next + 1];
      after.add(untouched ? segments.get(next) : SegmentReader.read(edited, cut));
      int before = cut.end() - shift;
      if (before >= end && before < text.length()) {
        int same = Arrays.binarySearch(starts, before);
        if (same >= 0) {
          kept = same;
          break;
        }
      }
    }
    after.addAll(segments.subList(kept, segments.size()));
    ParsedFile file = new ParsedFile(edited, after);
    LineTable before = lines;
    file.lines = before == null ? null : before.edited(edited, start, end);
    return file;
  }

  /** True if the edit put the end of a comment into the text, or made one of what stood there. */
  private static boolean endsComment(String edited, int start, int end) {
    int mark = edited.indexOf("*/", Math.max(0, start - 1));
    return mark >= 0 && mark <= end;
  }

  /** The first segment with a comment whose end stands nowhere; else past the last. */
  private int firstOpenComment() {
    for (int i = 0; i < segments.size(); i++) {
      Segment segment = segments.get(i);
      boolean unread = segment.comments().isEmpty() && segment.statements().isEmpty();
      if (unread || segment.comments().stream().anyMatch(Comment::isOpen)) {
        return i;
      }
    }
    return segments.size();
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

  /**
   * All tokens of a segment in order, comments among them; what lies between is white space. Ranges
   * count from the segment's start.
   */
  public List<Token> tokens(int segmentIndex) {
    Segment segment = segments.get(segmentIndex);
    boolean unread = segment.text().length() > SyntaxLimits.FILE_LENGTH;
    return segment.text().isEmpty() || unread ? List.of() : SegmentReader.tokens(segment.text());
  }

  /**
   * All problems of the file in order, up to {@link SyntaxLimits#PROBLEMS_PER_FILE} and then one
   * that says so.
   */
  public List<FileProblem> problems() {
    List<FileProblem> problems = new ArrayList<>();
    for (int i = 0; i < segments.size(); i++) {
      for (SyntaxProblem problem : segments.get(i).problems()) {
        if (problems.size() == SyntaxLimits.PROBLEMS_PER_FILE) {
          TextRange range = problem.range();
          problem = new SyntaxProblem.TooMuch("problems", SyntaxLimits.PROBLEMS_PER_FILE, range);
          problems.add(new FileProblem(i, problem));
          return List.copyOf(problems);
        }
        problems.add(new FileProblem(i, problem));
      }
    }
    return List.copyOf(problems);
  }

  /**
   * A problem and the segment it is in.
   *
   * @param problem its range counts from the start of that segment
   */
  public record FileProblem(int segment, SyntaxProblem problem) {}

  /** Where lines start. */
  public LineTable lines() {
    if (lines == null) {
      lines = LineTable.of(text);
    }
    return lines;
  }
}
