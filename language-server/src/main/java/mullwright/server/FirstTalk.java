package mullwright.server;

import com.google.gson.Gson;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.DataInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import mullwright.check.Rule;
import mullwright.check.RulePage;
import mullwright.check.Rules;

/**
 * What an editor says to a server in its first minutes: walls of every kind opened, the usual
 * questions asked. The classes that the server needs for it are those an archive should hold.
 */
public final class FirstTalk {
  /** A wall without a mistake, and the catalog it uses. */
  private static final String SOUND = "ferry-terminal/east.wall";

  private static final List<String> FIRST = List.of("catalog/captured.wall", SOUND);

  private static final List<String> QUESTIONS =
      List.of(
          "hover",
          "completion",
          "definition",
          "documentHighlight",
          "references",
          "documentSymbol",
          "documentLink",
          "foldingRange",
          "inlayHint",
          "codeAction",
          "semanticTokens/full");

  /** Asked of one wall only: what is rarer, or needs few classes of its own. */
  private static final List<String> RARER =
      List.of(
          "typeDefinition",
          "implementation",
          "prepareRename",
          "rename",
          "prepareCallHierarchy",
          "prepareTypeHierarchy",
          "selectionRange",
          "signatureHelp",
          "documentColor",
          "formatting",
          "rangeFormatting",
          "onTypeFormatting",
          "semanticTokens/range",
          "semanticTokens/full/delta",
          "diagnostic");

  /** What most editors can take. */
  private static final String EDITOR =
      """
      {
        "textDocument": {
          "hover": {"contentFormat": ["markdown"]},
          "completion": {"completionItem": {"snippetSupport": true}},
          "codeAction": {
            "codeActionLiteralSupport": {}, "dataSupport": true, "isPreferredSupport": true,
            "resolveSupport": {"properties": ["edit"]}
          },
          "inlayHint": {"resolveSupport": {"properties": ["tooltip", "label.location"]}},
          "publishDiagnostics": {
            "relatedInformation": true, "codeDescriptionSupport": true, "dataSupport": true
          },
          "definition": {"linkSupport": true},
          "rename": {"prepareSupport": true}
        },
        "workspace": {
          "workspaceEdit": {"documentChanges": true},
          "configuration": true,
          "didChangeConfiguration": {"dynamicRegistration": true},
          "didChangeWatchedFiles": {"dynamicRegistration": true, "relativePatternSupport": true}
        }
      }
      """;

  private final DataInputStream from;
  private final OutputStream to;
  private final Gson gson = new Gson();
  private int asked;

  private FirstTalk(InputStream from, OutputStream to) {
    this.from = new DataInputStream(from);
    this.to = to;
  }

  /** Writes the walls to talk of: one that is sound, and for each rule the one that trips it. */
  public static void walls(Path folder) throws IOException {
    for (String wall : FIRST) {
      Files.createDirectories(folder.resolve(wall).getParent());
      try (InputStream text = FirstTalk.class.getResourceAsStream("first/" + wall)) {
        Files.copy(text, folder.resolve(wall));
      }
    }
    Files.writeString(folder.resolve("fixture.wall"), RulePage.fixture("fixture.wall"));
    for (Rule rule : Rules.find().all()) {
      String wall = rule.name() + "/trips.wall";
      Files.createDirectories(folder.resolve(rule.name()));
      Files.writeString(folder.resolve(wall), RulePage.fixture(wall));
    }
  }

  /**
   * Talks with a server about the walls of a folder, until it has said good-bye.
   *
   * @throws IOException if the server goes away before
   */
  public static void with(InputStream from, OutputStream to, Path folder) throws IOException {
    FirstTalk talk = new FirstTalk(from, to);
    talk.ask(
        "initialize",
        Map.of(
            "processId",
            ProcessHandle.current().pid(),
            "workspaceFolders",
            List.of(Map.of("uri", folder.toUri(), "name", "walls")),
            "capabilities",
            JsonParser.parseString(EDITOR)));
    talk.tell("initialized", Map.of());
    talk.open(folder.resolve(SOUND));
    List<String> walls = new ArrayList<>();
    walls.add(folder.resolve(SOUND).toUri().toString());
    for (Rule rule : Rules.find().all()) {
      Path wall = folder.resolve(rule.name()).resolve("trips.wall");
      walls.add(wall.toUri().toString());
      talk.open(wall);
    }
    for (String wall : walls) {
      for (String question : QUESTIONS) {
        talk.ask("textDocument/" + question, about(wall));
      }
      talk.tell("textDocument/didChange", blankLine(wall));
    }
    talk.rarer(walls.get(0));
    talk.ask("shutdown", Map.of());
    talk.tell("exit", Map.of());
  }

