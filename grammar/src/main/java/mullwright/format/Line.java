package mullwright.format;

import java.util.ArrayList;
import java.util.List;

/** One line of the text on its way to its layout. */
final class Line {
  /** What the line is cut into, so that lines of a run can put them in columns. */
  record Cell(String key, String text) {}

  private final String written;
  private final List<Cell> cells = new ArrayList<>();
  private String comment = "";
  private int indent;
  private boolean kept;
  private boolean aligned;
  private boolean opensBlock;
  private boolean closesBlock;
  private String keyword = "";
  private String result;

  /**
   * @param written the line as it stands, without its line end
   */
  Line(String written) {
    this.written = written;
    this.result = written;
  }

  String written() {
    return written;
  }

  /** A line with nothing but white space on it, outside comments. */
  boolean isBlank() {
    return !kept && cells.isEmpty() && comment.isEmpty();
  }

  /** Leaves the line exactly as it is. */
  void keep() {
    kept = true;
  }

  boolean isKept() {
    return kept;
  }

  void indent(int columns) {
    indent = columns;
  }

  int indent() {
    return indent;
  }

  void add(String key, String text) {
    cells.add(new Cell(key, text));
  }

  List<Cell> cells() {
    return cells;
  }

  /** The comment that ends the line, or is all of it. */
  void comment(String text) {
    comment = text;
  }

  String comment() {
    return comment;
  }

  /** Says that the cells may be put in columns with those of other lines of that keyword. */
  void alignAs(String firstWord) {
    aligned = true;
    keyword = firstWord;
  }

  boolean isAligned() {
    return aligned && !kept;
  }

  /** The first word, also of a line that is kept as it is; empty if it is of no use to a run. */
  String keyword() {
    return keyword;
  }

  void keyword(String firstWord) {
    keyword = firstWord;
  }

  void opensBlock() {
    opensBlock = true;
  }

  boolean isOpening() {
    return opensBlock;
  }

  void closesBlock() {
    closesBlock = true;
  }

  boolean isClosing() {
    return closesBlock;
  }

  /** Sets what the line becomes; null takes the line out. */
  void become(String text) {
    result = text;
  }

  /** What the line becomes, or null if it goes. */
  String result() {
    return result;
  }
}
