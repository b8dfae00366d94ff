package mullwright.server.feature;

import com.google.auto.service.AutoService;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
    Cursor cursor = document.snapshot().cursor(document.path(), offset).orElseThrow();
    Map<Origin, Part> parts = new LinkedHashMap<>();
    for (WallPieces wall : WallPieces.of(document)) {
      system(wall, cursor).ifPresent(part -> parts.put(part.origin(), part));
      for (PieceRef piece : PiecesAt.of(wall, cursor)) {
        wall.part(piece).ifPresent(part -> parts.put(part.origin(), part));
      }
    }
    for (Reference reference : cursor.references()) {
      if (reference.symbol().kind() == Symbol.Kind.PART) {
        // a part that is named outright is meant, and not what else the statement makes
        parts.clear();
        break;
      }
    }
    List<LocationLink> links = new ArrayList<>();
    Range from = Links.under(document, cursor);
    parts.keySet().forEach(part -> Links.to(document, from, part).ifPresent(links::add));
    if (links.isEmpty()) {
      links.addAll(partNamed(document, cursor, from));
    }
    return links;
  }

  private static Optional<Part.WallSystem> system(WallPieces wall, Cursor cursor) {
    boolean named =
        cursor.references().stream()
            .map(Reference::symbol)
            .anyMatch(it -> it.kind() == Symbol.Kind.WALL && it.name().equals(wall.name()));
    return named ? wall.facts().wall().system() : Optional.empty();
  }

  private static List<LocationLink> partNamed(Document document, Cursor cursor, Range from) {
    List<LocationLink> links = new ArrayList<>();
    for (Reference reference : cursor.references()) {
      if (reference.symbol().kind() == Symbol.Kind.PART) {
        Links.to(document, from, reference.symbol().definition()).ifPresent(links::add);
      }
    }
    return links;
  }
}
