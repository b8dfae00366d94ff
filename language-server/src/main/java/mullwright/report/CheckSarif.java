package mullwright.report;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import mullwright.check.Finding;
import mullwright.check.Rule;
import mullwright.check.Rules;
import mullwright.check.Severity;
import mullwright.check.Waiting;

/**
 * Writes findings in the Static Analysis Results Interchange Format, version 2.1.0 (OASIS), as code
 * hosts and editors read them: rules with their pages, places, mends as fixes, and what the text
 * allows as suppressed results with the reason.
 */
public final class CheckSarif {
  private static final Gson GSON =
      new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create();

  private final Rules rules;
  private final List<String> used;

  private CheckSarif(CheckReport report, Rules rules) {
    TreeSet<String> names = new TreeSet<>();
    report.files().forEach(f -> f.items().forEach(item -> names.add(item.finding().rule())));
    report.allowed().forEach(one -> names.add(one.item().finding().rule()));
    this.rules = rules;
    this.used = new ArrayList<>(names);
  }

  /**
   * The whole log, ending with a line end.
   *
   * @param version of this program
   */
  public static String write(CheckReport report, Rules rules, String version) {
    return GSON.toJson(new CheckSarif(report, rules).log(report, version)) + "\n";
  }

  private JsonObject log(CheckReport report, String version) {
    JsonObject driver = new JsonObject();
    driver.addProperty("name", "mullwright");
    driver.addProperty("version", version);
    driver.add("shortDescription", text("Checks of curtain walls. " + Caution.WORDS));
    JsonArray descriptors = new JsonArray();
    used.forEach(name -> descriptors.add(descriptor(name)));
    driver.add("rules", descriptors);
    JsonObject tool = new JsonObject();
    tool.add("driver", driver);
    JsonArray results = new JsonArray();
    Fingerprint fingerprint = new Fingerprint();
    report
        .files()
        .forEach(
            file ->
                file.items()
                    .forEach(item -> results.add(result(item, fingerprint.next(item.finding())))));
    for (CheckReport.AllowedItem allowed : report.allowed()) {
      JsonObject result = result(allowed.item(), fingerprint.next(allowed.item().finding()));
      JsonObject suppression = new JsonObject();
      suppression.addProperty("kind", "inSource");
      suppression.addProperty("justification", allowed.reason());
      JsonArray suppressions = new JsonArray();
      suppressions.add(suppression);
      result.add("suppressions", suppressions);
      results.add(result);
    }
    JsonObject run = new JsonObject();
    run.add("tool", tool);
    run.addProperty("columnKind", "unicodeCodePoints");
    run.add("results", results);
    JsonObject invocation = new JsonObject();
    invocation.addProperty("executionSuccessful", report.failures().isEmpty());
    if (!report.waiting().isEmpty()) {
      JsonArray notifications = new JsonArray();
      report.waiting().forEach(one -> notifications.add(notification(one)));
      invocation.add("toolExecutionNotifications", notifications);
    }
    JsonArray invocations = new JsonArray();
    invocations.add(invocation);
    run.add("invocations", invocations);
    JsonArray runs = new JsonArray();
    runs.add(run);
    JsonObject log = new JsonObject();
    log.addProperty("version", "2.1.0");
    log.add("runs", runs);
    return log;
  }

  private JsonObject descriptor(String name) {
    JsonObject one = new JsonObject();
    one.addProperty("id", name);
    for (Rule rule : rules.named(name).stream().toList()) {
      one.add("shortDescription", text(MarkdownTerminal.plain(rule.summary())));
      // the walls of the page lie in the program
      String page =
          rule.page()
              .text()
              .replaceAll("(?m)^fixture: .*$", "See `mullwright explain " + name + "`.");
      JsonObject help = text(page);
      help.addProperty("markdown", page);
      one.add("help", help);
      JsonObject configuration = new JsonObject();
      configuration.addProperty("level", level(rule.about().severity()));
      one.add("defaultConfiguration", configuration);
      JsonObject properties = new JsonObject();
      JsonArray tags = new JsonArray();
      tags.add(rule.about().group().name().toLowerCase(java.util.Locale.ROOT));
      if (rule.about().safety()) {
        tags.add("safety");
      }
      properties.add("tags", tags);
      one.add("properties", properties);
    }
    return one;
  }

