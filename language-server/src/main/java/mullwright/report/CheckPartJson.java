package mullwright.report;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import mullwright.check.Finding;
import mullwright.check.Severity;
import mullwright.derivation.Derivation;
import mullwright.model.Origin;
import mullwright.quantity.Kind;
import mullwright.quantity.Quantity;
import mullwright.quantity.Rational;
import mullwright.quantity.UnitSystem;
import mullwright.syntax.TextRange;

/**
 * Keeps what was found in a file as text, and reads it back: everything any form of the report
 * tells. Numbers are kept exactly; how they came about is not, as no report of a check tells it.
 */
public final class CheckPartJson {
  private CheckPartJson() {}

  /** The part as text. */
  public static String write(CheckPart part) {
    JsonObject all = new JsonObject();
    all.addProperty("path", part.path());
    all.addProperty("walls", part.walls());
    JsonObject units = new JsonObject();
    new TreeMap<>(part.units()).forEach((file, system) -> units.addProperty(file, system.name()));
    all.add("units", units);
    JsonArray items = new JsonArray();
    part.items().forEach(item -> items.add(item(item)));
    all.add("items", items);
    JsonArray allowed = new JsonArray();
    for (CheckReport.AllowedItem one : part.allowed()) {
      JsonObject kept = new JsonObject();
      kept.add("item", item(one.item()));
      kept.addProperty("reason", one.reason());
      allowed.add(kept);
    }
    all.add("allowed", allowed);
    return all.toString();
  }

  /** The part again; what {@link #write} did not write is a fault. */
  public static CheckPart read(String text) {
    JsonObject all = JsonParser.parseString(text).getAsJsonObject();
    Map<String, UnitSystem> units = new TreeMap<>();
    for (Map.Entry<String, JsonElement> entry : all.getAsJsonObject("units").entrySet()) {
      units.put(entry.getKey(), UnitSystem.valueOf(entry.getValue().getAsString()));
    }
    List<CheckReport.Item> items = new ArrayList<>();
    all.getAsJsonArray("items").forEach(item -> items.add(item(item.getAsJsonObject())));
    List<CheckReport.AllowedItem> allowed = new ArrayList<>();
    for (JsonElement one : all.getAsJsonArray("allowed")) {
      JsonObject kept = one.getAsJsonObject();
      allowed.add(
          new CheckReport.AllowedItem(
              item(kept.getAsJsonObject("item")), kept.get("reason").getAsString()));
    }
    return new CheckPart(
        all.get("path").getAsString(),
        all.get("walls").getAsInt(),
        units,
        items,
        allowed,
        List.of());
  }

  private static JsonObject item(CheckReport.Item item) {
    Finding finding = item.finding();
    JsonObject one = new JsonObject();
    one.addProperty("rule", finding.rule());
    one.addProperty("severity", finding.severity().name());
    one.add("origin", origin(finding.origin()));
    one.addProperty("piece", finding.piece());
    one.addProperty("what", finding.what());
    one.addProperty("mend", finding.mend());
    finding.measured().ifPresent(number -> one.add("measured", number(number)));
    finding.limit().ifPresent(number -> one.add("limit", number(number)));
    one.add("spot", spot(item.spot()));
    Excerpt shown = item.excerpt();
    JsonObject excerpt = new JsonObject();
    excerpt.addProperty("line", shown.line());
    excerpt.addProperty("text", shown.text());
    excerpt.addProperty("start", shown.start());
    excerpt.addProperty("end", shown.end());
    excerpt.addProperty("further", shown.furtherLines());
    one.add("excerpt", excerpt);
    JsonArray related = new JsonArray();
    for (CheckReport.RelatedSpot other : item.related()) {
      JsonObject place = new JsonObject();
      place.add("spot", spot(other.spot()));
      place.addProperty("word", other.word());
      related.add(place);
    }
    one.add("related", related);
    JsonArray fixes = new JsonArray();
    for (CheckReport.Mend mend : item.fixes()) {
      JsonArray edits = new JsonArray();
      for (CheckReport.MendEdit edit : mend.edits()) {
        JsonObject change = new JsonObject();
        change.add("spot", spot(edit.spot()));
        change.addProperty("text", edit.text());
        edits.add(change);
      }
      JsonObject fix = new JsonObject();
      fix.addProperty("title", mend.title());
      fix.add("edits", edits);
      fixes.add(fix);
    }
    one.add("fixes", fixes);
    return one;
  }

