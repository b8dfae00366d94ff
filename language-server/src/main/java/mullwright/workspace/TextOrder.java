package mullwright.workspace;

import java.util.Comparator;
import mullwright.check.Finding;
import mullwright.model.Origin;

/** The order in which things stand in the text. */
public final class TextOrder {
  static final Comparator<Origin> OF_ORIGINS = Origin::inText;

  /**
   * By place, then worst first, then by rule and words, so that the order never depends on luck.
   */
  public static final Comparator<Finding> OF_FINDINGS = TextOrder::compare;

  private TextOrder() {}

  private static int compare(Finding one, Finding other) {
    int order = Origin.inText(one.origin(), other.origin());
    if (order == 0) {
      order = one.severity().compareTo(other.severity());
    }
    if (order == 0) {
      order = one.rule().compareTo(other.rule());
    }
    return order == 0 ? one.message().compareTo(other.message()) : order;
  }
}
