package mullwright.report;

import mullwright.quantity.LengthFormat;
import mullwright.quantity.Unit;

/**
 * A column of a table, declared once for every form it is written in.
 *
 * @param name as programs know it: {@code cut-length}
 * @param heading as people read it: {@code Cut length}
 * @param kind what its cells hold
 * @param format how its lengths are printed; null unless it holds lengths
 * @param unit of its amounts; null unless it holds amounts
 * @param folds true if a table for people may say it once above the rows when all say the same
 */
public record Column(
    String name, String heading, Kind kind, LengthFormat format, Unit unit, boolean folds) {
  /** What cells hold. */
  public enum Kind {
    TEXT,
    NAMES,
    COUNT,
    LENGTH,
    RECTANGLE,
    AMOUNT
  }

  static Column text(String name, String heading) {
    return new Column(name, heading, Kind.TEXT, null, null, false);
  }

  static Column names(String name, String heading) {
    return new Column(name, heading, Kind.NAMES, null, null, false);
  }

  static Column count(String name, String heading) {
    return new Column(name, heading, Kind.COUNT, null, null, false);
  }

  static Column length(String name, String heading, LengthFormat format) {
    return new Column(name, heading, Kind.LENGTH, format, null, false);
  }

  static Column rectangle(String name, String heading, LengthFormat format) {
    return new Column(name, heading, Kind.RECTANGLE, format, null, false);
  }

  static Column amount(String name, String heading, Unit unit) {
    return new Column(name, heading, Kind.AMOUNT, null, unit, false);
  }

  /** The same column, said once where all rows say the same. */
  Column folding() {
    return new Column(name, heading, kind, format, unit, true);
  }

  /** True if its cells are numbers and stand to the right. */
  boolean right() {
    return kind == Kind.COUNT || kind == Kind.LENGTH || kind == Kind.AMOUNT;
  }
}