  private void rarer(String wall) throws IOException {
    for (String question : RARER) {
      ask("textDocument/" + question, about(wall));
    }
    resolve("textDocument/codeLens", wall, "codeLens/resolve");
    resolve("textDocument/inlayHint", wall, "inlayHint/resolve");
    resolve("textDocument/codeAction", wall, "codeAction/resolve");
    resolve("textDocument/completion", wall, "completionItem/resolve");
    ask("workspace/symbol", Map.of("query", "a"));
    ask("workspace/executeCommand", Map.of("command", "mullwright.loads"));
  }

  /** Asks for all, and then for more on the first of them. */
  private void resolve(String all, String wall, String first) throws IOException {
    JsonElement answer = ask(all, about(wall)).get("result");
    JsonElement list =
        answer != null && answer.isJsonObject() ? answer.getAsJsonObject().get("items") : answer;
    if (list != null && list.isJsonArray() && list.getAsJsonArray().size() > 0) {
      ask(first, list.getAsJsonArray().get(0));
    }
  }

  private void open(Path wall) throws IOException {
    tell(
        "textDocument/didOpen",
        Map.of(
            "textDocument",
            Map.of(
                "uri",
                wall.toUri(),
                "languageId",
                "wall",
                "version",
                1,
                "text",
                Files.readString(wall))));
  }

  // more than any one question asks for, the same for all
  private static Map<String, Object> about(String wall) {
    Map<String, Integer> start = Map.of("line", 3, "character", 4);
    Map<String, Integer> end = Map.of("line", 60, "character", 0);
    return Map.of(
        "textDocument", Map.of("uri", wall),
        "position", start,
        "positions", List.of(start),
        "range", Map.of("start", start, "end", end),
        "context", Map.of("includeDeclaration", true, "diagnostics", List.of()),
        "options", Map.of("tabSize", 2, "insertSpaces", true),
        "newName", "other",
        "previousResultId", "1",
        "ch", "\n");
  }

  private static Map<String, Object> blankLine(String wall) {
    Map<String, Integer> start = Map.of("line", 0, "character", 0);
    return Map.of(
        "textDocument",
        Map.of("uri", wall, "version", 2),
        "contentChanges",
        List.of(Map.of("range", Map.of("start", start, "end", start), "text", "\n")));
  }

  private void tell(String method, Map<String, ?> parameters) throws IOException {
    send(Map.of("jsonrpc", "2.0", "method", method, "params", parameters));
  }

  /** Asks, and waits for the answer. */
  private JsonObject ask(String method, Object parameters) throws IOException {
    int id = ++asked;
    send(Map.of("jsonrpc", "2.0", "id", id, "method", method, "params", parameters));
    while (true) {
      JsonObject heard = receive();
      if (!heard.has("method") && heard.has("id") && heard.get("id").getAsInt() == id) {
        return heard;
      }
    }
  }

  private void send(Map<String, ?> message) throws IOException {
    Map<String, Object> plain = new java.util.LinkedHashMap<>(message);
    byte[] body = gson.toJson(plain).getBytes(StandardCharsets.UTF_8);
    to.write(("Content-Length: " + body.length + "\r\n\r\n").getBytes(StandardCharsets.US_ASCII));
    to.write(body);
    to.flush();
  }

  private JsonObject receive() throws IOException {
    int length = 0;
    for (String line = line(); !line.isEmpty(); line = line()) {
      if (line.startsWith("Content-Length:")) {
        length = Integer.parseInt(line.substring("Content-Length:".length()).strip());
      }
    }
    byte[] body = new byte[length];
    from.readFully(body);
    return JsonParser.parseString(new String(body, StandardCharsets.UTF_8)).getAsJsonObject();
  }

  private String line() throws IOException {
    StringBuilder line = new StringBuilder();
    for (int read = from.readUnsignedByte(); read != '\n'; read = from.readUnsignedByte()) {
      line.append((char) read);
    }
    return line.toString().strip();
  }
}
