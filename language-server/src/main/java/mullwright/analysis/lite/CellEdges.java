package mullwright.analysis.lite;

import java.util.List;
import java.util.Optional;
import mullwright.layout.Cell;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.RowPieces;
import mullwright.layout.VerticalPiece;
import mullwright.layout.VerticalsOnLine;
import mullwright.layout.WallLayout;
import mullwright.model.Grid;
import mullwright.model.Part;
import mullwright.quantity.Length;

/** The members round a cell of a layout; each edge of a lite may stand in another profile. */
public final class CellEdges {
  private final Grid grid;
  private final List<VerticalPiece> verticals;
  private final VerticalsOnLine lines;
  private final RowPieces rows;

  /**
   * The four members; empty where there is none.
   *
   * @param below the horizontal it stands on
   */
  public record Edges(
      Optional<VerticalPiece> left,
      Optional<VerticalPiece> right,
      Optional<HorizontalPiece> below,
      Optional<HorizontalPiece> above) {
    /** True if a member stands at every edge. */
    public boolean whole() {
      return left.isPresent() && right.isPresent() && below.isPresent() && above.isPresent();
    }

    Part.Profile leftProfile() {
      return left.orElseThrow().profile();
    }

    Part.Profile rightProfile() {
      return right.orElseThrow().profile();
    }

    Part.Profile belowProfile() {
      return below.orElseThrow().profile();
    }

    Part.Profile aboveProfile() {
      return above.orElseThrow().profile();
    }
  }

  /** The members of a layout by where they are. */
  public CellEdges(WallLayout layout) {
    grid = layout.wall().grid();
    verticals = layout.verticals();
    lines = new VerticalsOnLine(layout);
    rows = RowPieces.of(layout);
  }

  /** The members round a cell. */
  public Edges of(Cell cell) {
    Length middle = cell.bottom().plus(cell.top()).half();
    return new Edges(
        vertical(grid.bays().get(cell.firstBay()).left(), middle),
        vertical(grid.bays().get(cell.lastBay()).right(), middle),
        rows.under(cell),
        rows.over(cell));
  }

  private Optional<VerticalPiece> vertical(int line, Length height) {
    int piece = lines.touching(line, height);
    return piece < 0 ? Optional.empty() : Optional.of(verticals.get(piece));
  }
}
