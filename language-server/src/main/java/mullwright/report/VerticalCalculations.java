package mullwright.report;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import mullwright.analysis.wall.FrameNumber;
import mullwright.analysis.wall.FrameNumbers;
import mullwright.layout.VerticalPiece;

/** The numbers of the verticals of a wall. */
@AutoService(CalculationSection.class)
public final class VerticalCalculations implements CalculationSection {
  @Override
  public int order() {
    return 20;
  }

  @Override
  public List<Table> tables(Report.WallAtHand wall, Report.Options options) {
    FrameNumbers numbers = new FrameNumbers(wall.facts().analysis());
    List<FrameNumber> all = new ArrayList<>();
    for (VerticalPiece each : wall.facts().layout().verticals()) {
      all.addAll(numbers.vertical(each));
    }
    return new FrameTables(wall.units(), options.each()).tables("Verticals", all);
  }
}
