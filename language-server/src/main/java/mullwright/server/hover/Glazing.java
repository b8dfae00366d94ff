package mullwright.server.hover;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.analysis.lite.LiteBearing;
import mullwright.analysis.lite.LiteNumbers;
import mullwright.check.SafetyWords;
import mullwright.check.WallFacts;
import mullwright.derivation.Derivation;
import mullwright.derivation.DerivationText;
import mullwright.layout.Cell;
import mullwright.layout.PieceRef;
import mullwright.layout.WallLayout;
import mullwright.quantity.QuantityPrinter;
import mullwright.workspace.Reading;

/** Tells of the lite that bears the least beyond its load what it takes, bears and needs. */
final class Glazing {
  private static final int WORKING_LINES = 60;

  private Glazing() {}

  /** Adds load, resistance, deflection, drift, blocks and safety of the hardest-pressed lite. */
  static void tell(
      List<PieceRef> pieces, Reading reading, WallLayout layout, Numbers numbers, Page page) {
    Optional<WallFacts> wall =
        reading.walls().stream().filter(facts -> facts.layout() == layout).findFirst();
    Cell worst = null;
    double least = Double.POSITIVE_INFINITY;
    for (PieceRef piece : pieces) {
      if (piece.kind() != PieceRef.Kind.CELL || wall.isEmpty()) {
        continue;
      }
      Cell cell = layout.cells().get(piece.index());
      Optional<LiteBearing> bearing = LiteBearing.of(wall.get().analysis(), cell);
      double spare =
          bearing
              .flatMap(LiteBearing::least)
              .map(strength -> strength.resistance() / Math.max(1, bearing.get().wind().largest()))
              .orElse(Double.MAX_VALUE);
      if (bearing.isPresent() && spare < least) {
        worst = cell;
        least = spare;
      }
    }
    if (worst != null) {
      tell(worst, wall.orElseThrow(), numbers, page);
    }
  }

  private static void tell(Cell cell, WallFacts wall, Numbers numbers, Page page) {
    page.line("Of these the " + cell.name() + " has the least to spare:");
    List<Derivation> all = LiteNumbers.of(wall.analysis(), cell);
    List<String> working = new ArrayList<>();
    for (Derivation number : all) {
      page.fact(
          number.name(), QuantityPrinter.both(number.value(), number.kind(), numbers.first()));
      working.addAll(DerivationText.allLines(number, numbers.first()));
    }
    LiteBearing.of(wall.analysis(), cell)
        .flatMap(LiteBearing::outside)
        .ifPresent(why -> page.fact("strength and deflection", "not checked: " + why));
    SafetyWords.lines(wall.layout(), cell, numbers.first()).forEach(page::line);
    if (working.size() > WORKING_LINES) {
      working.subList(WORKING_LINES, working.size()).clear();
      working.add("…");
    }
    page.working(working);
    page.line("An aid to drafting: a licensed engineer and the local code govern.");
  }
}
