package mullwright.takeoff;

import mullwright.layout.Cell;
import mullwright.layout.CoverPiece;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.WallLayout;
import mullwright.model.Grid;

/** Tells on which face of a wall a piece is; a corner belongs to the face on its left. */
public final class Faces {
  private final WallLayout layout;
  private final Grid grid;

  /** Of a layout. */
  public Faces(WallLayout layout) {
    this.layout = layout;
    this.grid = layout.wall().grid();
  }

  /** Index of the face a line is on. */
  public int ofLine(int line) {
    for (int face = 0; face < grid.faces().size(); face++) {
      Grid.Face one = grid.faces().get(face);
      if (one.firstLine() <= line && line <= one.lastLine()) {
        return face;
      }
    }
    return 0;
  }

  /** Index of the face a bay is on. */
  public int ofBay(int bay) {
    Grid.Bay of = grid.bays().get(bay);
    for (int face = 0; face < grid.faces().size(); face++) {
      Grid.Face one = grid.faces().get(face);
      if (one.firstLine() <= of.left() && of.right() <= one.lastLine()) {
        return face;
      }
    }
    return ofLine(of.left());
  }

  /** Index of the face a horizontal is on. */
  public int of(HorizontalPiece piece) {
    return ofBay(piece.firstBay());
  }

  /** Index of the face a lite is on. */
  public int of(Cell cell) {
    return ofBay(cell.firstBay());
  }

  /** Index of the face a plate or cap is on. */
  public int of(CoverPiece cover) {
    return cover.vertical()
        ? ofLine(layout.verticals().get(cover.carrier()).line())
        : of(layout.horizontals().get(cover.carrier()));
  }

  /** How many faces there are, at least one. */
  public int count() {
    return Math.max(1, grid.faces().size());
  }

  /** Name of a face, or "" if it has none. */
  public String name(int face) {
    return face < grid.faces().size() ? grid.faces().get(face).name() : "";
  }
}
