package mullwright.report;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import mullwright.analysis.glass.SettingBlocks;
import mullwright.analysis.lite.LiteBearing;
import mullwright.analysis.lite.LiteBend;
import mullwright.analysis.lite.LiteBite;
import mullwright.analysis.lite.LiteDrift;
import mullwright.analysis.lite.MakeUp;
import mullwright.analysis.lite.UnitStrength;
import mullwright.analysis.wall.WallAnalysis;
import mullwright.layout.Cell;
import mullwright.model.GlassCriteria;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.UnitSystem;

/**
 * The numbers of the lites of a wall: load against resistance, pane by pane what each takes and
 * bears, deflection, drift, bite and setting blocks. Equal lites share a row.
 */
@AutoService(CalculationSection.class)
public final class LiteCalculations implements CalculationSection {
  private static final String LITES = "Lites";

  @Override
  public int order() {
    return 60;
  }

  @Override
  public List<Table> tables(Report.WallAtHand wall, Report.Options options) {
    return new Tables(wall, options.each()).all();
  }

  private static final class Tables {
    private final WallAnalysis analysis;
    private final UnitSystem units;
    private final EqualRows loads;
    private final EqualRows panes;
    private final EqualRows bends;
    private final EqualRows drifts;
    private final EqualRows bites;
    private final EqualRows blocks;
    private final LiteSafetyRows safety;

    Tables(Report.WallAtHand wall, boolean each) {
      this.analysis = wall.facts().analysis();
      this.units = wall.units();
      Column glass = Column.text("glass", "Glass");
      Column used = column("used", "Used", Kind.RATIO);
      loads =
          new EqualRows(
              List.of(
                  glass,
                  column("wind-in", "Wind in", Kind.PRESSURE),
                  column("wind-out", "Wind out", Kind.PRESSURE),
                  column("resistance", "Bears", Kind.PRESSURE),
                  used,
                  Column.text("remark", "Remark")),
              each);
      panes =
          new EqualRows(
              List.of(
                  glass,
                  Column.text("pane", "Pane"),
                  column("thickness", "Thickness", Kind.LENGTH),
                  column("share", "Share of load", Kind.RATIO),
                  column("resistance", "Bears by it", Kind.PRESSURE)),
              each);
      bends =
          new EqualRows(
              List.of(
                  glass,
                  column("deflection", "Deflection", Kind.LENGTH),
                  column("limit", "Limit", Kind.LENGTH),
                  used),
              each);
      drifts =
          new EqualRows(
              List.of(
                  column("drift-to-clear", "Drift to clear", Kind.LENGTH),
                  column("clear-drift", "Clear drift", Kind.LENGTH),
                  used),
              each);
      bites =
          new EqualRows(
              List.of(
                  Column.text("edge", "Edge"),
                  column("bite", "Bite", Kind.LENGTH),
                  column("bite-left", "Bite left", Kind.LENGTH),
                  column("least-bite", "Least", Kind.LENGTH),
                  column("clearance-left", "Clearance left", Kind.LENGTH)),
              each);
      blocks =
          new EqualRows(
              List.of(
                  Column.rectangle("glass-size", "Glass size", PieceTables.cut(units)),
                  column("area", "Area", Kind.AREA),
                  column("block-length", "Block length", Kind.LENGTH),
                  column("first-centre", "Centres", Kind.LENGTH),
                  column("second-centre", "and", Kind.LENGTH)),
              each);
      safety = new LiteSafetyRows(wall.facts().layout(), units, each);
    }

    private Column column(String name, String heading, Kind kind) {
      return Column.amount(name, heading, FrameTables.unit(kind, units));
    }

    List<Table> all() {
      for (Cell cell : analysis.layout().cells()) {
        LiteBearing.of(analysis, cell).ifPresent(bearing -> add(cell, bearing));
      }
      return List.of(
          loads.table("lites-wind", "Lites: wind and what they bear", LITES),
          panes.table(
              "lites-panes",
              "Lites: share of each pane, and what the unit bears by its strength",
              LITES),
          bends.table("lites-deflection", "Lites: deflection of the centre", LITES),
          drifts.table("lites-drift", "Lites: drift", LITES),
          bites.table("lites-bite", "Lites: bite under tolerances and heat, worst edge", LITES),
          blocks.table(
              "lites-blocks", "Lites: setting blocks, two alike, from the left edge", LITES),
          safety.table());
    }

