package mullwright.analysis.wall;

import java.util.List;
import mullwright.layout.RowPieces;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;

/** The frame of one wall under wind and weight: its beams, and the way of every weight. */
final class SolvedFrame {
  private final List<VerticalRun> runs;
  private final int[] runOfPiece;
  private final List<HorizontalSpan> spans;
  private final WeightHolds holds;
  private final WeightPath weight;

  SolvedFrame(WallLayout layout, WindOnWall wind, CellWeight fillings, BeamMemory memory) {
    LineCentres centres = new LineCentres(layout);
    RowPieces rows = RowPieces.of(layout);
    RunSupports held = new RunSupports(layout);
    this.holds = new WeightHolds(layout, held);
    this.weight = new WeightPath(layout, fillings, centres, rows, holds, memory);
    RunBuilder frame = new RunBuilder(layout, wind, fillings, held, weight, centres, rows, memory);
    this.runs = frame.runs();
    this.spans = frame.spans();
    this.runOfPiece = new int[layout.verticals().size()];
    for (int run = 0; run < runs.size(); run++) {
      for (VerticalPiece piece : runs.get(run).pieces()) {
        runOfPiece[piece.index()] = run;
      }
    }
  }

  /** Every run of vertical, by line, then from below. */
  List<VerticalRun> runs() {
    return runs;
  }

  /** The place in {@link #runs} of the run a length belongs to. */
  int runOf(VerticalPiece piece) {
    return runOfPiece[piece.index()];
  }

  /** The horizontals as beams, in the order of the layout. */
  List<HorizontalSpan> spans() {
    return spans;
  }

  /** What a length of vertical hangs from or stands on. */
  LengthHold holdOf(VerticalPiece piece) {
    return holds.of(piece);
  }

  /** The way of every weight. */
  WeightPath weight() {
    return weight;
  }
}
