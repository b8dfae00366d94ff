package mullwright.preview;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import mullwright.layout.Cell;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.PieceRef;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.SpliceJoint;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.quantity.Length;

/**
 * The pieces of a wall by the names the page has for them and by those the shop has; for one
 * thread.
 */
final class Pieces {
  private final WallLayout layout;
  private Map<String, List<PieceRef>> byName;

  Pieces(WallLayout layout) {
    this.layout = layout;
  }

  /** The pieces the shop calls so. */
  List<PieceRef> named(String name) {
    if (byName == null) {
      byName = new HashMap<>();
      gather();
    }
    return byName.getOrDefault(name, List.of());
  }

  private void gather() {
    layout.verticals().forEach(piece -> add(piece.name(), PieceRef.Kind.VERTICAL, piece.index()));
    layout
        .horizontals()
        .forEach(piece -> add(piece.name(), PieceRef.Kind.HORIZONTAL, piece.index()));
    layout.splices().forEach(piece -> add(piece.name(), PieceRef.Kind.SPLICE, piece.index()));
    layout.anchors().forEach(piece -> add(piece.name(), PieceRef.Kind.ANCHOR, piece.index()));
    layout.cells().forEach(piece -> add(piece.name(), PieceRef.Kind.CELL, piece.index()));
    for (int at = 0; at < layout.covers().size(); at++) {
      boolean vertical = layout.covers().get(at).vertical();
      // a plate or cap is seen as the member it lies on
      add(
          layout.covers().get(at).name(),
          vertical ? PieceRef.Kind.VERTICAL : PieceRef.Kind.HORIZONTAL,
          layout.covers().get(at).carrier());
    }
  }

  private void add(String name, PieceRef.Kind kind, int index) {
    byName.computeIfAbsent(name, any -> new ArrayList<>(1)).add(new PieceRef(kind, index));
  }

  /** What the page calls it: {@code vertical-3}. */
  static String id(PieceRef piece) {
    return piece.word();
  }

  /** Which piece the page means; empty if there is none. */
  Optional<PieceRef> of(String id) {
    int dash = id.lastIndexOf('-');
    try {
      PieceRef.Kind kind = PieceRef.Kind.valueOf(id.substring(0, dash).toUpperCase(Locale.ROOT));
      int index = Integer.parseInt(id.substring(dash + 1));
      return index >= 0 && index < count(kind)
          ? Optional.of(new PieceRef(kind, index))
          : Optional.empty();
    } catch (IllegalArgumentException | StringIndexOutOfBoundsException none) {
      return Optional.empty();
    }
  }

  private int count(PieceRef.Kind kind) {
    return switch (kind) {
      case VERTICAL -> layout.verticals().size();
      case HORIZONTAL -> layout.horizontals().size();
      case SPLICE -> layout.splices().size();
      case ANCHOR -> layout.anchors().size();
      case CELL -> layout.cells().size();
      case COVER -> layout.covers().size();
    };
  }

  /**
   * The room a piece takes in the wall, or its place if it takes none.
   *
   * @param left smallest x, {@code bottom} smallest height
   */
  record Extent(Length left, Length bottom, Length right, Length top) {
    Length middleX() {
      return left.plus(right).half();
    }

    Length middleY() {
      return bottom.plus(top).half();
    }
  }

  Extent extent(PieceRef piece) {
    return switch (piece.kind()) {
      case VERTICAL -> {
        VerticalPiece it = layout.verticals().get(piece.index());
        Length half = it.profile().face().value().half();
        yield new Extent(it.x().minus(half), it.bottom(), it.x().plus(half), it.top());
      }
      case HORIZONTAL -> {
        HorizontalPiece it = layout.horizontals().get(piece.index());
        boolean rises = it.yLeft().isShorterThan(it.yRight());
        Length half = it.profile().face().value().half();
        yield new Extent(
            it.left(),
            (rises ? it.yLeft() : it.yRight()).minus(half),
            it.right(),
            (rises ? it.yRight() : it.yLeft()).plus(half));
      }
      case SPLICE -> {
        SpliceJoint it = layout.splices().get(piece.index());
        Length x = layout.verticals().get(it.below()).x();
        yield new Extent(x, it.y(), x, it.y());
      }
      case ANCHOR -> {
        PlacedAnchor it = layout.anchors().get(piece.index());
        Length x = layout.wall().grid().lines().get(it.use().line()).x();
        yield new Extent(x, it.y(), x, it.y());
      }
      case CELL -> {
        Cell it = layout.cells().get(piece.index());
        yield new Extent(it.left(), it.bottom(), it.right(), it.top());
      }
      case COVER -> {
        boolean vertical = layout.covers().get(piece.index()).vertical();
        yield extent(
            new PieceRef(
                vertical ? PieceRef.Kind.VERTICAL : PieceRef.Kind.HORIZONTAL,
                layout.covers().get(piece.index()).carrier()));
      }
    };
  }
}
