package mullwright.server.feature;

import com.google.auto.service.AutoService;
import com.google.gson.JsonObject;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import mullwright.server.Client;
import mullwright.server.Desk;
import mullwright.server.Diagnostics;
import mullwright.server.Document;
import mullwright.server.Feature;
import mullwright.server.Fingerprint;
import mullwright.server.Route;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DocumentDiagnosticParams;
import org.eclipse.lsp4j.RelatedFullDocumentDiagnosticReport;
import org.eclipse.lsp4j.RelatedUnchangedDocumentDiagnosticReport;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.WorkspaceDiagnosticParams;

/**
 * Hands out the diagnostics of a document, or of all wall files, to a client that fetches them
 * itself.
 *
 * <p>Answers {@code textDocument/diagnostic} and {@code workspace/diagnostic} (LSP 3.17); {@code
 * unchanged} where they are what the client has, told by a fingerprint of what they say, so nothing
 * need be remembered. Advertised only to clients with {@code textDocument.diagnostic} and {@code
 * workspace.diagnostics.refreshSupport}, who then are pushed none.
 */
@AutoService(Feature.class)
public final class DiagnosticFeature implements Feature {
  @Override
  public List<Route<?>> routes() {
    return List.of(
        new Route<>(
            "textDocument/diagnostic",
            DocumentDiagnosticParams.class,
            (parameters, desk) -> {
              TextDocumentIdentifier which =
                  Route.needed(parameters.getTextDocument(), "textDocument");
              String address = Route.needed(which.getUri(), "uri");
              String previous = parameters.getPreviousResultId();
              // the protocol has no null here: in a document nobody knows nothing is found
              return desk.document(address)
                  .map(document -> report(document, previous, desk))
                  .orElseGet(
                      () ->
                          report(
                              desk.settingsProblems().getOrDefault(address, List.of()), previous));
            }),
        new Route<>(
            "workspace/diagnostic",
            WorkspaceDiagnosticParams.class,
            (parameters, desk) -> new WorkspaceChecking(parameters, desk)));
  }

  @Override
  public void advertise(Client client, JsonObject server) {
    if (client.pullsDiagnostics()) {
      JsonObject options = new JsonObject();
      options.addProperty("identifier", "mullwright");
      options.addProperty("interFileDependencies", true);
      options.addProperty("workspaceDiagnostics", true);
      options.addProperty("workDoneProgress", true);
      server.add("diagnosticProvider", options);
    }
  }

  private static Object report(Document document, String previous, Desk desk) {
    Set<String> roots = new LinkedHashSet<>(document.snapshot().open());
    roots.add(document.path());
    List<Diagnostic> now =
        Diagnostics.of(
            document,
            document
                .snapshot()
                .findings(roots, desk.cancel())
                .getOrDefault(document.path(), List.of()),
            desk.client());
    desk.client().giveRulePages(Diagnostics.rules(now));
    return report(now, previous);
  }

  private static Object report(List<Diagnostic> now, String previous) {
    String id = Fingerprint.of(now);
    if (id.equals(previous)) {
      return new RelatedUnchangedDocumentDiagnosticReport(id);
    }
    RelatedFullDocumentDiagnosticReport report = new RelatedFullDocumentDiagnosticReport(now);
    report.setResultId(id);
    return report;
  }
}
