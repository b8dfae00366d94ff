package mullwright.drawing.order;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import mullwright.drawing.Align;
import mullwright.drawing.Box;
import mullwright.drawing.Drawing;
import mullwright.drawing.Hatch;
import mullwright.drawing.Layer;
import mullwright.drawing.Lettering;
import mullwright.drawing.LineType;
import mullwright.drawing.LineWeight;
import mullwright.drawing.Paragraph;
import mullwright.drawing.Pen;
import mullwright.drawing.Scale;
import mullwright.drawing.Subject;
import mullwright.drawing.Surface;
import mullwright.drawing.Tone;
import mullwright.layout.Cell;
import mullwright.layout.CoverPiece;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.PieceRef;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.SpliceJoint;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;

/**
 * A small elevation at one stage of the work: what stands already is grey, what the stage adds is
 * black (members), hatched (lites) or ringed (anchors, sleeves). Its number and its sentence stand
 * under it.
 *
 * <p>The origin of the paper is the picture's lower left corner.
 */
final class StagePicture implements Drawing {
  private static final Pen STANDING = new Pen(LineWeight.NARROW, LineType.CONTINUOUS, Tone.SOFT);
  private static final Pen FLOOR = new Pen(LineWeight.FINE, LineType.LONG_DASH_DOT, Tone.SOFT);
  private static final Pen FAINT = new Pen(LineWeight.FINE, LineType.CONTINUOUS, Tone.SOFT);
  private static final double WORDS = 19;
  private static final double PITCH = Lettering.NOTE.height() * Lettering.LINE_PITCH;
  private static final int MOST_LINES = 3;
  private static final double LEAST = 0.9;
  private static final double RING = 1.6;

  private final WallLayout layout;
  private final Stage stage;
  private final Set<PieceRef> before;
  private final Set<PieceRef> now;
  private final Frame frame;

  /** The wall on the paper of every picture: how small, and where. */
  record Frame(double width, double height, double ratio, double left, double bottom) {
    double x(double millimetres) {
      return (millimetres - left) / ratio;
    }

    double y(double millimetres) {
      return (millimetres - bottom) / ratio;
    }
  }

  StagePicture(WallLayout layout, Stage stage, Set<PieceRef> before, Frame frame) {
    this.layout = layout;
    this.stage = stage;
    this.before = before;
    this.now = Set.copyOf(stage.pieces());
    this.frame = frame;
  }

  @Override
  public String title() {
    return "Stage " + stage.number();
  }

  @Override
  public Scale scale() {
    return new Scale(frame.ratio(), "none");
  }

  @Override
  public Box extent() {
    return new Box(0, -WORDS, frame.width(), frame.height());
  }

  @Override
  public void paint(Surface surface) {
    surface.beginLayer(Layer.FLOOR);
    layout
        .wall()
        .grid()
        .floors()
        .forEach(
            floor -> {
              double y = frame.y(floor.elevation().value().toMillimetres());
              if (0 <= y && y <= frame.height()) {
                surface.line(0, y, frame.width(), y, FLOOR);
              }
            });
    surface.box(new Box(0, 0, frame.width(), frame.height()).grown(-0.5), FAINT, null);
    surface.endLayer();
    surface.beginLayer(Layer.LITE);
    layout.cells().forEach(cell -> cell(surface, cell));
    surface.endLayer();
    surface.beginLayer(Layer.MEMBER);
    layout.horizontals().forEach(piece -> horizontal(surface, piece));
    layout.verticals().forEach(piece -> vertical(surface, piece));
    surface.endLayer();
    surface.beginLayer(Layer.FITTING);
    for (int at = 0; at < layout.covers().size(); at++) {
      cover(surface, at);
    }
    surface.endLayer();
    surface.beginLayer(Layer.ANCHOR);
    layout.anchors().forEach(anchor -> anchor(surface, anchor));
    layout.splices().forEach(joint -> splice(surface, joint));
    surface.endLayer();
    surface.beginLayer(Layer.NOTE);
    words(surface);
    surface.endLayer();
  }

  private boolean shown(PieceRef piece) {
    return before.contains(piece) || now.contains(piece);
  }

  private void bar(Surface surface, PieceRef piece, String name, double[] corners) {
    boolean adds = now.contains(piece);
    surface.begin(new Subject("stage", Optional.of(piece), name, "", Optional.empty()));
    surface.polygon(corners, adds ? Pen.THIN : STANDING, adds ? Tone.INK : Tone.METAL);
    surface.end();
  }

  private void vertical(Surface surface, VerticalPiece piece) {
    PieceRef ref = new PieceRef(PieceRef.Kind.VERTICAL, piece.index());
    if (shown(ref)) {
      double half = half(piece.profile().face().value().toMillimetres());
      double x = frame.x(piece.x().toMillimetres());
      Box box =
          new Box(
              x - half,
              frame.y(piece.bottom().toMillimetres()),
              x + half,
              frame.y(piece.top().toMillimetres()));
      bar(surface, ref, piece.name(), box.corners());
    }
  }

