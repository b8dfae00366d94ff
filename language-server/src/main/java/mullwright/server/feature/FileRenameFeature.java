package mullwright.server.feature;

import com.google.auto.service.AutoService;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import mullwright.server.Client;
import mullwright.server.Desk;
import mullwright.server.Document;
import mullwright.server.Edits;
import mullwright.server.Feature;
import mullwright.server.Route;
import mullwright.server.View;
import mullwright.server.Window;
import mullwright.syntax.TextRange;
import mullwright.workspace.UsePaths;
import org.eclipse.lsp4j.FileRename;
import org.eclipse.lsp4j.RenameFilesParams;
import org.eclipse.lsp4j.WorkspaceEdit;

/**
 * Keeps the paths of {@code use} right when a wall file or a folder is renamed or moved: those that
 * lead to it, and those of the files that move.
 *
 * <p>Answers {@code workspace/willRenameFiles} (LSP 3.17) and asks to be told afterwards of what
 * was made, renamed and deleted. Heeds {@code workspace.fileOperations}.
 */
@AutoService(Feature.class)
public final class FileRenameFeature implements Feature {
  private static final String CAN = "workspace.fileOperations.";

  @Override
  public List<Route<?>> routes() {
    return List.of(
        new Route<>(
            "workspace/willRenameFiles",
            RenameFilesParams.class,
            (parameters, desk) -> edits(Route.needed(parameters.getFiles(), "files"), desk)));
  }

  @Override
  public void advertise(Client client, JsonObject server) {
    JsonObject operations = new JsonObject();
    for (String what : List.of("willRename", "didRename", "didCreate", "didDelete")) {
      if (client.can(CAN + what)) {
        operations.add(what, filters());
      }
    }
    if (operations.size() > 0) {
      Client.workspaceOf(server).add("fileOperations", operations);
    }
  }

  private static JsonObject filters() {
    JsonArray filters = new JsonArray();
    filters.add(filter("**/*.wall", "file"));
    filters.add(filter("**", "folder"));
    JsonObject options = new JsonObject();
    options.add("filters", filters);
    return options;
  }

  private static JsonObject filter(String glob, String matches) {
    JsonObject pattern = new JsonObject();
    pattern.addProperty("glob", glob);
    pattern.addProperty("matches", matches);
    JsonObject filter = new JsonObject();
    filter.addProperty("scheme", "file");
    filter.add("pattern", pattern);
    return filter;
  }

  private static WorkspaceEdit edits(List<FileRename> renames, Desk desk) {
    Edits edits = null;
    for (View view : desk.views()) {
      List<UsePaths.Move> moves = new ArrayList<>();
      for (FileRename rename : renames) {
        Optional<String> from =
            view.path(Route.needed(Route.needed(rename, "files").getOldUri(), "files.oldUri"));
        Optional<String> to = view.path(Route.needed(rename.getNewUri(), "files.newUri"));
        if (from.isPresent() && to.isPresent()) {
          moves.add(new UsePaths.Move(from.get(), to.get()));
        }
      }
      if (moves.isEmpty()) {
        continue;
      }
      edits = edits == null ? new Edits(view) : edits;
      UsePaths.After after = UsePaths.after(moves, view.snapshot(), desk.cancel());
      after.lost().forEach((path, users) -> tellLost(path, users, desk));
      for (UsePaths.Rewrite rewrite : after.rewrites()) {
        Document document = view.document(rewrite.path()).orElseThrow();
        TextRange at = rewrite.range();
        edits.replace(document, document.range(at.start(), at.end()), rewrite.text());
      }
    }
    return edits == null || edits.isEmpty() ? null : edits.toWorkspaceEdit(desk.client());
  }

  private static void tellLost(String path, Collection<String> users, Desk desk) {
    new Window(desk.editor())
        .complain(
            "No use can be written that leads to “"
                + path
                + "”, as a path in the text holds no quote, colon or backslash: "
                + String.join(", ", users)
                + (users.size() == 1 ? " keeps" : " keep")
                + " the old path and will not find it. Give the file a name without them.");
  }
}
