package mullwright.server.feature;

import com.google.auto.service.AutoService;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import mullwright.layout.PieceRef;
import mullwright.model.Origin;
import mullwright.model.Part;
import mullwright.model.Reference;
import mullwright.model.Symbol;
import mullwright.server.Client;
import mullwright.server.Document;
import mullwright.server.Feature;
import mullwright.server.Route;
import mullwright.server.piece.PiecesAt;
import mullwright.server.piece.WallPieces;
import mullwright.workspace.Cursor;
import org.eclipse.lsp4j.LocationLink;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TypeDefinitionParams;

/**
 * Goes from what stands in a wall to the part of the catalog it is made of: from a member to its
 * profile, also where a role or a default chose it; from an anchor to its part, from a lite to its
 * make-up, from a splice to its sleeve, from a wall to its system.
 *
 * <p>Answers {@code textDocument/typeDefinition} (LSP 3.17). Heeds {@code
 * textDocument.typeDefinition.linkSupport}.
 */
@AutoService(Feature.class)
public final class TypeDefinitionFeature implements Feature {
  @Override
  public List<Route<?>> routes() {
    return List.of(
        Route.ofPlace(
            "textDocument/typeDefinition",
            TypeDefinitionParams.class,
            (parameters, document, offset, desk) ->
                Links.told(
                    links(document, offset),
                    desk.client().can("textDocument.typeDefinition.linkSupport"))));
  }

  @Override
  public void advertise(Client client, JsonObject server) {
    server.addProperty("typeDefinitionProvider", true);
  }

  static List<LocationLink> links(Document document, int offset) {
    Cursor cursor = document.cursor(offset);
    // a part that is named outright is meant, and not what else the statement makes
    List<Origin> named = named(cursor);
    Range from = Links.under(document, cursor);
    List<LocationLink> links = new ArrayList<>();
    for (Origin part : named.isEmpty() ? made(document, cursor) : named) {
      Links.to(document, from, part).ifPresent(links::add);
    }
    return links;
  }

  /** The parts that are named there. */
  private static List<Origin> named(Cursor cursor) {
    return cursor.references().stream()
        .map(Reference::symbol)
        .filter(it -> it.kind() == Symbol.Kind.PART)
        .map(Symbol::definition)
        .toList();
  }

  /** The parts of which is made what stands there, each once. */
  private static Set<Origin> made(Document document, Cursor cursor) {
    Set<Origin> parts = new LinkedHashSet<>();
    for (WallPieces wall : WallPieces.of(document)) {
      system(wall, cursor).map(Part::origin).ifPresent(parts::add);
      for (PieceRef piece : PiecesAt.of(wall, cursor)) {
        wall.part(piece).map(Part::origin).ifPresent(parts::add);
      }
    }
    return parts;
  }

  private static Optional<Part.WallSystem> system(WallPieces wall, Cursor cursor) {
    boolean named =
        cursor.references().stream()
            .map(Reference::symbol)
            .anyMatch(it -> it.kind() == Symbol.Kind.WALL && it.name().equals(wall.name()));
    return named ? wall.facts().wall().system() : Optional.empty();
  }
}
