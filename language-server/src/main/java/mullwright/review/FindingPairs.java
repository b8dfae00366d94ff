package mullwright.review;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import mullwright.check.Finding;

/**
 * Tells which findings of two states are the same: of one rule about one piece, whatever the
 * numbers; about the text itself, with the same words.
 *
 * @param tripped only in the newer, {@code mended} only in the older, each in the order of the text
 */
public record FindingPairs(List<Finding> tripped, List<Finding> mended, int standing) {
  public FindingPairs {
    tripped = List.copyOf(tripped);
    mended = List.copyOf(mended);
  }

  private record Key(String rule, String piece, String what) {
    static Key of(Finding finding, UnaryOperator<String> piece) {
      boolean text = finding.piece().isEmpty();
      return new Key(finding.rule(), piece.apply(finding.piece()), text ? finding.what() : "");
    }
  }

  /**
   * Compares.
   *
   * @param renamed a piece of the older as the newer calls it
   */
  public static FindingPairs of(
      List<Finding> old, List<Finding> now, UnaryOperator<String> renamed) {
    Map<Key, Integer> left = new HashMap<>();
    now.forEach(finding -> left.merge(Key.of(finding, piece -> piece), 1, Integer::sum));
    List<Finding> mended = new ArrayList<>();
    Map<Key, Integer> met = new HashMap<>();
    for (Finding finding : old) {
      Key key = Key.of(finding, renamed);
      if (met.merge(key, 1, Integer::sum) > left.getOrDefault(key, 0)) {
        mended.add(finding);
      }
    }
    List<Finding> tripped = new ArrayList<>();
    Map<Key, Integer> had = new HashMap<>();
    for (Finding finding : now) {
      Key key = Key.of(finding, piece -> piece);
      if (had.merge(key, 1, Integer::sum) > met.getOrDefault(key, 0)) {
        tripped.add(finding);
      }
    }
    return new FindingPairs(tripped, mended, now.size() - tripped.size());
  }
}
