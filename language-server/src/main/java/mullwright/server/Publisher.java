package mullwright.server;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import mullwright.check.Finding;
import mullwright.workspace.Cancel;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.PublishDiagnosticsParams;

/**
 * Keeps the client's diagnostics up to date: checks what edits made stale and sends what changed.
 *
 * <p>A check is given up as soon as the next edit waits, so nothing old is ever sent after
 * something new. Findings of a file that is only used are sent for that file too. A client that
 * pulls its diagnostics is sent none; it is told to pull again when an edit of one document changed
 * those of another. Runs on the worker only.
 */
final class Publisher implements Worker.Upkeep {
  private static final String PUBLISH = "textDocument/publishDiagnostics";

  private final Outgoing outgoing;
  private final Log log;
  private final Map<String, List<Diagnostic>> sent = new HashMap<>();
  private final Set<String> touched = new HashSet<>();
  private Cancel editWaits = Cancel.NEVER;
  private Session session;
  private boolean due;

  Publisher(Outgoing outgoing, Log log) {
    this.outgoing = outgoing;
    this.log = log;
  }

  void begin(Session begun, Cancel whenEditWaits) {
    session = begun;
    editWaits = whenEditWaits;
  }

  /** A document was opened, changed or closed. */
  void touched(String address) {
    touched.add(address);
    due = true;
  }

  /** Anything may have changed. */
  void touchedAll() {
    due = true;
  }

  @Override
  public boolean due() {
    return due;
  }

  @Override
  public void run() {
    try {
      Map<String, Found> found = found();
      editWaits.check();
      due = false;
      send(found);
      touched.clear();
    } catch (Cancel.Cancelled stale) {
      // stays due: the edit that waits is applied first
      due = true;
    } catch (RuntimeException | StackOverflowError fault) {
      due = false;
      log.fault("Checking", fault);
    }
  }

  /** The diagnostics of a file and, if it is open, the version they hold for. */
  private record Found(Integer version, List<Diagnostic> diagnostics) {}

  private Map<String, Found> found() {
    Map<Root, Map<String, Session.Open>> open = new LinkedHashMap<>();
    for (Session.Open document : session.open()) {
      open.computeIfAbsent(document.held().root(), root -> new LinkedHashMap<>())
          .put(document.held().path(), document);
    }
    Map<String, Found> found = new LinkedHashMap<>();
    open.forEach(
        (root, documents) -> {
          View view = root.view(session.encoding());
          Map<String, List<Finding>> findings =
              view.snapshot().findings(documents.keySet(), editWaits);
          findings.forEach(
              (path, list) ->
                  view.document(path)
                      .ifPresent(
                          document -> {
                            Session.Open is = documents.get(path);
                            found.put(
                                document.address(),
                                new Found(
                                    is == null ? null : is.version(),
                                    Diagnostics.of(document, list, session.client())));
                          }));
        });
    return found;
  }

  private void send(Map<String, Found> found) {
    found.forEach(
        (address, now) -> {
          List<Diagnostic> before = sent.get(address);
          boolean news =
              before == null ? !now.diagnostics.isEmpty() : !before.equals(now.diagnostics);
          if (news || touched.contains(address)) {
            sent.put(address, now.diagnostics);
            outgoing.notify(
                PUBLISH, new PublishDiagnosticsParams(address, now.diagnostics, now.version));
          }
        });
    for (String gone : new ArrayList<>(sent.keySet())) {
      if (!found.containsKey(gone)) {
        List<Diagnostic> before = sent.remove(gone);
        if (!before.isEmpty()) {
          outgoing.notify(PUBLISH, new PublishDiagnosticsParams(gone, List.of()));
        }
      }
    }
  }
}
