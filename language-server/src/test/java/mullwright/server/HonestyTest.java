package mullwright.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.Gson;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.CompletionException;
import java.util.concurrent.TimeUnit;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.InitializeResult;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.json.MessageJsonHandler;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is advertised is really called and answered, and nothing is answered in secret. */
class HonestyTest {
  private static final Gson GSON = new MessageJsonHandler(Map.of()).getGson();

  /** Which methods each capability promises; those in brackets only if it says so itself. */
  private static final Map<String, String> PROMISES =
      Map.ofEntries(
          Map.entry("hoverProvider", "textDocument/hover"),
          Map.entry("completionProvider", "textDocument/completion completionItem/resolve?"),
          Map.entry("signatureHelpProvider", "textDocument/signatureHelp"),
          Map.entry("declarationProvider", "textDocument/declaration"),
          Map.entry("definitionProvider", "textDocument/definition"),
          Map.entry("typeDefinitionProvider", "textDocument/typeDefinition"),
          Map.entry("implementationProvider", "textDocument/implementation"),
          Map.entry("referencesProvider", "textDocument/references"),
          Map.entry("documentHighlightProvider", "textDocument/documentHighlight"),
          Map.entry("documentSymbolProvider", "textDocument/documentSymbol"),
          Map.entry("codeActionProvider", "textDocument/codeAction codeAction/resolve?"),
          Map.entry("codeLensProvider", "textDocument/codeLens codeLens/resolve?"),
          Map.entry("documentLinkProvider", "textDocument/documentLink documentLink/resolve?"),
          Map.entry("colorProvider", "textDocument/documentColor textDocument/colorPresentation"),
          Map.entry("documentFormattingProvider", "textDocument/formatting"),
          Map.entry(
              "documentRangeFormattingProvider",
              "textDocument/rangeFormatting textDocument/rangesFormatting?"),
          Map.entry("documentOnTypeFormattingProvider", "textDocument/onTypeFormatting"),
          Map.entry("renameProvider", "textDocument/rename textDocument/prepareRename?"),
          Map.entry("foldingRangeProvider", "textDocument/foldingRange"),
          Map.entry("selectionRangeProvider", "textDocument/selectionRange"),
          Map.entry("linkedEditingRangeProvider", "textDocument/linkedEditingRange"),
          Map.entry(
              "callHierarchyProvider",
              "textDocument/prepareCallHierarchy callHierarchy/incomingCalls"
                  + " callHierarchy/outgoingCalls"),
          Map.entry(
              "typeHierarchyProvider",
              "textDocument/prepareTypeHierarchy typeHierarchy/supertypes"
                  + " typeHierarchy/subtypes"),
          Map.entry(
              "semanticTokensProvider",
              "textDocument/semanticTokens/full textDocument/semanticTokens/full/delta"
                  + " textDocument/semanticTokens/range"),
          Map.entry("inlayHintProvider", "textDocument/inlayHint inlayHint/resolve?"),
          Map.entry("diagnosticProvider", "textDocument/diagnostic workspace/diagnostic?"),
          Map.entry("workspaceSymbolProvider", "workspace/symbol workspaceSymbol/resolve?"),
          Map.entry("executeCommandProvider", "workspace/executeCommand"),
          Map.entry("workspace.textDocumentContent", "workspace/textDocumentContent"),
          Map.entry("workspace.fileOperations.willRename", "workspace/willRenameFiles"),
          Map.entry("workspace.fileOperations.willCreate", "workspace/willCreateFiles"),
          Map.entry("workspace.fileOperations.willDelete", "workspace/willDeleteFiles"),
          Map.entry("workspace.fileOperations.didRename", ""),
          Map.entry("workspace.fileOperations.didCreate", ""),
          Map.entry("workspace.fileOperations.didDelete", ""),
          Map.entry("workspace.workspaceFolders", ""),
          Map.entry("textDocumentSync", ""),
          Map.entry("positionEncoding", ""));

  /** What says of a method with a question mark that it is there. */
  private static final Map<String, String> SAID_BY =
      Map.of(
          "textDocument/rangesFormatting", "rangesSupport",
          "textDocument/prepareRename", "prepareProvider",
          "workspace/diagnostic", "workspaceDiagnostics");

