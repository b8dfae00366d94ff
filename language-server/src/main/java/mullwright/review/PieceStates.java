package mullwright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.layout.Cell;
import mullwright.layout.CoverPiece;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.LayoutIndex;
import mullwright.layout.PieceMarks;
import mullwright.layout.PieceRef;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.model.Grid;
import mullwright.model.Members;
import mullwright.quantity.Length;

/** Every piece of a wall by its key, as the shop makes it. */
final class PieceStates {
  private final WallLayout layout;
  private final WallNames names;
  private final PieceMarks marks;
  private final LayoutIndex index;
  private final Map<PieceKey, PieceState> found = new LinkedHashMap<>();
  private final List<PieceKey> verticals = new ArrayList<>();
  private final List<PieceKey> horizontals = new ArrayList<>();

  private PieceStates(WallLayout layout, WallNames names) {
    this.layout = layout;
    this.names = names;
    this.marks = PieceMarks.of(layout);
    this.index = LayoutIndex.of(layout);
    layout.verticals().forEach(this::vertical);
    layout.horizontals().forEach(this::horizontal);
    layout.cells().forEach(this::lite);
    for (int at = 0; at < layout.covers().size(); at++) {
      cover(at, layout.covers().get(at));
    }
  }

  static Map<PieceKey, PieceState> of(WallLayout layout, WallNames names) {
    return new PieceStates(layout, names).found;
  }

  private String line(int line) {
    return names.lines().get(line);
  }

  private PieceKey put(PieceKey wanted, PieceState state) {
    PieceKey key = wanted;
    for (int next = 2; found.containsKey(key); next++) {
      key = new PieceKey(key.kind(), key.lines(), key.rows(), wanted.more() + " no. " + next);
    }
    found.put(key, state);
    return key;
  }

  private static PieceState state(
      PieceRef.Kind kind, int index, String mark, String name, PieceState.Make make) {
    return new PieceState(new PieceRef(kind, index), mark, name, make);
  }

  private void vertical(VerticalPiece piece) {
    PieceKey key =
        new PieceKey(
            PieceRef.Kind.VERTICAL,
            List.of(line(piece.line())),
            List.of(),
            Integer.toString(piece.ordinal()));
    PieceState.Make make =
        new PieceState.Make(piece.profile().name(), piece.length(), Optional.empty(), fixed(piece));
    verticals.add(
        put(
            key,
            state(
                PieceRef.Kind.VERTICAL,
                piece.index(),
                marks.vertical(piece.index()),
                piece.name(),
                make)));
  }

  private List<PieceState.Station> fixed(VerticalPiece piece) {
    List<PieceState.Station> on = new ArrayList<>();
    for (HorizontalPiece horizontal : index.endingOn(piece)) {
      boolean right = horizontal.leftLine() == piece.line();
      Length y = right ? horizontal.yLeft() : horizontal.yRight();
      station(on, y, piece, (right ? "right " : "left ") + horizontal.profile().name());
    }
    for (PieceRef ref : index.onLine(piece.line())) {
      if (ref.kind() == PieceRef.Kind.ANCHOR) {
        PlacedAnchor anchor = layout.anchors().get(ref.index());
        if (anchor.vertical() == piece.index()) {
          String part = anchor.use().part().map(given -> " " + given.value()).orElse("");
          station(on, anchor.y(), piece, anchor.use().kind().spelling() + part);
        }
      }
    }
    for (Members.Bracket bracket : layout.wall().members().brackets()) {
      Length y = bracket.at().elevation();
      boolean here = !y.isShorterThan(piece.bottom()) && !y.isLongerThan(piece.top());
      if (bracket.line() == piece.line() && here) {
        String bolts = bracket.bolted().map(b -> b.count() + " " + b.fastener().value()).orElse("");
        station(on, y, piece, ("bracket " + bolts).strip());
      }
    }
    if (piece.spliceBelow() >= 0) {
      on.add(new PieceState.Station(Length.ZERO, "spliced"));
    }
    if (piece.spliceAbove() >= 0) {
      on.add(new PieceState.Station(piece.length(), "spliced"));
    }
    on.sort(Comparator.comparing(PieceState.Station::at).thenComparing(PieceState.Station::what));
    return on;
  }

  private static void station(
      List<PieceState.Station> on, Length y, VerticalPiece piece, String what) {
    on.add(new PieceState.Station(y.minus(piece.bottom()), what));
  }

  private void horizontal(HorizontalPiece piece) {
    PieceKey key =
        new PieceKey(
            PieceRef.Kind.HORIZONTAL,
            List.of(line(piece.leftLine()), line(piece.rightLine())),
            List.of(names.rows().get(piece.row())),
            "");
    Length rise = piece.yRight().minus(piece.yLeft());
    List<PieceState.Station> slope =
        rise.signum() == 0 ? List.of() : List.of(new PieceState.Station(rise, "rise"));
    PieceState.Make make =
        new PieceState.Make(piece.profile().name(), piece.length(), Optional.empty(), slope);
    horizontals.add(
        put(
            key,
            state(
                PieceRef.Kind.HORIZONTAL,
                piece.index(),
                marks.horizontal(piece.index()),
                piece.name(),
                make)));
  }

  private void lite(Cell cell) {
    if (cell.use().isEmpty() || cell.opening().isPresent()) {
      return;
    }
    Grid grid = layout.wall().grid();
    PieceKey key =
        new PieceKey(
            PieceRef.Kind.CELL,
            List.of(
                line(grid.bays().get(cell.firstBay()).left()),
                line(grid.bays().get(cell.lastBay()).right())),
            List.of(names.rows().get(cell.below()), names.rows().get(cell.above())),
            "");
    List<PieceState.Station> leaf = new ArrayList<>();
    if (cell.use().get().operable()) {
      leaf.add(new PieceState.Station(Length.ZERO, "operable"));
    }
    PieceState.Make make =
        new PieceState.Make(
            cell.use().get().glass().value(),
            cell.glassWidth(),
            Optional.of(cell.glassHeight()),
            leaf);
    put(
        key,
        state(
            PieceRef.Kind.CELL,
            cell.index(),
            marks.lite(cell.index()).orElse(""),
            cell.name(),
            make));
  }

  private void cover(int at, CoverPiece cover) {
    PieceKey carrier =
        cover.vertical() ? verticals.get(cover.carrier()) : horizontals.get(cover.carrier());
    String what = cover.what() == CoverPiece.What.PRESSURE_PLATE ? "plate " : "cap ";
    PieceKey key =
        new PieceKey(PieceRef.Kind.COVER, carrier.lines(), carrier.rows(), what + carrier.more());
    PieceState.Make make =
        new PieceState.Make(cover.part(), cover.length(), Optional.empty(), List.of());
    put(key, state(PieceRef.Kind.COVER, at, marks.cover(at), cover.name(), make));
  }
}
