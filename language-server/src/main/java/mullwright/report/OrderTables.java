package mullwright.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import mullwright.layout.Cell;
import mullwright.layout.GlassSizes;
import mullwright.layout.Glazed;
import mullwright.layout.PieceMarks;
import mullwright.layout.SettingBlockPlaces;
import mullwright.layout.WallLayout;
import mullwright.model.Given;
import mullwright.model.Part;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.LengthFormat;
import mullwright.quantity.LengthPrinter;
import mullwright.quantity.Quantity;
import mullwright.quantity.Rational;
import mullwright.quantity.Step;
import mullwright.quantity.Unit;
import mullwright.quantity.UnitSystem;

/** Tables of a glass order. */
final class OrderTables {
  private final PieceMarks marks;
  private final UnitSystem units;
  private final Unit area;
  private final Unit mass;
  private final List<Cell> lites;
  private final List<List<Cell>> groups;

  OrderTables(WallLayout layout, PieceMarks marks, UnitSystem units, boolean each) {
    this.marks = marks;
    this.units = units;
    this.area = units == UnitSystem.US ? Unit.SQUARE_FOOT : Unit.SQUARE_METRE;
    this.mass = units == UnitSystem.US ? Unit.POUND_MASS : Unit.KILOGRAM;
    this.lites = layout.cells().stream().filter(Glazed::lite).toList();
    this.groups = Lines.grouped(lites, this::mark, each);
  }

  private String mark(Cell cell) {
    return marks.lite(cell.index()).orElse("");
  }

  private static String glass(Cell cell) {
    return cell.use().orElseThrow().glass().value();
  }

  Table makeUps() {
    Map<String, List<Cell>> byGlass =
        lites.stream()
            .collect(
                Collectors.groupingBy(OrderTables::glass, LinkedHashMap::new, Collectors.toList()));
    List<Column> columns =
        List.of(
            Column.text("glass", "Glass"),
            Column.text("make-up", "Make-up, from outdoors"),
            Column.text("safety", "Safety"),
            Column.count("quantity", "Qty"),
            Column.amount("total-area", "Total area", area),
            Column.amount("billed-area", "Billed area", area),
            Column.amount("total-mass", "Total mass", mass));
    List<List<Entry>> rows = new ArrayList<>();
    byGlass.forEach(
        (name, all) ->
            rows.add(
                List.of(
                    Entry.text(name),
                    Entry.text(all.get(0).glass().map(this::makeUp).orElse("not in the catalog")),
                    Entry.text(
                        all.get(0).glass().filter(glass -> glass.safety().value()).isPresent()
                            ? "rated"
                            : ""),
                    new Entry.Count(all.size()),
                    sum(all, Kind.AREA, cell -> Optional.of(GlassSizes.of(cell, units).area())),
                    sum(all, Kind.AREA, this::billedArea),
                    sum(all, Kind.MASS, cell -> GlassSizes.of(cell, units).mass()))));
    return new Table("make-ups", "Make-ups", columns, rows, List.of());
  }

  private String makeUp(Part.Glass glass) {
    String layers =
        glass.layers().stream()
            .map(
                layer ->
                    LengthPrinter.in(
                            layer.what().equals("ply") ? UnitSystem.SI : units, layer.thickness())
                        + " "
                        + (layer.words().isEmpty()
                            ? layer.what()
                            : String.join(" ", layer.words())))
            .collect(Collectors.joining(", "));
    return glass.opacified().value() ? layers + "; opacified" : layers;
  }

  private interface Measured {
    Optional<Quantity> of(Cell cell);
  }

  private static Entry sum(List<Cell> cells, Kind kind, Measured measured) {
    Rational sum = Rational.ZERO;
    for (Cell cell : cells) {
      Optional<Quantity> one = measured.of(cell);
      if (one.isEmpty()) {
        return Entry.NONE;
      }
      sum = sum.plus(one.get().si());
    }
    return new Entry.Amount(new Quantity(sum, kind.dimension()));
  }

