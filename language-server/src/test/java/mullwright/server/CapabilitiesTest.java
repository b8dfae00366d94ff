package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.Gson;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.lang.reflect.Type;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.DiagnosticCapabilities;
import org.eclipse.lsp4j.DiagnosticWorkspaceCapabilities;
import org.eclipse.lsp4j.DidChangeWatchedFilesCapabilities;
import org.eclipse.lsp4j.DocumentDiagnosticParams;
import org.eclipse.lsp4j.DocumentDiagnosticReport;
import org.eclipse.lsp4j.InitializeResult;
import org.eclipse.lsp4j.InlayHintWorkspaceCapabilities;
import org.eclipse.lsp4j.TextDocumentClientCapabilities;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.WorkspaceClientCapabilities;
import org.eclipse.lsp4j.jsonrpc.json.JsonRpcMethod;
import org.eclipse.lsp4j.jsonrpc.json.MessageJsonHandler;
import org.eclipse.lsp4j.jsonrpc.services.ServiceEndpoints;
import org.eclipse.lsp4j.services.LanguageServer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is advertised is what is answered, in the protocol's own types. */
class CapabilitiesTest {
  private static final Map<String, JsonRpcMethod> PROTOCOL =
      ServiceEndpoints.getSupportedMethods(LanguageServer.class);

  @TempDir Path folder;

  @Test
  void everyMethodIsTheProtocolsWithTheProtocolsParameters() {
    for (Feature feature : Features.all()) {
      for (Route<?> route : feature.routes()) {
        assertThat(PROTOCOL).containsKey(route.method());
        Type[] parameters = PROTOCOL.get(route.method()).getParameterTypes();
        assertThat(parameters).as(route.method()).containsExactly(route.parameters());
      }
    }
  }

  @Test
  void theAnswerToInitializeReadsAsTheProtocolsTypeAndLosesNothing() {
    Gson gson = new MessageJsonHandler(Map.of()).getGson();
    JsonObject said = JsonParser.parseString("{\"capabilities\":{}}").getAsJsonObject();
    Session session =
        new Session(
            new Client(said),
            () -> new mullwright.check.Rules(List.of()),
            new Outgoing(),
            Optional::empty);
    JsonObject written = Capabilities.of(session, Features.all());
    InitializeResult read = gson.fromJson(written, InitializeResult.class);
    assertThat(gson.toJsonTree(read)).isEqualTo(written);
    assertThat(read.getCapabilities().getHoverProvider().getLeft()).isTrue();
    assertThat(read.getCapabilities().getDiagnosticProvider()).isNull();
  }

  @Test
  void everyFeatureAdvertisesSomethingToAClientThatCanDoAll() {
    JsonElement all =
        JsonParser.parseString(
            """
            {"capabilities": {
              "textDocument": {"diagnostic": {}, "codeAction": {"codeActionLiteralSupport": {}}},
              "workspace": {
                "diagnostics": {"refreshSupport": true},
                "fileOperations": {"willRename": true},
                "textDocumentContent": {}
              }
            }}
            """);
    for (Feature feature : Features.all()) {
      JsonObject server = new JsonObject();
      feature.advertise(new Client(all.getAsJsonObject()), server);
      assertThat(server.keySet()).as(feature.getClass().getSimpleName()).isNotEmpty();
    }
  }

  @Test
  void aClientThatPullsIsPushedNothingAndTellsUnchangedFromNew() {
    ClientCapabilities client = new ClientCapabilities();
    TextDocumentClientCapabilities text = new TextDocumentClientCapabilities();
    text.setDiagnostic(new DiagnosticCapabilities());
    client.setTextDocument(text);
    WorkspaceClientCapabilities workspace = new WorkspaceClientCapabilities();
    workspace.setDiagnostics(new DiagnosticWorkspaceCapabilities(true));
    workspace.setInlayHint(new InlayHintWorkspaceCapabilities(true));
    client.setWorkspace(workspace);
    Conversation talk = new Conversation("pull");
    InitializeResult greeting = talk.greet(folder, client);
    assertThat(greeting.getCapabilities().getDiagnosticProvider()).isNotNull();
    String east = Conversation.address(folder.resolve("east.wall"));
    String small = Conversation.address(folder.resolve("small.wall"));
    talk.open(small, "catalog {\n  system thin {\n  }\n}\n");
    talk.open(east, "use \"small.wall\"\nwall East {\n  system thin\n  gridd {\n  }\n}\n");
    DocumentDiagnosticReport first = pull(talk, east, null);
    assertThat(first.getLeft().getItems()).isNotEmpty();
    String id = first.getLeft().getResultId();
    assertThat(pull(talk, east, id).getRight().getResultId()).isEqualTo(id);
    talk.replace(east, "use \"small.wall\"\nwall East {\n  system thin\n}\n");
    assertThat(pull(talk, east, id).getLeft().getItems())
        .hasSizeLessThan(first.getLeft().getItems().size() + 1);
    talk.replace(small, "catalog {\n}\n");
    // the system is gone that the other file names, whichever state of that was looked at last
    assertThat(hear(talk)).isEqualTo("diagnostics");
    assertThat(talk.heard.diagnostics).isEmpty();
    talk.close();
  }

  private static DocumentDiagnosticReport pull(Conversation talk, String address, String id) {
    DocumentDiagnosticParams parameters =
        new DocumentDiagnosticParams(new TextDocumentIdentifier(address));
    parameters.setPreviousResultId(id);
    return await(talk.server.getTextDocumentService().diagnostic(parameters));
  }

  private static String hear(Conversation talk) {
    try {
      String heard = talk.heard.refreshes.poll(30, java.util.concurrent.TimeUnit.SECONDS);
      return heard == null ? "" : heard;
    } catch (InterruptedException stopped) {
      throw new AssertionError(stopped);
    }
  }

  @Test
  void asksToBeToldOfFilesThatChangeAndThenReadsThemAgain() {
    ClientCapabilities client = new ClientCapabilities();
    WorkspaceClientCapabilities workspace = new WorkspaceClientCapabilities();
    DidChangeWatchedFilesCapabilities watched = new DidChangeWatchedFilesCapabilities(true);
    workspace.setDidChangeWatchedFiles(watched);
    client.setWorkspace(workspace);
    try (Conversation talk = Conversation.greeted("watch", folder, client)) {
      String east = Conversation.address(folder.resolve("east.wall"));
      talk.open(east, "use \"small.wall\"\n");
      assertThat(talk.heard.next(east).getDiagnostics()).isNotEmpty();
      assertThat(talk.heard.registrations.remove().getRegistrations())
          .singleElement()
          .satisfies(it -> assertThat(it.getMethod()).isEqualTo("workspace/didChangeWatchedFiles"));
      Path small = Conversation.write(folder, "small.wall", "catalog {\n  isolation paint\n}\n");
      talk.server
          .getWorkspaceService()
          .didChangeWatchedFiles(
              new org.eclipse.lsp4j.DidChangeWatchedFilesParams(
                  List.of(
                      new org.eclipse.lsp4j.FileEvent(
                          Conversation.address(small), org.eclipse.lsp4j.FileChangeType.Created))));
      assertThat(talk.heard.next(east).getDiagnostics()).isEmpty();
    }
  }
}
