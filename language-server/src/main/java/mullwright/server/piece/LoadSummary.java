package mullwright.server.piece;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import mullwright.layout.Cell;
import mullwright.layout.PieceRef;
import mullwright.model.AnchorUse;
import mullwright.server.Document;
import mullwright.syntax.Segment;
import mullwright.syntax.Statement;
import mullwright.syntax.StatementKind;
import mullwright.workspace.Cancel;
import mullwright.workspace.Cursor;
import mullwright.workspace.LoadPath;

/**
 * What the pieces of one statement carry.
 *
 * @param line in one line
 * @param caution what must be said beside it, or null where no force is told
 * @param pieces each piece by itself: its name and what it is and carries, the first ones if many
 */
public record LoadSummary(String line, String caution, List<String> pieces) {
  /** What tells it piece by piece, by a statement's place. */
  public static final String COMMAND = "mullwright.loads";

  private static final Set<StatementKind> OF =
      EnumSet.of(
          StatementKind.VERTICAL,
          StatementKind.HORIZONTAL,
          StatementKind.DEAD_LOAD,
          StatementKind.WIND_LOAD,
          StatementKind.CLIP,
          StatementKind.VISION,
          StatementKind.SPANDREL);

  private static final int PIECES_TOLD = 24;

  /** True for a statement whose pieces carry something. */
  public static boolean isToldOf(Statement statement) {
    return isOf(statement.kind());
  }

  private static boolean isOf(StatementKind kind) {
    return OF.contains(kind);
  }

  /**
   * Offsets in the file of the statements whose pieces carry something, in the order of the text.
   */
  public static List<Integer> places(Document document, Cancel cancel) {
    List<Integer> places = new ArrayList<>();
    List<Segment> segments = document.file().segments();
    for (int i = 0; i < segments.size(); i++) {
      cancel.check();
      gather(document.file().segmentStart(i), segments.get(i).statements(), places);
    }
    return places;
  }

  private static void gather(int start, List<Statement> statements, List<Integer> places) {
    for (Statement statement : statements) {
      if (isOf(statement.kind())) {
        places.add(start + statement.keyword().range().start());
      } else if (statement.kind() != StatementKind.CATALOG_BLOCK) {
        statement.block().ifPresent(block -> gather(start, block.statements(), places));
      }
    }
  }

  /** What the pieces of the statement at an offset carry; empty if it made none. */
  public static Optional<LoadSummary> at(Document document, int offset) {
    Cursor cursor = document.cursor(offset);
    if (cursor.statement().filter(it -> isOf(it.kind())).isEmpty()) {
      return Optional.empty();
    }
    for (WallPieces wall : WallPieces.of(document)) {
      List<PieceRef> pieces = wall.madeAround(cursor);
      if (!pieces.isEmpty()) {
        return Optional.of(of(wall, pieces));
      }
    }
    return Optional.empty();
  }

  private static LoadSummary of(WallPieces wall, List<PieceRef> pieces) {
    PieceWords words = new PieceWords(wall);
    LoadPath path = wall.details().loads(wall.facts());
    PieceRef.Kind kind = pieces.get(0).kind();
    String count = PieceWords.count(pieces.size(), noun(kind));
    List<String> told = new ArrayList<>();
    pieces.stream()
        .limit(PIECES_TOLD)
        .forEach(piece -> told.add(wall.index().name(piece) + ": " + words.of(piece)));
    if (pieces.size() > PIECES_TOLD) {
      told.add("… and " + (pieces.size() - PIECES_TOLD) + " more");
    }
    List<Cell> lites = path.lites(pieces);
    if (kind == PieceRef.Kind.CELL) {
      return new LoadSummary(words.lites(lites), null, told);
    }
    boolean bears = bears(wall, pieces.get(0));
    String verb =
        pieces.size() == 1 ? (bears ? "carries " : "holds ") : (bears ? "carry " : "hold ");
    String carried =
        lites.isEmpty()
            ? count + ", " + verb + "no lite"
            : count + ", " + verb + words.lites(lites);
    Optional<String> force = greatest(wall, words, pieces, kind);
    return new LoadSummary(
        carried + force.map(it -> "; greatest reaction " + it).orElse(""),
        force.isPresent() ? PieceWords.CAUTION : null,
        told);
  }

  /** False for anchors and clips that let slide. */
  private static boolean bears(WallPieces wall, PieceRef piece) {
    return piece.kind() != PieceRef.Kind.ANCHOR
        || wall.layout().anchors().get(piece.index()).use().kind() == AnchorUse.Kind.DEAD_LOAD;
  }

  private static String noun(PieceRef.Kind kind) {
    return switch (kind) {
      case VERTICAL -> "length";
      case HORIZONTAL -> "horizontal";
      case ANCHOR -> "anchor";
      case CELL -> "lite";
      case SPLICE -> "splice";
      case COVER -> "cover";
    };
  }

  private static Optional<String> greatest(
      WallPieces wall, PieceWords words, List<PieceRef> pieces, PieceRef.Kind kind) {
    LoadPath path = wall.details().loads(wall.facts());
    List<PieceRef> anchors = new ArrayList<>();
    if (kind == PieceRef.Kind.ANCHOR) {
      anchors.addAll(pieces);
    } else if (kind == PieceRef.Kind.VERTICAL) {
      for (PieceRef piece : pieces) {
        path.onto(piece).stream()
            .filter(it -> it.kind() == PieceRef.Kind.ANCHOR)
            .forEach(anchors::add);
      }
    } else if (kind == PieceRef.Kind.HORIZONTAL) {
      return words.ends(pieces);
    }
    return words.reactions(anchors);
  }
}
