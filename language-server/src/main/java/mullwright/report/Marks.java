package mullwright.report;

import mullwright.layout.HolePlaces;
import mullwright.layout.PieceMarks;
import mullwright.layout.WallLayout;

/** The marks a report prints: those of the wall's ledger, or counted if none is kept. */
public final class Marks {
  private Marks() {}

  /** The marks of a wall; what its ledger does not know yet is issued in it. */
  public static PieceMarks of(Report.WallAtHand wall) {
    WallLayout layout = wall.facts().layout();
    HolePlaces holes = wall.facts().analysis().holes();
    return wall.ledger()
        .map(ledger -> PieceMarks.of(layout, holes, ledger.source(Finish.of(layout.wall()))))
        .orElseGet(() -> PieceMarks.of(layout, holes));
  }
}