    private void add(Cell cell, LiteBearing bearing) {
      Entry glass = Entry.text(bearing.makeUp().glass().name());
      load(cell, bearing, glass);
      bearing.least().ifPresent(strength -> panes(cell, bearing.makeUp(), strength, glass));
      LiteBend.of(analysis, cell)
          .ifPresent(
              bend ->
                  bends.add(
                      cell.name(),
                      List.of(
                          glass,
                          length(bend.deflection()),
                          length(bend.limit()),
                          ratio(bend.deflection() / bend.limit()))));
      LiteDrift.of(analysis, cell).ifPresent(drift -> drift(cell, drift));
      bite(cell);
      blocks(cell);
      safety.add(cell);
    }

    private void load(Cell cell, LiteBearing bearing, Entry glass) {
      Optional<Double> bears = bearing.least().map(UnitStrength::resistance);
      double most = bearing.wind().largest();
      String remark =
          bearing
              .outside()
              .map(why -> "not checked: " + why)
              .orElse(bearing.open() ? "shear modulus not stated: plies taken to slip" : "");
      boolean given = analysis.wind().given();
      loads.add(
          cell.name(),
          List.of(
              glass,
              given ? pressure(bearing.wind().in()) : Entry.NONE,
              given ? pressure(bearing.wind().out()) : Entry.NONE,
              bears.map(Tables::pressure).orElse(Entry.NONE),
              given ? bears.map(load -> ratio(most / load)).orElse(Entry.NONE) : Entry.NONE,
              Entry.text(remark)));
    }

    private void panes(Cell cell, MakeUp makeUp, UnitStrength strength, Entry glass) {
      for (int pane = 0; pane < strength.panes().size(); pane++) {
        int index = pane;
        double weakest =
            strength.plies().stream()
                .filter(ply -> ply.pane() == index)
                .mapToDouble(UnitStrength.Ply::resistance)
                .min()
                .orElseThrow();
        UnitStrength.Pane one = strength.panes().get(pane);
        panes.add(
            cell.name(),
            List.of(
                glass,
                Entry.text(name(pane, strength.panes().size(), makeUp)),
                length(one.thickness()),
                ratio(one.share()),
                pressure(weakest)));
      }
    }

    private static String name(int pane, int count, MakeUp makeUp) {
      String place = count == 1 ? "single" : pane == 0 ? "outer" : "inner";
      return makeUp.panes().get(pane).laminated() ? place + ", laminated" : place;
    }

    private void drift(Cell cell, LiteDrift drift) {
      double clear = drift.result().clearDrift();
      double demand = drift.result().demand();
      drifts.add(
          cell.name(),
          List.of(length(demand), length(clear), clear > 0 ? ratio(demand / clear) : Entry.NONE));
    }

    private void bite(Cell cell) {
      GlassCriteria criteria = analysis.layout().wall().criteria().glass();
      LiteBite.Left worst = null;
      for (LiteBite.Left left : LiteBite.of(analysis, cell)) {
        worst = worst == null || left.bite() < worst.bite() ? left : worst;
      }
      if (worst != null) {
        bites.add(
            cell.name(),
            List.of(
                Entry.text(worst.edge()),
                length(worst.stated().value().toMetres()),
                length(worst.bite()),
                length(criteria.leastBite().value().toMetres()),
                length(worst.clearance())));
      }
    }

    private void blocks(Cell cell) {
      Length width = cell.glassWidth();
      Length height = cell.glassHeight();
      SettingBlocks.Lite lite = new SettingBlocks.Lite(width.toMetres(), height.toMetres());
      if (cell.rectangular()) {
        SettingBlocks.solve(lite)
            .solved()
            .ifPresent(
                found ->
                    blocks.add(
                        cell.name(),
                        List.of(
                            new Entry.Rectangle(width, height),
                            FrameTables.amount(width.toMetres() * height.toMetres(), Kind.AREA),
                            length(found.length()),
                            length(found.firstCentre()),
                            length(found.secondCentre()))));
      }
    }

    private static Entry pressure(double pascals) {
      return FrameTables.amount(pascals, Kind.PRESSURE);
    }

    private static Entry length(double metres) {
      return FrameTables.amount(metres, Kind.LENGTH);
    }

    private static Entry ratio(double share) {
      return FrameTables.amount(share, Kind.RATIO);
    }
  }
}
