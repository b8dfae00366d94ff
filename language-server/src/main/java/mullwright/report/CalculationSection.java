package mullwright.report;

import java.util.List;

/**
 * One part of the calculations: the numbers of one kind of thing. Its class is found by itself
 * ({@code @AutoService(CalculationSection.class)}).
 */
public interface CalculationSection {
  /** Where it stands among the parts: the lowest first. */
  int order();

  /** Its tables for a wall; a table without rows is left out. */
  List<Table> tables(Report.WallAtHand wall, Report.Options options);
}
