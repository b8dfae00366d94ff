package mullwright.server;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.check.Rules;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DidCloseTextDocumentParams;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;

/**
 * Takes what the client tells without asking: texts opened, changed, closed, files and folders that
 * changed (LSP 3.17, "Document Synchronization", "Workspace Features").
 *
 * <p>All of these make the diagnostics due; the worker is told so before the notice is applied.
 */
final class Notices {
  private final Worker worker;
  private final Publisher publisher;
  private final Log log;
  private final Outgoing outgoing;
  private final Live live;
  private final Runnable atOrphaned;
  private Session session;

  /**
   * @param atOrphaned run when the process that started the server is gone
   */
  Notices(
      Worker worker,
      Publisher publisher,
      Log log,
      Outgoing outgoing,
      Live live,
      Runnable atOrphaned) {
    this.worker = worker;
    this.publisher = publisher;
    this.log = log;
    this.outgoing = outgoing;
    this.live = live;
    this.atOrphaned = atOrphaned;
  }

  Session begin(Client client) {
    session = new Session(client, Rules.find(), outgoing, live::address);
    live.begin(session);
    publisher.begin(session, live, worker::editWaits);
    worker.start();
    return session;
  }

  Session session() {
    return session;
  }

  /** A request came with those parameters. */
  void asked(Object parameters) {
    live.asked(parameters);
  }

  /** What the parameters of each notice are read into. */
  Map<String, Type> parameters() {
    return Map.of(
        "textDocument/didOpen", DidOpenTextDocumentParams.class,
        "textDocument/didChange", DidChangeTextDocumentParams.class,
        "textDocument/didClose", DidCloseTextDocumentParams.class,
        "textDocument/didSave", JsonElement.class,
        "workspace/didChangeWatchedFiles", JsonElement.class,
        "workspace/didChangeWorkspaceFolders", JsonElement.class);
  }

  /** Takes one; those it does not know are passed over, as the protocol wants. */
  void take(String method, Object parameters) {
    switch (method) {
      case "initialized" -> {
        worker.ask(guarded(method, this::watchFiles));
        worker.ask(guarded(method, this::watchParent));
      }
      case "textDocument/didOpen",
          "textDocument/didChange",
          "textDocument/didClose",
          "textDocument/didSave",
          "workspace/didChangeWatchedFiles",
          "workspace/didChangeWorkspaceFolders" ->
          worker.edit(guarded(method, () -> apply(method, parameters)));
      default -> {
        // such as $/setTrace: nothing here depends on it
      }
    }
  }

  private void apply(String method, Object parameters) {
    if (parameters instanceof DidOpenTextDocumentParams opened) {
      var document = opened.getTextDocument();
      session.didOpen(document.getUri(), document.getVersion(), document.getText());
      publisher.touched(document.getUri());
    } else if (parameters instanceof DidChangeTextDocumentParams changed) {
      var document = changed.getTextDocument();
      session.didChange(document.getUri(), document.getVersion(), changed.getContentChanges());
      publisher.touched(document.getUri());
    } else if (parameters instanceof DidCloseTextDocumentParams closed) {
      session.didClose(closed.getTextDocument().getUri());
      publisher.touched(closed.getTextDocument().getUri());
    } else if (method.equals("workspace/didChangeWorkspaceFolders")) {
      JsonObject event = ((JsonElement) parameters).getAsJsonObject().getAsJsonObject("event");
      session.changeFolders(addresses(event, "added"), addresses(event, "removed"));
      publisher.touchedAll();
    } else {
      session.lookAgain();
      publisher.touchedAll();
    }
  }

  private static List<String> addresses(JsonObject event, String which) {
    List<String> addresses = new ArrayList<>();
    for (JsonElement folder :
        Optional.ofNullable(event.getAsJsonArray(which)).orElseGet(JsonArray::new)) {
      addresses.add(folder.getAsJsonObject().get("uri").getAsString());
    }
    return addresses;
  }

  /** Asks to be told when wall files change outside the editor, if the client can be asked. */
  private void watchFiles() {
    if (session.client().can("workspace.didChangeWatchedFiles.dynamicRegistration")) {
      outgoing.request(
          "client/registerCapability",
          JsonParser.parseString(
              "{\"registrations\":[{\"id\":\"wall-files\","
                  + "\"method\":\"workspace/didChangeWatchedFiles\","
                  + "\"registerOptions\":{\"watchers\":[{\"globPattern\":\"**/*.wall\"}]}}]}"),
          (done, refused) -> {
            if (refused != null) {
              log.unreadable("The client watches no files: " + refused.getMessage());
            }
          });
    }
  }

  /**
   * Ends the server with the process that started it, also where that one ends without a word. One
   * that cannot be seen from here (the editor is in another container) cannot be watched.
   */
  private void watchParent() {
    session
        .client()
        .process()
        .ifPresent(
            id -> ProcessHandle.of(id).ifPresent(parent -> parent.onExit().thenRun(atOrphaned)));
  }

  /** A job for the worker, which must not throw. */
  private Runnable guarded(String method, Runnable job) {
    return () -> {
      try {
        job.run();
      } catch (RuntimeException | StackOverflowError fault) {
        log.fault("Taking '" + method + "'", fault);
      }
    };
  }
}
