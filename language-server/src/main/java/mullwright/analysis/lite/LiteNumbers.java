package mullwright.analysis.lite;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import mullwright.analysis.glass.SettingBlocks;
import mullwright.analysis.wall.WallAnalysis;
import mullwright.derivation.Derivation;
import mullwright.layout.Cell;
import mullwright.model.GlassCriteria;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;

/** The numbers of a lite beyond its size, each with how it came about, most wanted first. */
public final class LiteNumbers {
  private static final String BLOCKS = "flat-glass trade handbook rule, from memory";

  private LiteNumbers() {}

  /** Load and resistance, deflection and limit, drift, bite, setting blocks: what applies. */
  public static List<Derivation> of(WallAnalysis analysis, Cell cell) {
    List<Derivation> numbers = new ArrayList<>();
    Optional<LiteBearing> bearing = LiteBearing.of(analysis, cell);
    if (bearing.isEmpty()) {
      return numbers;
    }
    analysis.wind().explain(cell).ifPresent(numbers::add);
    if (bearing.get().least().isPresent()) {
      numbers.add(StrengthTrace.resistance(bearing.get()));
    }
    GlassCriteria criteria = analysis.layout().wall().criteria().glass();
    LiteBend.of(analysis, cell)
        .ifPresent(
            bend -> {
              numbers.add(bend.explain(analysis));
              numbers.add(bend.explainLimit(criteria));
            });
    LiteDrift.of(analysis, cell)
        .ifPresent(
            drift -> {
              numbers.add(drift.clearDrift());
              numbers.add(drift.demand());
            });
    LiteBite.of(analysis, cell).stream()
        .min(Comparator.comparingDouble(LiteBite.Left::bite))
        .ifPresent(left -> numbers.add(left.explainBite()));
    if (cell.rectangular()) {
      numbers.addAll(blocks(cell));
    }
    return numbers;
  }

  private static List<Derivation> blocks(Cell cell) {
    double width = cell.glassWidth().toMetres();
    double height = cell.glassHeight().toMetres();
    return SettingBlocks.solve(new SettingBlocks.Lite(width, height))
        .solved()
        .map(
            blocks ->
                List.of(
                    Derivation.computed(
                        "setting block length",
                        Length.nearest(blocks.length()),
                        "0.1 in per ft² of glass, at least 4 in, two blocks alike",
                        BLOCKS,
                        Derivation.computed(
                            "glass area",
                            width * height,
                            Kind.AREA,
                            "glass width × glass height",
                            "conventions of measure")),
                    Derivation.computed(
                        "setting block centre from either edge",
                        Length.nearest(blocks.firstCentre()),
                        "glass width ÷ 4",
                        BLOCKS,
                        Derivation.computed(
                            "glass width",
                            cell.glassWidth(),
                            "daylight opening + bites",
                            "conventions of measure"))))
        .orElse(List.of());
  }
}
