package mullwright.layout;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import mullwright.model.LiteUse;

/**
 * Gives equal pieces one mark, counted by first appearance in the layout: V1 … verticals, H1 …
 * horizontals, G1 … lites, P1 … pressure plates, C1 … face caps.
 *
 * <p>Two pieces are equal if profile, length, ends and holes are, one of them turned end for end if
 * need be: see {@link PieceForms}. A mark the text states for a lite is kept. Marks are of this
 * layout only; a ledger keeps them from one revision to the next.
 */
public final class PieceMarks {
  private final List<String> verticals;
  private final List<String> horizontals;
  private final List<Optional<String>> lites;
  private final List<String> covers;

  private PieceMarks(WallLayout layout, HolePlaces holes, Source source) {
    PieceForms forms = PieceForms.of(layout, holes);
    verticals =
        layout.verticals().stream().map(piece -> source.mark("V", forms.vertical(piece))).toList();
    horizontals =
        layout.horizontals().stream()
            .map(piece -> source.mark("H", forms.horizontal(piece)))
            .toList();
    lites = layout.cells().stream().map(cell -> mark(cell, source)).toList();
    covers =
        IntStream.range(0, layout.covers().size())
            .mapToObj(
                at ->
                    source.mark(
                        layout.covers().get(at).what() == CoverPiece.What.PRESSURE_PLATE
                            ? "P"
                            : "C",
                        forms.cover(at)))
            .toList();
  }

  /** The marks of a layout. */
  public static PieceMarks of(WallLayout layout) {
    return of(layout, HolePlaces.of(layout));
  }

  /** The marks of a layout whose holes are known. */
  public static PieceMarks of(WallLayout layout, HolePlaces holes) {
    return new PieceMarks(layout, holes, new Counted());
  }

  /** The marks of a layout as somebody else hands them out. */
  public static PieceMarks of(WallLayout layout, HolePlaces holes, Source source) {
    return new PieceMarks(layout, holes, source);
  }

  /** Hands out marks: the same for the same form, another for another. */
  public interface Source {
    /** The mark of that form; it begins with that letter. */
    String mark(String letter, String form);
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

  /** Mark of any piece; "" if it has none, as splices and anchors. */
  public String mark(PieceRef piece) {
    return switch (piece.kind()) {
      case VERTICAL -> vertical(piece.index());
      case HORIZONTAL -> horizontal(piece.index());
      case CELL -> lite(piece.index()).orElse("");
      case COVER -> cover(piece.index());
      case SPLICE, ANCHOR -> "";
    };
  }

  private static Optional<String> mark(Cell cell, Source source) {
    Optional<String> form = PieceForms.lite(cell);
    Optional<String> stated = cell.use().flatMap(LiteUse::mark);
    return form.map(found -> stated.orElseGet(() -> source.mark("G", found)));
  }

  /** Counts each letter's marks. */
  private static final class Counted implements Source {
    private final Map<String, Map<String, String>> marks = new HashMap<>();

    @Override
    public String mark(String letter, String form) {
      Map<String, String> of = marks.computeIfAbsent(letter, any -> new HashMap<>());
      return of.computeIfAbsent(form, any -> letter + (of.size() + 1));
    }
  }
}
