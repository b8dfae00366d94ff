package mullwright.server;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import mullwright.check.Rules;
import mullwright.server.kept.KeptFolder;
import org.eclipse.lsp4j.ApplyWorkspaceEditParams;
import org.eclipse.lsp4j.ApplyWorkspaceEditResponse;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.ConfigurationParams;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DidCloseTextDocumentParams;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializeResult;
import org.eclipse.lsp4j.InitializedParams;
import org.eclipse.lsp4j.MessageActionItem;
import org.eclipse.lsp4j.MessageParams;
import org.eclipse.lsp4j.ProgressParams;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.RegistrationParams;
import org.eclipse.lsp4j.ShowDocumentParams;
import org.eclipse.lsp4j.ShowDocumentResult;
import org.eclipse.lsp4j.ShowMessageRequestParams;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.eclipse.lsp4j.TextDocumentContentRefreshParams;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextDocumentItem;
import org.eclipse.lsp4j.UnregistrationParams;
import org.eclipse.lsp4j.VersionedTextDocumentIdentifier;
import org.eclipse.lsp4j.WorkDoneProgressCreateParams;
import org.eclipse.lsp4j.WorkspaceFolder;
import org.eclipse.lsp4j.jsonrpc.Endpoint;
import org.eclipse.lsp4j.jsonrpc.Launcher;
import org.eclipse.lsp4j.launch.LSPLauncher;
import org.eclipse.lsp4j.services.LanguageClient;
import org.eclipse.lsp4j.services.LanguageServer;

/**
 * A talk with a server over pipes, by the protocol library's own client. All messages are recorded
 * by {@link MessageTap}.
 */
final class Conversation implements AutoCloseable {
  static final long PATIENCE_SECONDS = 30;

  final LanguageServer server;

  /** The same server, for messages that no type fits. */
  final Endpoint endpoint;

  final Heard heard = new Heard();
  final CompletableFuture<Integer> exitCode;
  final OutputStream raw;
  private final BytePipe toServer = new BytePipe();
  private final BytePipe toClient = new BytePipe();
  private int version;

  /** Starts a server; nothing has been said yet. */
  Conversation(String name) {
    this(name, Optional.empty(), new RulesAhead());
  }

  /** Starts a server that keeps its findings, if it is told where; nothing has been said yet. */
  Conversation(String name, Optional<KeptFolder> kept, Supplier<Rules> rules) {
    raw = new MessageTap(toServer.in, name, "client");
    OutputStream back = new MessageTap(toClient.in, name, "server");
    exitCode =
        CompletableFuture.supplyAsync(
            () -> ServeMain.run(toServer.out, back, kept, rules),
            task -> new Thread(task, "server").start());
    Launcher<LanguageServer> launcher = LSPLauncher.createClientLauncher(heard, toClient.out, raw);
    launcher.startListening();
    server = launcher.getRemoteProxy();
    endpoint = launcher.getRemoteEndpoint();
  }

  /** Starts a server and greets it as a client that can do nothing special. */
  static Conversation greeted(String name, Path folder) {
    return greeted(name, folder, new ClientCapabilities());
  }

  /** Starts a server and greets it. */
  static Conversation greeted(String name, Path folder, ClientCapabilities capabilities) {
    Conversation talk = new Conversation(name);
    talk.greet(folder, capabilities);
    return talk;
  }

  InitializeResult greet(Path folder, ClientCapabilities capabilities) {
    InitializeParams parameters = new InitializeParams();
    parameters.setCapabilities(capabilities);
    if (folder != null) {
      parameters.setWorkspaceFolders(List.of(new WorkspaceFolder(address(folder), "walls")));
    }
    InitializeResult result = await(server.initialize(parameters));
    server.initialized(new InitializedParams());
    return result;
  }

  /** The address of a path. */
  static String address(Path path) {
    return Addresses.of(path.toAbsolutePath().normalize());
  }

