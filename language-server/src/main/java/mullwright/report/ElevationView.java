package mullwright.report;

import com.google.auto.service.AutoService;
import java.util.List;
import mullwright.drawing.Drawing;
import mullwright.drawing.Sheet;
import mullwright.drawing.elevation.Elevation;
import mullwright.drawing.elevation.ElevationOptions;
import mullwright.drawing.elevation.ElevationSheets;

/** The elevation of a wall, seen from outdoors. */
@AutoService(DrawingView.class)
public final class ElevationView implements DrawingView {
  @Override
  public String name() {
    return "elevation";
  }

  @Override
  public int order() {
    return 100;
  }

  @Override
  public List<Sheet> sheets(DrawnWall wall, Wanted wanted) {
    return ElevationSheets.of(
        wall.layout(),
        options(wall, wanted),
        wanted.scale(),
        wanted.paper(),
        wall.titleBlock(),
        wall.notes());
  }

  @Override
  public List<Drawing> uncut(DrawnWall wall, Wanted wanted) {
    return List.of(Elevation.of(wall.layout(), options(wall, wanted)));
  }

  private static ElevationOptions options(DrawnWall wall, Wanted wanted) {
    ElevationOptions options = ElevationOptions.of(wall.wall().units(), wall.labels());
    options = wanted.scale().map(options::at).orElse(options);
    return wanted.keynotes() ? options.with(wall.keynotes()) : options;
  }
}
