package mullwright.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import mullwright.model.Origin;

/**
 * Findings of one rule at one place of the text, told once: one statement that stands for many
 * pieces is shown with its worst piece, and the others are named beside it.
 *
 * @param shown the one that passes its limit the furthest, the first where none has numbers
 * @param others the other findings there, in order
 */
public record FoldedFinding(Finding shown, List<Finding> others) {
  public FoldedFinding {
    others = List.copyOf(others);
  }

  /** The findings folded, in the order of the text. */
  public static List<FoldedFinding> fold(List<Finding> findings) {
    Map<Key, List<Finding>> byPlace = new LinkedHashMap<>();
    for (Finding finding : findings) {
      byPlace.computeIfAbsent(Key.of(finding), key -> new ArrayList<>()).add(finding);
    }
    List<FoldedFinding> folded = new ArrayList<>();
    for (List<Finding> there : byPlace.values()) {
      if (there.size() == 1) {
        folded.add(new FoldedFinding(there.get(0), List.of()));
        continue;
      }
      Finding worst = there.get(0);
      double most = excess(worst);
      for (Finding finding : there.subList(1, there.size())) {
        double excess = excess(finding);
        if (excess > most) {
          worst = finding;
          most = excess;
        }
      }
      List<Finding> others = new ArrayList<>(there);
      others.remove(worst);
      folded.add(new FoldedFinding(worst, others));
    }
    return folded;
  }

  /** {@code and 4 more: vertical C; vertical D …}, or "" if it stands alone. */
  public String more(int named) {
    if (others.isEmpty()) {
      return "";
    }
    List<String> pieces =
        others.stream()
            .map(Finding::piece)
            // the shown one is named already
            .filter(piece -> !piece.isEmpty() && !piece.equals(shown.piece()))
            .distinct()
            .toList();
    String names = String.join("; ", pieces.subList(0, Math.min(named, pieces.size())));
    boolean same = pieces.isEmpty() && !shown.piece().isEmpty();
    return "and "
        + others.size()
        + (same ? " more at the same piece" : " more")
        + (names.isEmpty() ? "" : ": " + names)
        + (pieces.size() > named ? " …" : "");
  }

  /** The edits of all of them, each once, those of the shown one first. */
  public List<Fix> fixes() {
    Set<Fix> fixes = new LinkedHashSet<>(shown.fixes());
    others.forEach(other -> fixes.addAll(other.fixes()));
    return List.copyOf(fixes);
  }

  private static double excess(Finding finding) {
    if (finding.measured().isEmpty() || finding.limit().isEmpty()) {
      return 0;
    }
    double measured = finding.measured().get().value().toSi();
    double limit = finding.limit().get().value().toSi();
    return measured > limit ? measured - limit : limit - measured;
  }

  private record Key(String rule, Severity severity, Origin origin, String text) {
    static Key of(Finding finding) {
      // findings about the text itself are told one by one
      String text = finding.piece().isEmpty() ? finding.what() : "";
      return new Key(finding.rule(), finding.severity(), finding.origin(), text);
    }
  }
}
