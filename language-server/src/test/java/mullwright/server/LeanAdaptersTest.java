package mullwright.server;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.eclipse.lsp4j.AnnotatedTextEdit;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DiagnosticCodeDescription;
import org.eclipse.lsp4j.DiagnosticRelatedInformation;
import org.eclipse.lsp4j.DiagnosticSeverity;
import org.eclipse.lsp4j.DiagnosticTag;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.MarkupContent;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextDocumentEdit;
import org.eclipse.lsp4j.TextDocumentItem;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.VersionedTextDocumentIdentifier;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.jsonrpc.json.JsonRpcMethod;
import org.eclipse.lsp4j.jsonrpc.json.MessageJsonHandler;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.jsonrpc.messages.NotificationMessage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Hand-written JSON is the JSON that LSP4J's own adapters write and read. */
class LeanAdaptersTest {
  private static final String OPEN = "textDocument/didOpen";
  private static final Map<String, JsonRpcMethod> METHODS =
      Map.of(OPEN, JsonRpcMethod.notification(OPEN, DidOpenTextDocumentParams.class));
  private static final MessageJsonHandler LEAN =
      new MessageJsonHandler(METHODS, LeanAdapters::register);
  private static final MessageJsonHandler USUAL =
      new MessageJsonHandler(METHODS, gson -> gson.disableHtmlEscaping());

  @Test
  void publishedDiagnosticsAreWrittenAlike() {
    SplittableRandom random = new SplittableRandom(5);
    for (int run = 0; run < 400; run++) {
      List<Diagnostic> diagnostics = new ArrayList<>();
      for (int i = random.nextInt(4); i > 0; i--) {
        diagnostics.add(diagnostic(random));
      }
      PublishDiagnosticsParams published =
          new PublishDiagnosticsParams("file:///w/a%20b.wall", diagnostics);
      if (random.nextBoolean()) {
        published.setVersion(random.nextInt(9));
      }
      NotificationMessage message = new NotificationMessage();
      message.setMethod("textDocument/publishDiagnostics");
      message.setParams(published);
      assertThat(LEAN.serialize(message)).isEqualTo(USUAL.serialize(message));
    }
  }

  @Test
  void anEditKeepsItsAnnotation() {
    Range range = new Range(new Position(1, 2), new Position(1, 5));
    WorkspaceEdit edit =
        new WorkspaceEdit(
            List.of(
                Either.forLeft(
                    new TextDocumentEdit(
                        new VersionedTextDocumentIdentifier("file:///w/a.wall", 3),
                        List.of(
                            Either.forLeft(new AnnotatedTextEdit(range, "x", "change-1")),
                            Either.forLeft(new TextEdit(range, "y")))))));
    JsonObject json = LEAN.getGson().toJsonTree(edit).getAsJsonObject();
    assertThat(json.getAsJsonArray("documentChanges").get(0).getAsJsonObject().get("edits"))
        .isEqualTo(
            JsonParser.parseString(
                """
                [{"range": {"start": {"line": 1, "character": 2},
                            "end": {"line": 1, "character": 5}},
                  "newText": "x", "annotationId": "change-1"},
                 {"range": {"start": {"line": 1, "character": 2},
                            "end": {"line": 1, "character": 5}}, "newText": "y"}]
                """));
  }

  @Test
  void aDiagnosticThatComesBackIsReadAlike() {
    SplittableRandom random = new SplittableRandom(6);
    for (int run = 0; run < 200; run++) {
      String json = USUAL.getGson().toJson(diagnostic(random));
      assertThat(LEAN.getGson().fromJson(json, Diagnostic.class))
          .isEqualTo(USUAL.getGson().fromJson(json, Diagnostic.class));
    }
  }

  @Test
  void anOpenedDocumentIsReadAlike() {
    DidOpenTextDocumentParams opened =
        new DidOpenTextDocumentParams(
            new TextDocumentItem("file:///a.wall", "wall", 3, "wall A { // \"½\"\n}\n\u0007<&>"));
    NotificationMessage message = new NotificationMessage();
    message.setMethod(OPEN);
    message.setParams(opened);
    assertThat(LEAN.parseMessage(USUAL.serialize(message))).isEqualTo(message);
    assertThat(LEAN.serialize(message)).isEqualTo(USUAL.serialize(message));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{}",
        "{'textDocument':null}",
        "{'textDocument':{}}",
        "{'textDocument':{'uri':null,'version':7,'text':''},'more':[1,{'a':2}]}",
        "{'textDocument':{'text':'t','further':{'b':[]},'uri':'u','languageId':'wall'}}"
      })
  void whatIsMissingOrUnknownIsReadAlike(String parameters) {
    String message = open(parameters);
    assertThat(LEAN.parseMessage(message)).isEqualTo(USUAL.parseMessage(message));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{'textDocument':[]}",
        "{'textDocument':{'text':{}}}",
        "{'textDocument':{'version':'x'}}",
        "[1,2]"
      })
  void whatIsOfAnotherKindIsRefusedAlike(String parameters) {
    String message = open(parameters);
    assertThatThrownBy(() -> USUAL.parseMessage(message)).isInstanceOf(Exception.class);
    assertThatThrownBy(() -> LEAN.parseMessage(message)).isInstanceOf(Exception.class);
  }

  private static String open(String parameters) {
    JsonObject message = new JsonObject();
    message.addProperty("jsonrpc", "2.0");
    message.addProperty("method", OPEN);
    try {
      message.add("params", JsonParser.parseString(parameters));
    } catch (JsonParseException unreadable) {
      throw new IllegalArgumentException(parameters, unreadable);
    }
    return message.toString();
  }

  private static Diagnostic diagnostic(SplittableRandom random) {
    Diagnostic diagnostic = new Diagnostic(range(random), "5'-6 1/2\" <on> & “off”\n½");
    if (random.nextInt(8) == 0) {
      diagnostic.setMessage(new MarkupContent("markdown", "*x*"));
    }
    if (random.nextBoolean()) {
      diagnostic.setSeverity(DiagnosticSeverity.forValue(1 + random.nextInt(4)));
    }
    if (random.nextBoolean()) {
      diagnostic.setSource("mullwright");
    }
    switch (random.nextInt(4)) {
      case 0 -> diagnostic.setCode(random.nextInt(99));
      case 1 -> {
        // has none
      }
      default -> diagnostic.setCode("anchor-missing");
    }
    if (random.nextBoolean()) {
      diagnostic.setCodeDescription(new DiagnosticCodeDescription("mullwright:/rule/x.md"));
    }
    if (random.nextBoolean()) {
      diagnostic.setTags(random.nextBoolean() ? List.of() : List.of(DiagnosticTag.Unnecessary));
    }
    if (random.nextBoolean()) {
      diagnostic.setRelatedInformation(
          List.of(
              new DiagnosticRelatedInformation(
                  new Location("file:///w/c.wall", range(random)), "the other")));
    }
    if (random.nextBoolean()) {
      JsonObject data = new JsonObject();
      data.addProperty("mends", random.nextInt(5));
      diagnostic.setData(data);
    }
    return diagnostic;
  }

  private static Range range(SplittableRandom random) {
    return new Range(
        new Position(random.nextInt(50), random.nextInt(80)),
        new Position(random.nextInt(50), random.nextInt(80)));
  }
}
