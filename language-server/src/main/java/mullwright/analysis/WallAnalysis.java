package mullwright.analysis;

import mullwright.layout.WallLayout;

/**
 * What nature does to one wall: each result computed when first asked for, and kept.
 *
 * @param layout where everything is
 */
public record WallAnalysis(WallLayout layout) {
  /** The analysis of a wall as laid out. */
  public static WallAnalysis of(WallLayout layout) {
    return new WallAnalysis(layout);
  }
}
