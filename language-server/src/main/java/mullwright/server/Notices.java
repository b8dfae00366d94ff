package mullwright.server;

import com.google.gson.JsonElement;
import java.io.IOException;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import mullwright.check.Rules;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DidCloseTextDocumentParams;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextDocumentItem;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;

/**
 * Takes what the client tells without asking: texts opened, changed, closed, files and folders that
 * changed (LSP 3.17, "Document Synchronization", "Workspace Features").
 *
 * <p>All of these make the diagnostics due; the worker is told so before the notice is applied.
 */
final class Notices {
  private static final String FOLDERS = "workspace/didChangeWorkspaceFolders";
  private static final String SETTINGS = "workspace/didChangeConfiguration";
  private static final String CANCEL_PROGRESS = "window/workDoneProgress/cancel";

  /** Those whose parameters are looked into as they are. */
  private static final List<String> PLAIN =
      List.of(
          "textDocument/didSave",
          "workspace/didChangeWatchedFiles",
          "workspace/didCreateFiles",
          "workspace/didRenameFiles",
          "workspace/didDeleteFiles",
          FOLDERS,
          SETTINGS,
          CANCEL_PROGRESS);

  private final Worker worker;
  private final Publisher publisher;
  private final Log log;
  private final Outgoing outgoing;
  private final Live live;
  private final Supplier<Rules> rules;
  private final Runnable atOrphaned;
  private final Registrations registrations;
  private final AtomicInteger opensWaiting = new AtomicInteger();
  private Session session;

  /**
   * @param rules asked for on the worker only
   * @param atOrphaned run when the process that started the server is gone
   */
  Notices(
      Worker worker,
      Publisher publisher,
      Log log,
      Outgoing outgoing,
      Live live,
      Supplier<Rules> rules,
      Runnable atOrphaned) {
    this.worker = worker;
    this.publisher = publisher;
    this.log = log;
    this.outgoing = outgoing;
    this.live = live;
    this.rules = rules;
    this.atOrphaned = atOrphaned;
    this.registrations = new Registrations(outgoing, log);
  }

  Session begin(Client client) {
    session = new Session(client, rules, outgoing, live::address);
    live.begin(session);
    publisher.begin(session, live, worker::editWaits, worker::someoneWaits);
    worker.start();
    return session;
  }

  Session session() {
    return session;
  }

  /** The talk is over and the worker has ended. */
  void end() {
    if (session != null) {
      try {
        session.end();
      } catch (IOException kept) {
        log.fault("Taking away files that were shown", kept);
      }
    }
  }

  /** A request came with those parameters. */
  void asked(Object parameters) {
    live.asked(parameters);
  }

  /** What the parameters of each notice are read into. */
  Map<String, Type> parameters() {
    Map<String, Type> parameters = new HashMap<>();
    parameters.put("textDocument/didOpen", DidOpenTextDocumentParams.class);
    parameters.put("textDocument/didChange", DidChangeTextDocumentParams.class);
    parameters.put("textDocument/didClose", DidCloseTextDocumentParams.class);
    for (String plain : PLAIN) {
      parameters.put(plain, JsonElement.class);
    }
    return parameters;
  }

  /** Takes one; those it does not know are passed over, as the protocol wants. */
  void take(String method, Object parameters) {
    switch (method) {
      case "initialized" -> {
        worker.ask(guarded(method, () -> registrations.watch(session)));
        worker.ask(guarded(method, () -> registrations.watchSettings(session.client())));
        worker.ask(guarded(method, () -> tell(session.settings())));
        worker.ask(guarded(method, this::pullSettings));
        // to watch a process takes as long as to show the first findings, and nobody waits for it
        worker.whenIdle(guarded(method, this::watchParent));
      }
      // heard at once: the worker may be busy with what is to stop
      case CANCEL_PROGRESS -> session.progresses().cancel(parameters);
      case "textDocument/didOpen" -> {
        opensWaiting.incrementAndGet();
        Runnable opening = guarded(method, () -> apply(method, parameters));
        worker.edit(
            () -> {
              opensWaiting.decrementAndGet();
              opening.run();
            });
      }
      case "textDocument/didChange", "textDocument/didClose" ->
          worker.edit(guarded(method, () -> apply(method, parameters)));
      default -> {
        // others, such as $/setTrace: nothing here depends on them
        if (PLAIN.contains(method)) {
          worker.edit(guarded(method, () -> apply(method, parameters)));
        }
      }
    }
  }

