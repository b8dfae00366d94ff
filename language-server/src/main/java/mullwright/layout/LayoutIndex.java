package mullwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import mullwright.model.Grid;
import mullwright.model.Origin;
import mullwright.quantity.Length;

/**
 * Finds pieces: those a statement made, those on a line, on a row, in a bay, at a place; and the
 * statement that made a piece.
 *
 * <p>Made when asked for, in time proportional to the wall. Plates and caps belong to the statement
 * of the member they lie on.
 */
public final class LayoutIndex {
  private final WallLayout layout;
  private final Map<Origin, List<PieceRef>> byOrigin = new HashMap<>();
  private final List<List<PieceRef>> byLine;
  private final List<List<PieceRef>> byRow;
  private final List<List<PieceRef>> byBay;
  private final List<List<HorizontalPiece>> endingOnLine;

  private LayoutIndex(WallLayout layout) {
    this.layout = layout;
    Grid grid = layout.wall().grid();
    byLine = lists(grid.lines().size());
    byRow = lists(grid.rows().size());
    byBay = lists(grid.bays().size());
    endingOnLine = lists(grid.lines().size());
    layout.verticals().forEach(this::add);
    layout.horizontals().forEach(this::add);
    layout.splices().forEach(this::add);
    layout.anchors().forEach(this::add);
    layout.cells().forEach(this::add);
    for (int i = 0; i < layout.covers().size(); i++) {
      add(i, layout.covers().get(i));
    }
    Comparator<HorizontalPiece> fromBelow = Comparator.comparing(HorizontalPiece::yLeft);
    endingOnLine.forEach(pieces -> pieces.sort(fromBelow));
    grid.lines().forEach(line -> join(line.origin(), byLine.get(line.index())));
    grid.rows().forEach(row -> join(row.origin(), byRow.get(row.index())));
  }

  /** The index of a layout. */
  public static LayoutIndex of(WallLayout layout) {
    return new LayoutIndex(layout);
  }