  private void horizontal(Surface surface, HorizontalPiece piece) {
    PieceRef ref = new PieceRef(PieceRef.Kind.HORIZONTAL, piece.index());
    if (shown(ref)) {
      bar(
          surface,
          ref,
          piece.name(),
          sloping(piece, half(piece.profile().face().value().toMillimetres())));
    }
  }

  private double[] sloping(HorizontalPiece piece, double half) {
    double left = frame.x(piece.left().toMillimetres());
    double right = frame.x(piece.right().toMillimetres());
    double a = frame.y(piece.yLeft().toMillimetres());
    double b = frame.y(piece.yRight().toMillimetres());
    return new double[] {left, a - half, right, b - half, right, b + half, left, a + half};
  }

  // so small that it would vanish, it is drawn a little too wide
  private double half(double face) {
    return Math.max(LEAST, face / frame.ratio()) / 2;
  }

  private void cell(Surface surface, Cell cell) {
    PieceRef ref = new PieceRef(PieceRef.Kind.CELL, cell.index());
    if (!shown(ref)) {
      return;
    }
    Box box =
        new Box(
            frame.x(cell.left().toMillimetres()),
            frame.y(cell.bottom().toMillimetres()),
            frame.x(cell.right().toMillimetres()),
            frame.y(cell.top().toMillimetres()));
    surface.box(box, null, Tone.GLASS);
    if (now.contains(ref)) {
      surface.hatch(box.corners(), Hatch.SPANDREL, List.of());
      surface.box(box.grown(-0.5), Pen.EDGE, null);
    }
  }

  // a strip along the middle of its member
  private void cover(Surface surface, int index) {
    PieceRef ref = new PieceRef(PieceRef.Kind.COVER, index);
    if (!now.contains(ref)) {
      return;
    }
    CoverPiece cover = layout.covers().get(index);
    double half = LEAST / 2;
    double from = cover.start().toMillimetres();
    double to = cover.end().toMillimetres();
    if (cover.vertical()) {
      double x = frame.x(layout.verticals().get(cover.carrier()).x().toMillimetres());
      bar(
          surface,
          ref,
          cover.name(),
          new Box(x - half, frame.y(from), x + half, frame.y(to)).corners());
    } else {
      bar(surface, ref, cover.name(), sloping(layout.horizontals().get(cover.carrier()), half));
    }
  }

  private void anchor(Surface surface, PlacedAnchor anchor) {
    double x = frame.x(layout.wall().grid().lines().get(anchor.use().line()).x().toMillimetres());
    sign(
        surface,
        new PieceRef(PieceRef.Kind.ANCHOR, anchor.index()),
        x,
        frame.y(anchor.y().toMillimetres()));
  }

  private void splice(Surface surface, SpliceJoint joint) {
    double x = frame.x(layout.verticals().get(joint.below()).x().toMillimetres());
    sign(
        surface,
        new PieceRef(PieceRef.Kind.SPLICE, joint.index()),
        x,
        frame.y(joint.y().toMillimetres()));
  }

  private void sign(Surface surface, PieceRef ref, double x, double y) {
    if (now.contains(ref)) {
      surface.circle(x, y, RING, Pen.EDGE, Tone.PAPER);
      surface.circle(x, y, RING / 2.5, null, Tone.INK);
    } else if (before.contains(ref)) {
      surface.circle(x, y, RING / 2.5, null, Tone.SOFT);
    }
  }

  private void words(Surface surface) {
    double y = -3.4;
    surface.circle(3.4, y - 1.6, 3.4, Pen.FINE_EDGE, Tone.PAPER);
    surface.text(
        Integer.toString(stage.number()),
        3.4,
        y - 1.6 - Lettering.NOTE.height() / 2,
        Lettering.NOTE,
        Align.CENTRE);
    List<String> lines = Paragraph.lines(stage.sentence(), Lettering.NOTE, frame.width() - 9);
    for (int at = 0; at < Math.min(MOST_LINES, lines.size()); at++) {
      boolean more = at == MOST_LINES - 1 && lines.size() > MOST_LINES;
      surface.text(
          more ? shortened(lines.get(at)) : lines.get(at),
          9,
          y - Lettering.NOTE.height() - at * PITCH,
          Lettering.NOTE,
          Align.LEFT);
    }
  }

  private String shortened(String line) {
    String words = line;
    while (Lettering.NOTE.width(words + " …") > frame.width() - 9 && words.contains(" ")) {
      words = words.substring(0, words.lastIndexOf(' '));
    }
    return words + " …";
  }
}
