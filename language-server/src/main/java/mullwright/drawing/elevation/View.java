package mullwright.drawing.elevation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.drawing.Box;
import mullwright.drawing.Clip;
import mullwright.drawing.Figures;
import mullwright.drawing.Subjects;
import mullwright.layout.Cell;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.LayoutIndex;
import mullwright.layout.RowPieces;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.model.Grid;
import mullwright.model.Part;
import mullwright.model.Role;
import mullwright.quantity.Length;

/** Turns what is in the wall into places on paper; what is outside the window is cut off. */
final class View {
  /** How wide the slices are that a sloped horizontal is taken in, in millimetres of paper. */
  private static final double SLICE = 3;

  final WallLayout layout;
  final ElevationOptions options;
  final Window window;
  final LayoutIndex index;
  private final RowPieces rows;
  final Subjects subjects;
  final Figures figures;

  /** The frame on paper, all members, as far as it is shown. */
  final Box frame;

  /** The frame with room for words at match lines; what stands round it begins here. */
  final Box around;

  private final Box shown;

  View(WallLayout layout, ElevationOptions options, Window window) {
    this.layout = layout;
    this.options = options;
    this.window = window;
    this.index = LayoutIndex.of(layout);
    this.rows = RowPieces.of(layout);
    this.subjects = new Subjects(options.labels());
    this.figures = new Figures(options.units());
    Box model = window.shown();
    this.shown = new Box(p(model.left()), p(model.bottom()), p(model.right()), p(model.top()));
    this.frame = frame().common(shown);
    this.around = window.around(frame);
  }

  private Box frame() {
    Box box = Box.NOTHING;
    for (VerticalPiece piece : layout.verticals()) {
      box = box.with(whole(piece));
    }
    for (HorizontalPiece piece : layout.horizontals()) {
      box = box.with(Box.of(corners(piece)));
    }
    return box;
  }

  private double p(double millimetres) {
    return options.scale().paper(millimetres);
  }

  /** On paper. */
  double p(Length length) {
    return p(length.toMillimetres());
  }

  /** What a polygon on paper shows; no points if nothing. */
  double[] cut(double[] polygon) {
    return Clip.polygon(polygon, shown);
  }

  /** The part of a box that is shown. */
  Box cut(Box box) {
    return box.common(shown);
  }

  /** What is shown, on paper. */
  Box shown() {
    return shown;
  }

  /** True if a line lies on the edge of what is shown. */
  boolean onEdge(double x1, double y1, double x2, double y2) {
    return x1 == x2 && (x1 == shown.left() || x1 == shown.right())
        || y1 == y2 && (y1 == shown.bottom() || y1 == shown.top());
  }

  /** True if a point on paper is shown. */
  boolean shows(double x, double y) {
    return shown.holds(x, y);
  }

  boolean showsX(double x) {
    return shown.left() <= x && x <= shown.right();
  }

  boolean showsY(double y) {
    return shown.bottom() <= y && y <= shown.top();
  }

  /** From the line to the edge of the metal on the left. */
  double halfLeft(VerticalPiece piece) {
    return half(piece.profile(), piece.profile().legLeft().map(leg -> leg.value()));
  }

  /** From the line to the edge of the metal on the right. */
  double halfRight(VerticalPiece piece) {
    return half(piece.profile(), piece.profile().legRight().map(leg -> leg.value()));
  }

  private double half(Part.Profile profile, Optional<Length> leg) {
    return profile.role().value() == Role.CORNER && leg.isPresent()
        ? p(leg.get())
        : p(profile.face().value()) / 2;
  }

  /** The whole of a vertical on paper. */
  Box whole(VerticalPiece piece) {
    double x = p(piece.x());
    return new Box(x - halfLeft(piece), p(piece.bottom()), x + halfRight(piece), p(piece.top()));
  }

  /** The corners of a horizontal on paper, whole. */
  double[] corners(HorizontalPiece piece) {
    double half = p(piece.profile().face().value()) / 2;
    double left = p(piece.left());
    double right = p(piece.right());
    double a = p(piece.yLeft());
    double b = p(piece.yRight());
    return new double[] {left, a - half, right, b - half, right, b + half, left, a + half};
  }

