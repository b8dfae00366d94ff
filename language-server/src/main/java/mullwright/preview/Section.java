package mullwright.preview;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import mullwright.layout.Cell;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.PieceRef;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.SpliceJoint;
import mullwright.layout.SystemPart;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.model.Grid;
import mullwright.model.Part;
import mullwright.quantity.Length;
import mullwright.quantity.LengthPrinter;
import mullwright.quantity.UnitSystem;

/**
 * A vertical section just beside a line, seen along the wall with outdoors on the left: the bay on
 * its right is cut, the vertical and its anchors are seen behind the cut.
 *
 * <p>True to scale in both directions. A slab whose edge is not stated is drawn dashed at the back
 * of the vertical, which says so.
 *
 * @param line by index
 */
record Section(WallLayout layout, int line, Plane plane, UnitSystem units) {
  private static final double SLAB_SHOWN = 500;
  private static final double SLAB_WITHOUT_DEPTH = 150;
  private static final double OUTDOORS_SHOWN = 500;
  private static final double ROOM_ABOVE = 300;

  void draw(Slot slot) {
    layout.wall().grid().floors().forEach(floor -> slab(floor, slot));
    verticals().forEach(piece -> vertical(piece, slot));
    cells().forEach(cell -> glass(cell, slot));
    horizontals().forEach(piece -> horizontal(piece, slot));
    layout.splices().stream()
        .filter(joint -> joint.line() == line)
        .forEach(joint -> splice(joint, slot));
    layout.anchors().stream()
        .filter(anchor -> anchor.use().line() == line)
        .forEach(anchor -> anchor(anchor, slot));
  }

  private Stream<VerticalPiece> verticals() {
    return layout.verticals().stream().filter(piece -> piece.line() == line);
  }

  private Stream<HorizontalPiece> horizontals() {
    return beside(
        layout.horizontals(),
        piece -> piece.leftLine() == line,
        piece -> piece.rightLine() == line);
  }

  private Stream<Cell> cells() {
    List<Grid.Bay> bays = layout.wall().grid().bays();
    return beside(
        layout.cells(),
        cell -> bays.get(cell.firstBay()).left() == line,
        cell -> bays.get(cell.lastBay()).right() == line);
  }

  /** Those on the right of the line; where there are none, those on its left. */
  private static <T> Stream<T> beside(List<T> all, Predicate<T> onRight, Predicate<T> onLeft) {
    List<T> right = all.stream().filter(onRight).toList();
    return right.isEmpty() ? all.stream().filter(onLeft) : right.stream();
  }

  /** What is seen, in words. */
  String words() {
    String name = layout.wall().grid().lines().get(line).name();
    boolean unstated =
        layout.wall().grid().floors().stream().anyMatch(floor -> floor.edge().isEmpty());
    return "Beside line "
        + name
        + ", outdoors on the left, true to scale. Choose a piece for another line."
        + (unstated ? " Slab edges that no floor states are dashed." : "");
  }

  /** As a view box says it. */
  String frame() {
    double top = Double.NEGATIVE_INFINITY;
    double bottom = Double.POSITIVE_INFINITY;
    for (VerticalPiece piece : verticals().toList()) {
      top = Math.max(top, piece.top().toMillimetres());
      bottom = Math.min(bottom, piece.bottom().toMillimetres());
    }
    for (Grid.Floor floor : layout.wall().grid().floors()) {
      double level = floor.elevation().value().toMillimetres();
      top = Math.max(top, level);
      bottom = Math.min(bottom, level - slabDepth(floor));
    }
    double left = -OUTDOORS_SHOWN / plane.ratio();
    double right = (back().toMillimetres() + SLAB_SHOWN + 2 * OUTDOORS_SHOWN) / plane.ratio();
    return String.format(
        Locale.ROOT,
        "%.2f %.2f %.2f %.2f",
        left,
        -(top + ROOM_ABOVE) / plane.ratio(),
        right - left,
        (top - bottom + 2 * ROOM_ABOVE) / plane.ratio());
  }

  /** From the glass's outer face to the back of the vertical. */
  private Length back() {
    return verticals()
        .findFirst()
        .map(piece -> SystemPart.backOf(layout, piece.profile()))
        .orElse(Length.ZERO);
  }

  private static double slabDepth(Grid.Floor floor) {
    return floor.slab().map(slab -> slab.value().toMillimetres()).orElse(SLAB_WITHOUT_DEPTH);
  }

  private double slabEdge(Grid.Floor floor) {
    return floor.edge().map(edge -> edge.value()).orElse(back()).toMillimetres();
  }

  private void slab(Grid.Floor floor, Slot slot) {
    double top = plane.y(floor.elevation().value());
    double edge = slabEdge(floor) / plane.ratio();
    double end = (Math.max(slabEdge(floor), back().toMillimetres()) + SLAB_SHOWN) / plane.ratio();
    boolean stated = floor.slab().isPresent() && floor.edge().isPresent();
    slot.put(
        "floor-" + floor.index(),
        "<g class=\"slab"
            + (stated ? "" : " unstated")
            + "\"><title>"
            + Markup.escaped("floor " + floor.name())
            + "</title>"
            + box(edge, top, end, top + slabDepth(floor) / plane.ratio())
            + label(
                end,
                top,
                floor.name() + "  " + LengthPrinter.in(units, floor.elevation().value()),
                0)
            + "</g>");
  }

