package mullwright.drawing.elevation;

import java.util.function.Supplier;
import mullwright.drawing.Box;
import mullwright.drawing.Layer;
import mullwright.drawing.LineWeight;
import mullwright.drawing.Pen;
import mullwright.drawing.Subject;
import mullwright.drawing.Surface;
import mullwright.drawing.Tone;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.VerticalPiece;

/** Horizontals, and verticals with their true faces. */
final class Members implements ElevationPart {
  private final View view;

  Members(View view) {
    this.view = view;
  }

  /** The pen for the edges of a member so wide on paper: no more than a quarter of it is line. */
  static Pen edge(double width) {
    return width >= 4 * LineWeight.WIDE.millimetres()
        ? Pen.EDGE
        : width >= 4 * LineWeight.MEDIUM.millimetres() ? Pen.FINE_EDGE : Pen.THIN;
  }

  @Override
  public void paint(Surface surface) {
    surface.beginLayer(Layer.MEMBER);
    for (HorizontalPiece piece : view.layout.horizontals()) {
      Pen pen = edge(view.p(piece.profile().face().value()));
      shape(surface, view.corners(piece), pen, () -> view.subjects.of(piece));
    }
    for (VerticalPiece piece : view.layout.verticals()) {
      Box box = view.whole(piece);
      shape(surface, view.cut(box.corners()), edge(box.width()), () -> view.subjects.of(piece));
    }
    surface.endLayer();
  }

  private void shape(Surface surface, double[] whole, Pen pen, Supplier<Subject> subject) {
    double[] corners = view.cut(whole);
    if (corners.length == 0) {
      return;
    }
    surface.begin(subject.get());
    if (corners == whole) {
      surface.polygon(corners, pen, Tone.METAL);
    } else {
      open(surface, corners, pen);
    }
    surface.end();
  }

  // where the sheet ends the member goes on: no edge there
  private void open(Surface surface, double[] corners, Pen pen) {
    surface.polygon(corners, null, Tone.METAL);
    for (int at = 0; at < corners.length; at += 2) {
      int next = (at + 2) % corners.length;
      if (!view.onEdge(corners[at], corners[at + 1], corners[next], corners[next + 1])) {
        surface.line(corners[at], corners[at + 1], corners[next], corners[next + 1], pen);
      }
    }
  }
}
