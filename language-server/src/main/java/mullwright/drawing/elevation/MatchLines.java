package mullwright.drawing.elevation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.drawing.Align;
import mullwright.drawing.Box;
import mullwright.drawing.Layer;
import mullwright.drawing.Lettering;
import mullwright.drawing.LineType;
import mullwright.drawing.LineWeight;
import mullwright.drawing.Pen;
import mullwright.drawing.Surface;
import mullwright.drawing.Tone;

/** Lines where the elevation goes on on another sheet, and which one. */
final class MatchLines implements ElevationPart {
  private static final Pen PEN =
      new Pen(LineWeight.EXTRA_WIDE, LineType.LONG_DASH_DOUBLE_DOT, Tone.INK);
  private static final double OUT = 2;
  private static final double OFF = 1.6;
  private static final double HALF = 0.5;

  private final View view;

  MatchLines(View view) {
    this.view = view;
  }

  @Override
  public void paint(Surface surface) {
    if (view.window.equals(Window.ALL)) {
      return;
    }
    Box frame = view.frame;
    double high = Lettering.NOTE.height();
    surface.beginLayer(Layer.MATCH);
    view.window.left().ifPresent(it -> upright(surface, it, frame.left() - OFF));
    view.window.right().ifPresent(it -> upright(surface, it, frame.right() + OFF + high));
    view.window.bottom().ifPresent(it -> level(surface, it, frame.bottom() - OFF - high));
    view.window.top().ifPresent(it -> level(surface, it, frame.top() + OFF));
    surface.endLayer();
  }

  /** The room the lines themselves take. */
  List<Box> boxes() {
    List<Box> boxes = new ArrayList<>();
    Box frame = view.frame;
    for (Optional<Window.Match> match : List.of(view.window.left(), view.window.right())) {
      match.ifPresent(
          it -> {
            double x = view.options.scale().paper(it.at());
            boxes.add(new Box(x - HALF, frame.bottom(), x + HALF, frame.top()));
          });
    }
    for (Optional<Window.Match> match : List.of(view.window.bottom(), view.window.top())) {
      match.ifPresent(
          it -> {
            double y = view.options.scale().paper(it.at());
            boxes.add(new Box(frame.left(), y - HALF, frame.right(), y + HALF));
          });
    }
    return boxes;
  }

  private void upright(Surface surface, Window.Match match, double text) {
    double x = view.options.scale().paper(match.at());
    surface.line(x, view.frame.bottom() - OUT, x, view.frame.top() + OUT, PEN);
    surface.text(match.words(), text, view.frame.middleY(), 90, Lettering.NOTE, Align.CENTRE);
  }

  private void level(Surface surface, Window.Match match, double text) {
    double y = view.options.scale().paper(match.at());
    surface.line(view.frame.left() - OUT, y, view.frame.right() + OUT, y, PEN);
    surface.text(match.words(), view.frame.middleX(), text, Lettering.NOTE, Align.CENTRE);
  }
}
