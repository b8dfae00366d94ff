package mullwright.layout;

import java.util.List;
import mullwright.model.Catalog;
import mullwright.model.Wall;

/**
 * Lays a wall out: from what the text says to where every piece, joint and opening is.
 *
 * <p>Pure and quick: a wall is laid out afresh at each edit. What depends on something the text
 * leaves open is left out; what the text asks for and cannot be is in {@link
 * WallLayout#impossible()}.
 */
public final class LayoutBuilder {
  private LayoutBuilder() {}

  /** The layout of a wall with the parts of a catalog. */
  public static WallLayout layOut(Wall wall, Catalog catalog) {
    Frame frame = new Frame(wall, catalog);
    VerticalCutter verticals = new VerticalCutter(frame);
    List<HorizontalPiece> horizontals = HorizontalPlacer.place(frame);
    List<Cell> cells = Cells.find(frame);
    List<CoverPiece> covers = CoverCutter.cut(frame, verticals.pieces(), horizontals);
    List<PlacedAnchor> anchors = AnchorPlacer.place(frame, verticals.pieces());
    return new WallLayout(
        wall,
        catalog,
        verticals.pieces(),
        horizontals,
        verticals.joints(),
        anchors,
        cells,
        covers,
        frame.impossible);
  }
}
