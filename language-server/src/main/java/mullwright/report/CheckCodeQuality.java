package mullwright.report;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import mullwright.check.Severity;

/** Writes findings as the code-quality report that GitLab shows in a merge request. */
public final class CheckCodeQuality {
  private static final Gson GSON =
      new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create();

  private CheckCodeQuality() {}

  /** The whole report, ending with a line end. */
  public static String write(CheckReport report) {
    JsonArray issues = new JsonArray();
    Fingerprint fingerprint = new Fingerprint();
    for (CheckReport.FileFindings file : report.files()) {
      for (CheckReport.Item item : file.items()) {
        JsonObject lines = new JsonObject();
        lines.addProperty("begin", item.spot().line());
        lines.addProperty("end", item.spot().endLine());
        JsonObject location = new JsonObject();
        location.addProperty("path", item.spot().file());
        location.add("lines", lines);
        JsonObject issue = new JsonObject();
        issue.addProperty("type", "issue");
        issue.addProperty("description", item.finding().message());
        issue.addProperty("check_name", item.finding().rule());
        issue.addProperty("fingerprint", fingerprint.next(item.finding()));
        issue.addProperty("severity", severity(item.finding().severity()));
        issue.add("location", location);
        issues.add(issue);
      }
    }
    return GSON.toJson(issues) + "\n";
  }

  private static String severity(Severity severity) {
    return switch (severity) {
      case ERROR -> "major";
      case WARNING -> "minor";
      case INFORMATION -> "info";
    };
  }
}