  private static CheckReport.Item item(JsonObject one) {
    Finding finding =
        new Finding(
            one.get("rule").getAsString(),
            Severity.valueOf(one.get("severity").getAsString()),
            origin(one.getAsJsonArray("origin")),
            one.get("piece").getAsString(),
            one.get("what").getAsString(),
            one.get("mend").getAsString(),
            number(one.getAsJsonObject("measured")),
            number(one.getAsJsonObject("limit")),
            List.of(),
            List.of());
    JsonObject excerpt = one.getAsJsonObject("excerpt");
    List<CheckReport.RelatedSpot> related = new ArrayList<>();
    for (JsonElement other : one.getAsJsonArray("related")) {
      JsonObject place = other.getAsJsonObject();
      related.add(
          new CheckReport.RelatedSpot(
              spot(place.getAsJsonArray("spot")), place.get("word").getAsString()));
    }
    List<CheckReport.Mend> fixes = new ArrayList<>();
    for (JsonElement element : one.getAsJsonArray("fixes")) {
      JsonObject fix = element.getAsJsonObject();
      List<CheckReport.MendEdit> edits = new ArrayList<>();
      for (JsonElement change : fix.getAsJsonArray("edits")) {
        JsonObject edit = change.getAsJsonObject();
        edits.add(
            new CheckReport.MendEdit(
                spot(edit.getAsJsonArray("spot")), edit.get("text").getAsString()));
      }
      fixes.add(new CheckReport.Mend(fix.get("title").getAsString(), edits));
    }
    return new CheckReport.Item(
        finding,
        spot(one.getAsJsonArray("spot")),
        new Excerpt(
            excerpt.get("line").getAsInt(),
            excerpt.get("text").getAsString(),
            excerpt.get("start").getAsInt(),
            excerpt.get("end").getAsInt(),
            excerpt.get("further").getAsInt()),
        related,
        fixes);
  }

  private static JsonArray origin(Origin origin) {
    JsonArray kept = new JsonArray();
    kept.add(origin.file());
    kept.add(origin.segment());
    kept.add(origin.range().start());
    kept.add(origin.range().end());
    return kept;
  }

  private static Origin origin(JsonArray kept) {
    return new Origin(
        kept.get(0).getAsString(),
        kept.get(1).getAsInt(),
        new TextRange(kept.get(2).getAsInt(), kept.get(3).getAsInt()));
  }

  private static JsonArray spot(Spot spot) {
    JsonArray kept = new JsonArray();
    kept.add(spot.file());
    kept.add(spot.line());
    kept.add(spot.column());
    kept.add(spot.endLine());
    kept.add(spot.endColumn());
    return kept;
  }

  private static Spot spot(JsonArray kept) {
    return new Spot(
        kept.get(0).getAsString(),
        kept.get(1).getAsInt(),
        kept.get(2).getAsInt(),
        kept.get(3).getAsInt(),
        kept.get(4).getAsInt());
  }

  private static JsonObject number(Derivation number) {
    JsonObject kept = new JsonObject();
    kept.addProperty("name", number.name());
    kept.addProperty("kind", number.kind().name());
    kept.addProperty("numerator", number.value().si().numerator().toString());
    kept.addProperty("denominator", number.value().si().denominator().toString());
    return kept;
  }

  private static Optional<Derivation> number(JsonObject kept) {
    return Optional.ofNullable(kept)
        .map(
            number -> {
              Kind kind = Kind.valueOf(number.get("kind").getAsString());
              Rational si =
                  Rational.of(number.get("numerator").getAsBigInteger())
                      .dividedBy(Rational.of(number.get("denominator").getAsBigInteger()));
              return Derivation.computed(
                  number.get("name").getAsString(),
                  new Quantity(si, kind.dimension()),
                  kind,
                  "as found",
                  "an earlier check of the same text");
            });
  }
}
