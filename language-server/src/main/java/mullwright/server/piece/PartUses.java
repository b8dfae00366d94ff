package mullwright.server.piece;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import mullwright.layout.PieceRef;
import mullwright.model.Model;
import mullwright.model.Origin;
import mullwright.model.Part;
import mullwright.model.PartKind;
import mullwright.server.Desk;
import mullwright.server.Document;
import mullwright.server.View;
import mullwright.workspace.Reading;

/** Finds, in all wall files, what is made of a part: by its name, by its role, by the system. */
public final class PartUses {
  private final Desk desk;

  public PartUses(Desk desk) {
    this.desk = desk;
  }

  /** The part whose name stands at an origin, as the file at hand sees it. */
  public static Optional<Part> at(Document document, Origin definition) {
    Optional<Reading> reading = document.snapshot().reading(document.path());
    for (PartKind kind : PartKind.values()) {
      for (Part part :
          reading.map(r -> r.model().catalog().all(kind)).orElse(java.util.List.of())) {
        if (part.origin().equals(definition)) {
          return Optional.of(part);
        }
      }
    }
    return Optional.empty();
  }

  /** The walls that may name a part, in the order of paths and text. */
  public List<WallPieces> walls(View view, Part part) {
    List<WallPieces> walls = new ArrayList<>();
    for (String path : view.snapshot().walls()) {
      desk.cancel().check();
      Optional<Document> document = view.document(path);
      boolean knows =
          view.snapshot().reading(path).filter(reading -> knows(reading.model(), part)).isPresent();
      if (knows && document.isPresent()) {
        walls.addAll(WallPieces.of(document.get()));
      }
    }
    return walls;
  }

  /** True if that very part, and not another of its name, is what a model's texts mean by it. */
  private static boolean knows(Model model, Part part) {
    return model
        .catalog()
        .find(part.kind(), part.name())
        .filter(known -> known.origin().equals(part.origin()))
        .isPresent();
  }

  /** The pieces of a wall that are made of a part, in the order of the layout. */
  public List<PieceRef> pieces(WallPieces wall, Part part) {
    List<PieceRef> pieces = new ArrayList<>();
    add(pieces, wall, part, PieceRef.Kind.VERTICAL, wall.layout().verticals().size());
    add(pieces, wall, part, PieceRef.Kind.HORIZONTAL, wall.layout().horizontals().size());
    add(pieces, wall, part, PieceRef.Kind.SPLICE, wall.layout().splices().size());
    add(pieces, wall, part, PieceRef.Kind.ANCHOR, wall.layout().anchors().size());
    add(pieces, wall, part, PieceRef.Kind.CELL, wall.layout().cells().size());
    return pieces;
  }

  private void add(
      List<PieceRef> pieces, WallPieces wall, Part part, PieceRef.Kind kind, int count) {
    desk.cancel().check();
    for (int i = 0; i < count; i++) {
      PieceRef piece = new PieceRef(kind, i);
      if (wall.part(piece).filter(of -> of.origin().equals(part.origin())).isPresent()) {
        pieces.add(piece);
      }
    }
  }

  /** The statements that made pieces, each once. */
  public static List<Origin> statements(WallPieces wall, Collection<PieceRef> pieces) {
    Set<Origin> origins = new LinkedHashSet<>();
    pieces.forEach(piece -> wall.index().origin(piece).ifPresent(origins::add));
    return List.copyOf(origins);
  }

  /** The systems of a workspace that name a profile in one of their roles, each once. */
  public List<Part.WallSystem> systems(View view, Part profile) {
    Set<Part.WallSystem> systems = new LinkedHashSet<>();
    for (String path : view.snapshot().walls()) {
      desk.cancel().check();
      view.snapshot()
          .reading(path)
          .map(Reading::model)
          .filter(model -> knows(model, profile))
          .ifPresent(
              model -> {
                for (Part part : model.catalog().all(PartKind.SYSTEM)) {
                  if (part instanceof Part.WallSystem system
                      && system.profiles().values().stream()
                          .anyMatch(named -> named.value().equals(profile.name()))) {
                    systems.add(system);
                  }
                }
              });
    }
    return List.copyOf(systems);
  }
}
