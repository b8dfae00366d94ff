package mullwright.server;

import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import mullwright.check.Finding;
import mullwright.server.kept.KeptFindings;
import mullwright.workspace.Cancel;
import mullwright.workspace.Reading;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DiagnosticSeverity;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.Range;

/**
 * Keeps the client's diagnostics up to date: checks what edits made stale and sends what changed.
 *
 * <p>A check is given up as soon as the next edit waits, so nothing old is ever sent after
 * something new. Findings of a file that is only used are sent for that file too. A client that
 * pulls its diagnostics is sent none; it is told to pull again when an edit of one document changed
 * those of another. Runs on the worker only.
 */
final class Publisher implements Worker.Upkeep {
  /** Stands among the touched documents for whatever else may have changed. */
  private static final String ANYTHING = "";

  private static final String PUBLISH = "textDocument/publishDiagnostics";

  private final Outgoing outgoing;
  private final Log log;
  private final Earlier earlier;
  private final Keeper keeper;
  private Live live;
  private final Map<String, List<Diagnostic>> sent = new HashMap<>();
  private final Set<String> touched = new HashSet<>();

  /** Documents just opened, whose earlier findings stand for those of the check to come. */
  private final Set<String> shownEarlier = new HashSet<>();

  private Cancel editWaits = Cancel.NEVER;
  private BooleanSupplier someoneWaits = () -> false;
  private Session session;
  private boolean due;

  /** Memory ran out in the last check, and the user was told. */
  private boolean shortOfMemory;

  Publisher(Outgoing outgoing, Log log, Earlier earlier, Keeper keeper) {
    this.outgoing = outgoing;
    this.log = log;
    this.earlier = earlier;
    this.keeper = keeper;
  }

  void begin(Session begun, Live shown, Cancel whenEditWaits, BooleanSupplier whenSomeoneWaits) {
    session = begun;
    live = shown;
    editWaits = whenEditWaits;
    someoneWaits = whenSomeoneWaits;
  }

  /** A document comes that was not open: what was found in the very same texts before is shown. */
  void opening(String address, Integer version, String text) {
    if (sent.containsKey(address) || session.client().pullsDiagnostics()) {
      return;
    }
    try {
      Optional<KeptFindings> kept = earlier.of(address, text, session);
      if (kept.isPresent()) {
        for (KeptFindings.Published each : kept.get().published()) {
          boolean own = each.address().equals(address);
          if (own || !sent.containsKey(each.address())) {
            publish(each.address(), new Found(own ? version : null, each.diagnostics()));
          }
        }
        shownEarlier.add(address);
      }
    } catch (RuntimeException | StackOverflowError fault) {
      log.fault("Showing earlier findings", fault);
    }
  }

  /** A document was opened, changed or closed. */
  void touched(String address) {
    touched.add(address);
    shownEarlier.remove(address);
    due = true;
  }

  /** Anything may have changed. */
  void touchedAll() {
    touched.add(ANYTHING);
    due = true;
  }

  @Override
  public boolean due() {
    return due;
  }

  @Override
  public void run() {
    Progress progress = session.checking();
    Cancel cancel = progress.over(editWaits);
    try {
      live.edited();
      if (!checkedAll(cancel)) {
        return;
      }
      Map<String, Found> found = found(cancel);
      cancel.check();
      due = false;
      shortOfMemory = false;
      if (session.client().pullsDiagnostics()) {
        askToPull(found);
      } else {
        send(found);
        shownEarlier.clear();
        keeper.checked(session);
      }
      live.checked();
      refreshBeside();
      for (String stale : session.shown().stale(session::document)) {
        JsonObject parameters = new JsonObject();
        parameters.addProperty("uri", stale);
        outgoing.request("workspace/textDocumentContent/refresh", parameters, this::refreshed);
      }
      touched.clear();
    } catch (CancellationException stale) {
      // stays due, the edit that waits is applied first; unless somebody told it to stop
      due = !progress.cancelled();
    } catch (RuntimeException | StackOverflowError fault) {
      due = false;
      log.fault("Checking", fault);
    } catch (OutOfMemoryError shortage) {
      due = false;
      session.forget();
      tellShortage();
    } finally {
      progress.end();
    }
  }

  /**
   * Checks the open documents one by one; what is found in each is kept. False if it gave way to
   * somebody who waits: an edit of a catalog can cost the checks of all walls that use it.
   */
  private boolean checkedAll(Cancel cancel) {
    List<Session.Open> open = session.open();
    for (int i = 0; i < open.size(); i++) {
      if (i > 0 && someoneWaits.getAsBoolean()) {
        return false;
      }
      Roots.Held held = open.get(i).held();
      Optional<Reading> reading =
          held.root().view(session.encoding()).snapshot().reading(held.path());
      if (reading.isPresent()) {
        reading.get().findings(cancel);
      }
    }
    return true;
  }

