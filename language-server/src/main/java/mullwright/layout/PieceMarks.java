package mullwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.model.LiteUse;
import mullwright.model.Members;
import mullwright.quantity.Length;

/**
 * Gives equal pieces one mark, counted by first appearance in the layout: V1 … verticals, H1 …
 * horizontals, G1 … lites, P1 … pressure plates, C1 … face caps.
 *
 * <p>Two verticals are equal if profile, length, ends and all that is fixed to them at the same
 * heights are equal; turning end for end is not tried. A mark the text states for a lite is kept. A
 * piece with a slope shares its mark with none but its like: the same rise, or for a lite no other.
 * Marks are of this layout only; they are not kept from one revision to the next.
 */
public final class PieceMarks {
  /** Something fixed to a vertical: how high above its lower end, and what. */
  private record Station(Length above, String what) {}

  private record VerticalKey(
      String profile,
      Length length,
      boolean splicedBelow,
      boolean splicedAbove,
      List<Station> on) {}

  private record HorizontalKey(String profile, Length length, Length rise) {}

  private record LiteKey(
      String glass, Length width, Length height, boolean operable, int onlyThis) {}

  private record CoverKey(String part, boolean vertical, Length length, Length rise) {}

  private final List<String> verticals;
  private final List<String> horizontals;
  private final List<Optional<String>> lites;
  private final List<String> covers;

  private PieceMarks(WallLayout layout) {
    LayoutIndex index = LayoutIndex.of(layout);
    Marker<VerticalKey> vertical = new Marker<>("V");
    verticals =
        layout.verticals().stream().map(piece -> vertical.mark(key(piece, layout, index))).toList();
    Marker<HorizontalKey> horizontal = new Marker<>("H");
    horizontals = layout.horizontals().stream().map(piece -> horizontal.mark(key(piece))).toList();
    Marker<LiteKey> lite = new Marker<>("G");
    lites = layout.cells().stream().map(cell -> mark(cell, lite)).toList();
    Marker<CoverKey> plate = new Marker<>("P");
    Marker<CoverKey> cap = new Marker<>("C");
    covers =
        layout.covers().stream()
            .map(
                cover ->
                    (cover.what() == CoverPiece.What.PRESSURE_PLATE ? plate : cap)
                        .mark(key(cover, layout)))
            .toList();
  }

  /** The marks of a layout. */
  public static PieceMarks of(WallLayout layout) {
    return new PieceMarks(layout);
  }

  /** Mark of a vertical, by index. */
  public String vertical(int index) {
    return verticals.get(index);
  }

  /** Mark of a horizontal, by index. */
  public String horizontal(int index) {
    return horizontals.get(index);
  }

  /** Mark of the lite in a cell, by index; empty for an opening by others or an unfilled one. */
  public Optional<String> lite(int index) {
    return lites.get(index);
  }

  /** Mark of a plate or cap, by index. */
  public String cover(int index) {
    return covers.get(index);
  }

  private static VerticalKey key(VerticalPiece piece, WallLayout layout, LayoutIndex index) {
    List<Station> on = new ArrayList<>();
    for (HorizontalPiece horizontal : index.endingOn(piece)) {
      boolean right = horizontal.leftLine() == piece.line();
      Length y = right ? horizontal.yLeft() : horizontal.yRight();
      String what = (right ? "right " : "left ") + horizontal.profile().name();
      on.add(new Station(y.minus(piece.bottom()), what));
    }
    for (PieceRef ref : index.onLine(piece.line())) {
      if (ref.kind() == PieceRef.Kind.ANCHOR) {
        PlacedAnchor anchor = layout.anchors().get(ref.index());
        if (anchor.vertical() == piece.index()) {
          String part = anchor.use().part().map(given -> given.value()).orElse("");
          String what = anchor.use().kind().spelling() + " " + part;
          on.add(new Station(anchor.y().minus(piece.bottom()), what));
        }
      }
    }
    for (Members.Bracket bracket : layout.wall().members().brackets()) {
      Length y = bracket.at().elevation();
      if (bracket.line() == piece.line()
          && !y.isShorterThan(piece.bottom())
          && !y.isLongerThan(piece.top())) {
        String bolts = bracket.bolted().map(b -> b.count() + " " + b.fastener().value()).orElse("");
        on.add(new Station(y.minus(piece.bottom()), "bracket " + bolts));
      }
    }
    on.sort(Comparator.comparing(Station::above).thenComparing(Station::what));
    return new VerticalKey(
        piece.profile().name(),
        piece.length(),
        piece.spliceBelow() >= 0,
        piece.spliceAbove() >= 0,
        List.copyOf(on));
  }

  private static HorizontalKey key(HorizontalPiece piece) {
    return new HorizontalKey(
        piece.profile().name(), piece.length(), piece.yRight().minus(piece.yLeft()));
  }

  private static Optional<String> mark(Cell cell, Marker<LiteKey> marker) {
    if (cell.use().isEmpty() || cell.opening().isPresent()) {
      return Optional.empty();
    }
    LiteUse use = cell.use().get();
    if (use.mark().isPresent()) {
      return use.mark();
    }
    return Optional.of(
        marker.mark(
            new LiteKey(
                use.glass().value(),
                cell.glassWidth(),
                cell.glassHeight(),
                use.operable(),
                cell.rectangular() ? -1 : cell.index())));
  }

  private static CoverKey key(CoverPiece cover, WallLayout layout) {
    Length rise = Length.ZERO;
    if (!cover.vertical()) {
      HorizontalPiece carrier = layout.horizontals().get(cover.carrier());
      rise = carrier.yRight().minus(carrier.yLeft());
    }
    return new CoverKey(cover.part(), cover.vertical(), cover.length(), rise);
  }

  /** Hands out one letter's marks. */
  private static final class Marker<K> {
    private final String letter;
    private final Map<K, String> marks = new HashMap<>();

    Marker(String letter) {
      this.letter = letter;
    }

    String mark(K key) {
      return marks.computeIfAbsent(key, any -> letter + (marks.size() + 1));
    }
  }
}
