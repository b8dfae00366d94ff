package mullwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import mullwright.layout.CoverPiece;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.PieceMarks;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.quantity.Length;
import mullwright.quantity.LengthFormat;
import mullwright.quantity.Step;
import mullwright.quantity.UnitSystem;

/** Tables of what is cut from bars: verticals, horizontals, plates, caps. */
final class PieceTables {
  private final WallLayout layout;
  private final PieceMarks marks;
  private final LengthFormat format;
  private final String finish;
  private final boolean each;

  PieceTables(WallLayout layout, PieceMarks marks, UnitSystem units, String finish, boolean each) {
    this.layout = layout;
    this.marks = marks;
    this.format = cut(units);
    this.finish = finish;
    this.each = each;
  }

  /** How a cut length is printed: to 1/32", or to 0.1 mm. */
  static LengthFormat cut(UnitSystem units) {
    return units == UnitSystem.US
        ? LengthFormat.feetInches(Step.THIRTY_SECOND)
        : LengthFormat.millimetres(Step.TENTH_MILLIMETRE);
  }

  Table verticals() {
    return table(
        "verticals",
        "Verticals",
        "Profile",
        "Pieces",
        layout.verticals(),
        new Traits<>(
            piece -> marks.vertical(piece.index()),
            VerticalPiece::name,
            piece -> piece.profile().name(),
            VerticalPiece::length));
  }

  Table horizontals() {
    return table(
        "horizontals",
        "Horizontals",
        "Profile",
        "Pieces",
        layout.horizontals(),
        new Traits<>(
            piece -> marks.horizontal(piece.index()),
            HorizontalPiece::name,
            piece -> piece.profile().name(),
            HorizontalPiece::length));
  }

  Table covers(CoverPiece.What what) {
    List<Integer> chosen = new ArrayList<>();
    for (int at = 0; at < layout.covers().size(); at++) {
      if (layout.covers().get(at).what() == what) {
        chosen.add(at);
      }
    }
    boolean plates = what == CoverPiece.What.PRESSURE_PLATE;
    return table(
        plates ? "pressure-plates" : "face-caps",
        plates ? "Pressure plates" : "Face caps",
        plates ? "Plate" : "Cap",
        plates ? "Plates of" : "Caps of",
        chosen,
        new Traits<>(
            marks::cover,
            at -> carrier(layout.covers().get(at).name()),
            at -> layout.covers().get(at).part(),
            at -> layout.covers().get(at).length()));
  }

  // the table's title says which of the two it is
  private static String carrier(String name) {
    return name.replaceFirst("^(pressure plate|face cap) of ", "");
  }

  /** What a table asks of a piece. */
  private record Traits<P>(
      Function<P, String> mark,
      Function<P, String> name,
      Function<P, String> part,
      Function<P, Length> length) {}

  private <P> Table table(
      String name, String title, String part, String heading, List<P> pieces, Traits<P> traits) {
    List<Column> columns = new ArrayList<>();
    columns.add(Column.text("mark", "Mark"));
    columns.add(Column.names("piece", each ? singular(heading) : heading));
    columns.add(Column.text("profile", part));
    if (!each) {
      columns.add(Column.count("quantity", "Qty"));
    }
    columns.add(Column.length("cut-length", "Cut length", format));
    if (!each) {
      columns.add(Column.length("total-length", "Total length", format));
    }
    columns.add(Column.text("finish", "Finish").folding());
    List<List<Entry>> rows = new ArrayList<>();
    Length sum = Length.ZERO;
    for (List<P> equal : Lines.grouped(pieces, traits.mark(), each)) {
      P first = equal.get(0);
      Length length = traits.length().apply(first);
      Length all = length.times(equal.size());
      sum = sum.plus(all);
      List<Entry> row = new ArrayList<>();
      row.add(Entry.text(traits.mark().apply(first)));
      row.add(new Entry.Names(equal.stream().map(traits.name()).toList()));
      row.add(Entry.text(traits.part().apply(first)));
      if (!each) {
        row.add(new Entry.Count(equal.size()));
      }
      row.add(new Entry.Size(length));
      if (!each) {
        row.add(new Entry.Size(all));
      }
      row.add(Entry.text(finish));
      rows.add(row);
    }
    return new Table(name, title, columns, rows, totals(pieces.size(), sum));
  }

  private static String singular(String heading) {
    return heading.replaceFirst("s(?= of$|$)", "");
  }

  private List<Entry> totals(int count, Length sum) {
    String words = each ? count + (count == 1 ? " piece" : " pieces") + " in all" : "in all";
    List<Entry> totals = new ArrayList<>(List.of(Entry.NONE, Entry.text(words), Entry.NONE));
    if (!each) {
      totals.add(new Entry.Count(count));
      totals.add(Entry.NONE);
    }
    totals.add(new Entry.Size(sum));
    totals.add(Entry.NONE);
    return totals;
  }
}