  private void apply(String method, Object parameters) {
    Object said = Route.needed(parameters, "params");
    if (said instanceof DidOpenTextDocumentParams opened) {
      open(Route.needed(opened.getTextDocument(), "textDocument"));
    } else if (said instanceof DidChangeTextDocumentParams changed) {
      change(changed);
    } else if (said instanceof DidCloseTextDocumentParams closed) {
      String address = address(closed.getTextDocument());
      session.didClose(address);
      publisher.touched(address);
    } else if (method.equals(FOLDERS)) {
      changeFolders(
          Route.needed(Fields.of(said).flatMap(it -> it.fields("event")).orElse(null), "event"));
    } else if (method.equals(SETTINGS)) {
      settings(
          Route.needed(Fields.of(said).orElse(null), "settings").object().get("settings"), false);
      pullSettings();
    } else {
      session.lookAgain();
      publisher.touchedAll();
    }
  }

  private static String address(TextDocumentIdentifier document) {
    return Route.needed(Route.needed(document, "textDocument").getUri(), "textDocument.uri");
  }

  private void open(TextDocumentItem document) {
    String address = Route.needed(document.getUri(), "textDocument.uri");
    String text = Route.needed(document.getText(), "textDocument.text");
    publisher.touched(address);
    // other texts that are opened meanwhile make nothing old
    if (worker.editsWaiting() <= opensWaiting.get()) {
      publisher.opening(address, document.getVersion(), text);
    }
    session.didOpen(address, document.getVersion(), text);
    registrations.watch(session);
  }

  /** All changes or none: with one of them lost the rest would fall on other places. */
  private void change(DidChangeTextDocumentParams changed) {
    String address = address(changed.getTextDocument());
    List<TextDocumentContentChangeEvent> changes =
        Route.needed(changed.getContentChanges(), "contentChanges");
    for (TextDocumentContentChangeEvent change : changes) {
      Route.needed(Route.needed(change, "contentChanges").getText(), "contentChanges.text");
      if (change.getRange() != null) {
        Route.needed(change.getRange().getStart(), "contentChanges.range.start");
        Route.needed(change.getRange().getEnd(), "contentChanges.range.end");
      }
    }
    session.didChange(address, changed.getTextDocument().getVersion(), changes);
    publisher.touched(address);
  }

  private void changeFolders(Fields event) {
    session.changeFolders(addresses(event, "added"), addresses(event, "removed"));
    registrations.watch(session);
    publisher.touchedAll();
  }

  private static List<String> addresses(Fields event, String which) {
    List<String> addresses = new ArrayList<>();
    for (JsonElement folder : event.list(which)) {
      addresses.add(
          Route.needed(
              Fields.of(folder).flatMap(it -> it.text("uri")).orElse(null),
              "event." + which + ".uri"));
    }
    return addresses;
  }

  private void pullSettings() {
    registrations.pullSettings(
        session.client(), sent -> worker.ask(guarded(SETTINGS, () -> settings(sent, true))));
  }

  private void tell(Settings settings) {
    settings.problems().forEach(log::unreadable);
  }

  /**
   * A client that has none, or is to be asked, sends null.
   *
   * @param own true if all of it is about this server
   */
  private void settings(JsonElement sent, boolean own) {
    if (sent == null || !sent.isJsonObject()) {
      return;
    }
    Settings before = session.settings();
    Settings now = Settings.read(sent, own);
    tell(now);
    session.settings(now);
    if (!session.settings().equals(before)) {
      publisher.refreshShown();
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
      } catch (ResponseErrorException malformed) {
        log.unreadable("'" + method + "' is passed over. " + malformed.getMessage());
      } catch (RuntimeException | StackOverflowError fault) {
        log.fault("Taking '" + method + "'", fault);
      }
    };
  }
}
