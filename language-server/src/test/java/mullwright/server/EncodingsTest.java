package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.Gson;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.google.gson.JsonPrimitive;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import mullwright.syntax.LineTable;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.jsonrpc.json.MessageJsonHandler;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Positions in the three encodings mean the same places: each answer is turned into offsets of the
 * text and held against the one in UTF-16. Letters of one to four bytes stand before all places.
 */
class EncodingsTest {
  private static final Gson GSON = new MessageJsonHandler(Map.of()).getGson();
  private static final String COMMENT = "/* 🏗 é 高 */ ";
  private static final String WALL = commented(WallTalk.WALL.text());

  /** Words to ask at; the cursor stands behind their first letter. */
  private static final List<String> PLACES =
      List.of("vertical   all", "L2  part", "angle-s", "rail bays", "lines A", "V1 rows", "all as");

  private static final List<String> METHODS =
      List.of(
          "textDocument/hover",
          "textDocument/completion",
          "textDocument/definition",
          "textDocument/typeDefinition",
          "textDocument/implementation",
          "textDocument/references",
          "textDocument/documentHighlight",
          "textDocument/prepareRename",
          "textDocument/rename",
          "textDocument/selectionRange",
          "textDocument/signatureHelp",
          "textDocument/prepareCallHierarchy",
          "textDocument/prepareTypeHierarchy",
          "textDocument/codeLens",
          "textDocument/codeAction",
          "textDocument/documentSymbol",
          "textDocument/documentLink",
          "textDocument/foldingRange",
          "textDocument/inlayHint",
          "textDocument/semanticTokens/full",
          "textDocument/semanticTokens/range");

  @TempDir static Path folder;

  private static String commented(String wall) {
    StringBuilder text = new StringBuilder();
    for (String line : wall.split("\n")) {
      String words = line.strip();
      boolean blank = words.isEmpty() || words.startsWith("/") || words.equals("}");
      text.append(blank ? line : line.replace(words, COMMENT + words)).append('\n');
    }
    return text.toString();
  }

  @BeforeEach
  void write() {
    Conversation.write(folder, SmallCatalog.PATH, SmallCatalog.TEXT);
  }

  @ParameterizedTest
  @ValueSource(strings = {"utf-8", "utf-32"})
  void everyFeatureMeansTheSamePlaces(String encoding) {
    Map<String, JsonElement> plain = answers("utf-16");
    Map<String, JsonElement> other = answers(encoding);
    assertThat(plain).hasSize(PLACES.size() * METHODS.size());
    plain.forEach(
        (question, answer) -> assertThat(other.get(question)).as(question).isEqualTo(answer));
  }

  @Test
  void theFixtureTellsTheEncodingsApart() {
    String line = COMMENT + "x";
    int units = line.length() - 1;
    assertThat(PositionEncoding.UTF8.columns(line, units)).isEqualTo(units + 5);
    assertThat(PositionEncoding.UTF32.columns(line, units)).isEqualTo(units - 1);
    long answered =
        answers("utf-8").values().stream()
            .filter(it -> !it.toString().matches("null|\\[\\]"))
            .count();
    assertThat(answered).isGreaterThan(PLACES.size() * METHODS.size() / 2);
  }

  /** Each action's edit, applied as a client would, gives the same text in every encoding. */
  @ParameterizedTest
  @ValueSource(strings = {"utf-8", "utf-16", "utf-32"})
  void actionsChangeTheSamePlaces(String encoding) {
    String text = WALL.replace("clip ", "clipp ");
    JsonObject client = AbleClient.json();
    client.add(
        "general", JsonParser.parseString("{\"positionEncodings\": [\"" + encoding + "\"]}"));
    Conversation talk = new Conversation("encodings-" + encoding);
    talk.greet(folder, AbleClient.capabilities(client));
    String address = Conversation.address(folder.resolve("walls/east.wall"));
    talk.open(address, text);
    Columns columns =
        new Columns(PositionEncoding.chosen(List.of(encoding)), LineTable.of(text), text);
    assertThat(changed(talk, columns, address, text.indexOf("clipp"), "Write clip"))
        .isEqualTo(text.replace("clipp", "clip"));
    int bay = text.indexOf("A..B") + 3;
    assertThat(changed(talk, columns, address, bay, "Move line B 1\" to the r"))
        .isEqualTo(text.replace("2 @ 5'-0\"", "5'-1\", 4'-11\""));
    assertThat(
            changed(
                talk,
                columns,
                address,
                text.indexOf("5'-0"),
                "Write all lengths of this file in milli"))
        .contains(COMMENT + "lines A..C  spaced 2 @ 1524 mm")
        .contains(COMMENT + "row   head  at 101.6 mm below L2");
    talk.close();
  }

  private static String changed(
      Conversation talk, Columns columns, String address, int at, String title) {
    Position position = columns.position(at);
    CodeActionContext context = new CodeActionContext(List.of());
    CodeAction offered =
        await(
                talk.server
                    .getTextDocumentService()
                    .codeAction(
                        new CodeActionParams(
                            new TextDocumentIdentifier(address),
                            new Range(position, position),
                            context)))
            .stream()
            .map(Either::getRight)
            .filter(it -> it.getTitle().startsWith(title))
            .findFirst()
            .orElseThrow(() -> new AssertionError(title));
    CodeAction picked = await(talk.server.getTextDocumentService().resolveCodeAction(offered));
    StringBuilder text = new StringBuilder(columns.text());
    picked.getEdit().getDocumentChanges().get(0).getLeft().getEdits().stream()
        .map(Either::getLeft)
        .sorted(Comparator.comparingInt(edit -> -columns.offset(edit.getRange().getStart())))
        .forEach(
            edit ->
                text.replace(
                    columns.offset(edit.getRange().getStart()),
                    columns.offset(edit.getRange().getEnd()),
                    edit.getNewText()));
    return text.toString();
  }

