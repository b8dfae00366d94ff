package mullwright.report;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.util.List;
import java.util.Locale;
import mullwright.quantity.Length;

/**
 * Writes a document for programs, as the published schema {@code document.schema.json} beside this
 * class says. A length is its exact millimetres and its printed text; rows are objects by column.
 */
public final class DocumentJson implements DocumentWriter {
  private static final int VERSION = 1;
  private static final Gson GSON =
      new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().serializeNulls().create();

  @Override
  public String write(Document document) {
    JsonObject all = new JsonObject();
    all.addProperty("format", "mullwright-" + document.name());
    all.addProperty("version", VERSION);
    all.addProperty("title", document.title());
    all.addProperty("caution", Caution.WORDS);
    JsonArray sections = new JsonArray();
    for (Document.Section section : document.sections()) {
      JsonObject one = new JsonObject();
      one.addProperty("file", section.file());
      one.addProperty("wall", section.wall());
      JsonArray warnings = new JsonArray();
      section.warnings().forEach(warnings::add);
      one.add("warnings", warnings);
      JsonArray tables = new JsonArray();
      section.tables().forEach(table -> tables.add(table(table)));
      one.add("tables", tables);
      sections.add(one);
    }
    all.add("sections", sections);
    return GSON.toJson(all) + "\n";
  }

  private static JsonObject table(Table table) {
    JsonObject one = new JsonObject();
    one.addProperty("name", table.name());
    one.addProperty("title", table.title());
    JsonArray columns = new JsonArray();
    for (Column column : table.columns()) {
      JsonObject declared = new JsonObject();
      declared.addProperty("name", column.name());
      declared.addProperty("heading", column.heading());
      declared.addProperty("kind", column.kind().name().toLowerCase(Locale.ROOT));
      if (column.unit() != null) {
        declared.addProperty("unit", column.unit().symbol());
      }
      columns.add(declared);
    }
    one.add("columns", columns);
    JsonArray rows = new JsonArray();
    table.rows().forEach(row -> rows.add(row(row, table.columns())));
    one.add("rows", rows);
    if (!table.totals().isEmpty()) {
      one.add("totals", row(table.totals(), table.columns()));
    }
    return one;
  }

  private static JsonObject row(List<Entry> cells, List<Column> columns) {
    JsonObject row = new JsonObject();
    for (int at = 0; at < cells.size(); at++) {
      row.add(columns.get(at).name(), cell(cells.get(at), columns.get(at)));
    }
    return row;
  }

  private static JsonElement cell(Entry cell, Column column) {
    if (cell instanceof Entry.Text text) {
      return new JsonPrimitive(text.text());
    }
    if (cell instanceof Entry.Names names) {
      JsonArray all = new JsonArray();
      names.names().forEach(all::add);
      return all;
    }
    if (cell instanceof Entry.Phrases phrases) {
      JsonArray all = new JsonArray();
      phrases.phrases().forEach(all::add);
      return all;
    }
    if (cell instanceof Entry.Count count) {
      return new JsonPrimitive(count.count());
    }
    if (cell instanceof Entry.Size size) {
      return length(size.length(), column);
    }
    if (cell instanceof Entry.Rectangle size) {
      JsonObject both = new JsonObject();
      both.add("width", length(size.width(), column));
      both.add("height", length(size.height(), column));
      return both;
    }
    if (cell instanceof Entry.Amount amount) {
      JsonObject told = new JsonObject();
      told.addProperty("si", amount.quantity().toSi());
      told.addProperty("printed", Printed.amount(amount, column.unit()));
      return told;
    }
    return JsonNull.INSTANCE;
  }

  private static JsonObject length(Length length, Column column) {
    JsonObject told = new JsonObject();
    told.add("mm", Exact.millimetres(length));
    told.addProperty("printed", column.format().print(length));
    return told;
  }
}
