package mullwright.workspace;

import java.util.Comparator;
import mullwright.check.Finding;
import mullwright.model.Origin;

/** The order in which things stand in the text. */
public final class TextOrder {
  static final Comparator<Origin> OF_ORIGINS =
      Comparator.comparing(Origin::file)
          .thenComparingInt(Origin::segment)
          .thenComparingInt(origin -> origin.range().start())
          .thenComparingInt(origin -> origin.range().end());

  /**
   * By place, then worst first, then by rule and words, so that the order never depends on luck.
   */
  public static final Comparator<Finding> OF_FINDINGS =
      Comparator.comparing(Finding::origin, OF_ORIGINS)
          .thenComparing(Finding::severity)
          .thenComparing(Finding::rule)
          .thenComparing(Finding::message);

  private TextOrder() {}
}