  /** Billed width, or height: that of the order, rounded up to the agreed multiple. */
  private static Optional<Length> billed(Cell cell, Length size) {
    return cell.glass()
        .flatMap(Part.Glass::billed)
        .map(Given::value)
        .filter(step -> step.signum() > 0)
        .map(
            step -> {
              long steps = Math.floorDiv(size.ticks() + step.ticks() - 1, step.ticks());
              return step.times(steps);
            });
  }

  private Optional<Quantity> billedArea(Cell cell) {
    GlassSizes sizes = GlassSizes.of(cell, units);
    return billed(cell, sizes.orderWidth())
        .map(
            width ->
                new Quantity(
                    width.metres().times(billed(cell, sizes.orderHeight()).get().metres()),
                    Kind.AREA.dimension()));
  }

  Table lites() {
    LengthFormat order =
        units == UnitSystem.US
            ? LengthFormat.feetInches(Step.SIXTEENTH)
            : LengthFormat.millimetres(Step.MILLIMETRE);
    List<Column> columns =
        List.of(
            Column.text("mark", "Mark"),
            Column.names("lite", "Lites"),
            Column.text("glass", "Glass"),
            Column.count("quantity", "Qty"),
            Column.rectangle("order-size", "Order size", order),
            Column.rectangle("billed-size", "Billed size", order),
            Column.amount("area", "Area", area),
            Column.amount("mass", "Mass", mass),
            Column.amount("total-area", "Total area", area),
            Column.amount("total-mass", "Total mass", mass),
            Column.length("block-length", "Blocks", PieceTables.cut(units)),
            Column.length("block-first", "Block at", PieceTables.cut(units)),
            Column.text("remark", "Remark"));
    List<List<Entry>> rows = new ArrayList<>();
    for (List<Cell> equal : groups) {
      rows.add(row(equal));
    }
    List<Entry> totals =
        new ArrayList<>(
            List.of(
                Entry.NONE,
                Entry.text("in all"),
                Entry.NONE,
                new Entry.Count(lites.size()),
                Entry.NONE,
                Entry.NONE,
                Entry.NONE,
                Entry.NONE,
                sum(lites, Kind.AREA, cell -> Optional.of(GlassSizes.of(cell, units).area())),
                sum(lites, Kind.MASS, cell -> GlassSizes.of(cell, units).mass())));
    while (totals.size() < columns.size()) {
      totals.add(Entry.NONE);
    }
    return new Table(
        "lites",
        "Lites, width × height; two setting blocks each, centred so far in from both ends",
        columns,
        rows,
        totals);
  }

  private List<Entry> row(List<Cell> equal) {
    Cell lite = equal.get(0);
    GlassSizes sizes = GlassSizes.of(lite, units);
    SettingBlockPlaces blocks = SettingBlockPlaces.of(lite).orElseThrow();
    Optional<Length> billed = billed(lite, sizes.orderWidth());
    String remark = lite.rectangular() ? "" : "bounding size of a sloped lite, not checked";
    boolean operable = lite.use().orElseThrow().operable();
    return List.of(
        Entry.text(mark(lite)),
        new Entry.Names(equal.stream().map(Cell::name).toList()),
        Entry.text(glass(lite)),
        new Entry.Count(equal.size()),
        new Entry.Rectangle(sizes.orderWidth(), sizes.orderHeight()),
        billed.isPresent()
            ? new Entry.Rectangle(billed.get(), billed(lite, sizes.orderHeight()).get())
            : Entry.NONE,
        new Entry.Amount(sizes.area()),
        sizes.mass().<Entry>map(Entry.Amount::new).orElse(Entry.NONE),
        sum(equal, Kind.AREA, cell -> Optional.of(sizes.area())),
        sum(equal, Kind.MASS, cell -> sizes.mass()),
        new Entry.Size(blocks.length()),
        new Entry.Size(blocks.first()),
        Entry.text(operable ? "operable" : remark));
  }
}
