package mullwright.server.completion;

import java.util.ArrayList;
import java.util.List;
import mullwright.workspace.Cursor;
import mullwright.workspace.UsePaths;
import org.eclipse.lsp4j.CompletionItemKind;

/** The paths of the workspace's wall files as a {@code use} of one of them writes them. */
final class Paths {
  private Paths() {}

  static List<Offer> at(Cursor cursor) {
    List<Offer> offers = new ArrayList<>();
    for (String path : cursor.snapshot().walls()) {
      if (!path.equals(cursor.path())) {
        UsePaths.written(cursor.path(), path)
            .map(written -> Offer.of(written, CompletionItemKind.File, "wall file"))
            .ifPresent(offers::add);
      }
    }
    return offers;
  }
}
