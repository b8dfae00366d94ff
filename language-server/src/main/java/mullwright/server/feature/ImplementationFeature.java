package mullwright.server.feature;

import com.google.auto.service.AutoService;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.layout.PieceRef;
import mullwright.model.Origin;
import mullwright.model.Part;
import mullwright.model.Reference;
import mullwright.model.Symbol;
import mullwright.server.Client;
import mullwright.server.Desk;
import mullwright.server.Document;
import mullwright.server.Feature;
import mullwright.server.Route;
import mullwright.server.piece.PartUses;
import mullwright.server.piece.WallPieces;
import mullwright.workspace.Cursor;
import mullwright.workspace.NamedPieces;
import org.eclipse.lsp4j.ImplementationParams;
import org.eclipse.lsp4j.LocationLink;
import org.eclipse.lsp4j.Range;

/**
 * Goes from what the grid or a catalog only names to the statements that build it: from a line or a
 * row to those that put members, anchors and lites there, from a part to those that make pieces of
 * it in any wall of the workspace, by whatever role or default they came to it; from a system to
 * its walls.
 *
 * <p>Answers {@code textDocument/implementation} (LSP 3.17). Heeds {@code
 * textDocument.implementation.linkSupport}.
 */
@AutoService(Feature.class)
public final class ImplementationFeature implements Feature {
  @Override
  public List<Route<?>> routes() {
    return List.of(
        Route.ofPlace(
            "textDocument/implementation",
            ImplementationParams.class,
            (parameters, document, offset, desk) ->
                Links.told(
                    links(document, offset, desk),
                    desk.client().can("textDocument.implementation.linkSupport"))));
  }

  @Override
  public void advertise(Client client, JsonObject server) {
    server.addProperty("implementationProvider", true);
  }

  static List<LocationLink> links(Document document, int offset, Desk desk) {
    Cursor cursor = document.cursor(offset);
    List<Origin> statements = new ArrayList<>();
    for (Reference reference : cursor.references()) {
      Symbol symbol = reference.symbol();
      if (symbol.kind() == Symbol.Kind.PART) {
        PartUses.at(document, symbol.definition())
            .ifPresent(part -> ofPart(document, part, desk, statements));
      } else {
        for (WallPieces wall : WallPieces.of(document)) {
          statements.addAll(PartUses.statements(wall, NamedPieces.of(wall.details(), symbol)));
        }
      }
    }
    List<LocationLink> links = new ArrayList<>();
    Range from = Links.under(document, cursor);
    statements.stream()
        .distinct()
        .forEach(statement -> Links.to(document, from, statement).ifPresent(links::add));
    return links;
  }

  private static void ofPart(Document document, Part part, Desk desk, List<Origin> statements) {
    PartUses uses = new PartUses(desk);
    for (WallPieces wall : uses.walls(document.view(), part)) {
      Optional<Part.WallSystem> system = wall.facts().wall().system();
      if (system.filter(it -> it.origin().equals(part.origin())).isPresent()) {
        statements.add(wall.facts().wall().origin());
      }
      List<PieceRef> pieces = uses.pieces(wall, part);
      statements.addAll(PartUses.statements(wall, pieces));
    }
  }
}
