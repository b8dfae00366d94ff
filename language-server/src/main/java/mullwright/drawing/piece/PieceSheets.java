package mullwright.drawing.piece;

import java.util.ArrayList;
import java.util.List;
import mullwright.drawing.Arrangement;
import mullwright.drawing.Drawing;
import mullwright.drawing.Panel;
import mullwright.drawing.Paper;
import mullwright.drawing.Scale;
import mullwright.drawing.Sheet;
import mullwright.drawing.TitleBlock;
import mullwright.quantity.UnitSystem;

/** Drawings of all bars of a wall on sheets, two or more on each. */
public final class PieceSheets {
  /** Larger drawings are for details, smaller ones lose the holes (common practice). */
  private static final double LARGEST = 4;

  private static final double SMALLEST = 16;

  private static final double GAP = 10;

  /** Room beside a bar for the figures at its ends [mm]. */
  private static final double BESIDE = 60;

  private PieceSheets() {}

  /** The sheets. */
  public static List<Sheet> of(
      List<Bar> bars, UnitSystem units, Paper paper, TitleBlock titleBlock) {
    Arrangement arrangement = new Arrangement(paper, titleBlock, "Pieces", GAP);
    List<PieceDrawing> drawings = fitting(bars, units, arrangement);
    return arrangement.sheets(drawings, List.of(notes(units)));
  }

  /** The bars without a sheet and unbroken, under each other. */
  public static Drawing uncut(String title, List<Bar> bars, UnitSystem units) {
    Scale scale =
        Scale.usual(units).stream().filter(it -> it.ratio() >= LARGEST).findFirst().orElseThrow();
    List<PieceDrawing> drawings =
        bars.stream()
            .map(bar -> new PieceDrawing(bar, scale, units, Double.POSITIVE_INFINITY))
            .toList();
    return Arrangement.board(title, drawings, 0, GAP);
  }

  // the largest usual scale at which two of the highest fit under each other
  private static List<PieceDrawing> fitting(
      List<Bar> bars, UnitSystem units, Arrangement arrangement) {
    double most = (arrangement.room().height() - GAP) / 2;
    double room = arrangement.room().width() - BESIDE;
    List<PieceDrawing> drawings = new ArrayList<>();
    for (Scale scale : Scale.usual(units)) {
      if (scale.ratio() < LARGEST || scale.ratio() > SMALLEST) {
        continue;
      }
      drawings = bars.stream().map(bar -> new PieceDrawing(bar, scale, units, room)).toList();
      if (drawings.stream().allMatch(one -> one.extent().height() <= most)) {
        break;
      }
    }
    return drawings;
  }

  private static Panel notes(UnitSystem units) {
    List<Panel.Row> rows = new ArrayList<>();
    rows.add(
        Panel.Row.of(
            units == UnitSystem.US
                ? "Dimensions in feet and inches, places to 1/32\", holes to 1/64\"."
                : "Dimensions in millimetres, to 0.1 mm."));
    rows.add(
        Panel.Row.of(
            "Figures along a bar run from its datum, at the left; a letter after them tells which"
                + " holes are there. Figures at its right run from the outer face of the glass."));
    rows.add(
        Panel.Row.of("The outlines show face and depth. Holes of the far wall alone are dashed."));
    rows.add(Panel.Row.of("Marks and figures are those of the tickets."));
    return new Panel("Notes", rows);
  }
}