  private static <T> List<List<T>> lists(int count) {
    List<List<T>> lists = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      lists.add(new ArrayList<>());
    }
    return lists;
  }

  private void made(Origin origin, PieceRef piece) {
    byOrigin.computeIfAbsent(origin, any -> new ArrayList<>()).add(piece);
  }

  // what stands on a line or a row belongs to the grid's statement too, after what it made itself;
  // one statement names all lines of a tower, and no piece stands on two
  private void join(Origin origin, List<PieceRef> pieces) {
    List<PieceRef> made = byOrigin.computeIfAbsent(origin, any -> new ArrayList<>());
    for (PieceRef piece : pieces) {
      if (origin(piece).filter(origin::equals).isEmpty()) {
        made.add(piece);
      }
    }
  }

  private void add(VerticalPiece piece) {
    PieceRef ref = new PieceRef(PieceRef.Kind.VERTICAL, piece.index());
    made(piece.origin(), ref);
    byLine.get(piece.line()).add(ref);
  }

  private void add(HorizontalPiece piece) {
    PieceRef ref = new PieceRef(PieceRef.Kind.HORIZONTAL, piece.index());
    made(piece.origin(), ref);
    byRow.get(piece.row()).add(ref);
    inBays(piece.firstBay(), piece.lastBay(), bay -> byBay.get(bay).add(ref));
    endingOnLine.get(piece.leftLine()).add(piece);
    endingOnLine.get(piece.rightLine()).add(piece);
  }

  private void add(SpliceJoint joint) {
    PieceRef ref = new PieceRef(PieceRef.Kind.SPLICE, joint.index());
    made(joint.splice().origin(), ref);
    byLine.get(joint.line()).add(ref);
  }

  private void add(PlacedAnchor anchor) {
    PieceRef ref = new PieceRef(PieceRef.Kind.ANCHOR, anchor.index());
    made(anchor.use().origin(), ref);
    byLine.get(anchor.use().line()).add(ref);
  }

  private void add(Cell cell) {
    PieceRef ref = new PieceRef(PieceRef.Kind.CELL, cell.index());
    cell.use().ifPresent(use -> made(use.origin(), ref));
    cell.opening().ifPresent(opening -> made(opening.origin(), ref));
    inBays(cell.firstBay(), cell.lastBay(), bay -> byBay.get(bay).add(ref));
  }

  private void add(int index, CoverPiece cover) {
    PieceRef ref = new PieceRef(PieceRef.Kind.COVER, index);
    if (cover.vertical()) {
      VerticalPiece carrier = layout.verticals().get(cover.carrier());
      made(carrier.origin(), ref);
      byLine.get(carrier.line()).add(ref);
    } else {
      HorizontalPiece carrier = layout.horizontals().get(cover.carrier());
      made(carrier.origin(), ref);
      byRow.get(carrier.row()).add(ref);
      inBays(carrier.firstBay(), carrier.lastBay(), bay -> byBay.get(bay).add(ref));
    }
  }

  private static void inBays(int first, int last, Consumer<Integer> take) {
    for (int bay = first; bay <= last; bay++) {
      take.accept(bay);
    }
  }

  /** The pieces a statement made; for a line or a row of the grid, what stands on it. */
  public List<PieceRef> madeBy(Origin statement) {
    return List.copyOf(byOrigin.getOrDefault(statement, List.of()));
  }

  /**
   * The pieces whose statement is or lies within that place of the text, or reaches over all of it;
   * an offset is an empty range.
   */
  public List<PieceRef> touching(Origin place) {
    List<PieceRef> found = new ArrayList<>();
    byOrigin.forEach(
        (origin, pieces) -> {
          if (origin.file().equals(place.file())
              && origin.segment() == place.segment()
              && (origin.range().start() <= place.range().start()
                      && place.range().end() <= origin.range().end()
                  || place.range().start() <= origin.range().start()
                      && origin.range().end() <= place.range().end())) {
            found.addAll(pieces);
          }
        });
    return found.stream()
        .distinct()
        .sorted(Comparator.comparing(PieceRef::kind).thenComparing(PieceRef::index))
        .toList();
  }

  /** Verticals, splices, anchors and covers on a line. */
  public List<PieceRef> onLine(int line) {
    return List.copyOf(byLine.get(line));
  }

  /** Horizontals and their covers on a row. */
  public List<PieceRef> onRow(int row) {
    return List.copyOf(byRow.get(row));
  }

  /** Horizontals, cells and horizontal covers in a bay. */
  public List<PieceRef> inBay(int bay) {
    return List.copyOf(byBay.get(bay));
  }

  /** The cell of a bay whose daylight opening holds that height. */
  public Optional<Cell> cellAt(int bay, Length y) {
    return byBay.get(bay).stream()
        .filter(ref -> ref.kind() == PieceRef.Kind.CELL)
        .map(ref -> layout.cells().get(ref.index()))
        .filter(cell -> !y.isShorterThan(cell.bottom()) && !y.isLongerThan(cell.top()))
        .findFirst();
  }

  /** The length of vertical at that height of a line. */
  public Optional<VerticalPiece> verticalAt(int line, Length y) {
    return byLine.get(line).stream()
        .filter(ref -> ref.kind() == PieceRef.Kind.VERTICAL)
        .map(ref -> layout.verticals().get(ref.index()))
        .filter(piece -> !y.isShorterThan(piece.bottom()) && !y.isLongerThan(piece.top()))
        .findFirst();
  }

  /** The horizontals that end on a length of vertical, on either side, from below. */
  public List<HorizontalPiece> endingOn(VerticalPiece vertical) {
    return endingOnLine.get(vertical.line()).stream()
        .filter(
            piece -> {
              Length y = piece.leftLine() == vertical.line() ? piece.yLeft() : piece.yRight();
              return vertical.bottom().isShorterThan(y) && y.isShorterThan(vertical.top());
            })
        .toList();
  }

  /** As the shop names it. */
  public String name(PieceRef piece) {
    return switch (piece.kind()) {
      case VERTICAL -> layout.verticals().get(piece.index()).name();
      case HORIZONTAL -> layout.horizontals().get(piece.index()).name();
      case SPLICE -> layout.splices().get(piece.index()).name();
      case ANCHOR -> layout.anchors().get(piece.index()).name();
      case CELL -> layout.cells().get(piece.index()).name();
      case COVER -> layout.covers().get(piece.index()).name();
    };
  }

  /** The statement that made it; empty for a cell nothing fills. */
  public Optional<Origin> origin(PieceRef piece) {
    return switch (piece.kind()) {
      case VERTICAL -> Optional.of(layout.verticals().get(piece.index()).origin());
      case HORIZONTAL -> Optional.of(layout.horizontals().get(piece.index()).origin());
      case SPLICE -> Optional.of(layout.splices().get(piece.index()).splice().origin());
      case ANCHOR -> Optional.of(layout.anchors().get(piece.index()).use().origin());
      case CELL -> {
        Cell cell = layout.cells().get(piece.index());
        yield cell.use()
            .map(use -> use.origin())
            .or(() -> cell.opening().map(Grid.Opening::origin));
      }
      case COVER -> {
        CoverPiece cover = layout.covers().get(piece.index());
        yield Optional.of(
            cover.vertical()
                ? layout.verticals().get(cover.carrier()).origin()
                : layout.horizontals().get(cover.carrier()).origin());
      }
    };
  }
}