  private JsonObject result(CheckReport.Item item, String fingerprint) {
    Finding finding = item.finding();
    JsonObject one = new JsonObject();
    one.addProperty("ruleId", finding.rule());
    one.addProperty("ruleIndex", used.indexOf(finding.rule()));
    one.addProperty("level", level(finding.severity()));
    one.add("message", text(finding.message()));
    JsonArray locations = new JsonArray();
    JsonObject location = location(item.spot());
    if (!finding.piece().isEmpty()) {
      JsonObject piece = new JsonObject();
      piece.addProperty("name", finding.piece());
      piece.addProperty("kind", "member");
      JsonArray logical = new JsonArray();
      logical.add(piece);
      location.add("logicalLocations", logical);
    }
    locations.add(location);
    one.add("locations", locations);
    if (!item.related().isEmpty()) {
      JsonArray related = new JsonArray();
      for (CheckReport.RelatedSpot other : item.related()) {
        JsonObject place = location(other.spot());
        place.add("message", text(other.word()));
        related.add(place);
      }
      one.add("relatedLocations", related);
    }
    JsonObject prints = new JsonObject();
    prints.addProperty("finding/v1", fingerprint);
    one.add("partialFingerprints", prints);
    fixes(item, one);
    return one;
  }

  private static void fixes(CheckReport.Item item, JsonObject one) {
    JsonArray fixes = new JsonArray();
    for (CheckReport.Mend mend : item.fixes()) {
      Map<String, JsonArray> byFile = new TreeMap<>();
      for (CheckReport.MendEdit edit : mend.edits()) {
        JsonObject replacement = new JsonObject();
        replacement.add("deletedRegion", region(edit.spot()));
        replacement.add("insertedContent", text(edit.text()));
        byFile.computeIfAbsent(edit.spot().file(), any -> new JsonArray()).add(replacement);
      }
      if (!byFile.isEmpty()) {
        JsonArray changes = new JsonArray();
        byFile.forEach(
            (file, replacements) -> {
              JsonObject change = new JsonObject();
              change.add("artifactLocation", artifact(file));
              change.add("replacements", replacements);
              changes.add(change);
            });
        JsonObject fix = new JsonObject();
        fix.add("description", text(mend.title()));
        fix.add("artifactChanges", changes);
        fixes.add(fix);
      }
    }
    if (!fixes.isEmpty()) {
      one.add("fixes", fixes);
    }
  }

  /** That checks wait is no result: it tells how far the run got (SARIF 2.1.0, 3.20.21). */
  private static JsonObject notification(Waiting waiting) {
    JsonObject physical = new JsonObject();
    physical.add("artifactLocation", artifact(waiting.file()));
    JsonObject location = new JsonObject();
    location.add("physicalLocation", physical);
    JsonArray locations = new JsonArray();
    locations.add(location);
    JsonObject one = new JsonObject();
    one.addProperty("level", "note");
    one.add("message", text(waiting.words()));
    one.add("locations", locations);
    return one;
  }

  private static JsonObject location(Spot spot) {
    JsonObject physical = new JsonObject();
    physical.add("artifactLocation", artifact(spot.file()));
    physical.add("region", region(spot));
    JsonObject location = new JsonObject();
    location.add("physicalLocation", physical);
    return location;
  }

  private static JsonObject artifact(String file) {
    JsonObject artifact = new JsonObject();
    artifact.addProperty("uri", uri(file));
    return artifact;
  }

  /** A path as a relative reference (RFC 3986): what is no plain character is percent-encoded. */
  static String uri(String path) {
    StringBuilder out = new StringBuilder();
    for (byte b : path.getBytes(java.nio.charset.StandardCharsets.UTF_8)) {
      char c = (char) (b & 0xff);
      boolean plain =
          (c >= 'a' && c <= 'z')
              || (c >= 'A' && c <= 'Z')
              || (c >= '0' && c <= '9')
              || "-._~/".indexOf(c) >= 0;
      out.append(
          plain ? String.valueOf(c) : String.format(java.util.Locale.ROOT, "%%%02X", b & 0xff));
    }
    return out.toString();
  }

  private static JsonObject region(Spot spot) {
    JsonObject region = new JsonObject();
    region.addProperty("startLine", spot.line());
    region.addProperty("startColumn", spot.column());
    region.addProperty("endLine", spot.endLine());
    region.addProperty("endColumn", spot.endColumn());
    return region;
  }

  private static JsonObject text(String words) {
    JsonObject message = new JsonObject();
    message.addProperty("text", words);
    return message;
  }

  private static String level(Severity severity) {
    return switch (severity) {
      case ERROR -> "error";
      case WARNING -> "warning";
      case INFORMATION -> "note";
    };
  }
}