  /**
   * What a horizontal takes on paper: of one that slopes slices, since it leaves room beside it.
   */
  List<Box> boxes(HorizontalPiece piece) {
    double[] corners = corners(piece);
    Box whole = Box.of(corners);
    if (piece.yLeft().equals(piece.yRight())) {
      return List.of(whole);
    }
    int count = Math.max(1, (int) Math.ceil(whole.width() / SLICE));
    List<Box> slices = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      double left = whole.left() + whole.width() * i / count;
      double right = whole.left() + whole.width() * (i + 1) / count;
      double below = Math.min(edge(piece, left, -1), edge(piece, right, -1));
      double above = Math.max(edge(piece, left, 1), edge(piece, right, 1));
      slices.add(new Box(left, below, right, above));
    }
    return slices;
  }

  /**
   * The edge of a horizontal over (1) or under (-1) what stands from the one place to the other.
   */
  double clearOf(HorizontalPiece piece, double from, double to, int side) {
    double a = edge(piece, from, side);
    double b = edge(piece, to, side);
    return side > 0 ? Math.max(a, b) : Math.min(a, b);
  }

  /** The corners of a daylight opening on paper, whole. */
  double[] corners(Cell cell) {
    Box box = new Box(p(cell.left()), p(cell.bottom()), p(cell.right()), p(cell.top()));
    if (cell.rectangular()) {
      return box.corners();
    }
    Optional<HorizontalPiece> below = rows.under(cell);
    Optional<HorizontalPiece> above = rows.over(cell);
    return new double[] {
      box.left(), below.map(it -> edge(it, box.left(), 1)).orElse(box.bottom()),
      box.right(), below.map(it -> edge(it, box.right(), 1)).orElse(box.bottom()),
      box.right(), above.map(it -> edge(it, box.right(), -1)).orElse(box.top()),
      box.left(), above.map(it -> edge(it, box.left(), -1)).orElse(box.top())
    };
  }

  // height of the upper (1) or lower (-1) edge of a horizontal at x
  private double edge(HorizontalPiece piece, double x, int side) {
    double left = p(piece.left());
    double right = p(piece.right());
    double share = (x - left) / (right - left);
    double y = p(piece.yLeft()) + share * (p(piece.yRight()) - p(piece.yLeft()));
    return y + side * p(piece.profile().face().value()) / 2;
  }

  /**
   * Which part of the wall is shown, {@code , part 1 of 6: lines 1 to 11, L1 to L5}, or "" if all
   * of it is.
   */
  String part() {
    if (window.equals(Window.ALL)) {
      return "";
    }
    List<Grid.Line> lines = layout.wall().grid().lines();
    List<Grid.Floor> floors = layout.wall().grid().floors();
    List<String> part = new ArrayList<>();
    if (window.left().isPresent() || window.right().isPresent()) {
      String first = window.left().map(Window.Match::name).orElse(lines.get(0).name());
      String last =
          window.right().map(Window.Match::name).orElse(lines.get(lines.size() - 1).name());
      part.add("lines " + first + " to " + last);
    }
    if (window.bottom().isPresent() || window.top().isPresent()) {
      String first = window.bottom().map(Window.Match::name).orElse(floors.get(0).name());
      String last =
          window.top().map(Window.Match::name).orElse(floors.get(floors.size() - 1).name());
      part.add(first + " to " + last);
    }
    return ", part "
        + window.number()
        + " of "
        + window.count()
        + (part.isEmpty() ? "" : ": ")
        + String.join(", ", part);
  }

  /** The lines of the grid that are shown. */
  List<Grid.Line> lines() {
    return layout.wall().grid().lines().stream().filter(line -> showsX(p(line.x()))).toList();
  }

  /** The floors that are shown. */
  List<Grid.Floor> floors() {
    return layout.wall().grid().floors().stream()
        .filter(floor -> showsY(p(floor.elevation().value())))
        .toList();
  }
}
