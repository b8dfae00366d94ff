package mullwright.report;

import java.math.RoundingMode;
import java.util.stream.Collectors;
import mullwright.quantity.Length;
import mullwright.quantity.LengthFormat;
import mullwright.quantity.Unit;

/** Prints cells and headings the way their column says. Metric units stand in the heading. */
final class Printed {
  private static final int DECIMALS = 2;
  private static final String MILLIMETRES = " mm";

  private Printed() {}

  /** The heading with its unit, where the cells carry none. */
  static String heading(Column column) {
    if (column.unit() != null) {
      return column.heading() + ", " + column.unit().symbol();
    }
    boolean metric =
        column.format() != null && column.format().style() == LengthFormat.Style.MILLIMETRES;
    return metric ? column.heading() + "," + MILLIMETRES : column.heading();
  }

  /** The cell as people read it; parts of one figure are held together by glue. */
  static String cell(Entry cell, Column column) {
    if (cell instanceof Entry.Text text) {
      return TextWidth.harmless(text.text());
    }
    if (cell instanceof Entry.Names names) {
      String first = TextWidth.harmless(names.names().get(0));
      int more = names.names().size() - 1;
      return more == 0 ? first : first + " and" + TextWidth.GLUE + more + TextWidth.GLUE + "more";
    }
    if (cell instanceof Entry.Phrases phrases) {
      return phrases.phrases().stream()
          .map(phrase -> TextWidth.harmless(phrase).replace(' ', TextWidth.GLUE))
          .collect(Collectors.joining(", "));
    }
    if (cell instanceof Entry.Count count) {
      return Long.toString(count.count());
    }
    if (cell instanceof Entry.Size size) {
      return length(size.length(), column);
    }
    if (cell instanceof Entry.Rectangle size) {
      return length(size.width(), column) + " ×" + TextWidth.GLUE + length(size.height(), column);
    }
    return cell instanceof Entry.Amount amount ? amount(amount, column.unit()) : "";
  }

  static String amount(Entry.Amount amount, Unit unit) {
    // a hundredth of an inch is too coarse for a deflection
    int decimals = unit == Unit.INCH ? DECIMALS + 1 : DECIMALS;
    return amount.quantity().in(unit).toDecimal(decimals, RoundingMode.HALF_UP).toPlainString();
  }

  private static String length(Length length, Column column) {
    String printed = column.format().print(length);
    String bare =
        printed.endsWith(MILLIMETRES)
            ? printed.substring(0, printed.length() - MILLIMETRES.length())
            : printed;
    return bare.replace(' ', TextWidth.GLUE);
  }

  /** The cell in running text, without glue. */
  static String plain(Entry cell, Column column) {
    return cell(cell, column).replace(TextWidth.GLUE, ' ');
  }
}
