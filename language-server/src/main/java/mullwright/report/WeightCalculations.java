package mullwright.report;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import mullwright.analysis.wall.WallWeight;
import mullwright.quantity.Kind;

/** What a wall weighs, and that all of it comes down somewhere. */
@AutoService(CalculationSection.class)
public final class WeightCalculations implements CalculationSection {
  @Override
  public int order() {
    return 55;
  }

  @Override
  public List<Table> tables(Report.WallAtHand wall, Report.Options options) {
    WallWeight weight = wall.facts().analysis().weightOfWall();
    if (weight.total() <= 0) {
      return List.of();
    }
    List<List<Entry>> weighs = new ArrayList<>();
    row(weighs, "verticals", weight.verticals());
    row(weighs, "reinforcement", weight.reinforcement());
    row(weighs, "horizontals", weight.horizontals());
    row(weighs, "lites and fillings", weight.fillings());
    row(weighs, "brackets", weight.brackets());
    List<List<Entry>> lands = new ArrayList<>();
    row(lands, "dead-load anchors", weight.onDeadLoadAnchors());
    row(lands, "clips and wind-load anchors, at the end of their slots", weight.onSlidingOnes());
    row(lands, "nothing", weight.onNothing());
    double landed = weight.onDeadLoadAnchors() + weight.onSlidingOnes() + weight.onNothing();
    return List.of(
        table(wall, "weight", "Weight of the wall", "Part", weighs, weight.total()),
        table(wall, "weight-comes-down", "Where it comes down", "On", lands, landed));
  }

  private static void row(List<List<Entry>> rows, String what, double newtons) {
    if (newtons != 0) {
      rows.add(List.of(Entry.text(what), FrameTables.amount(newtons, Kind.FORCE)));
    }
  }

  private static Table table(
      Report.WallAtHand wall,
      String name,
      String title,
      String heading,
      List<List<Entry>> rows,
      double total) {
    return new Table(
        name,
        title,
        List.of(
            Column.text("what", heading),
            Column.amount("weight", "Weight", FrameTables.unit(Kind.FORCE, wall.units()))),
        rows,
        List.of(Entry.text("all"), FrameTables.amount(total, Kind.FORCE)));
  }
}
