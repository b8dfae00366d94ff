package mullwright.server.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import mullwright.check.WallFacts;
import mullwright.layout.LayoutIndex;
import mullwright.layout.PieceRef;
import mullwright.layout.WallLayout;
import mullwright.model.Origin;
import mullwright.model.Part;
import mullwright.server.Document;
import mullwright.server.View;
import mullwright.server.hover.Numbers;
import mullwright.syntax.Statement;
import mullwright.syntax.StatementKind;
import mullwright.workspace.Cursor;
import mullwright.workspace.Reading;
import mullwright.workspace.WallDetails;

/**
 * The pieces of one wall.
 *
 * @param document the file the wall is read from
 */
public record WallPieces(Document document, WallDetails details, WallFacts facts) {
  /** The walls of a file, in the order of the text. */
  public static List<WallPieces> of(Document document) {
    List<WallPieces> walls = new ArrayList<>();
    Optional<Reading> reading = document.snapshot().reading(document.path());
    if (reading.isPresent()) {
      List<WallDetails> details = reading.get().details();
      List<WallFacts> facts = reading.get().walls();
      for (int i = 0; i < details.size(); i++) {
        walls.add(new WallPieces(document, details.get(i), facts.get(i)));
      }
    }
    return walls;
  }

  /** The wall of that name in a file. */
  public static Optional<WallPieces> of(Document document, String wall) {
    return of(document).stream().filter(it -> it.name().equals(wall)).findFirst();
  }

  /** The name of the wall. */
  public String name() {
    return facts.wall().name();
  }

  /** Where everything of it is. */
  public WallLayout layout() {
    return facts.layout();
  }

  /** Its pieces by place. */
  public LayoutIndex index() {
    return details.index();
  }

  /** Prints numbers for who reads the file. */
  public Numbers numbers() {
    return Numbers.of(document.file());
  }

  /** Pieces of frame and glass that the statement around a cursor made; covers are left out. */
  public List<PieceRef> madeAround(Cursor cursor) {
    Optional<Statement> statement = cursor.statement().filter(it -> it.block().isEmpty());
    if (statement.isEmpty() || statement.get().kind() == StatementKind.UNKNOWN) {
      return List.of();
    }
    return madeBy(new Origin(cursor.path(), cursor.segment(), statement.get().range()));
  }

  /** Pieces of frame and glass that a statement made. */
  public List<PieceRef> madeBy(Origin statement) {
    return index().madeBy(statement).stream()
        .filter(piece -> piece.kind() != PieceRef.Kind.COVER)
        .toList();
  }

  /** The piece of that name. */
  public Optional<PieceRef> named(PieceRef.Kind kind, String name) {
    return switch (kind) {
      case VERTICAL -> find(kind, layout().verticals(), piece -> piece.name(), name);
      case HORIZONTAL -> find(kind, layout().horizontals(), piece -> piece.name(), name);
      case SPLICE -> find(kind, layout().splices(), joint -> joint.name(), name);
      case ANCHOR -> find(kind, layout().anchors(), anchor -> anchor.name(), name);
      case CELL -> find(kind, layout().cells(), cell -> cell.name(), name);
      case COVER -> Optional.empty();
    };
  }

  private static <T> Optional<PieceRef> find(
      PieceRef.Kind kind, List<T> pieces, Function<T, String> naming, String name) {
    for (int i = 0; i < pieces.size(); i++) {
      if (naming.apply(pieces.get(i)).equals(name)) {
        return Optional.of(new PieceRef(kind, i));
      }
    }
    return Optional.empty();
  }

  /** The part of a catalog a piece is made of, if it is there. */
  public Optional<Part> part(PieceRef piece) {
    return switch (piece.kind()) {
      case VERTICAL -> Optional.of(layout().verticals().get(piece.index()).profile());
      case HORIZONTAL -> Optional.of(layout().horizontals().get(piece.index()).profile());
      case SPLICE ->
          layout()
              .splices()
              .get(piece.index())
              .splice()
              .sleeve()
              .flatMap(name -> facts.catalog().find(Part.Sleeve.class, name.value()))
              .map(Part.class::cast);
      case ANCHOR ->
          layout()
              .anchors()
              .get(piece.index())
              .part()
              .map(Part.class::cast)
              .or(() -> clip(piece).map(Part.class::cast));
      case CELL -> layout().cells().get(piece.index()).glass().map(Part.class::cast);
      case COVER -> Optional.empty();
    };
  }

  private Optional<Part.Clip> clip(PieceRef piece) {
    return layout()
        .anchors()
        .get(piece.index())
        .use()
        .part()
        .flatMap(name -> facts.catalog().find(Part.Clip.class, name.value()));
  }

  /** Where the statement that made a piece stands. */
  public Optional<StatementPlace> place(PieceRef piece) {
    return index().origin(piece).flatMap(origin -> StatementPlace.of(view(), origin));
  }

  /** The texts it is one of. */
  public View view() {
    return document.view();
  }
}
