package mullwright.analysis.wall;

import mullwright.layout.WallLayout;

/** The wind pressure on each cell of a wall, found once. */
final class CellWind {
  private final boolean given;
  private final WindOnWall.Pressure[] pressures;

  CellWind(WallLayout layout, WindOnWall wind) {
    given = wind.given();
    pressures = layout.cells().stream().map(wind::on).toArray(WindOnWall.Pressure[]::new);
  }

  /** True if the project gives any pressure at all. */
  boolean given() {
    return given;
  }

  /** The pressure on the cell of that index. */
  WindOnWall.Pressure on(int cell) {
    return pressures[cell];
  }
}