  /** The diagnostics of a file; if it is open, the version they hold for. */
  private record Found(Integer version, List<Diagnostic> diagnostics) {}

  private Map<String, Found> found(Cancel cancel) {
    Map<Root, Map<String, Session.Open>> open = new LinkedHashMap<>();
    for (Session.Open document : session.open()) {
      open.computeIfAbsent(document.held().root(), root -> new LinkedHashMap<>())
          .put(document.held().path(), document);
    }
    Map<String, Found> found = new LinkedHashMap<>();
    open.forEach(
        (root, documents) -> found(root.view(session.encoding()), documents, found, cancel));
    session
        .settingsProblems()
        .forEach((address, problems) -> found.put(address, new Found(null, problems)));
    return found;
  }

  private void found(
      View view, Map<String, Session.Open> documents, Map<String, Found> found, Cancel cancel) {
    Map<String, List<Finding>> findings = view.snapshot().findings(documents.keySet(), cancel);
    findings.forEach(
        (path, list) ->
            view.document(path)
                .ifPresent(
                    document -> {
                      Session.Open is = documents.get(path);
                      List<Diagnostic> diagnostics =
                          Diagnostics.of(document, list, session.client());
                      if (is != null) {
                        tellFailures(view, path);
                      }
                      found.put(
                          document.address(),
                          new Found(is == null ? null : is.version(), diagnostics));
                    }));
  }

  /** What was found before is no longer true, and nothing is to look as if nothing were wrong. */
  private void tellShortage() {
    Diagnostic unchecked =
        new Diagnostic(new Range(new Position(0, 0), new Position(0, 1)), Shortage.unchecked());
    unchecked.setSeverity(DiagnosticSeverity.Error);
    unchecked.setSource(Diagnostics.SOURCE);
    if (!session.client().pullsDiagnostics()) {
      for (Session.Open open : session.open()) {
        publish(open.address(), new Found(open.version(), List.of(unchecked)));
      }
    }
    if (!shortOfMemory) {
      new Window(outgoing).complain(Shortage.unchecked());
    }
    shortOfMemory = true;
  }

  private void tellFailures(View view, String path) {
    view.snapshot()
        .reading(path)
        .ifPresent(
            reading ->
                reading
                    .failures(editWaits)
                    .forEach(failed -> log.fault("Rule " + failed.rule(), failed.cause())));
  }

  private void send(Map<String, Found> found) {
    found.forEach(
        (address, now) -> {
          boolean unheard = touched.contains(address) && !shownEarlier.contains(address);
          if (unheard || isNews(address, now)) {
            publish(address, now);
          }
        });
    for (String gone : new ArrayList<>(sent.keySet())) {
      if (!found.containsKey(gone) && !sent.remove(gone).isEmpty()) {
        outgoing.notify(PUBLISH, new PublishDiagnosticsParams(gone, List.of()));
      }
    }
  }

  private void publish(String address, Found now) {
    sent.put(address, now.diagnostics);
    outgoing.notify(PUBLISH, new PublishDiagnosticsParams(address, now.diagnostics, now.version));
    session.client().giveRulePages(Diagnostics.rules(now.diagnostics));
  }

  private boolean isNews(String address, Found now) {
    return !now.diagnostics.equals(sent.getOrDefault(address, List.of()));
  }

  /** The client pulls for what it edits itself; of the rest only the server knows. */
  private void askToPull(Map<String, Found> found) {
    boolean elsewhere = false;
    for (Map.Entry<String, Found> each : found.entrySet()) {
      elsewhere |= isNews(each.getKey(), each.getValue()) && isOfOtherEdits(each.getKey());
      sent.put(each.getKey(), each.getValue().diagnostics);
    }
    if (elsewhere) {
      outgoing.request("workspace/diagnostic/refresh", null, this::refreshed);
    }
  }

  /** What stands beside a document changes with the files it uses, which its client cannot see. */
  private void refreshBeside() {
    for (String what : session.beside().stale(session::document, this::isOfOtherEdits)) {
      refresh(what);
    }
  }

  /**
   * True if edits of other documents may be why a document's results changed. One check may come
   * after edits of several; each of these is then asked for anew, for its client may have asked
   * between the edits.
   */
  private boolean isOfOtherEdits(String address) {
    return !touched.contains(address) || touched.size() > 1;
  }

  /** What is shown beside the texts is to be fetched again. */
  void refreshShown() {
    refresh("inlayHint");
    refresh("codeLens");
  }

  private void refresh(String what) {
    if (session.client().can("workspace." + what + ".refreshSupport")) {
      outgoing.request("workspace/" + what + "/refresh", null, this::refreshed);
    }
  }

  private void refreshed(Object nothing, Throwable refused) {
    if (refused != null) {
      log.unreadable("The client refuses to refresh: " + refused.getMessage());
    }
  }
}
