package mullwright.server.feature;

import com.google.auto.service.AutoService;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import mullwright.layout.PieceRef;
import mullwright.model.Given;
import mullwright.model.Part;
import mullwright.model.PartKind;
import mullwright.model.Reference;
import mullwright.model.Role;
import mullwright.model.Symbol;
import mullwright.server.Client;
import mullwright.server.Desk;
import mullwright.server.Document;
import mullwright.server.Feature;
import mullwright.server.Route;
import mullwright.server.View;
import mullwright.server.piece.PartUses;
import mullwright.server.piece.PieceData;
import mullwright.server.piece.PieceWords;
import mullwright.server.piece.PiecesAt;
import mullwright.server.piece.StatementPlace;
import mullwright.server.piece.WallPieces;
import mullwright.workspace.Cursor;
import org.eclipse.lsp4j.SymbolKind;
import org.eclipse.lsp4j.TypeHierarchyItem;
import org.eclipse.lsp4j.TypeHierarchyPrepareParams;
import org.eclipse.lsp4j.TypeHierarchySubtypesParams;
import org.eclipse.lsp4j.TypeHierarchySupertypesParams;

/**
 * What is made of what, as a tree of types: under a system its profiles, each with its roles; under
 * a profile, an anchor or a glass the pieces made of it, in all walls.
 *
 * <p>Answers {@code textDocument/prepareTypeHierarchy}, {@code typeHierarchy/supertypes} and {@code
 * typeHierarchy/subtypes} (LSP 3.17).
 */
@AutoService(Feature.class)
public final class TypeHierarchyFeature implements Feature {
  /** More pieces than this nobody reads through. */
  static final int MOST = 500;

  @Override
  public List<Route<?>> routes() {
    return List.of(
        Route.ofPlace(
            "textDocument/prepareTypeHierarchy",
            TypeHierarchyPrepareParams.class,
            (parameters, document, offset, desk) -> prepare(document, offset)),
        new Route<>(
            "typeHierarchy/supertypes",
            TypeHierarchySupertypesParams.class,
            (parameters, desk) -> above(Route.needed(parameters.getItem(), "item"), desk)),
        new Route<>(
            "typeHierarchy/subtypes",
            TypeHierarchySubtypesParams.class,
            (parameters, desk) -> below(Route.needed(parameters.getItem(), "item"), desk)));
  }

  @Override
  public void advertise(Client client, JsonObject server) {
    server.addProperty("typeHierarchyProvider", true);
  }

  static List<TypeHierarchyItem> prepare(Document document, int offset) {
    Cursor cursor = document.cursor(offset);
    List<TypeHierarchyItem> items = new ArrayList<>();
    for (Reference reference : cursor.references()) {
      if (reference.symbol().kind() == Symbol.Kind.PART) {
        PartUses.at(document, reference.symbol().definition())
            .flatMap(part -> item(document, part, part.kind().spelling()))
            .ifPresent(items::add);
      }
    }
    if (items.isEmpty()) {
      for (WallPieces wall : WallPieces.of(document)) {
        PiecesAt.of(wall, cursor).stream()
            .limit(CallHierarchyFeature.MOST)
            .forEach(piece -> item(wall, piece).ifPresent(items::add));
      }
    }
    return items.isEmpty() ? null : items;
  }

  private static Optional<TypeHierarchyItem> item(Document seenFrom, Part part, String detail) {
    return StatementPlace.of(seenFrom.view(), part.origin())
        .map(
            place -> {
              TypeHierarchyItem item =
                  new TypeHierarchyItem(
                      part.name(),
                      part.kind() == PartKind.SYSTEM ? SymbolKind.Package : SymbolKind.Class,
                      place.address(),
                      place.whole(),
                      place.shown(),
                      detail);
              item.setData(
                  new PieceData(seenFrom.address(), "", part.kind().spelling(), part.name())
                      .json());
              return item;
            });
  }

  private static Optional<TypeHierarchyItem> item(WallPieces wall, PieceRef piece) {
    return wall.place(piece)
        .map(
            place -> {
              TypeHierarchyItem item =
                  new TypeHierarchyItem(
                      wall.index().name(piece),
                      SymbolKind.Object,
                      place.address(),
                      place.whole(),
                      place.shown(),
                      "wall " + wall.name() + ": " + new PieceWords(wall).of(piece));
              item.setData(PieceData.of(wall, piece).json());
              return item;
            });
  }

  private static List<TypeHierarchyItem> above(TypeHierarchyItem item, Desk desk) {
    List<TypeHierarchyItem> items = new ArrayList<>();
    Optional<PieceData> data = PieceData.read(item.getData());
    data.flatMap(given -> given.find(desk))
        .flatMap(
            found ->
                found
                    .wall()
                    .part(found.piece())
                    .flatMap(part -> item(found.wall().document(), part, part.kind().spelling())))
        .ifPresent(items::add);
    data.flatMap(given -> part(given, desk))
        .filter(at -> at.part.kind() == PartKind.PROFILE)
        .ifPresent(
            at ->
                new PartUses(desk)
                    .systems(at.document.view(), at.part)
                    .forEach(system -> item(at.document, system, "system").ifPresent(items::add)));
    return items;
  }

  /** A part and the file that sees it. */
  private record PartAt(Document document, Part part) {}

  private static Optional<PartAt> part(PieceData data, Desk desk) {
    return desk.document(data.file())
        .flatMap(
            document ->
                PartKind.of(data.kind())
                    .filter(kind -> data.wall().isEmpty())
                    .flatMap(
                        kind ->
                            document
                                .snapshot()
                                .reading(document.path())
                                .flatMap(
                                    reading -> reading.model().catalog().find(kind, data.name())))
                    .map(part -> new PartAt(document, part)));
  }

  private static List<TypeHierarchyItem> below(TypeHierarchyItem item, Desk desk) {
    List<TypeHierarchyItem> items = new ArrayList<>();
    PieceData.read(item.getData())
        .flatMap(data -> part(data, desk))
        .ifPresent(
            at -> {
              if (at.part instanceof Part.WallSystem system) {
                profiles(at.document, system, items);
              } else {
                pieces(at.document.view(), at.part, desk, items);
              }
            });
    return items;
  }

  private static void profiles(
      Document document, Part.WallSystem system, List<TypeHierarchyItem> items) {
    Map<String, List<Role>> roles = new TreeMap<>();
    for (Role role : Role.values()) {
      Given<String> profile = system.profiles().get(role);
      if (profile != null) {
        roles.computeIfAbsent(profile.value(), name -> new ArrayList<>()).add(role);
      }
    }
    var catalog = document.snapshot().reading(document.path()).orElseThrow().model().catalog();
    roles.forEach(
        (name, plays) ->
            catalog
                .find(PartKind.PROFILE, name)
                .flatMap(
                    profile ->
                        item(
                            document,
                            profile,
                            plays.stream().map(Role::spelling).collect(Collectors.joining(", "))))
                .ifPresent(items::add));
  }

  private static void pieces(View view, Part part, Desk desk, List<TypeHierarchyItem> items) {
    PartUses uses = new PartUses(desk);
    for (WallPieces wall : uses.walls(view, part)) {
      for (PieceRef piece : uses.pieces(wall, part)) {
        if (items.size() < MOST) {
          item(wall, piece).ifPresent(items::add);
        }
      }
    }
  }
}
