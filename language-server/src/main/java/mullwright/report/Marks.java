package mullwright.report;

import mullwright.layout.PieceMarks;

/** The marks a report prints. */
final class Marks {
  private Marks() {}

  static PieceMarks of(Report.WallAtHand wall) {
    return PieceMarks.of(wall.facts().layout(), wall.facts().analysis().holes());
  }
}
