package mullwright.layout;

import java.util.List;
import mullwright.model.Catalog;
import mullwright.model.Wall;

/**
 * Where everything of one wall is.
 *
 * @param verticals by line, then from below
 * @param horizontals by row, then from the left
 * @param splices by line, then from below
 * @param anchors by line, then from below
 * @param cells by bay, then from below
 * @param covers pressure plates, then face caps; verticals first, in the order of their carriers
 * @param impossible pieces the text asks for that cannot be, left out of the other lists
 */
public record WallLayout(
    Wall wall,
    Catalog catalog,
    List<VerticalPiece> verticals,
    List<HorizontalPiece> horizontals,
    List<SpliceJoint> splices,
    List<PlacedAnchor> anchors,
    List<Cell> cells,
    List<CoverPiece> covers,
    List<Impossible> impossible) {
  public WallLayout {
    verticals = List.copyOf(verticals);
    horizontals = List.copyOf(horizontals);
    splices = List.copyOf(splices);
    anchors = List.copyOf(anchors);
    cells = List.copyOf(cells);
    covers = List.copyOf(covers);
    impossible = List.copyOf(impossible);
  }
}
