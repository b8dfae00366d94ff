package mullwright.server.action;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import mullwright.check.Finding;
import mullwright.model.NearNames;
import mullwright.server.Document;
import mullwright.server.Edits;
import mullwright.workspace.FilePlace;
import mullwright.workspace.UsePaths;
import org.eclipse.lsp4j.CodeActionKind;

/**
 * For a file that is used and is not there: the files of that name that are, elsewhere, and then
 * those whose name is a slip of the pen away.
 */
@AutoService(ActionSource.class)
public final class MendUse implements ActionSource {
  private static final String RULE = "broken-use";
  private static final String EXTENSION = ".wall";
  private static final int OFFERED = 3;
  private static final int SHORT = 2;

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
    String said = written.replace("\"", "");
    String name = name(said.replace('\\', '/'));
    Set<String> ways = new LinkedHashSet<>();
    Collection<String> files = document.snapshot().walls();
    for (String path : files) {
      if (name(path).equals(name)) {
        UsePaths.written(document.path(), path).ifPresent(ways::add);
      }
    }
    for (String path : files) {
      if (isNear(stem(name), stem(name(path)))) {
        UsePaths.written(document.path(), path).ifPresent(ways::add);
      }
    }
    UsePaths.written(document.path(), document.path()).ifPresent(ways::remove);
    ways.remove(said);
    for (String way : ways) {
      if (offers.size() == OFFERED) {
        return;
      }
      offers.add(mend("\"" + way + "\"", place, document));
    }
  }

  private static Action mend(String text, FilePlace place, Document document) {
    return Action.of(
        "Write " + text,
        () -> {
          Edits edits = new Edits(document.view());
          edits.replace(document, document.range(place.start(), place.end()), text);
          return edits;
        });
  }

  /** The file's name without the folders above it. */
  private static String name(String path) {
    return path.substring(path.lastIndexOf('/') + 1);
  }

  /** True of names a slip apart; short ones are a slip apart from nearly all others. */
  private static boolean isNear(String one, String other) {
    return one.equals(other) || one.length() > SHORT && NearNames.isNear(one, other);
  }

  private static String stem(String name) {
    return name.endsWith(EXTENSION) ? name.substring(0, name.length() - EXTENSION.length()) : name;
  }
}
