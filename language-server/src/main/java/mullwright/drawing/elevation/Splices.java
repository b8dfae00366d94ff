package mullwright.drawing.elevation;

import java.util.function.Consumer;
import mullwright.drawing.Box;
import mullwright.drawing.Layer;
import mullwright.drawing.Pen;
import mullwright.drawing.Surface;
import mullwright.drawing.Tone;
import mullwright.layout.SpliceJoint;
import mullwright.layout.VerticalPiece;

/** The splices between lengths of verticals: both edges of the gap, and a pointer beside it. */
final class Splices implements ElevationPart {
  /** How far the lines of a joint stand out beside the member [mm]. */
  private static final double STANDS_OUT = 1.4;

  private final View view;

  Splices(View view) {
    this.view = view;
  }

  @Override
  public void paint(Surface surface) {
    surface.beginLayer(Layer.SPLICE);
    view.layout.splices().forEach(joint -> splice(surface, joint));
    surface.endLayer();
  }

  private void splice(Surface surface, SpliceJoint joint) {
    VerticalPiece below = view.layout.verticals().get(joint.below());
    Box face = view.whole(below);
    double y = view.p(joint.y());
    if (!view.shows(face.middleX(), y)) {
      return;
    }
    double half = view.p(joint.splice().gap().value()) / 2;
    double left = face.left() - STANDS_OUT;
    double right = face.right() + STANDS_OUT;
    surface.begin(view.subjects.of(joint));
    Consumer<Double> edge = at -> surface.line(left, at, right, at, Pen.FINE_EDGE);
    edge.accept(y - Math.max(half, 0.25));
    edge.accept(y + Math.max(half, 0.25));
    surface.polygon(
        new double[] {right + 0.3, y, right + 2.1, y + 1, right + 2.1, y - 1}, null, Tone.INK);
    surface.end();
  }

  /** The room the sign of a splice takes. */
  Box box(SpliceJoint joint) {
    Box face = view.whole(view.layout.verticals().get(joint.below()));
    double y = view.p(joint.y());
    return new Box(face.left() - STANDS_OUT, y - 1.2, face.right() + STANDS_OUT + 2.3, y + 1.2);
  }
}
