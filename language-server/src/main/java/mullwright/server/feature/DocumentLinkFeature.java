package mullwright.server.feature;

import com.google.auto.service.AutoService;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.List;
import mullwright.server.Client;
import mullwright.server.Document;
import mullwright.server.Feature;
import mullwright.server.Route;
import mullwright.syntax.Argument;
import mullwright.syntax.Segment;
import mullwright.syntax.Statement;
import mullwright.syntax.StatementKind;
import mullwright.syntax.TextRange;
import mullwright.syntax.Word;
import mullwright.workspace.UsedFile;
import org.eclipse.lsp4j.DocumentLink;
import org.eclipse.lsp4j.DocumentLinkParams;

/**
 * Makes the path of each {@code use} a link to its file, if the file is there.
 *
 * <p>Answers {@code textDocument/documentLink} (LSP 3.17). Heeds {@code
 * textDocument.documentLink.tooltipSupport}. Where a link leads costs nothing to tell, so none is
 * resolved later.
 */
@AutoService(Feature.class)
public final class DocumentLinkFeature implements Feature {
  @Override
  public List<Route<?>> routes() {
    return List.of(
        Route.ofDocument(
            "textDocument/documentLink",
            DocumentLinkParams.class,
            DocumentLinkParams::getTextDocument,
            (parameters, document, desk) ->
                links(document, desk.client().can("textDocument.documentLink.tooltipSupport"))));
  }

  @Override
  public void advertise(Client client, JsonObject server) {
    server.add("documentLinkProvider", new JsonObject());
  }

  static List<DocumentLink> links(Document document, boolean tooltips) {
    List<DocumentLink> links = new ArrayList<>();
    List<Segment> segments = document.file().segments();
    for (int i = 0; i < segments.size(); i++) {
      for (Statement statement : segments.get(i).statements()) {
        if (statement.kind() == StatementKind.USE) {
          int segment = i;
          statement
              .argument(Argument.Text.class)
              .ifPresent(path -> link(document, segment, path.string(), tooltips, links));
        }
      }
    }
    return links;
  }

  private static void link(
      Document document, int segment, Word path, boolean tooltips, List<DocumentLink> links) {
    UsedFile.resolve(document.path(), path.text())
        .flatMap(document.view()::document)
        .ifPresent(
            file -> {
              DocumentLink link =
                  new DocumentLink(document.range(segment, withoutQuotes(path)), file.address());
              if (tooltips) {
                link.setTooltip("Open " + file.path());
              }
              links.add(link);
            });
  }

  private static TextRange withoutQuotes(Word path) {
    TextRange range = path.range();
    return path.quoted() && range.length() >= 2
        ? new TextRange(range.start() + 1, range.end() - 1)
        : range;
  }
}
