package mullwright.server.action;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.check.Finding;
import mullwright.server.Document;
import mullwright.server.Edits;
import mullwright.workspace.FilePlace;
import mullwright.workspace.UsePaths;
import org.eclipse.lsp4j.CodeActionKind;

/** For a file that is used and is not there: the files of that name that are, elsewhere. */
@AutoService(ActionSource.class)
public final class MendUse implements ActionSource {
  private static final String RULE = "broken-use";
  private static final int OFFERED = 3;

  @Override
  public String kind() {
    return CodeActionKind.QuickFix;
  }

  @Override
  public List<Action> offers(Selected selected) {
    List<Action> offers = new ArrayList<>();
    Document document = selected.document();
    for (Finding finding : selected.findings()) {
      Optional<FilePlace> place = document.snapshot().place(finding.origin());
      if (finding.rule().equals(RULE) && place.filter(selected::touches).isPresent()) {
        String written = selected.text().substring(place.get().start(), place.get().end());
        offers(written, place.get(), selected, offers);
      }
    }
    return offers;
  }

  private static void offers(
      String written, FilePlace place, Selected selected, List<Action> offers) {
    Document document = selected.document();
    String name = written.replace("\"", "").replace('\\', '/').replaceAll(".*/", "");
    for (String path : document.snapshot().walls()) {
      boolean same = path.equals(name) || path.endsWith("/" + name);
      Optional<String> way = UsePaths.written(document.path(), path);
      if (same && way.isPresent() && !path.equals(document.path()) && offers.size() < OFFERED) {
        String text = "\"" + way.get() + "\"";
        offers.add(
            Action.of(
                "Write " + text,
                () -> {
                  Edits edits = new Edits(document.view());
                  edits.replace(document, document.range(place.start(), place.end()), text);
                  return edits;
                }));
      }
    }
  }
}
