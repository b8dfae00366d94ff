package mullwright.syntax;

/** How far one word is from another, for "did you mean". */
final class Spelling {
  private static final int LONGEST = 40;

  private Spelling() {}

  /**
   * The least number of letters to change, add, leave out or swap with their neighbour to make one
   * word of the other (optimal string alignment); very long words count as far from all.
   */
  static int distance(String left, String right) {
    if (left.length() > LONGEST || right.length() > LONGEST) {
      return LONGEST;
    }
    int[][] cost = new int[left.length() + 1][right.length() + 1];
    for (int i = 0; i <= left.length(); i++) {
      for (int j = 0; j <= right.length(); j++) {
        cost[i][j] = i == 0 ? j : j == 0 ? i : cheapest(cost, left, right, i, j);
      }
    }
    return cost[left.length()][right.length()];
  }

  private static int cheapest(int[][] cost, String left, String right, int i, int j) {
    int changed = left.charAt(i - 1) == right.charAt(j - 1) ? 0 : 1;
    int least =
        Math.min(cost[i - 1][j - 1] + changed, Math.min(cost[i - 1][j], cost[i][j - 1]) + 1);
    boolean swapped =
        i > 1
            && j > 1
            && left.charAt(i - 1) == right.charAt(j - 2)
            && left.charAt(i - 2) == right.charAt(j - 1);
    return swapped ? Math.min(least, cost[i - 2][j - 2] + 1) : least;
  }
}