  private void vertical(VerticalPiece piece, Slot slot) {
    Length back = SystemPart.backOf(layout, piece.profile());
    Length front = back.minus(piece.profile().depth().value());
    put(
        new PieceRef(PieceRef.Kind.VERTICAL, piece.index()),
        piece.name(),
        box(plane.x(front), plane.y(piece.top()), plane.x(back), plane.y(piece.bottom())),
        slot);
  }

  private void horizontal(HorizontalPiece piece, Slot slot) {
    Length back = SystemPart.backOf(layout, piece.profile());
    Length front = back.minus(piece.profile().depth().value());
    Length half = piece.profile().face().value().half();
    Length y = piece.leftLine() == line ? piece.yLeft() : piece.yRight();
    String row = layout.wall().grid().rows().get(piece.row()).name();
    put(
        new PieceRef(PieceRef.Kind.HORIZONTAL, piece.index()),
        piece.name(),
        "<g class=\"cut\">"
            + box(plane.x(front), plane.y(y.plus(half)), plane.x(back), plane.y(y.minus(half)))
            + "</g>"
            + label(0, plane.y(y), row, 1),
        slot);
  }

  private void glass(Cell cell, Slot slot) {
    if (cell.use().isEmpty() && cell.opening().isEmpty()) {
      return;
    }
    double thick =
        cell.glass().stream()
            .map(Part.Glass::layers)
            .flatMap(List::stream)
            .mapToDouble(layer -> layer.thickness().toMillimetres())
            .sum();
    boolean filled = cell.opening().isEmpty();
    put(
        new PieceRef(PieceRef.Kind.CELL, cell.index()),
        cell.name(),
        "<g class=\""
            + (filled ? "glass" : "open")
            + "\">"
            + box(
                0,
                plane.y(filled ? cell.top().plus(cell.biteTop()) : cell.top()),
                Math.max(thick, 1) / plane.ratio(),
                plane.y(filled ? cell.bottom().minus(cell.biteBottom()) : cell.bottom()))
            + "</g>",
        slot);
  }

  private void splice(SpliceJoint joint, Slot slot) {
    VerticalPiece below = layout.verticals().get(joint.below());
    Length back = SystemPart.backOf(layout, below.profile());
    Length front = back.minus(below.profile().depth().value());
    Length half = joint.splice().gap().value().half();
    put(
        new PieceRef(PieceRef.Kind.SPLICE, joint.index()),
        joint.name(),
        "<g class=\"gap\">"
            + box(
                plane.x(front),
                plane.y(joint.y().plus(half)),
                plane.x(back),
                plane.y(joint.y().minus(half)))
            + "</g>"
            + label(plane.x(back), plane.y(joint.y()), "splice", 0),
        slot);
  }

  private void anchor(PlacedAnchor anchor, Slot slot) {
    Optional<Grid.Floor> floor =
        anchor.use().floor().map(index -> layout.wall().grid().floors().get(index));
    double y = plane.y(anchor.y());
    double back = back().toMillimetres() / plane.ratio();
    double edge = floor.map(this::slabEdge).orElse(back().toMillimetres()) / plane.ratio();
    put(
        new PieceRef(PieceRef.Kind.ANCHOR, anchor.index()),
        anchor.name(),
        "<path class=\"bracket\" d=\"M"
            + Markup.number(back / 2)
            + " "
            + Markup.number(y)
            + "H"
            + Markup.number(Math.max(edge, back))
            + "\"/><g transform=\"translate("
            + Markup.number(back / 2)
            + " "
            + Markup.number(y)
            + ")\"><g class=\"fixed\"><circle r=\"3.5\"/></g></g>",
        slot);
  }

  private static void put(PieceRef piece, String name, String markup, Slot slot) {
    String id = Pieces.id(piece);
    slot.put(
        id,
        "<g class=\"subject\" data-piece=\""
            + id
            + "\"><title>"
            + Markup.escaped(name)
            + "</title>"
            + markup
            + "</g>");
  }

  private static String box(double left, double top, double right, double bottom) {
    return "<rect x=\""
        + Markup.number(left)
        + "\" y=\""
        + Markup.number(top)
        + "\" width=\""
        + Markup.number(Math.max(0, right - left))
        + "\" height=\""
        + Markup.number(Math.max(0, bottom - top))
        + "\"/>";
  }

  /**
   * @param side 0 to write to the right of the place, 1 to the left
   */
  private static String label(double x, double y, String words, int side) {
    return "<g transform=\"translate("
        + Markup.number(x)
        + " "
        + Markup.number(y)
        + ")\"><g class=\"fixed\"><text x=\""
        + (side == 0 ? 6 : -6)
        + "\" y=\"4\" text-anchor=\""
        + (side == 0 ? "start" : "end")
        + "\">"
        + Markup.escaped(words)
        + "</text></g></g>";
  }
}