  private static Map<String, JsonElement> answers(String encoding) {
    JsonObject client = AbleClient.json();
    client.add(
        "general", JsonParser.parseString("{\"positionEncodings\": [\"" + encoding + "\"]}"));
    client.getAsJsonObject("textDocument").remove("diagnostic");
    ClientCapabilities capabilities = AbleClient.capabilities(client);
    Map<String, JsonElement> answers = new LinkedHashMap<>();
    Conversation talk = new Conversation("encodings-" + encoding);
    assertThat(talk.greet(folder, capabilities).getCapabilities().getPositionEncoding())
        .isEqualTo(encoding);
    String address = Conversation.address(folder.resolve("walls/east.wall"));
    talk.open(address, WALL);
    Columns columns = new Columns(encoding);
    for (String place : PLACES) {
      Position at = columns.position(WALL.indexOf(place) + 1);
      for (String method : METHODS) {
        Object answer =
            await(
                talk.endpoint
                    .request(method, parameters(address, at))
                    .orTimeout(Conversation.PATIENCE_SECONDS, TimeUnit.SECONDS)
                    .handle((told, refused) -> refused == null ? told : refused.getMessage()));
        JsonElement json = GSON.toJsonTree(answer);
        answers.put(
            method + " at " + place,
            method.contains("semanticTokens")
                ? columns.tokens(json)
                : columns.offsets(json, address));
      }
    }
    talk.close();
    return answers;
  }

  private static JsonObject parameters(String address, Position at) {
    JsonObject parameters = new JsonObject();
    JsonObject document = new JsonObject();
    document.addProperty("uri", address);
    parameters.add("textDocument", document);
    parameters.add("position", GSON.toJsonTree(at));
    JsonArray positions = new JsonArray();
    positions.add(GSON.toJsonTree(at));
    parameters.add("positions", positions);
    JsonObject range = new JsonObject();
    range.add("start", GSON.toJsonTree(at));
    range.add("end", GSON.toJsonTree(new Position(at.getLine() + 4, 1)));
    parameters.add("range", range);
    parameters.add(
        "context",
        JsonParser.parseString(
            "{\"includeDeclaration\": true, \"diagnostics\": [], \"triggerKind\": 1}"));
    parameters.addProperty("newName", "Other");
    return parameters;
  }

  /** Columns of a text in one encoding. */
  private record Columns(PositionEncoding encoding, LineTable lines, String text) {
    Columns(String word) {
      this(PositionEncoding.chosen(List.of(word)), LineTable.of(WALL), WALL);
    }

    int offset(Position position) {
      return lines.start(position.getLine()) + units(position.getLine(), position.getCharacter());
    }

    Position position(int offset) {
      int line = lines.line(offset);
      String words = text.substring(lines.start(line), lines.end(line));
      return new Position(line, encoding.columns(words, offset - lines.start(line)));
    }

    int units(int line, int column) {
      String words = text.substring(lines.start(line), lines.end(line));
      assertThat(column).isLessThanOrEqualTo(encoding.columns(words, words.length()));
      return encoding.units(words, column);
    }

    /** The answer with each position of the wall as an offset; those of other files as they are. */
    JsonElement offsets(JsonElement answer, String address) {
      if (answer.isJsonArray()) {
        JsonArray all = new JsonArray();
        answer.getAsJsonArray().forEach(it -> all.add(offsets(it, address)));
        return all;
      }
      if (!answer.isJsonObject()) {
        return answer;
      }
      JsonObject object = answer.getAsJsonObject();
      if (object.has("line") && object.has("character")) {
        int line = object.get("line").getAsInt();
        return new JsonPrimitive(line + "+" + units(line, object.get("character").getAsInt()));
      }
      JsonObject all = new JsonObject();
      boolean elsewhere =
          isElsewhere(object, "uri", address) || isElsewhere(object, "targetUri", address);
      object
          .entrySet()
          .forEach(
              it -> {
                boolean own = it.getKey().equals("originSelectionRange");
                boolean fold = it.getKey().endsWith("Character");
                JsonElement value = it.getValue();
                if (fold) {
                  String line = it.getKey().replace("Character", "Line");
                  value = new JsonPrimitive(units(object.get(line).getAsInt(), value.getAsInt()));
                } else if (own || !elsewhere) {
                  value = offsets(value, address);
                }
                all.add(it.getKey(), value);
              });
      return all;
    }

    private static boolean isElsewhere(JsonObject object, String field, String address) {
      if (object.has("textDocument")) {
        return isElsewhere(object.getAsJsonObject("textDocument"), field, address);
      }
      return object.has(field) && !object.get(field).getAsString().equals(address);
    }

    /** Tokens as line, first and last unit, type and modifiers. */
    JsonElement tokens(JsonElement answer) {
      JsonArray told = new JsonArray();
      JsonArray data = answer.getAsJsonObject().getAsJsonArray("data");
      int line = 0;
      int column = 0;
      for (int i = 0; i < data.size(); i += 5) {
        int lines = data.get(i).getAsInt();
        line += lines;
        column = data.get(i + 1).getAsInt() + (lines == 0 ? column : 0);
        int end = column + data.get(i + 2).getAsInt();
        told.add(
            line
                + ":"
                + units(line, column)
                + "-"
                + units(line, end)
                + " "
                + data.get(i + 3)
                + data.get(i + 4));
      }
      return told;
    }
  }
}
