package mullwright.server.completion;

import java.util.ArrayList;
import java.util.List;
import mullwright.workspace.Cursor;
import org.eclipse.lsp4j.CompletionItemKind;

/** The paths of the workspace's wall files as a {@code use} of one of them writes them. */
final class Paths {
  private Paths() {}

  static List<Offer> at(Cursor cursor) {
    List<Offer> offers = new ArrayList<>();
    for (String path : cursor.snapshot().walls()) {
      if (!path.equals(cursor.path())) {
        offers.add(Offer.of(relative(cursor.path(), path), CompletionItemKind.File, "wall file"));
      }
    }
    return offers;
  }

  /** The way from the folder of one file to another file. */
  static String relative(String from, String to) {
    String[] start = from.split("/");
    String[] end = to.split("/");
    int same = 0;
    while (same < start.length - 1 && same < end.length - 1 && start[same].equals(end[same])) {
      same++;
    }
    StringBuilder way = new StringBuilder("../".repeat(start.length - 1 - same));
    for (int i = same; i < end.length; i++) {
      way.append(i == same ? "" : "/").append(end[i]);
    }
    return way.toString();
  }
}
