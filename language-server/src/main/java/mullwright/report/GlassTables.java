package mullwright.report;

import java.util.ArrayList;
import java.util.List;
import mullwright.layout.Cell;
import mullwright.layout.GlassSizes;
import mullwright.layout.PieceMarks;
import mullwright.layout.WallLayout;
import mullwright.quantity.Kind;
import mullwright.quantity.LengthFormat;
import mullwright.quantity.Quantity;
import mullwright.quantity.Rational;
import mullwright.quantity.Step;
import mullwright.quantity.Unit;
import mullwright.quantity.UnitSystem;

/**
 * Tables of glass: daylight opening, exact size, order size; area and mass of the exact size.
 *
 * <p>What stands in a door, void, louvre or vent is not glass of this wall and is left out.
 */
final class GlassTables {
  /** The column that names the lites. */
  private static final int LITES = 1;

  private final List<List<Cell>> groups;
  private final PieceMarks marks;
  private final UnitSystem units;
  private final boolean each;

  GlassTables(WallLayout layout, PieceMarks marks, UnitSystem units, boolean each) {
    this.marks = marks;
    this.units = units;
    this.each = each;
    List<Cell> lites =
        layout.cells().stream().filter(cell -> marks.lite(cell.index()).isPresent()).toList();
    this.groups = Lines.grouped(lites, this::mark, each);
  }

  List<Table> tables() {
    return List.of(sizes(), weights());
  }

  private String mark(Cell cell) {
    return marks.lite(cell.index()).orElse("");
  }

  private Table sizes() {
    LengthFormat cut = PieceTables.cut(units);
    LengthFormat order =
        units == UnitSystem.US
            ? LengthFormat.feetInches(Step.SIXTEENTH)
            : LengthFormat.millimetres(Step.MILLIMETRE);
    List<Column> columns = new ArrayList<>(opening());
    columns.add(Column.rectangle("daylight", "Daylight", cut));
    columns.add(Column.rectangle("glass-size", "Glass size", cut));
    columns.add(Column.rectangle("order-size", "Order size", order));
    columns.add(Column.text("remark", "Remark"));
    List<List<Entry>> rows = new ArrayList<>();
    int count = 0;
    for (List<Cell> equal : groups) {
      Cell lite = equal.get(0);
      GlassSizes sizes = GlassSizes.of(lite, units);
      List<Entry> row = new ArrayList<>(opening(equal));
      row.add(new Entry.Rectangle(lite.daylightWidth(), lite.daylightHeight()));
      row.add(new Entry.Rectangle(lite.glassWidth(), lite.glassHeight()));
      row.add(new Entry.Rectangle(sizes.orderWidth(), sizes.orderHeight()));
      row.add(Entry.text(lite.rectangular() ? "" : "bounding size of a sloped lite, not checked"));
      rows.add(row);
      count += equal.size();
    }
    List<Entry> totals = new ArrayList<>(totals(count));
    while (totals.size() < columns.size()) {
      totals.add(Entry.NONE);
    }
    return new Table("glass-sizes", "Glass sizes, width × height", columns, rows, totals);
  }

  private Table weights() {
    Unit area = units == UnitSystem.US ? Unit.SQUARE_FOOT : Unit.SQUARE_METRE;
    Unit mass = units == UnitSystem.US ? Unit.POUND_MASS : Unit.KILOGRAM;
    List<Column> columns = new ArrayList<>(opening());
    // the table above says which lites share a mark
    if (!each) {
      columns.remove(LITES);
    }
    columns.add(Column.amount("area", "Area", area));
    columns.add(Column.amount("mass", "Mass", mass));
    if (!each) {
      columns.add(Column.amount("total-area", "Total area", area));
      columns.add(Column.amount("total-mass", "Total mass", mass));
    }
    List<List<Entry>> rows = new ArrayList<>();
    Rational areas = Rational.ZERO;
    Rational masses = Rational.ZERO;
    int count = 0;
    for (List<Cell> equal : groups) {
      GlassSizes sizes = GlassSizes.of(equal.get(0), units);
      Rational many = Rational.of(equal.size());
      Rational allArea = sizes.area().si().times(many);
      areas = areas.plus(allArea);
      List<Entry> row = new ArrayList<>(opening(equal));
      if (!each) {
        row.remove(LITES);
      }
      row.add(amount(sizes.area().si(), Kind.AREA));
      row.add(sizes.mass().map(one -> amount(one.si(), Kind.MASS)).orElse(Entry.NONE));
      if (sizes.mass().isPresent()) {
        masses = masses.plus(sizes.mass().get().si().times(many));
      }
      if (!each) {
        row.add(amount(allArea, Kind.AREA));
        row.add(
            sizes.mass().map(one -> amount(one.si().times(many), Kind.MASS)).orElse(Entry.NONE));
      }
      rows.add(row);
      count += equal.size();
    }
    List<Entry> totals = new ArrayList<>(totals(count));
    if (!each) {
      totals.remove(0);
      totals.add(Entry.NONE);
      totals.add(Entry.NONE);
    }
    totals.add(amount(areas, Kind.AREA));
    totals.add(amount(masses, Kind.MASS));
    return new Table("glass-mass", "Glass area and mass", columns, rows, totals);
  }

  private static Entry amount(Rational si, Kind kind) {
    return new Entry.Amount(new Quantity(si, kind.dimension()));
  }

  private List<Column> opening() {
    List<Column> columns =
        new ArrayList<>(
            List.of(
                Column.text("mark", "Mark"),
                Column.names("lite", each ? "Lite" : "Lites"),
                Column.text("glass", "Glass")));
    if (!each) {
      columns.add(Column.count("quantity", "Qty"));
    }
    return columns;
  }

  private List<Entry> opening(List<Cell> equal) {
    Cell lite = equal.get(0);
    List<Entry> row =
        new ArrayList<>(
            List.of(
                Entry.text(mark(lite)),
                new Entry.Names(equal.stream().map(Cell::name).toList()),
                Entry.text(lite.use().map(use -> use.glass().value()).orElse(""))));
    if (!each) {
      row.add(new Entry.Count(equal.size()));
    }
    return row;
  }

  private List<Entry> totals(int count) {
    String words = each ? count + (count == 1 ? " lite" : " lites") + " in all" : "in all";
    List<Entry> totals = new ArrayList<>(List.of(Entry.NONE, Entry.text(words), Entry.NONE));
    if (!each) {
      totals.add(new Entry.Count(count));
    }
    return totals;
  }
}
