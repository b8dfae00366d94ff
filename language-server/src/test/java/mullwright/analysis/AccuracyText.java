package mullwright.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Writes how far methods stray from what they were compared with, as a table by source. */
final class AccuracyText {
  private AccuracyText() {}

  /** The page of that title for methods in order, each with its comparisons. */
  static String of(String title, String without, Map<String, List<OutsideCheck>> methods) {
    StringBuilder text = new StringBuilder();
    text.append("# ").append(title).append("\n\n");
    text.append("Largest relative difference between a method's result and the value it was");
    text.append(" compared with, over all points\n");
    text.append("compared. Written by the tests that make the comparisons.\n\n");
    text.append("\"Recomputed\" values are a published formula worked out apart from this code;");
    text.append(" their differences are mostly the\n");
    text.append("rounding of the printed value. Values \"from memory\" of a standard have two or");
    text.append(" three digits. Decisions and look-up\n");
    text.append("tables (").append(without).append(") are compared case");
    text.append(" by case and have no difference to\n");
    text.append("print.\n\n");
    text.append("| method | compared with | points | largest difference | at |\n");
    text.append("|---|---|---:|---:|---|\n");
    methods.forEach((method, checks) -> rows(text, method, checks));
    text.append("\nResults are aids to drafting. A licensed engineer and the local code govern.\n");
    return text.toString();
  }

  @SafeVarargs
  static List<OutsideCheck> all(List<OutsideCheck>... lists) {
    List<OutsideCheck> all = new ArrayList<>();
    for (List<OutsideCheck> list : lists) {
      all.addAll(list);
    }
    return all;
  }

  private static void rows(StringBuilder text, String method, List<OutsideCheck> checks) {
    Map<String, List<OutsideCheck>> bySource = new LinkedHashMap<>();
    for (OutsideCheck check : checks) {
      bySource.computeIfAbsent(check.source(), source -> new ArrayList<>()).add(check);
    }
    bySource.forEach(
        (source, group) -> {
          OutsideCheck worst =
              group.stream()
                  .max(Comparator.comparingDouble(OutsideCheck::difference))
                  .orElseThrow();
          text.append(
              String.format(
                  Locale.ROOT,
                  "| %s | %s | %d | %s | %s |\n",
                  method,
                  source,
                  group.size(),
                  percent(worst.difference()),
                  percent(worst.difference()).startsWith("<") ? "" : worst.what()));
        });
  }

  private static String percent(double difference) {
    return difference < 5e-5 ? "< 0.01 %" : String.format(Locale.ROOT, "%.2f %%", 100 * difference);
  }
}
