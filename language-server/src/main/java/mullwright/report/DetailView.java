package mullwright.report;

import com.google.auto.service.AutoService;
import java.util.List;
import mullwright.drawing.Drawing;
import mullwright.drawing.Sheet;
import mullwright.drawing.detail.DetailSheets;

/** Details of a wall: sill, head, intermediate, jamb, mullion, splice. */
@AutoService(DrawingView.class)
public final class DetailView implements DrawingView {
  @Override
  public String name() {
    return "details";
  }

  @Override
  public int order() {
    return 200;
  }

  @Override
  public List<Sheet> sheets(DrawnWall wall, Wanted wanted) {
    return DetailSheets.of(wall.layout(), wall.wall().units(), wanted.paper(), wall.titleBlock());
  }

  @Override
  public List<Drawing> uncut(DrawnWall wall, Wanted wanted) {
    return List.of(DetailSheets.uncut(wall.layout(), wall.wall().units()));
  }
}
