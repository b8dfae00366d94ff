package mullwright.workspace;

import mullwright.layout.LayoutIndex;
import mullwright.layout.LengthTrace;
import mullwright.layout.PieceMarks;
import mullwright.layout.WallLayout;

/** What is looked up in a laid out wall: pieces by place, traces of lengths, marks; made once. */
public final class WallDetails {
  private final WallLayout layout;
  private LayoutIndex index;
  private LengthTrace trace;
  private PieceMarks marks;

  WallDetails(WallLayout layout) {
    this.layout = layout;
  }

  /** Where everything is. */
  public WallLayout layout() {
    return layout;
  }

  /** Pieces by statement, line, row and bay. */
  public synchronized LayoutIndex index() {
    if (index == null) {
      index = LayoutIndex.of(layout);
    }
    return index;
  }

  /** How each length came about. */
  public synchronized LengthTrace trace() {
    if (trace == null) {
      trace = LengthTrace.of(layout);
    }
    return trace;
  }

  /** The marks of its pieces. */
  public synchronized PieceMarks marks() {
    if (marks == null) {
      marks = PieceMarks.of(layout);
    }
    return marks;
  }
}
