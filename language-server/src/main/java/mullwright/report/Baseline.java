package mullwright.report;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import mullwright.check.Finding;

/**
 * The findings a project lives with for now, so that only new ones are told.
 *
 * @param known fingerprints
 */
public record Baseline(Set<String> known) {
  private static final String FORMAT = "mullwright-baseline";
  private static final int VERSION = 1;
  private static final Gson GSON =
      new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create();

  public Baseline {
    known = Set.copyOf(known);
  }

  /** Everything a report tells, in a file people can read and compare. */
  public static String write(CheckReport report) {
    JsonArray findings = new JsonArray();
    Fingerprint fingerprint = new Fingerprint();
    for (CheckReport.FileFindings file : report.files()) {
      for (CheckReport.Item item : file.items()) {
        Finding finding = item.finding();
        JsonObject one = new JsonObject();
        one.addProperty("file", finding.origin().file());
        one.addProperty("rule", finding.rule());
        one.addProperty("piece", finding.piece());
        one.addProperty("fingerprint", fingerprint.next(finding));
        findings.add(one);
      }
    }
    JsonObject all = new JsonObject();
    all.addProperty("format", FORMAT);
    all.addProperty("version", VERSION);
    all.add("findings", findings);
    return GSON.toJson(all) + "\n";
  }

  /** Reads such a file; empty if the text is none. */
  public static Optional<Baseline> read(String text) {
    try {
      JsonObject all = JsonParser.parseString(text).getAsJsonObject();
      if (!all.has("format") || !all.has("version") || !all.has("findings")) {
        return Optional.empty();
      }
      if (!all.get("format").getAsString().equals(FORMAT)
          || all.get("version").getAsInt() != VERSION) {
        return Optional.empty();
      }
      Set<String> known = new LinkedHashSet<>();
      for (JsonElement finding : all.getAsJsonArray("findings")) {
        JsonElement print = finding.getAsJsonObject().get("fingerprint");
        if (print == null) {
          return Optional.empty();
        }
        known.add(print.getAsString());
      }
      return Optional.of(new Baseline(known));
    } catch (JsonParseException
        | IllegalStateException
        | UnsupportedOperationException
        | NumberFormatException
        | ClassCastException wrong) {
      return Optional.empty();
    }
  }

  /** How many of its findings the report no longer has. */
  public int stale(CheckReport report) {
    Set<String> left = new LinkedHashSet<>(known);
    List<String> now = report.fingerprints();
    now.forEach(left::remove);
    return left.size();
  }
}
