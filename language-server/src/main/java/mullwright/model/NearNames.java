package mullwright.model;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Orders known names for an unknown one: those that may be meant first, then the others. */
public final class NearNames {
  private static final int LONGEST = 64;
  private static final int MOST = 1_000;

  private NearNames() {}

  /** True if the candidate is so few slips of the pen away that it may be what was meant. */
  public static boolean isNear(String name, String candidate) {
    int allowed = slips(name);
    return distance(name, candidate, allowed) <= allowed;
  }

  private static int slips(String name) {
    return Math.max(1, Math.min(3, name.length() / 3));
  }

  /**
   * At most {@link Limits#CANDIDATES} of the known names: by edit distance where it is small (a
   * slip of case counts as nearest), then in the order known.
   */
  static List<String> of(String name, Collection<String> known) {
    int allowed = slips(name);
    List<List<String>> near = new ArrayList<>();
    for (int i = 0; i <= allowed; i++) {
      near.add(new ArrayList<>());
    }
    int looked = 0;
    for (String candidate : known) {
      if (looked++ >= MOST) {
        break;
      }
      int distance = distance(name, candidate, allowed);
      if (distance <= allowed) {
        near.get(distance).add(candidate);
      }
    }
    Set<String> ordered = new LinkedHashSet<>(ends(name, known));
    near.forEach(ordered::addAll);
    for (String candidate : known) {
      if (ordered.size() >= Limits.CANDIDATES) {
        break;
      }
      ordered.add(candidate);
    }
    return ordered.stream().limit(Limits.CANDIDATES).toList();
  }

  /**
   * The two known names that one is made of with a mark between that joins no range: {@code L2} and
   * {@code L12} of {@code L2.L12} or {@code L2-L12}; empty if it is not so.
   */
  public static List<String> ends(String name, Collection<String> known) {
    for (int i = 1; i < name.length() - 1; i++) {
      if (name.charAt(i) == '.' || name.charAt(i) == '-') {
        String left = name.substring(0, i);
        String right = name.substring(i + 1);
        if (!left.equals(right) && known.contains(left) && known.contains(right)) {
          return List.of(left, right);
        }
      }
    }
    return List.of();
  }

  /** Edit distance with a swap of neighbours counted once, or {@code allowed + 1} if beyond. */
  static int distance(String one, String other, int allowed) {
    if (one.equalsIgnoreCase(other)) {
      return 0;
    }
    if (Math.abs(one.length() - other.length()) > allowed
        || one.length() > LONGEST
        || other.length() > LONGEST) {
      return allowed + 1;
    }
    String a = one.toLowerCase(Locale.ROOT);
    String b = other.toLowerCase(Locale.ROOT);
    int[] before = new int[b.length() + 1];
    int[] last = new int[b.length() + 1];
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      last[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        row[j] = Math.min(Math.min(row[j - 1], last[j]) + 1, last[j - 1] + change);
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          row[j] = Math.min(row[j], before[j - 2] + 1);
        }
      }
      int[] free = before;
      before = last;
      last = row;
      row = free;
    }
    return last[b.length()];
  }
}
