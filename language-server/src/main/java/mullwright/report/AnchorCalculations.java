package mullwright.report;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import mullwright.analysis.wall.FrameNumber;
import mullwright.analysis.wall.FrameNumbers;
import mullwright.layout.PlacedAnchor;

/** The numbers of the anchors of a wall. */
@AutoService(CalculationSection.class)
public final class AnchorCalculations implements CalculationSection {
  @Override
  public int order() {
    return 50;
  }

  @Override
  public List<Table> tables(Report.WallAtHand wall, Report.Options options) {
    FrameNumbers numbers = new FrameNumbers(wall.facts().analysis());
    List<FrameNumber> all = new ArrayList<>();
    for (PlacedAnchor each : wall.facts().layout().anchors()) {
      all.addAll(numbers.anchor(each));
    }
    return new FrameTables(wall.units(), options.each()).tables("Anchors", all);
  }
}