  /** Writes a file. */
  static Path write(Path folder, String name, String text) {
    try {
      Path file = folder.resolve(name);
      Files.createDirectories(file.getParent());
      return Files.writeString(file, text);
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  /** Opens a document. */
  void open(String address, String text) {
    server
        .getTextDocumentService()
        .didOpen(
            new DidOpenTextDocumentParams(new TextDocumentItem(address, "wall", ++version, text)));
  }

  /** Changes a stretch of an open document; returns the new version. */
  int change(String address, Range range, String text) {
    return change(address, List.of(new TextDocumentContentChangeEvent(range, text)));
  }

  /** Gives an open document a new text; returns the new version. */
  int replace(String address, String text) {
    return change(address, List.of(new TextDocumentContentChangeEvent(text)));
  }

  /** Applies changes to an open document; returns the new version. */
  int change(String address, List<TextDocumentContentChangeEvent> changes) {
    server
        .getTextDocumentService()
        .didChange(
            new DidChangeTextDocumentParams(
                new VersionedTextDocumentIdentifier(address, ++version), new ArrayList<>(changes)));
    return version;
  }

  void closeDocument(String address) {
    server
        .getTextDocumentService()
        .didClose(new DidCloseTextDocumentParams(new TextDocumentIdentifier(address)));
  }

  /** The answer; fails if it takes too long. */
  static <T> T await(CompletableFuture<T> answer) {
    return answer.orTimeout(PATIENCE_SECONDS, TimeUnit.SECONDS).join();
  }

  @Override
  public void close() {
    server.shutdown().orTimeout(PATIENCE_SECONDS, TimeUnit.SECONDS).join();
    server.exit();
    await(exitCode);
  }

  /** What the server told the client. */
  static final class Heard implements LanguageClient {
    final BlockingQueue<PublishDiagnosticsParams> diagnostics = new LinkedBlockingQueue<>();
    final BlockingQueue<MessageParams> logged = new LinkedBlockingQueue<>();
    final BlockingQueue<RegistrationParams> registrations = new LinkedBlockingQueue<>();
    final BlockingQueue<String> refreshes = new LinkedBlockingQueue<>();
    final BlockingQueue<ShowDocumentParams> shown = new LinkedBlockingQueue<>();

    final BlockingQueue<ApplyWorkspaceEditParams> applied = new LinkedBlockingQueue<>();
    final BlockingQueue<ProgressParams> progress = new LinkedBlockingQueue<>();
    final BlockingQueue<UnregistrationParams> unregistrations = new LinkedBlockingQueue<>();

    /** Addresses of the server's own documents that are to be fetched again. */
    final BlockingQueue<String> stale = new LinkedBlockingQueue<>();

    /** What the client's settings are; null if it has none. */
    volatile Object settings;

    /** The next diagnostics for that address; those of others before them are passed over. */
    PublishDiagnosticsParams next(String address) {
      PublishDiagnosticsParams next = nextOf("for " + address);
      while (!next.getUri().equals(address)) {
        next = nextOf("for " + address);
      }
      return next;
    }

    /** The next diagnostics, whatever they are for. */
    PublishDiagnosticsParams next() {
      return nextOf("for any text");
    }

    private PublishDiagnosticsParams nextOf(String what) {
      try {
        PublishDiagnosticsParams next = diagnostics.poll(PATIENCE_SECONDS, TimeUnit.SECONDS);
        if (next == null) {
          throw new AssertionError("no diagnostics came " + what + "; logged: " + logged);
        }
        return next;
      } catch (InterruptedException stopped) {
        throw new AssertionError(stopped);
      }
    }

    /** The diagnostics for that address and version. */
    PublishDiagnosticsParams of(String address, int version) {
      PublishDiagnosticsParams next = next(address);
      while (next.getVersion() == null || next.getVersion() < version) {
        next = next(address);
      }
      return next;
    }

    @Override
    public void publishDiagnostics(PublishDiagnosticsParams published) {
      diagnostics.add(published);
    }

    @Override
    public void logMessage(MessageParams message) {
      logged.add(message);
    }

    @Override
    public CompletableFuture<Void> registerCapability(RegistrationParams registration) {
      registrations.add(registration);
      return CompletableFuture.completedFuture(null);
    }

    @Override
    public CompletableFuture<Void> unregisterCapability(UnregistrationParams registration) {
      unregistrations.add(registration);
      return CompletableFuture.completedFuture(null);
    }

    @Override
    public CompletableFuture<List<Object>> configuration(ConfigurationParams asked) {
      return CompletableFuture.completedFuture(
          new ArrayList<>(java.util.Collections.singletonList(settings)));
    }

    @Override
    public CompletableFuture<ShowDocumentResult> showDocument(ShowDocumentParams asked) {
      shown.add(asked);
      return CompletableFuture.completedFuture(new ShowDocumentResult(true));
    }

    @Override
    public CompletableFuture<ApplyWorkspaceEditResponse> applyEdit(ApplyWorkspaceEditParams edit) {
      applied.add(edit);
      return CompletableFuture.completedFuture(new ApplyWorkspaceEditResponse(true));
    }

    @Override
    public CompletableFuture<Void> refreshTextDocumentContent(
        TextDocumentContentRefreshParams which) {
      stale.add(which.getUri());
      return CompletableFuture.completedFuture(null);
    }

    @Override
    public CompletableFuture<Void> createProgress(WorkDoneProgressCreateParams created) {
      return CompletableFuture.completedFuture(null);
    }

    @Override
    public void notifyProgress(ProgressParams told) {
      progress.add(told);
    }

    @Override
    public CompletableFuture<Void> refreshCodeLenses() {
      refreshes.add("codeLenses");
      return CompletableFuture.completedFuture(null);
    }

    @Override
    public CompletableFuture<Void> refreshDiagnostics() {
      refreshes.add("diagnostics");
      return CompletableFuture.completedFuture(null);
    }

    @Override
    public CompletableFuture<Void> refreshInlayHints() {
      refreshes.add("inlayHints");
      return CompletableFuture.completedFuture(null);
    }

    @Override
    public void telemetryEvent(Object event) {
      throw new AssertionError("the server sends no telemetry");
    }

    @Override
    public void showMessage(MessageParams message) {
      logged.add(message);
    }

    @Override
    public CompletableFuture<MessageActionItem> showMessageRequest(
        ShowMessageRequestParams request) {
      throw new AssertionError("the server asks no questions");
    }
  }
}
