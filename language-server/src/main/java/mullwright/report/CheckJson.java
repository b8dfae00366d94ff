package mullwright.report;

import com.google.gson.FormattingStyle;
import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import mullwright.check.Finding;
import mullwright.check.Severity;
import mullwright.check.Waiting;
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

  private CheckJson() {}

  /** The whole report, ending with a line end. */
  public static String write(CheckReport report) {
    StringWriter text = new StringWriter();
    // straight into the text: of a thousand walls a tree would be larger than all that is checked
    try (JsonWriter json = new JsonWriter(text)) {
      json.setFormattingStyle(FormattingStyle.PRETTY);
      json.beginObject();
      json.name("format").value("mullwright-check");
      json.name("version").value(VERSION);
      json.name("caution").value(Caution.WORDS);
      json.name("summary").beginObject();
      json.name("files").value(report.files().size());
      json.name("walls").value(report.walls());
      json.name("errors").value(report.count(Severity.ERROR));
      json.name("warnings").value(report.count(Severity.WARNING));
      json.name("information").value(report.count(Severity.INFORMATION));
      json.endObject();
      json.name("files").beginArray();
      for (CheckReport.FileFindings file : report.files()) {
        json.beginObject();
        json.name("file").value(file.file());
        json.name("findings").beginArray();
        for (CheckReport.Item item : file.items()) {
          finding(json, item);
        }
        json.endArray();
        json.endObject();
      }
      json.endArray();
      waiting(json, report.waiting());
      json.endObject();
    } catch (IOException impossible) {
      // memory has no faults of a disk
      throw new UncheckedIOException(impossible);
    }
    return text.append('\n').toString();
  }

  private static void waiting(JsonWriter json, List<Waiting> walls) throws IOException {
    if (walls.isEmpty()) {
      return;
    }
    json.name("waiting").beginArray();
    for (Waiting one : walls) {
      json.beginObject();
      json.name("file").value(one.file());
      json.name("wall").value(one.wall());
      json.name("checks").beginArray();
      for (String group : one.names()) {
        json.value(group);
      }
      json.endArray();
      json.name("words").value(one.words());
      json.endObject();
    }
    json.endArray();
  }

  private static void finding(JsonWriter json, CheckReport.Item item) throws IOException {
    Finding finding = item.finding();
    json.beginObject();
    json.name("rule").value(finding.rule());
    json.name("severity").value(finding.severity().name().toLowerCase(Locale.ROOT));
    json.name("piece").value(finding.piece());
    json.name("what").value(finding.what());
    json.name("mend").value(finding.mend());
    range(json, item.spot());
    number(json, "measured", finding.measured());
    number(json, "limit", finding.limit());
    json.name("related").beginArray();
    for (CheckReport.RelatedSpot other : item.related()) {
      json.beginObject();
      json.name("file").value(other.spot().file());
      range(json, other.spot());
      json.name("word").value(other.word());
      json.endObject();
    }
    json.endArray();
    json.name("fixes").beginArray();
    for (CheckReport.Mend fix : item.fixes()) {
      json.beginObject();
      json.name("title").value(fix.title());
      json.name("edits").beginArray();
      for (CheckReport.MendEdit edit : fix.edits()) {
        json.beginObject();
        json.name("file").value(edit.spot().file());
        range(json, edit.spot());
        json.name("text").value(edit.text());
        json.endObject();
      }
      json.endArray();
      json.endObject();
    }
    json.endArray();
    json.endObject();
  }

  private static void range(JsonWriter json, Spot spot) throws IOException {
    json.name("range").beginObject();
    position(json, "start", spot.line(), spot.column());
    position(json, "end", spot.endLine(), spot.endColumn());
    json.endObject();
  }

  private static void position(JsonWriter json, String name, int line, int column)
      throws IOException {
    json.name(name).beginObject();
    json.name("line").value(line);
    json.name("column").value(column);
    json.endObject();
  }

  private static void number(JsonWriter json, String name, Optional<Derivation> number)
      throws IOException {
    if (number.isEmpty()) {
      return;
    }
    Derivation told = number.get();
    json.name(name).beginObject();
    json.name("name").value(told.name());
    json.name("kind").value(told.kind().words());
    if (told.kind() == Kind.LENGTH) {
      json.name("mm").value(Exact.millimetres(told.length()).getAsBigDecimal());
    } else {
      json.name("si").value(told.value().toSi());
    }
    json.name("us").value(QuantityPrinter.in(UnitSystem.US, told.value(), told.kind()));
    json.name("metric").value(QuantityPrinter.in(UnitSystem.SI, told.value(), told.kind()));
    json.endObject();
  }
}