  /** More than any one method asks for. */
  private static final String PARAMETERS =
      """
      {
        "textDocument": {"uri": "ADDRESS"},
        "uri": "ADDRESS",
        "position": {"line": 3, "character": 12},
        "positions": [{"line": 3, "character": 12}],
        "range": {"start": {"line": 0, "character": 0}, "end": {"line": 9, "character": 0}},
        "ranges": [{"start": {"line": 0, "character": 0}, "end": {"line": 9, "character": 0}}],
        "context": {"includeDeclaration": true, "diagnostics": [], "triggerKind": 1},
        "options": {"tabSize": 2, "insertSpaces": true},
        "color": {"red": 1, "green": 0, "blue": 0, "alpha": 1},
        "item": {
          "name": "x", "kind": 5, "uri": "ADDRESS",
          "range": {"start": {"line": 0, "character": 0}, "end": {"line": 9, "character": 0}},
          "selectionRange": {"start": {"line": 0, "character": 0}, "end": {"line": 0, "character": 1}}
        },
        "query": "a", "newName": "other", "previousResultId": "1", "ch": "\\n",
        "label": "x", "title": "x", "name": "x",
        "command": "mullwright.loads", "arguments": [],
        "files": [], "previousResultIds": []
      }
      """;

  private static final String WALL =
      """
      wall East {
        grid {
          lines A..C spaced 2 @ 5'
          floor L1 at 0'
          row   R1 at 3' above L1
        }
      }
      """;

  @TempDir Path folder;

  @Test
  void whatIsAdvertisedIsAnsweredAndWhatIsAnsweredIsAdvertised() {
    Conversation talk = new Conversation("honesty");
    InitializeResult greeting = talk.greet(folder, AbleClient.capabilities());
    JsonObject advertised = GSON.toJsonTree(greeting.getCapabilities()).getAsJsonObject();
    Set<String> promised = new TreeSet<>();
    advertised.entrySet().forEach(entry -> promised(entry.getKey(), entry.getValue(), promised));
    Set<String> answered = new TreeSet<>();
    Features.all().forEach(it -> it.routes().forEach(route -> answered.add(route.method())));
    assertThat(promised).isEqualTo(answered);
    call(talk, promised);
    talk.close();
  }

  @Test
  void aClientThatCanDoNothingIsAnsweredEverythingToo() {
    Conversation talk = new Conversation("honesty");
    talk.greet(folder, new ClientCapabilities());
    Set<String> answered = new TreeSet<>();
    Features.all().forEach(it -> it.routes().forEach(route -> answered.add(route.method())));
    call(talk, answered);
    talk.close();
  }

  private static void promised(String key, JsonElement value, Set<String> methods) {
    boolean no = value.isJsonPrimitive() && !value.getAsString().equals("true");
    if (value.isJsonObject() && !PROMISES.containsKey(key)) {
      value
          .getAsJsonObject()
          .entrySet()
          .forEach(entry -> promised(key + "." + entry.getKey(), entry.getValue(), methods));
      return;
    }
    assertThat(PROMISES).as("what this capability promises is known").containsKey(key);
    for (String method : PROMISES.get(key).split(" ")) {
      String name = method.replace("?", "");
      boolean optional = !name.equals(method);
      if (!name.isEmpty() && !no && (!optional || says(value, name))) {
        methods.add(name);
      }
    }
  }

  private static boolean says(JsonElement value, String method) {
    String by = SAID_BY.getOrDefault(method, "resolveProvider");
    return value.isJsonObject()
        && value.getAsJsonObject().has(by)
        && value.getAsJsonObject().get(by).getAsBoolean();
  }

  private void call(Conversation talk, Set<String> methods) {
    String address = Conversation.address(folder.resolve("east.wall"));
    talk.open(address, WALL);
    JsonElement parameters = JsonParser.parseString(PARAMETERS.replace("ADDRESS", address));
    for (String method : methods) {
      JsonObject sent = parameters.deepCopy().getAsJsonObject();
      if (!method.equals("workspace/executeCommand")) {
        // elsewhere a command is an object
        sent.remove("command");
      }
      try {
        talk.endpoint
            .request(method, sent)
            .orTimeout(Conversation.PATIENCE_SECONDS, TimeUnit.SECONDS)
            .join();
      } catch (CompletionException refused) {
        // a refusal in words is an answer; a fault of the server is none
        assertThat(refused.getCause()).as(method).isInstanceOf(ResponseErrorException.class);
        assertThat(((ResponseErrorException) refused.getCause()).getResponseError().getCode())
            .as(method + ": " + refused.getMessage())
            .isIn(
                ResponseErrorCode.RequestFailed.getValue(),
                ResponseErrorCode.InvalidParams.getValue());
      }
    }
  }
}
