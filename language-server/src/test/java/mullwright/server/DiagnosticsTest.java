package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.Gson;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import mullwright.check.RulePage;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.InitializeResult;
import org.eclipse.lsp4j.PreviousResultId;
import org.eclipse.lsp4j.WorkspaceDiagnosticParams;
import org.eclipse.lsp4j.WorkspaceDiagnosticReport;
import org.eclipse.lsp4j.WorkspaceDocumentDiagnosticReport;
import org.eclipse.lsp4j.jsonrpc.json.MessageJsonHandler;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What diagnostics carry, and how a client fetches those of all files. */
class DiagnosticsTest {
  private static final Gson GSON = new MessageJsonHandler(Map.of()).getGson();

  @TempDir Path folder;
  @TempDir Path cache;

  @BeforeEach
  void keepTheUsersFolderOut() {
    System.setProperty("mullwright.cache", cache.toString());
  }

  @AfterEach
  void forget() {
    System.clearProperty("mullwright.cache");
  }

  private static ClientCapabilities client(String json) {
    return GSON.fromJson(json, ClientCapabilities.class);
  }

  private static ClientCapabilities puller() {
    return client(
        """
        {"textDocument": {"diagnostic": {}},
         "workspace": {"diagnostics": {"refreshSupport": true}}}
        """);
  }

  @Test
  @Timeout(60)
  void leadsToThePageOfTheRuleAndToEachPlaceThatHasAPartInIt() throws IOException {
    ClientCapabilities capabilities =
        client(
            """
            {"textDocument": {"publishDiagnostics": {
              "relatedInformation": true, "codeDescriptionSupport": true, "dataSupport": true}}}
            """);
    try (Conversation talk = Conversation.greeted("diagnostics", folder, capabilities)) {
      String east = Conversation.address(folder.resolve("east.wall"));
      talk.open(
          east, "wall East {\n  grid {\n    lines A..C spaced 2 @ 5'\n    line B at 7'\n  }\n}\n");
      Diagnostic twice =
          talk.heard.next(east).getDiagnostics().stream()
              .filter(it -> it.getCode().getLeft().equals("duplicate"))
              .findFirst()
              .orElseThrow();
      assertThat(twice.getRelatedInformation())
          .extracting(it -> it.getLocation().getRange().getStart().getLine())
          .contains(2);
      Path page = Path.of(URI.create(twice.getCodeDescription().getHref()));
      assertThat(page).startsWithRaw(cache);
      // the page is written beside the talk, and comes into its place whole
      while (!Files.exists(page)) {
        Thread.onSpinWait();
      }
      assertThat(Files.readString(page)).isEqualTo(RulePage.of("duplicate").withFixtures());
      JsonElement mends = ((JsonObject) twice.getData()).get("mends");
      assertThat(mends.getAsInt()).isZero();
    }
  }

  @Test
  void saysNothingOfPagesToAClientThatCannotFollow() {
    try (Conversation talk = Conversation.greeted("diagnostics", folder)) {
      String east = Conversation.address(folder.resolve("east.wall"));
      talk.open(east, "wall East {\n  gridd {\n  }\n}\n");
      assertThat(talk.heard.next(east).getDiagnostics())
          .isNotEmpty()
          .allMatch(it -> it.getCodeDescription() == null && it.getData() == null);
      assertThat(cache).isEmptyDirectory();
    }
  }

