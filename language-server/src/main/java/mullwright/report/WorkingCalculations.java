package mullwright.report;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import mullwright.analysis.wall.FrameNumber;
import mullwright.analysis.wall.FrameNumbers;
import mullwright.derivation.Derivation;
import mullwright.derivation.DerivationText;
import mullwright.derivation.Source;
import mullwright.derivation.Standing;
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
    return tables;
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
    List<List<Entry>> rows = new ArrayList<>();
    for (Derivation step : steps) {
      rows.add(
          List.of(
              Entry.text(step.name()),
              Entry.text(QuantityPrinter.in(units, step.value(), step.kind())),
              Entry.text(words(step, units)),
              Entry.text(source(step))));
    }
    String name = ("working-" + kind + "-" + number.what()).toLowerCase(java.util.Locale.ROOT);
    return new Table(
        name.replace(' ', '-'),
        "Working: " + number.what() + " of " + number.piece(),
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
