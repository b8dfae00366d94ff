package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.GeneralClientCapabilities;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializeResult;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.SetTraceParams;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Beginning and end of a talk, and what a server says to a client that does not keep to them. */
class LifecycleTest {
  @TempDir Path folder;

  private final HoverParams anywhere =
      new HoverParams(new TextDocumentIdentifier("file:///nowhere.wall"), new Position(0, 0));

  @Test
  void refusesWhatComesBeforeInitialize() {
    Conversation talk = new Conversation("lifecycle");
    ResponseError error = refusal(talk.server.getTextDocumentService().hover(anywhere));
    assertThat(error.getCode()).isEqualTo(-32002); // LSP 3.17, ErrorCodes.ServerNotInitialized
    assertThat(error.getData()).isNull();
    talk.greet(folder, new ClientCapabilities());
    talk.close();
  }

  @Test
  void refusesASecondInitialize() {
    try (Conversation talk = Conversation.greeted("lifecycle", folder)) {
      assertThat(refusal(talk.server.initialize(new InitializeParams())).getCode())
          .isEqualTo(-32600); // JSON-RPC 2.0, invalid request
    }
  }

  @Test
  void answersAnUnknownMethodWithoutAStackTrace() {
    try (Conversation talk = Conversation.greeted("lifecycle", folder)) {
      ResponseError error =
          refusal(
              talk.server
                  .getTextDocumentService()
                  .moniker(
                      new org.eclipse.lsp4j.MonikerParams(
                          new TextDocumentIdentifier("file:///nowhere.wall"), new Position(0, 0))));
      assertThat(error.getCode()).isEqualTo(-32601); // JSON-RPC 2.0, method not found
      assertThat(error.getData()).isNull();
      assertThat(error.getMessage()).contains("textDocument/moniker").doesNotContain("\tat ");
    }
  }

  @Test
  void refusesWhatComesAfterShutdownAndExitsWithZero() {
    Conversation talk = Conversation.greeted("lifecycle", folder);
    await(talk.server.shutdown());
    assertThat(refusal(talk.server.getTextDocumentService().hover(anywhere)).getCode())
        .isEqualTo(-32600); // LSP 3.17, shutdown: "InvalidRequest"
    talk.server.exit();
    assertThat(await(talk.exitCode)).isZero();
  }

  @Test
  void exitsWithOneIfNotShutDown() {
    Conversation talk = Conversation.greeted("lifecycle", folder);
    talk.server.exit();
    assertThat(await(talk.exitCode)).isEqualTo(1); // LSP 3.17, exit
  }

  @Test
  void endsWhenTheInputEnds() throws IOException {
    Conversation talk = Conversation.greeted("lifecycle", folder);
    talk.raw.close();
    assertThat(await(talk.exitCode)).isEqualTo(1);
  }

  @Test
  void endsWithTheProcessThatStartedIt() throws IOException {
    Process parent = new ProcessBuilder("sleep", "600").start();
    Conversation talk = new Conversation("lifecycle");
    InitializeParams parameters = new InitializeParams();
    parameters.setCapabilities(new ClientCapabilities());
    parameters.setProcessId((int) parent.pid());
    await(talk.server.initialize(parameters));
    talk.server.initialized(new org.eclipse.lsp4j.InitializedParams());
    await(talk.server.getTextDocumentService().hover(anywhere));
    assertThat(talk.exitCode).isNotDone();
    parent.destroy();
    assertThat(await(talk.exitCode)).isEqualTo(1);
  }

  @Test
  void readsOnAfterMalformedJson() throws IOException {
    try (Conversation talk = Conversation.greeted("lifecycle", folder)) {
      byte[] nonsense = "{\"jsonrpc\":\"2.0\",\"id\":".getBytes(StandardCharsets.UTF_8);
      talk.raw.write(
          ("Content-Length: " + nonsense.length + "\r\n\r\n").getBytes(StandardCharsets.UTF_8));
      talk.raw.write(nonsense);
      talk.raw.flush();
      talk.server.setTrace(new SetTraceParams("off"));
      assertThat(await(talk.server.getTextDocumentService().hover(anywhere))).isNull();
    }
  }

  @Test
  void namesTheFieldThatIsMissing() {
    try (Conversation talk = Conversation.greeted("lifecycle", folder)) {
      ResponseError error = refusal(talk.server.getTextDocumentService().hover(new HoverParams()));
      assertThat(error.getCode()).isEqualTo(-32602); // JSON-RPC 2.0, invalid params
      assertThat(error.getMessage()).contains("textDocument");
      assertThat(error.getData()).isNull();
    }
  }

  @ParameterizedTest
  @CsvSource({"utf-8, utf-8", "'utf-32,utf-16', utf-32", "'utf-7,utf-16', utf-16", "utf-7, utf-16"})
  void takesTheFirstPositionEncodingItKnows(String offered, String chosen) {
    ClientCapabilities capabilities = new ClientCapabilities();
    GeneralClientCapabilities general = new GeneralClientCapabilities();
    general.setPositionEncodings(java.util.List.of(offered.split(",")));
    capabilities.setGeneral(general);
    Conversation talk = new Conversation("lifecycle");
    InitializeResult result = talk.greet(folder, capabilities);
    assertThat(result.getCapabilities().getPositionEncoding()).isEqualTo(chosen);
    talk.close();
  }

  private static ResponseError refusal(CompletableFuture<?> answer) {
    CompletionException thrown =
        org.assertj.core.api.Assertions.catchThrowableOfType(
            CompletionException.class, () -> await(answer));
    assertThat(thrown).isNotNull();
    return ((ResponseErrorException) thrown.getCause()).getResponseError();
  }
}
