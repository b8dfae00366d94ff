package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.Gson;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import mullwright.syntax.LineTable;
import org.eclipse.lsp4j.ChangeAnnotation;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.jsonrpc.json.MessageJsonHandler;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A talk with a client that can do all that code actions, hints and files of the server need. */
abstract class ProtocolTalk {
  private static final Gson GSON = new MessageJsonHandler(Map.of()).getGson();
  private static final String MORE =
      """
      {
        "textDocument": {
          "codeAction": {
            "codeActionLiteralSupport": {"codeActionKind": {"valueSet": [""]}},
            "isPreferredSupport": true, "disabledSupport": true, "dataSupport": true,
            "resolveSupport": {"properties": ["edit"]}
          },
          "rangeFormatting": {"rangesSupport": true},
          "onTypeFormatting": {},
          "inlayHint": {"resolveSupport": {"properties": ["tooltip", "label.location", "label.tooltip"]}},
          "publishDiagnostics": {"relatedInformation": true}
        },
        "workspace": {
          "workspaceEdit": {
            "documentChanges": true, "resourceOperations": ["create"],
            "changeAnnotationSupport": {}
          },
          "textDocumentContent": {},
          "inlayHint": {"refreshSupport": true},
          "codeLens": {"refreshSupport": true},
          "fileOperations": {"willRename": true, "didRename": true}
        },
        "window": {"showDocument": {"support": true}, "workDoneProgress": true}
      }
      """;

  @TempDir Path folder;

  Conversation talk;

  @BeforeEach
  void greet() {
    Conversation.write(folder, SmallCatalog.PATH, SmallCatalog.TEXT);
    talk = Conversation.greeted(getClass().getSimpleName(), folder, capabilities());
  }

  @AfterEach
  void close() {
    assertThat(talk.heard.logged).isEmpty();
    talk.close();
  }

  ClientCapabilities capabilities() {
    return GSON.fromJson(json(), ClientCapabilities.class);
  }

  JsonObject json() {
    return JsonParser.parseString(MORE).getAsJsonObject();
  }

  static ClientCapabilities capabilities(JsonElement json) {
    return GSON.fromJson(json, ClientCapabilities.class);
  }

  /** Writes a file and opens it. */
  String open(String path, String text) {
    String address = Conversation.address(Conversation.write(folder, path, text));
    talk.open(address, text);
    return address;
  }

  /** The actions offered at some words of a text. */
  List<CodeAction> actions(String address, String text, String words, String... only) {
    int at = text.indexOf(words);
    assertThat(at).as(words).isNotNegative();
    Position position = position(text, at);
    CodeActionContext context = new CodeActionContext(List.of());
    context.setOnly(only.length == 0 ? null : List.of(only));
    return await(
            talk.server
                .getTextDocumentService()
                .codeAction(
                    new CodeActionParams(
                        new TextDocumentIdentifier(address),
                        new Range(position, position),
                        context)))
        .stream()
        .map(Either::getRight)
        .toList();
  }

  static CodeAction titled(List<CodeAction> actions, String title) {
    return actions.stream()
        .filter(action -> action.getTitle().startsWith(title))
        .findFirst()
        .orElseThrow(() -> new AssertionError(titles(actions).toString()));
  }

  static List<String> titles(List<CodeAction> actions) {
    return actions.stream().map(CodeAction::getTitle).toList();
  }

  /** The action with its edit. */
  CodeAction picked(CodeAction action) {
    assertThat(action.getEdit()).as("worked out when picked").isNull();
    return await(talk.server.getTextDocumentService().resolveCodeAction(action));
  }

  /** What becomes of the text of a file by an action's edit. */
  static String after(CodeAction action, String address, String text) {
    List<TextEdit> edits = new ArrayList<>();
    for (var change : action.getEdit().getDocumentChanges()) {
      if (change.isLeft() && change.getLeft().getTextDocument().getUri().equals(address)) {
        change.getLeft().getEdits().forEach(edit -> edits.add(edit.getLeft()));
      }
    }
    return WallTalk.apply(text, edits);
  }

  /** What the reader of an action's edit is told of it. */
  static ChangeAnnotation annotation(CodeAction action) {
    assertThat(action.getEdit().getChangeAnnotations()).hasSize(1);
    return action.getEdit().getChangeAnnotations().values().iterator().next();
  }

  static Position position(String text, int offset) {
    LineTable lines = LineTable.of(text);
    return new Position(lines.line(offset), lines.column(offset));
  }

  static Range whole() {
    return new Range(new Position(0, 0), new Position(9999, 0));
  }
}
