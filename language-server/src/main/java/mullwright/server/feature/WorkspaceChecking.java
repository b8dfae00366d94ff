package mullwright.server.feature;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.check.Finding;
import mullwright.server.Desk;
import mullwright.server.Diagnostics;
import mullwright.server.Fingerprint;
import mullwright.server.Piecemeal;
import mullwright.server.Progress;
import mullwright.server.Route;
import mullwright.server.View;
import mullwright.workspace.Cancel;
import mullwright.workspace.Snapshot;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.PreviousResultId;
import org.eclipse.lsp4j.WorkspaceDiagnosticParams;
import org.eclipse.lsp4j.WorkspaceFullDocumentDiagnosticReport;
import org.eclipse.lsp4j.WorkspaceUnchangedDocumentDiagnosticReport;

/**
 * The diagnostics of all wall files, open or not, one file a piece.
 *
 * <p>What the reading of a file comes to is kept, so the last piece only gathers. Stopped half-way
 * by the client's progress, it tells what it has.
 */
final class WorkspaceChecking implements Piecemeal {
  private final Map<String, String> previous = new HashMap<>();
  private final Desk desk;
  private final Optional<Progress> progress;
  private final List<Place> files = new ArrayList<>();
  private int done;

  /** A file, and which of the workspaces it belongs to. */
  private record Place(int view, String path) {}

  WorkspaceChecking(WorkspaceDiagnosticParams parameters, Desk desk) {
    this.desk = desk;
    if (parameters.getPreviousResultIds() != null) {
      for (PreviousResultId id : parameters.getPreviousResultIds()) {
        previous.put(Route.needed(id, "previousResultIds").getUri(), id.getValue());
      }
    }
    List<View> views = desk.views();
    for (int view = 0; view < views.size(); view++) {
      for (String path : views.get(view).snapshot().walls()) {
        files.add(new Place(view, path));
      }
    }
    this.progress = desk.progress();
  }

  @Override
  public Optional<Object> next(Cancel cancel) {
    if (done == files.size() || progress.filter(Progress::cancelled).isPresent()) {
      return Optional.of(gather(cancel));
    }
    Place place = files.get(done);
    progress.ifPresent(it -> it.report(done, files.size(), place.path()));
    List<View> views = desk.views();
    if (place.view() < views.size()) {
      Snapshot snapshot = views.get(place.view()).snapshot();
      snapshot
          .reading(place.path())
          .ifPresent(
              reading -> {
                reading.findings(cancel);
                if (!snapshot.isOpen(place.path())) {
                  reading.rest();
                }
              });
    }
    done++;
    return Optional.empty();
  }

  private WorkspaceReports gather(Cancel cancel) {
    Map<View, Collection<String>> checked = new LinkedHashMap<>();
    List<View> views = desk.views();
    for (Place place : files.subList(0, done)) {
      if (place.view() < views.size()) {
        checked
            .computeIfAbsent(views.get(place.view()), view -> new ArrayList<>())
            .add(place.path());
      }
    }
    List<Object> reports = new ArrayList<>();
    checked.forEach(
        (view, paths) ->
            view.snapshot()
                .findings(paths, cancel)
                .forEach((path, found) -> report(view, path, found, reports)));
    desk.settingsProblems()
        .forEach((address, problems) -> report(address, null, problems, reports));
    if (done == files.size()) {
      // what the client still shows of files that are gone
      previous.forEach(
          (address, id) ->
              reports.add(new WorkspaceFullDocumentDiagnosticReport(List.of(), address, null)));
    }
    return new WorkspaceReports(reports);
  }

  private void report(View view, String path, List<Finding> found, List<Object> reports) {
    view.document(path)
        .ifPresent(
            document -> {
              List<Diagnostic> now = Diagnostics.of(document, found, desk.client());
              desk.client().giveRulePages(Diagnostics.rules(now));
              report(document.address(), document.version(), now, reports);
            });
  }

  private void report(String address, Integer version, List<Diagnostic> now, List<Object> reports) {
    String id = Fingerprint.of(now);
    if (id.equals(previous.remove(address))) {
      reports.add(new WorkspaceUnchangedDocumentDiagnosticReport(id, address, version));
    } else {
      WorkspaceFullDocumentDiagnosticReport report =
          new WorkspaceFullDocumentDiagnosticReport(now, address, version);
      report.setResultId(id);
      reports.add(report);
    }
  }
}
