package mullwright.report;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import mullwright.check.Finding;
import mullwright.quantity.UnitSystem;
import mullwright.review.Change;
import mullwright.review.FindingChange;
import mullwright.review.Goods;
import mullwright.review.GoodsChange;
import mullwright.review.PieceChange;
import mullwright.review.PieceState;
import mullwright.review.ReactionChange;
import mullwright.review.Value;
import mullwright.review.WallReview;
import mullwright.workspace.FileReview;

/**
 * Writes a comparison for programs, by the published schema {@code diff.schema.json} beside this
 * class. Changes are numbered from 1; every effect names the changes that explain it.
 */
public final class ReviewJson {
  private static final int VERSION = 1;
  private static final Gson GSON =
      new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create();

  private ReviewJson() {}

  /** The whole comparison, ending with a line end. */
  public static String write(ReviewInput input) {
    JsonObject all = new JsonObject();
    all.addProperty("format", "mullwright-diff");
    all.addProperty("version", VERSION);
    all.addProperty("caution", Caution.WORDS);
    all.addProperty("from", input.from());
    all.addProperty("to", input.to());
    JsonArray files = new JsonArray();
    input.files().forEach(file -> files.add(file(input, file)));
    all.add("files", files);
    return GSON.toJson(all) + "\n";
  }

  private static JsonObject file(ReviewInput input, FileReview file) {
    JsonObject one = new JsonObject();
    file.old().ifPresent(path -> one.addProperty("old", path));
    file.now().ifPresent(path -> one.addProperty("new", path));
    one.addProperty("textDiffers", file.textDiffers());
    JsonArray walls = new JsonArray();
    file.walls().forEach(wall -> walls.add(wall(wall, input.units(file))));
    one.add("walls", walls);
    one.add("tripped", findings(file.text().tripped()));
    one.add("mended", findings(file.text().mended()));
    return one;
  }

  private static JsonArray findings(List<Finding> findings) {
    JsonArray all = new JsonArray();
    findings.forEach(finding -> all.add(finding(new FindingChange(finding, List.of()))));
    return all;
  }

  private static JsonObject wall(WallReview wall, UnitSystem units) {
    JsonObject one = new JsonObject();
    one.addProperty("wall", wall.name());
    one.addProperty(
        "state", wall.old().isEmpty() ? "added" : wall.now().isEmpty() ? "removed" : "changed");
    JsonArray changes = new JsonArray();
    for (int at = 0; at < wall.changes().size(); at++) {
      changes.add(change(at, wall, units));
    }
    one.add("changes", changes);
    JsonArray pieces = new JsonArray();
    wall.pieces().forEach(piece -> pieces.add(piece(piece)));
    one.add("pieces", pieces);
    JsonArray goods = new JsonArray();
    wall.goods().forEach(change -> goods.add(goods(change)));
    one.add("goods", goods);
    JsonArray reactions = new JsonArray();
    wall.reactions().forEach(reaction -> reactions.add(reaction(reaction)));
    one.add("reactions", reactions);
    JsonArray tripped = new JsonArray();
    wall.tripped().forEach(finding -> tripped.add(finding(finding)));
    one.add("tripped", tripped);
    JsonArray mended = new JsonArray();
    wall.mended().forEach(finding -> mended.add(finding(finding)));
    one.add("mended", mended);
    one.addProperty("standing", wall.standing());
    return one;
  }

  private static JsonObject change(int at, WallReview wall, UnitSystem units) {
    Change change = wall.changes().get(at);
    JsonObject one = new JsonObject();
    one.addProperty("number", at + 1);
    one.addProperty("how", change.how().name().toLowerCase(Locale.ROOT));
    one.addProperty("topic", change.topic().word());
    one.addProperty("words", wall.words(at, units));
    JsonArray facts = new JsonArray();
    for (Change.Step step : change.steps()) {
      JsonObject fact = new JsonObject();
      fact.addProperty("subject", step.fact().subject().toString());
      fact.addProperty("property", step.fact().property());
      step.before().ifPresent(value -> fact.addProperty("before", said(value, units)));
      step.after().ifPresent(value -> fact.addProperty("after", said(value, units)));
      facts.add(fact);
    }
    one.add("facts", facts);
    return one;
  }

  private static String said(Value value, UnitSystem units) {
    return value.exactly(units);
  }

  private static JsonArray by(List<Integer> causes) {
    JsonArray numbers = new JsonArray();
    causes.forEach(at -> numbers.add(at + 1));
    return numbers;
  }

  private static JsonObject piece(PieceChange piece) {
    JsonObject one = new JsonObject();
    one.addProperty("state", piece.what().name().toLowerCase(Locale.ROOT));
    one.addProperty("kind", ReviewEffects.noun(piece.key().kind(), piece.key().more()));
    one.addProperty("piece", piece.state().name());
    state(piece.before()).ifPresent(state -> one.add("before", state));
    state(piece.after()).ifPresent(state -> one.add("after", state));
    one.add("by", by(piece.causes()));
    return one;
  }

  private static Optional<JsonObject> state(Optional<PieceState> state) {
    return state.map(
        piece -> {
          JsonObject one = new JsonObject();
          one.addProperty("mark", piece.mark());
          one.addProperty("part", piece.make().part());
          one.add("mm", Exact.millimetres(piece.make().length()));
          piece.make().height().ifPresent(h -> one.add("heightMm", Exact.millimetres(h)));
          JsonArray fixed = new JsonArray();
          for (PieceState.Station station : piece.make().fixed()) {
            JsonObject at = new JsonObject();
            at.add("mm", Exact.millimetres(station.at()));
            at.addProperty("what", station.what());
            fixed.add(at);
          }
          one.add("fixed", fixed);
          return one;
        });
  }

  private static JsonObject goods(GoodsChange change) {
    JsonObject one = new JsonObject();
    one.addProperty("group", change.item().group().name().toLowerCase(Locale.ROOT));
    one.addProperty("kind", change.item().kind());
    one.addProperty("name", change.item().name());
    one.add("before", amount(change, change.before()));
    one.add("after", amount(change, change.after()));
    return one;
  }

  private static JsonObject amount(GoodsChange change, Goods.Amount amount) {
    JsonObject one = new JsonObject();
    one.addProperty("count", amount.count());
    if (change.byLength()) {
      one.addProperty("m", decimal(amount.metres().toDecimal(9, java.math.RoundingMode.HALF_UP)));
    }
    if (change.byArea()) {
      one.addProperty(
          "m2", decimal(amount.squareMetres().toDecimal(9, java.math.RoundingMode.HALF_UP)));
    }
    return one;
  }

  private static BigDecimal decimal(BigDecimal number) {
    return number.signum() == 0
        ? BigDecimal.ZERO
        : new BigDecimal(number.stripTrailingZeros().toPlainString());
  }

  private static JsonObject reaction(ReactionChange reaction) {
    JsonObject one = new JsonObject();
    one.addProperty("anchor", reaction.anchor());
    one.addProperty("direction", reaction.direction());
    one.addProperty("beforeN", reaction.before());
    one.addProperty("afterN", reaction.after());
    one.add("by", by(reaction.causes()));
    return one;
  }

  private static JsonObject finding(FindingChange change) {
    Finding finding = change.finding();
    JsonObject one = new JsonObject();
    one.addProperty("rule", finding.rule());
    one.addProperty("severity", finding.severity().name().toLowerCase(Locale.ROOT));
    one.addProperty("piece", finding.piece());
    one.addProperty("what", finding.what());
    one.addProperty("mend", finding.mend());
    one.add("by", by(change.causes()));
    return one;
  }
}
