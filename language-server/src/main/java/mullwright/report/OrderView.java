package mullwright.report;

import com.google.auto.service.AutoService;
import java.util.List;
import mullwright.drawing.Drawing;
import mullwright.drawing.Sheet;
import mullwright.drawing.order.OrderSheets;

/** The order of work in pictures. */
@AutoService(DrawingView.class)
public final class OrderView implements DrawingView {
  @Override
  public String name() {
    return "order";
  }

  @Override
  public int order() {
    return 400;
  }

  @Override
  public List<Sheet> sheets(DrawnWall wall, Wanted wanted) {
    DrawnOrder order = DrawnOrder.of(wall.wall());
    return OrderSheets.of(
        wall.layout(), order.stages(), order.notes(), wanted.paper(), wall.titleBlock());
  }

  @Override
  public List<Drawing> uncut(DrawnWall wall, Wanted wanted) {
    return List.of(OrderSheets.uncut(wall.layout(), DrawnOrder.of(wall.wall()).stages()));
  }
}
