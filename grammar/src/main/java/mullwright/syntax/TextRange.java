package mullwright.syntax;

/**
 * A half-open stretch of text, counted in UTF-16 code units from the start of its segment.
 *
 * <p>Counting from the segment and not from the file is what keeps a tree valid when text before it
 * grows or shrinks: an edit in one block leaves the ranges of every other block as they were.
 *
 * @param start first code unit, at least 0
 * @param end code unit after the last, at least {@code start}
 */
public record TextRange(int start, int end) {
  public TextRange {
    if (start < 0 || end < start) {
      throw new IllegalArgumentException("no such range: " + start + ".." + end);
    }
  }

  /** Length in code units. */
  public int length() {
    return end - start;
  }

  /** True if {@code offset} lies in this range or touches its end. */
  public boolean touches(int offset) {
    return start <= offset && offset <= end;
  }

  /** The smallest range that holds both. */
  public TextRange to(TextRange other) {
    return new TextRange(Math.min(start, other.start), Math.max(end, other.end));
  }
}
