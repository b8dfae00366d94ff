package mullwright.report;

import com.google.auto.service.AutoService;
import java.util.List;
import mullwright.drawing.Drawing;
import mullwright.drawing.Sheet;
import mullwright.drawing.piece.PieceSheets;

/** Drawings of single pieces for the shop: verticals and horizontals with every hole. */
@AutoService(DrawingView.class)
public final class PieceView implements DrawingView {
  @Override
  public String name() {
    return "pieces";
  }

  @Override
  public int order() {
    return 300;
  }

  @Override
  public List<Sheet> sheets(DrawnWall wall, Wanted wanted) {
    return PieceSheets.of(
        DrawnBars.of(wall.wall()), wall.wall().units(), wanted.paper(), wall.titleBlock());
  }

  @Override
  public List<Drawing> uncut(DrawnWall wall, Wanted wanted) {
    return List.of(
        PieceSheets.uncut(
            "Pieces " + wall.layout().wall().name(),
            DrawnBars.of(wall.wall()),
            wall.wall().units()));
  }
}
