package mullwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.analysis.lite.LiteBearing;
import mullwright.analysis.lite.LiteNumbers;
import mullwright.check.SafetyWords;
import mullwright.check.WallFacts;
import mullwright.derivation.Derivation;
import mullwright.layout.Cell;
import mullwright.layout.PieceRef;
import mullwright.quantity.UnitSystem;

/** What is to be explained of a lite beside its size. */
record LiteTraces(WallFacts wall, UnitSystem units) {
  /** Its numbers; none for a piece that is no lite. */
  List<Derivation> numbers(PieceRef piece) {
    return cell(piece).map(cell -> LiteNumbers.of(wall.analysis(), cell)).orElse(List.of());
  }

  /** Lines that hold no formula: why it is not checked, and whether it needs safety glazing. */
  List<String> words(PieceRef piece) {
    List<String> lines = new ArrayList<>();
    Optional<Cell> cell = cell(piece);
    cell.flatMap(it -> LiteBearing.of(wall.analysis(), it))
        .flatMap(LiteBearing::outside)
        .ifPresent(why -> lines.add("strength and deflection not checked: " + why));
    cell.ifPresent(it -> lines.addAll(SafetyWords.lines(wall.layout(), it, units)));
    return lines;
  }

  private Optional<Cell> cell(PieceRef piece) {
    return piece.kind() == PieceRef.Kind.CELL
        ? Optional.of(wall.layout().cells().get(piece.index()))
        : Optional.empty();
  }
}
