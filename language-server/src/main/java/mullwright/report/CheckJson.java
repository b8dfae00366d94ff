package mullwright.report;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.util.Locale;
import java.util.Optional;
import mullwright.check.Finding;
import mullwright.check.Severity;
import mullwright.derivation.Derivation;
import mullwright.quantity.Kind;
import mullwright.quantity.QuantityPrinter;
import mullwright.quantity.UnitSystem;

/**
 * Writes findings for programs, as the published schema {@code check.schema.json} beside this class
 * says. Lengths are exact decimals of millimetres, other quantities numbers in SI base units; each
 * with its printed text in both systems.
 */
public final class CheckJson {
  /** Changes when a program that reads the old form could not read the new one. */
  private static final int VERSION = 1;

  private static final Gson GSON =
      new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create();

  private CheckJson() {}

  /** The whole report, ending with a line end. */
  public static String write(CheckReport report) {
    JsonObject all = new JsonObject();
    all.addProperty("format", "mullwright-check");
    all.addProperty("version", VERSION);
    all.addProperty("caution", Caution.WORDS);
    JsonObject summary = new JsonObject();
    summary.addProperty("files", report.files().size());
    summary.addProperty("walls", report.walls());
    summary.addProperty("errors", report.count(Severity.ERROR));
    summary.addProperty("warnings", report.count(Severity.WARNING));
    summary.addProperty("information", report.count(Severity.INFORMATION));
    all.add("summary", summary);
    JsonArray files = new JsonArray();
    for (CheckReport.FileFindings file : report.files()) {
      JsonObject one = new JsonObject();
      one.addProperty("file", file.file());
      JsonArray findings = new JsonArray();
      file.items().forEach(item -> findings.add(finding(item)));
      one.add("findings", findings);
      files.add(one);
    }
    all.add("files", files);
    return GSON.toJson(all) + "\n";
  }

  private static JsonObject finding(CheckReport.Item item) {
    Finding finding = item.finding();
    JsonObject one = new JsonObject();
    one.addProperty("rule", finding.rule());
    one.addProperty("severity", finding.severity().name().toLowerCase(Locale.ROOT));
    one.addProperty("piece", finding.piece());
    one.addProperty("what", finding.what());
    one.addProperty("mend", finding.mend());
    one.add("range", range(item.spot()));
    number(finding.measured()).ifPresent(number -> one.add("measured", number));
    number(finding.limit()).ifPresent(number -> one.add("limit", number));
    JsonArray related = new JsonArray();
    for (CheckReport.RelatedSpot other : item.related()) {
      JsonObject place = new JsonObject();
      place.addProperty("file", other.spot().file());
      place.add("range", range(other.spot()));
      place.addProperty("word", other.word());
      related.add(place);
    }
    one.add("related", related);
    JsonArray fixes = new JsonArray();
    item.fixes().forEach(fix -> fixes.add(fix(fix)));
    one.add("fixes", fixes);
    return one;
  }

  private static JsonObject fix(CheckReport.Mend fix) {
    JsonObject one = new JsonObject();
    one.addProperty("title", fix.title());
    JsonArray edits = new JsonArray();
    for (CheckReport.MendEdit edit : fix.edits()) {
      JsonObject change = new JsonObject();
      change.addProperty("file", edit.spot().file());
      change.add("range", range(edit.spot()));
      change.addProperty("text", edit.text());
      edits.add(change);
    }
    one.add("edits", edits);
    return one;
  }

  private static JsonObject range(Spot spot) {
    JsonObject range = new JsonObject();
    range.add("start", position(spot.line(), spot.column()));
    range.add("end", position(spot.endLine(), spot.endColumn()));
    return range;
  }

  private static JsonObject position(int line, int column) {
    JsonObject position = new JsonObject();
    position.addProperty("line", line);
    position.addProperty("column", column);
    return position;
  }

  private static Optional<JsonObject> number(Optional<Derivation> number) {
    return number.map(
        told -> {
          JsonObject one = new JsonObject();
          one.addProperty("name", told.name());
          one.addProperty("kind", told.kind().words());
          if (told.kind() == Kind.LENGTH) {
            one.add("mm", Exact.millimetres(told.length()));
          } else {
            one.add("si", new JsonPrimitive(told.value().toSi()));
          }
          one.addProperty("us", QuantityPrinter.in(UnitSystem.US, told.value(), told.kind()));
          one.addProperty("metric", QuantityPrinter.in(UnitSystem.SI, told.value(), told.kind()));
          return one;
        });
  }
}
