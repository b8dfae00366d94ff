package mullwright.model;

import mullwright.derivation.Locus;
import mullwright.syntax.TextRange;

/**
 * Where in the text a fact stands.
 *
 * <p>The range counts from the start of the segment, so an edit in another block leaves an origin
 * equal to what it was; {@code workspace} turns it into a place in the file.
 *
 * @param file the file's workspace path, {@code /} between folders
 * @param segment which segment of the file
 * @param range where in the segment
 */
public record Origin(String file, int segment, TextRange range) implements Locus {
  /**
   * The order in which two stand in the text: by file, then from its start on. Spelled out: the
   * library's comparators are made at run time, at every start.
   */
  public static int inText(Origin one, Origin other) {
    int order = one.file.compareTo(other.file);
    return order == 0 ? inFile(one, other) : order;
  }

  /** The same of two that stand in one file. */
  static int inFile(Origin one, Origin other) {
    int order = Integer.compare(one.segment, other.segment);
    if (order == 0) {
      order = Integer.compare(one.range.start(), other.range.start());
    }
    return order == 0 ? Integer.compare(one.range.end(), other.range.end()) : order;
  }

  // asked for every name of a wall at every edit: a record's own way is several times slower
  @Override
  public int hashCode() {
    return (file.hashCode() * 31 + segment) * 31 + range.start() * 31 + range.end();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Origin same
        && segment == same.segment
        && range.start() == same.range.start()
        && range.end() == same.range.end()
        && file.equals(same.file);
  }
}