  @Test
  void tellsThoseOfAllFilesAndAfterwardsWhichAreTheSame() {
    Conversation.write(folder, "small.wall", "catalog {\n  isolation paint\n}\n");
    Conversation.write(
        folder, "a/east.wall", "use \"../small.wall\"\nwall East {\n  gridd {\n  }\n}\n");
    Conversation.write(folder, "a/west.wall", "wall West {\n}\n");
    Conversation talk = new Conversation("workspace-pull");
    InitializeResult greeting = talk.greet(folder, puller());
    assertThat(greeting.getCapabilities().getDiagnosticProvider().isWorkspaceDiagnostics())
        .isTrue();
    Map<String, String> ids = new TreeMap<>();
    Map<String, Integer> counts = new TreeMap<>();
    for (WorkspaceDocumentDiagnosticReport report : pull(talk, ids, null).getItems()) {
      var full = report.getWorkspaceFullDocumentDiagnosticReport();
      ids.put(full.getUri(), full.getResultId());
      counts.put(full.getUri(), full.getItems().size());
    }
    String east = Conversation.address(folder.resolve("a/east.wall"));
    String west = Conversation.address(folder.resolve("a/west.wall"));
    String small = Conversation.address(folder.resolve("small.wall"));
    assertThat(counts).containsOnlyKeys(east, west, small).containsEntry(small, 0);
    assertThat(counts.get(east)).isPositive();
    ids.put(Conversation.address(folder.resolve("gone.wall")), "x");
    talk.open(east, "use \"../small.wall\"\nwall East {\n}\n");
    Map<String, String> kinds = new TreeMap<>();
    for (WorkspaceDocumentDiagnosticReport report : pull(talk, ids, null).getItems()) {
      if (report.isWorkspaceFullDocumentDiagnosticReport()) {
        var full = report.getWorkspaceFullDocumentDiagnosticReport();
        kinds.put(full.getUri(), "full " + full.getVersion());
      } else {
        var same = report.getWorkspaceUnchangedDocumentDiagnosticReport();
        kinds.put(same.getUri(), "unchanged");
      }
    }
    assertThat(kinds)
        .containsEntry(east, "full 1")
        .containsEntry(west, "unchanged")
        .containsEntry(small, "unchanged")
        .containsEntry(Conversation.address(folder.resolve("gone.wall")), "full null");
    assertThat(talk.heard.diagnostics).isEmpty();
    talk.close();
  }

  @Test
  void tellsHowFarItIsAndStopsWhenTold() {
    for (int i = 0; i < 30; i++) {
      Conversation.write(folder, "w" + i + ".wall", "wall W" + i + " {\n  gridd {\n  }\n}\n");
    }
    try (Conversation talk = Conversation.greeted("workspace-pull", folder, puller())) {
      pull(talk, Map.of(), "far");
      List<String> kinds = new ArrayList<>();
      talk.heard.progress.forEach(
          it -> {
            assertThat(it.getToken().getLeft()).isEqualTo("far");
            kinds.add(it.getValue().getLeft().getKind().name());
          });
      assertThat(kinds).startsWith("begin").endsWith("end").contains("report");
      var answer = talk.server.getWorkspaceService().diagnostic(parameters(Map.of(), "stop"));
      talk.server.cancelProgress(
          new org.eclipse.lsp4j.WorkDoneProgressCancelParams(Either.forLeft("stop")));
      assertThat(await(answer).getItems().size()).isLessThanOrEqualTo(30);
    }
  }

  @Test
  void aHintThatNobodyWaitsForAnyMoreIsRefusedAsModified() {
    // LSP 3.17, ErrorCodes.ContentModified
    JsonObject refused = JsonParser.parseString("{\"code\":-32801}").getAsJsonObject();
    assertThat(Lapse.of("textDocument/inlayHint").refusal().getResponseError().getCode())
        .isEqualTo(refused.get("code").getAsInt());
    // LSP 3.17, DiagnosticServerCancellationData
    assertThat(Lapse.of("textDocument/diagnostic").refusal().getResponseError())
        .satisfies(
            it -> {
              assertThat(it.getCode()).isEqualTo(-32802);
              assertThat(it.getData().toString()).isEqualTo("{\"retriggerRequest\":true}");
            });
  }

  private static WorkspaceDiagnosticReport pull(
      Conversation talk, Map<String, String> ids, String token) {
    return await(talk.server.getWorkspaceService().diagnostic(parameters(ids, token)));
  }

  private static WorkspaceDiagnosticParams parameters(Map<String, String> ids, String token) {
    List<PreviousResultId> previous = new ArrayList<>();
    ids.forEach((uri, id) -> previous.add(new PreviousResultId(uri, id)));
    WorkspaceDiagnosticParams parameters = new WorkspaceDiagnosticParams(previous);
    if (token != null) {
      parameters.setWorkDoneToken(Either.forLeft(token));
    }
    return parameters;
  }
}
