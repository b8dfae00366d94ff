package mullwright.report;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import mullwright.analysis.wall.FrameNumber;
import mullwright.analysis.wall.FrameNumbers;
import mullwright.layout.SpliceJoint;

/** The numbers of the splices of a wall. */
@AutoService(CalculationSection.class)
public final class SpliceCalculations implements CalculationSection {
  @Override
  public int order() {
    return 40;
  }

  @Override
  public List<Table> tables(Report.WallAtHand wall, Report.Options options) {
    FrameNumbers numbers = new FrameNumbers(wall.facts().analysis());
    List<FrameNumber> all = new ArrayList<>();
    for (SpliceJoint each : wall.facts().layout().splices()) {
      all.addAll(numbers.splice(each));
    }
    return new FrameTables(wall.units(), options.each()).tables("Splices", all);
  }
}
