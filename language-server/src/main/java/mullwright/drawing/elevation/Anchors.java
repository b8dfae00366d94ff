package mullwright.drawing.elevation;

import mullwright.drawing.Box;
import mullwright.drawing.Layer;
import mullwright.drawing.LineWeight;
import mullwright.drawing.Pen;
import mullwright.drawing.Surface;
import mullwright.drawing.Symbol;
import mullwright.drawing.Tone;
import mullwright.layout.PlacedAnchor;
import mullwright.model.AnchorUse;
import mullwright.quantity.Length;

/**
 * Anchors, by what they hold: a full triangle carries weight, a ring with an upright slot slides, a
 * square holds in and out.
 */
final class Anchors implements ElevationPart {
  /** Half the size of a sign [mm]. */
  static final double HALF = 1.6;

  static final Symbol DEAD_LOAD =
      new Symbol(
          "dead-load",
          surface ->
              surface.polygon(new double[] {-HALF, -1.3, HALF, -1.3, 0, HALF}, Pen.THIN, Tone.INK));

  static final Symbol WIND_LOAD =
      new Symbol(
          "wind-load",
          surface -> {
            surface.circle(0, 0, HALF, Pen.FINE_EDGE, Tone.PAPER);
            surface.line(0, -0.9, 0, 0.9, Pen.of(LineWeight.BROAD));
          });

  static final Symbol CLIP =
      new Symbol(
          "clip", surface -> surface.box(Box.around(0, 0, 2.2, 2.2), Pen.FINE_EDGE, Tone.PAPER));

  private final View view;

  Anchors(View view) {
    this.view = view;
  }

  /** The sign of a kind of anchor. */
  static Symbol symbol(AnchorUse.Kind kind) {
    return switch (kind) {
      case DEAD_LOAD -> DEAD_LOAD;
      case WIND_LOAD -> WIND_LOAD;
      case CLIP -> CLIP;
    };
  }

  @Override
  public void paint(Surface surface) {
    surface.beginLayer(Layer.ANCHOR);
    for (PlacedAnchor anchor : view.layout.anchors()) {
      double x = x(anchor);
      double y = view.p(anchor.y());
      if (view.shows(x, y)) {
        surface.begin(view.subjects.of(anchor));
        surface.symbol(symbol(anchor.use().kind()), x, y);
        surface.end();
      }
    }
    surface.endLayer();
  }

  private double x(PlacedAnchor anchor) {
    Length line = view.layout.wall().grid().lines().get(anchor.use().line()).x();
    Length centre =
        anchor.vertical() < 0 ? line : view.layout.verticals().get(anchor.vertical()).x();
    return view.p(anchor.use().offset().map(by -> centre.plus(by.value())).orElse(centre));
  }

  /** The room its sign takes. */
  Box box(PlacedAnchor anchor) {
    return Box.around(x(anchor), view.p(anchor.y()), 2 * HALF, 2 * HALF);
  }
}
