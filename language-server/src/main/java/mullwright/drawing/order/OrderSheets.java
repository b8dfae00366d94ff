package mullwright.drawing.order;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import mullwright.drawing.Arrangement;
import mullwright.drawing.Box;
import mullwright.drawing.Drawing;
import mullwright.drawing.Panel;
import mullwright.drawing.Paper;
import mullwright.drawing.Sheet;
import mullwright.drawing.TitleBlock;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.PieceRef;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;

/** The stages of the work of a wall on sheets, all pictures equally large. */
public final class OrderSheets {
  private static final double GAP = 8;
  private static final double WIDTH = 92;
  private static final double HIGHEST = 64;
  private static final double ROW = 600;
  private static final double MARGIN = 3;

  private OrderSheets() {}

  /**
   * The sheets.
   *
   * @param notes printed beside the first pictures, each a sentence
   */
  public static List<Sheet> of(
      WallLayout layout,
      List<Stage> stages,
      List<String> notes,
      Paper paper,
      TitleBlock titleBlock) {
    Arrangement arrangement = new Arrangement(paper, titleBlock, "Order of work", GAP);
    return arrangement.sheets(pictures(layout, stages), List.of(notes(notes)));
  }

  /** The pictures without a sheet, in rows. */
  public static Drawing uncut(WallLayout layout, List<Stage> stages) {
    return Arrangement.board(
        "Order of work " + layout.wall().name(), pictures(layout, stages), ROW, GAP);
  }

  private static List<Drawing> pictures(WallLayout layout, List<Stage> stages) {
    Box wall = frame(layout);
    if (wall.empty()) {
      return List.of();
    }
    StagePicture.Frame frame = frame(wall);
    List<Drawing> pictures = new ArrayList<>();
    Set<PieceRef> before = new HashSet<>();
    for (Stage stage : stages) {
      pictures.add(new StagePicture(layout, stage, Set.copyOf(before), frame));
      before.addAll(stage.pieces());
    }
    return pictures;
  }

  private static StagePicture.Frame frame(Box wall) {
    double ratio =
        Math.max(wall.width() / (WIDTH - 2 * MARGIN), wall.height() / (HIGHEST - 2 * MARGIN));
    double height = wall.height() / ratio + 2 * MARGIN;
    double left = wall.middleX() - WIDTH / 2 * ratio;
    return new StagePicture.Frame(WIDTH, height, ratio, left, wall.bottom() - MARGIN * ratio);
  }

  private static Box frame(WallLayout layout) {
    Box box = Box.NOTHING;
    for (VerticalPiece piece : layout.verticals()) {
      double half = piece.profile().face().value().toMillimetres() / 2;
      double x = piece.x().toMillimetres();
      box = box.with(x - half, piece.bottom().toMillimetres());
      box = box.with(x + half, piece.top().toMillimetres());
    }
    for (HorizontalPiece piece : layout.horizontals()) {
      box = box.with(piece.left().toMillimetres(), piece.yLeft().toMillimetres());
      box = box.with(piece.right().toMillimetres(), piece.yRight().toMillimetres());
    }
    return box;
  }

  private static Panel notes(List<String> notes) {
    List<Panel.Row> rows = new ArrayList<>();
    rows.add(Panel.Row.of("Seen from outdoors; pictures are not to scale."));
    rows.add(
        Panel.Row.of(
            "Black, hatched or ringed: what a stage adds or works on. Grey: what stands already."));
    notes.forEach(note -> rows.add(Panel.Row.of(note)));
    return new Panel("Notes", rows);
  }
}
