package mullwright.report;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import mullwright.analysis.lite.LiteBearing;
import mullwright.analysis.lite.LiteNumbers;
import mullwright.analysis.wall.FrameNumber;
import mullwright.analysis.wall.FrameNumbers;
import mullwright.analysis.wall.WallAnalysis;
import mullwright.derivation.Derivation;
import mullwright.derivation.DerivationText;
import mullwright.derivation.Source;
import mullwright.derivation.Standing;
import mullwright.layout.Cell;
import mullwright.layout.PieceRef;
import mullwright.layout.WallLayout;
import mullwright.quantity.QuantityPrinter;
import mullwright.quantity.UnitSystem;

/** How the governing numbers came about, step by step. */
@AutoService(CalculationSection.class)
public final class WorkingCalculations implements CalculationSection {
  @Override
  public int order() {
    return 80;
  }

  @Override
  public List<Table> tables(Report.WallAtHand wall, Report.Options options) {
    WallLayout layout = wall.facts().layout();
    FrameNumbers numbers = new FrameNumbers(wall.facts().analysis());
    List<Table> tables = new ArrayList<>();
    add(numbers, PieceRef.Kind.VERTICAL, layout.verticals().size(), wall.units(), tables);
    add(numbers, PieceRef.Kind.HORIZONTAL, layout.horizontals().size(), wall.units(), tables);
    add(numbers, PieceRef.Kind.SPLICE, layout.splices().size(), wall.units(), tables);
    add(numbers, PieceRef.Kind.ANCHOR, layout.anchors().size(), wall.units(), tables);
    hardest(wall.facts().analysis())
        .ifPresent(
            lite -> {
              for (Derivation number : LiteNumbers.of(wall.facts().analysis(), lite)) {
                Set<Derivation> steps = new LinkedHashSet<>(number.steps());
                tables.add(table("lite", number.name(), lite.name(), steps, wall.units()));
              }
            });
    return tables;
  }

  /** The lite that uses most of what it bears. */
  private static Optional<Cell> hardest(WallAnalysis analysis) {
    Cell worst = null;
    double most = -1;
    for (Cell cell : analysis.layout().cells()) {
      Optional<LiteBearing> bearing = LiteBearing.of(analysis, cell);
      double used =
          bearing
              .flatMap(LiteBearing::least)
              .map(strength -> bearing.get().wind().largest() / strength.resistance())
              .orElse(-1.0);
      // equal lites differ by rounding; the first of them is shown
      if (used > most * (1 + 1e-9)) {
        worst = cell;
        most = used;
      }
    }
    return Optional.ofNullable(worst);
  }

  private static void add(
      FrameNumbers numbers, PieceRef.Kind kind, int count, UnitSystem units, List<Table> tables) {
    List<PieceRef> pieces = new ArrayList<>();
    for (int at = 0; at < count; at++) {
      pieces.add(new PieceRef(kind, at));
    }
    for (FrameNumber number : numbers.governing(pieces)) {
      tables.add(table(kind, number, units));
    }
  }

  private static Table table(PieceRef.Kind kind, FrameNumber number, UnitSystem units) {
    Set<Derivation> steps = new LinkedHashSet<>(number.measured().get().steps());
    number.allowed().ifPresent(limit -> steps.addAll(limit.get().steps()));
    return table(kind.toString(), number.what(), number.piece(), steps, units);
  }

  private static Table table(
      String kind, String what, String piece, Set<Derivation> steps, UnitSystem units) {
    List<List<Entry>> rows = new ArrayList<>();
    for (Derivation step : steps) {
      rows.add(
          List.of(
              Entry.text(step.name()),
              Entry.text(QuantityPrinter.in(units, step.value(), step.kind())),
              Entry.text(words(step, units)),
              Entry.text(source(step))));
    }
    String name = ("working-" + kind + "-" + what).toLowerCase(java.util.Locale.ROOT);
    return new Table(
        name.replace(' ', '-'),
        "Working: " + what + " of " + piece,
        List.of(
            Column.text("number", "Number"),
            Column.text("value", "Value"),
            Column.text("formula", "Formula and numbers put in"),
            Column.text("source", "Source")),
        rows,
        List.of());
  }

  private static String words(Derivation step, UnitSystem units) {
    if (step.standing() != Standing.COMPUTED) {
      return step.standing() == Standing.STATED ? "stated" : "default";
    }
    List<String> lines = DerivationText.lines(step, units);
    String numbers = lines.size() > 2 && lines.get(2).startsWith("  = ") ? lines.get(2) : "";
    return step.formula() + (numbers.isEmpty() ? "" : " " + numbers.strip());
  }

  private static String source(Derivation step) {
    return step.source().map(Source::words).orElse("");
  }
}
