package mullwright.drawing.elevation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import mullwright.drawing.Align;
import mullwright.drawing.Box;
import mullwright.drawing.Layer;
import mullwright.drawing.Lettering;
import mullwright.drawing.Squares;
import mullwright.drawing.Subject;
import mullwright.drawing.Surface;
import mullwright.drawing.Taken;
import mullwright.drawing.TextBox;
import mullwright.layout.Cell;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.VerticalPiece;
import mullwright.model.Grid;

/**
 * Marks of lites and members, each where there is room for it: in the middle of a lite, beside a
 * vertical, over or under a horizontal. What finds no room at the scale is left out and counted.
 */
final class Marks implements ElevationPart {
  private static final Lettering MARK = new Lettering(2.5, true, mullwright.drawing.Tone.INK);
  private static final Lettering WORD = Lettering.NOTE;
  private static final double CLEAR = 0.8;
  private static final double HALO = 0.3;
  private static final double STEP = 3;

  /** From an edge to the tops of letters. */
  private static final double OFF = 0.8;

  /** From an edge to a base line, what goes below it included. */
  private static final double LIFT = 1.6;

  /** A word at its place. */
  private record Word(
      String text, double x, double y, double angle, Lettering lettering, Align align) {
    Box box() {
      return TextBox.of(text, x, y, angle, lettering, align);
    }
  }

  private record Placed(Subject subject, List<Word> words) {}

  private final View view;
  private final Taken taken;
  private final List<Placed> placed = new ArrayList<>();
  private final List<List<Box>> clear = new ArrayList<>();
  private final Squares<Cell> cells = new Squares<>();
  private int leftOut;

  /** Finds places for all, keeping clear of what is taken. */
  Marks(View view, Taken taken) {
    this.view = view;
    this.taken = taken;
    for (Cell cell : view.layout.cells()) {
      clear.add(new ArrayList<>(1));
    }
    if (view.options.marked()) {
      place();
    }
  }

  private void place() {
    for (Cell cell : view.layout.cells()) {
      cells.put(Box.of(view.corners(cell)), cell);
      place(cell);
    }
    view.layout.verticals().forEach(this::place);
    view.layout.horizontals().forEach(this::place);
  }

  /** How many marks found no room. */
  int leftOut() {
    return leftOut;
  }

  /** Room of a cell that its words take. */
  List<Box> clear(Cell cell) {
    return clear.get(cell.index());
  }

  @Override
  public void paint(Surface surface) {
    surface.beginLayer(Layer.MARK);
    for (Placed one : placed) {
      surface.begin(one.subject());
      for (Word word : one.words()) {
        surface.text(word.text(), word.x(), word.y(), word.angle(), word.lettering(), word.align());
      }
      surface.end();
    }
    surface.endLayer();
  }

  private void place(Cell cell) {
    Box room = view.cut(Box.of(view.corners(cell)));
    List<String> lines = lines(cell);
    if (room.empty() || lines.isEmpty()) {
      return;
    }
    for (int count = lines.size(); count > 0; count--) {
      for (boolean upright : new boolean[] {false, true}) {
        // where the sheet ends in a lite its middle may be taken
        for (double share : new double[] {0.5, 0.25, 0.75}) {
          double x = room.left() + (upright ? share : 0.5) * room.width();
          double y = room.bottom() + (upright ? 0.5 : share) * room.height();
          if (fits(cell, lines.subList(0, count), room, x, y, upright)) {
            return;
          }
        }
      }
    }
    leftOut++;
  }

  private boolean fits(
      Cell cell, List<String> lines, Box room, double x, double y, boolean upright) {
    double pitch = MARK.height() * Lettering.LINE_PITCH;
    double high = (lines.size() - 1) * pitch + MARK.height();
    double wide = 0;
    for (int i = 0; i < lines.size(); i++) {
      wide = Math.max(wide, lettering(i).width(lines.get(i)));
    }
    Box box = Box.around(x, y, upright ? high : wide, upright ? wide : high);
    if (!room.holds(box.grown(1.2)) || !taken.takeIfFree(box.grown(CLEAR))) {
      return false;
    }
    List<Word> words = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      double down = high / 2 - MARK.height() - i * pitch;
      words.add(
          new Word(
              lines.get(i),
              x - (upright ? down : 0),
              y + (upright ? 0 : down),
              upright ? 90 : 0,
              lettering(i),
              Align.CENTRE));
    }
    placed.add(new Placed(view.subjects.of(cell), words));
    clear.get(cell.index()).add(box.grown(CLEAR));
    return true;
  }

  private static Lettering lettering(int line) {
    return line == 0 ? MARK : WORD;
  }

  private List<String> lines(Cell cell) {
    List<String> lines = new ArrayList<>();
    if (cell.opening().isPresent()) {
      Grid.Opening opening = cell.opening().get();
      lines.add(opening.name());
      lines.add(opening.kind().name().toLowerCase(Locale.ROOT));
      if (opening.byOthers()) {
        lines.add("by others");
      }
      return lines;
    }
    if (cell.use().isEmpty()) {
      return List.of("no lite");
    }
    String mark = view.subjects.of(cell).mark();
    if (!mark.isEmpty()) {
      lines.add(mark);
    }
    String glass = cell.use().get().glass().value();
    if (!glass.equals(mark)) {
      lines.add(glass);
    }
    if (cell.use().get().operable()) {
      lines.add("operable");
    }
    return lines;
  }

  private void place(VerticalPiece piece) {
    Subject subject = view.subjects.of(piece);
    Box box = view.cut(view.whole(piece));
    if (subject.mark().isEmpty() || box.empty()) {
      return;
    }
    double width = WORD.width(subject.mark());
    for (double y = box.bottom() + 4 + width / 2; y < box.top() - width / 2; y += STEP) {
      for (int side : piece.bayRight() ? new int[] {1, -1} : new int[] {-1, 1}) {
        double x = side > 0 ? box.right() + OFF + WORD.height() : box.left() - LIFT;
        if (put(subject, new Word(subject.mark(), x, y, 90, WORD, Align.CENTRE))) {
          return;
        }
      }
    }
    leftOut++;
  }

  private void place(HorizontalPiece piece) {
    Subject subject = view.subjects.of(piece);
    double[] corners = view.cut(view.corners(piece));
    if (subject.mark().isEmpty() || corners.length == 0) {
      return;
    }
    Box box = Box.of(corners);
    boolean sloped = !piece.yLeft().equals(piece.yRight());
    double width = WORD.width(subject.mark());
    for (double x = box.left() + 1.5; x < box.right() - width; x += STEP) {
      for (int side : new int[] {1, -1}) {
        double edge =
            sloped ? view.clearOf(piece, x, x + width, side) : side > 0 ? box.top() : box.bottom();
        double y = side > 0 ? edge + LIFT : edge - OFF - WORD.height();
        if (put(subject, new Word(subject.mark(), x, y, 0, WORD, Align.LEFT))) {
          return;
        }
      }
    }
    leftOut++;
  }

  private boolean put(Subject subject, Word word) {
    Box box = word.box().grown(HALO);
    if (!view.frame.holds(box) || !taken.takeIfFree(box)) {
      return false;
    }
    placed.add(new Placed(subject, List.of(word)));
    Cell cell = cells.holding(box);
    if (cell != null) {
      clear.get(cell.index()).add(box);
    }
    return true;
  }
}
