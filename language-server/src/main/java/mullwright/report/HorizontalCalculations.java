package mullwright.report;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import mullwright.analysis.wall.FrameNumber;
import mullwright.analysis.wall.FrameNumbers;
import mullwright.layout.HorizontalPiece;

/** The numbers of the horizontals of a wall. */
@AutoService(CalculationSection.class)
public final class HorizontalCalculations implements CalculationSection {
  @Override
  public int order() {
    return 30;
  }

  @Override
  public List<Table> tables(Report.WallAtHand wall, Report.Options options) {
    FrameNumbers numbers = new FrameNumbers(wall.facts().analysis());
    List<FrameNumber> all = new ArrayList<>();
    for (HorizontalPiece each : wall.facts().layout().horizontals()) {
      all.addAll(numbers.horizontal(each));
    }
    return new FrameTables(wall.units(), options.each()).tables("Horizontals", all);
  }
}
