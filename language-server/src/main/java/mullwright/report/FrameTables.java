package mullwright.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import mullwright.analysis.wall.FrameNumber;
import mullwright.quantity.Kind;
import mullwright.quantity.Quantity;
import mullwright.quantity.Unit;
import mullwright.quantity.UnitSystem;

/** Makes a table for each kind of number: pieces, number, limit, share of it, governing case. */
final class FrameTables {
  private final UnitSystem units;
  private final boolean each;

  FrameTables(UnitSystem units, boolean each) {
    this.units = units;
    this.each = each;
  }

  /**
   * One table for each number there is.
   *
   * @param of whose they are, {@code Verticals}
   * @param numbers in the order of the pieces
   */
  List<Table> tables(String of, List<FrameNumber> numbers) {
    Map<String, List<FrameNumber>> byWhat = new LinkedHashMap<>();
    for (FrameNumber number : numbers) {
      byWhat.computeIfAbsent(number.what(), what -> new ArrayList<>()).add(number);
    }
    List<Table> tables = new ArrayList<>();
    byWhat.forEach((what, those) -> tables.add(table(of, what, those)));
    return tables;
  }

  private Table table(String of, String what, List<FrameNumber> numbers) {
    boolean held = numbers.stream().anyMatch(number -> number.limit().isPresent());
    List<Column> columns = new ArrayList<>();
    columns.add(column("value", "Value", numbers.get(0).kind()));
    if (held) {
      columns.add(column("limit", "Limit", numbers.get(0).kind()));
      columns.add(Column.amount("used", "Used", Unit.PERCENT));
    }
    columns.add(Column.text("case", "By").folding());
    EqualRows rows = new EqualRows(columns, each);
    for (FrameNumber number : numbers) {
      rows.add(number.piece(), cells(number, held));
    }
    String name = (of + " " + what).toLowerCase(Locale.ROOT).replace(' ', '-');
    return rows.table(name, of + ": " + what, "Piece");
  }

  private static List<Entry> cells(FrameNumber number, boolean held) {
    List<Entry> row = new ArrayList<>();
    row.add(amount(number.value(), number.kind()));
    if (held) {
      row.add(number.limit().map(limit -> amount(limit, number.kind())).orElse(Entry.NONE));
      row.add(
          number
              .limit()
              .map(limit -> amount(number.value() / limit, Kind.RATIO))
              .orElse(Entry.NONE));
    }
    row.add(Entry.text(number.loads()));
    return row;
  }

  static Entry amount(double si, Kind kind) {
    return new Entry.Amount(Quantity.ofSi(si, kind));
  }

  private Column column(String name, String heading, Kind kind) {
    return Column.amount(name, heading, unit(kind));
  }

  private Unit unit(Kind kind) {
    return unit(kind, units);
  }

  /** The unit a column of a kind is printed in. */
  static Unit unit(Kind kind, UnitSystem units) {
    boolean us = units == UnitSystem.US;
    return switch (kind) {
      case LENGTH -> us ? Unit.INCH : Unit.MILLIMETRE;
      case STRESS -> us ? Unit.KIP_PER_SQUARE_INCH : Unit.MEGAPASCAL;
      case MOMENT -> us ? Unit.POUND_FORCE_INCH : Unit.KILONEWTON_METRE;
      case FORCE -> us ? Unit.POUND_FORCE : Unit.KILONEWTON;
      case PRESSURE -> us ? Unit.POUND_PER_SQUARE_FOOT : Unit.KILOPASCAL;
      case AREA -> us ? Unit.SQUARE_FOOT : Unit.SQUARE_METRE;
      case RATIO -> Unit.PERCENT;
      default -> throw new IllegalArgumentException("no column holds a " + kind.words());
    };
  }
}
