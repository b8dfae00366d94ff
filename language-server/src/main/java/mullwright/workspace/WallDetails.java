package mullwright.workspace;

import mullwright.check.WallFacts;
import mullwright.layout.LayoutIndex;
import mullwright.layout.LengthTrace;
import mullwright.layout.PieceMarks;
import mullwright.layout.WallLayout;

/**
 * What is looked up in a laid out wall: pieces by place, traces of lengths, marks, the way of its
 * loads; made once.
 */
public final class WallDetails {
  private final WallLayout layout;
  private LayoutIndex index;
  private LengthTrace trace;
  private PieceMarks marks;
  private LoadPath loads;

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

  /**
   * How weight goes through it.
   *
   * @param facts the same wall with what nature does to it
   */
  public synchronized LoadPath loads(WallFacts facts) {
    if (loads == null) {
      loads = LoadPath.of(facts, index());
    }
    return loads;
  }
}
