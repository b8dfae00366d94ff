package mullwright.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import mullwright.check.Finding;
import mullwright.check.FoldedFinding;
import mullwright.check.Severity;

/**
 * Writes findings as workflow commands, which GitHub shows at the lines of a change. Text is
 * escaped as its documentation of workflow commands asks.
 */
public final class CheckAnnotations {
  private static final int OTHERS_NAMED = 6;

  private CheckAnnotations() {}

  /** One command a finding, then one that sums up. */
  public static String write(CheckReport report) {
    StringBuilder out = new StringBuilder();
    for (CheckReport.FileFindings file : report.files()) {
      Map<Finding, CheckReport.Item> items = new LinkedHashMap<>();
      file.items().forEach(item -> items.putIfAbsent(item.finding(), item));
      // a step may show ten annotations of a kind, so equal ones of one place stand as one
      for (FoldedFinding folded : FoldedFinding.fold(List.copyOf(items.keySet()))) {
        Finding finding = folded.shown();
        CheckReport.Item item = items.get(finding);
        String more = folded.more(OTHERS_NAMED);
        out.append("::")
            .append(command(finding.severity()))
            .append(" file=")
            .append(property(item.spot().file()))
            .append(",line=")
            .append(item.spot().line())
            .append(",endLine=")
            .append(item.spot().endLine())
            .append(",col=")
            .append(item.spot().column())
            .append(",title=")
            .append(property(finding.rule()))
            .append("::")
            .append(data(finding.message() + (more.isEmpty() ? "" : " (" + more + ")")))
            .append('\n');
      }
    }
    report.waiting().forEach(one -> out.append(data(one.words())).append('\n'));
    return out.append(CheckText.summary(report)).append('\n').toString();
  }

  private static String command(Severity severity) {
    return switch (severity) {
      case ERROR -> "error";
      case WARNING -> "warning";
      case INFORMATION -> "notice";
    };
  }

  private static String data(String text) {
    return text.replace("%", "%25").replace("\r", "%0D").replace("\n", "%0A");
  }

  private static String property(String text) {
    return data(text).replace(":", "%3A").replace(",", "%2C");
  }
}
