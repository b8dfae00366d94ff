package mullwright.server.feature;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.eclipse.lsp4j.SemanticTokensEdit;

/**
 * The fewest tokens to take out and put in that turn one list of tokens into another.
 *
 * <p>What is the same at both ends is set aside; of the rest the shortest way through the edit
 * graph is sought, greedily by number of differences. Where the lists differ in more than some
 * hundred places one edit tells all of the middle.
 *
 * <p>Source: "An O(ND) difference algorithm and its variations", Algorithmica 1, 1986.
 */
final class TokenDifference {
  private static final int NUMBERS_A_TOKEN = 5;
  private static final int MOST_DIFFERENCES = 256;

  private final List<Integer> old;
  private final List<Integer> now;
  private final int same;
  private final int oldMiddle;
  private final int nowMiddle;

  private TokenDifference(List<Integer> old, List<Integer> now) {
    this.old = old;
    this.now = now;
    int oldCount = old.size() / NUMBERS_A_TOKEN;
    int nowCount = now.size() / NUMBERS_A_TOKEN;
    int most = Math.min(oldCount, nowCount);
    int front = 0;
    while (front < most && equal(front, front)) {
      front++;
    }
    int tail = 0;
    while (tail < most - front && equal(oldCount - 1 - tail, nowCount - 1 - tail)) {
      tail++;
    }
    this.same = front;
    this.oldMiddle = oldCount - tail - front;
    this.nowMiddle = nowCount - tail - front;
  }

  /** The edits, in the order of the old list and counted in its numbers; none if both are equal. */
  static List<SemanticTokensEdit> of(List<Integer> old, List<Integer> now) {
    return new TokenDifference(old, now).edits();
  }

  private boolean equal(int oldToken, int nowToken) {
    for (int i = 0; i < NUMBERS_A_TOKEN; i++) {
      if (!old.get(oldToken * NUMBERS_A_TOKEN + i)
          .equals(now.get(nowToken * NUMBERS_A_TOKEN + i))) {
        return false;
      }
    }
    return true;
  }

  private List<SemanticTokensEdit> edits() {
    if (oldMiddle == 0 && nowMiddle == 0) {
      return List.of();
    }
    List<int[]> kept = oldMiddle == 0 || nowMiddle == 0 ? List.of() : kept();
    List<SemanticTokensEdit> edits = new ArrayList<>();
    int x = 0;
    int y = 0;
    for (int[] pair : kept) {
      if (pair[0] > x || pair[1] > y) {
        edits.add(edit(x, pair[0], y, pair[1]));
      }
      x = pair[0] + 1;
      y = pair[1] + 1;
    }
    if (x < oldMiddle || y < nowMiddle) {
      edits.add(edit(x, oldMiddle, y, nowMiddle));
    }
    return edits;
  }

  /**
   * Pairs of an old and a new token that stay, in order; none if there are too many differences.
   */
  private List<int[]> kept() {
    int most = Math.min(oldMiddle + nowMiddle, MOST_DIFFERENCES);
    int zero = most + 1;
    int[] furthest = new int[2 * most + 3];
    List<int[]> rounds = new ArrayList<>();
    for (int differences = 0; differences <= most; differences++) {
      rounds.add(furthest.clone());
      for (int diagonal = -differences; diagonal <= differences; diagonal += 2) {
        int x = start(furthest, zero, diagonal, differences);
        int y = x - diagonal;
        while (x < oldMiddle && y < nowMiddle && equal(same + x, same + y)) {
          x++;
          y++;
        }
        furthest[zero + diagonal] = x;
        if (x >= oldMiddle && y >= nowMiddle) {
          return back(rounds, zero);
        }
      }
    }
    return List.of();
  }

  /** Where a diagonal is entered with so many differences: by a token put in, or one taken out. */
  private static int start(int[] furthest, int zero, int diagonal, int differences) {
    return putsIn(furthest, zero, diagonal, differences)
        ? furthest[zero + diagonal + 1]
        : furthest[zero + diagonal - 1] + 1;
  }

  private static boolean putsIn(int[] furthest, int zero, int diagonal, int differences) {
    return diagonal == -differences
        || diagonal != differences && furthest[zero + diagonal - 1] < furthest[zero + diagonal + 1];
  }

  private List<int[]> back(List<int[]> rounds, int zero) {
    List<int[]> pairs = new ArrayList<>();
    int x = oldMiddle;
    int y = nowMiddle;
    for (int differences = rounds.size() - 1; differences >= 0; differences--) {
      int[] furthest = rounds.get(differences);
      int diagonal = x - y;
      boolean putsIn = putsIn(furthest, zero, diagonal, differences);
      int from = diagonal + (putsIn ? 1 : -1);
      int fromX = differences == 0 ? 0 : furthest[zero + from];
      int fromY = differences == 0 ? 0 : fromX - from;
      while (x > fromX && y > fromY) {
        x--;
        y--;
        pairs.add(new int[] {x, y});
      }
      x = fromX;
      y = fromY;
    }
    Collections.reverse(pairs);
    return pairs;
  }

  private SemanticTokensEdit edit(int oldFrom, int oldTo, int nowFrom, int nowTo) {
    List<Integer> come =
        List.copyOf(
            now.subList((same + nowFrom) * NUMBERS_A_TOKEN, (same + nowTo) * NUMBERS_A_TOKEN));
    return new SemanticTokensEdit(
        (same + oldFrom) * NUMBERS_A_TOKEN,
        (oldTo - oldFrom) * NUMBERS_A_TOKEN,
        come.isEmpty() ? null : come);
  }
}
