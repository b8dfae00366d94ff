package mullwright.report;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import mullwright.layout.WallLayout;
import mullwright.model.Fabrication;
import mullwright.quantity.Length;
import mullwright.quantity.LengthFormat;
import mullwright.quantity.Quantity;
import mullwright.quantity.Step;
import mullwright.quantity.Unit;
import mullwright.quantity.UnitSystem;
import mullwright.takeoff.Phase;
import mullwright.takeoff.Takeoff;
import mullwright.takeoff.TakeoffLine;

/**
 * Everything that is bought for a wall, by phase and face.
 *
 * <p>A table for each phase, in their order: frame, anchors, weather, glass, finish; rows by face,
 * then in the order first met in the layout. Net quantities, and with the waste and attic stock the
 * project states.
 */
@AutoService(Report.class)
public final class TakeoffReport implements Report {
  @Override
  public String name() {
    return "takeoff";
  }

  @Override
  public Document make(List<WallAtHand> walls, Options options) {
    return new Document(
        name(),
        "Takeoff",
        walls.stream().map(TakeoffReport::section).toList(),
        List.of(Caution.WORDS));
  }

  private static Document.Section section(WallAtHand wall) {
    WallLayout layout = wall.facts().layout();
    String name = layout.wall().name();
    List<TakeoffLine> lines = Takeoff.of(layout, wall.facts().analysis().holes());
    Fabrication shop = layout.wall().fabrication();
    boolean more = !shop.waste().isEmpty() || !shop.attic().isEmpty();
    List<Table> tables = new ArrayList<>();
    for (Phase phase : Phase.values()) {
      List<List<Entry>> rows =
          lines.stream()
              .filter(line -> line.phase() == phase)
              .map(line -> row(line, more, Finish.of(layout.wall())))
              .toList();
      if (!rows.isEmpty()) {
        tables.add(
            new Table(
                phase.name().toLowerCase(Locale.ROOT),
                phase.words(),
                columns(wall.units()),
                rows,
                List.of()));
      }
    }
    return new Document.Section(
        "Wall " + name, wall.file(), name, Warnings.of(wall, "ordered", tables.isEmpty()), tables);
  }

  private static List<Column> columns(UnitSystem units) {
    boolean us = units == UnitSystem.US;
    LengthFormat cut =
        us
            ? LengthFormat.feetInches(Step.THIRTY_SECOND)
            : LengthFormat.millimetres(Step.TENTH_MILLIMETRE);
    return List.of(
        Column.text("face", "Face"),
        Column.text("item", "Item"),
        Column.text("part", "Part"),
        Column.text("size", "Size"),
        Column.count("quantity", "Qty"),
        Column.length("length", "Length", cut),
        Column.amount("area", "Area", us ? Unit.SQUARE_FOOT : Unit.SQUARE_METRE),
        Column.amount("mass", "Mass", us ? Unit.POUND_MASS : Unit.KILOGRAM),
        Column.count("order-quantity", "Order qty"),
        Column.length("order-length", "Order length", cut),
        Column.text("finish", "Finish").folding(),
        Column.text("remark", "Remark"));
  }

  private static List<Entry> row(TakeoffLine line, boolean more, String finish) {
    boolean finished =
        line.sort().equals("bar") || line.sort().equals("plate") || line.sort().equals("cap");
    return List.of(
        Entry.text(line.face()),
        Entry.text(line.item()),
        Entry.text(line.part()),
        Entry.text(line.size()),
        new Entry.Count(line.count()),
        size(line.length()),
        amount(line.area()),
        amount(line.mass()),
        more ? new Entry.Count(line.orderCount()) : Entry.NONE,
        more ? size(line.orderLength()) : Entry.NONE,
        Entry.text(finished ? finish : ""),
        Entry.text(line.remark()));
  }

  private static Entry size(Optional<Length> length) {
    return length.<Entry>map(Entry.Size::new).orElse(Entry.NONE);
  }

  private static Entry amount(Optional<Quantity> quantity) {
    return quantity.<Entry>map(Entry.Amount::new).orElse(Entry.NONE);
  }
}
