package mullwright.drawing.elevation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.drawing.Align;
import mullwright.drawing.Box;
import mullwright.drawing.Keynote;
import mullwright.drawing.Layer;
import mullwright.drawing.Lettering;
import mullwright.drawing.LineType;
import mullwright.drawing.LineWeight;
import mullwright.drawing.Pen;
import mullwright.drawing.Subject;
import mullwright.drawing.Surface;
import mullwright.drawing.Taken;
import mullwright.drawing.Tone;
import mullwright.layout.PieceRef;

/** Numbers of findings in hexagons, each with a line to the piece it is about. */
final class Keynotes implements ElevationPart {
  static final double RADIUS = 2.9;
  private static final Pen PEN = new Pen(LineWeight.MEDIUM, LineType.CONTINUOUS, Tone.FINDING);

  /** Where in a cell the dot stands: beside the words in its middle. */
  private static final double ASIDE = 0.2;

  private static final int RINGS = 5;
  private static final int WAYS = 12;

  /** A note at a piece: the dot on it and the middle of its hexagon. */
  private record Placed(Keynote note, PieceRef piece, double[] dot, double[] centre) {}

  private final View view;
  private final Taken taken;
  private final List<Placed> placed = new ArrayList<>();

  /** Finds a place for each beside what is taken. */
  Keynotes(View view, Taken taken) {
    this.view = view;
    this.taken = taken;
    for (Keynote note : view.options.keynotes()) {
      for (PieceRef piece : note.pieces()) {
        place(piece).ifPresent(dot -> placed.add(new Placed(note, piece, dot, free(dot))));
      }
    }
  }

  @Override
  public void paint(Surface surface) {
    if (placed.isEmpty()) {
      return;
    }
    surface.beginLayer(Layer.FINDING);
    placed.forEach(one -> paint(surface, one));
    surface.endLayer();
  }

  private static void paint(Surface surface, Placed one) {
    double[] at = one.dot();
    double[] centre = one.centre();
    surface.begin(
        new Subject("keynote", Optional.of(one.piece()), one.note().text(), "", Optional.empty()));
    double distance = Math.hypot(centre[0] - at[0], centre[1] - at[1]);
    double share = (distance - RADIUS) / distance;
    surface.line(
        at[0],
        at[1],
        at[0] + share * (centre[0] - at[0]),
        at[1] + share * (centre[1] - at[1]),
        PEN);
    surface.circle(at[0], at[1], 0.6, null, Tone.FINDING);
    sign(surface, one.note().number(), centre[0], centre[1]);
    surface.end();
  }

  /** The number in its hexagon. */
  static void sign(Surface surface, int number, double x, double y) {
    double[] corners = new double[12];
    for (int i = 0; i < 6; i++) {
      corners[2 * i] = x + RADIUS * Math.cos(Math.toRadians(60 * i));
      corners[2 * i + 1] = y + RADIUS * Math.sin(Math.toRadians(60 * i));
    }
    surface.polygon(corners, PEN, Tone.PAPER);
    Lettering lettering = new Lettering(number < 100 ? 2.5 : 1.8, true, Tone.FINDING);
    surface.text(Integer.toString(number), x, y - lettering.height() / 2, lettering, Align.CENTRE);
  }

  // the nearest place round it where nothing stands yet; if there is none, the first
  private double[] free(double[] at) {
    for (int ring = 1; ring <= RINGS; ring++) {
      for (int way = 0; way < WAYS; way++) {
        double angle = Math.PI / 4 + way * 2 * Math.PI / WAYS;
        double x = at[0] + Math.cos(angle) * ring * 6;
        double y = at[1] + Math.sin(angle) * ring * 6;
        if (taken.takeIfFree(Box.around(x, y, 2 * RADIUS, 2 * RADIUS))) {
          return new double[] {x, y};
        }
      }
    }
    return new double[] {at[0] + 4.3, at[1] + 4.3};
  }

  private Optional<double[]> place(PieceRef piece) {
    Box box =
        view.cut(
            switch (piece.kind()) {
              case VERTICAL -> view.whole(view.layout.verticals().get(piece.index()));
              case HORIZONTAL -> Box.of(view.corners(view.layout.horizontals().get(piece.index())));
              case SPLICE -> new Splices(view).box(view.layout.splices().get(piece.index()));
              case ANCHOR -> new Anchors(view).box(view.layout.anchors().get(piece.index()));
              case CELL -> Box.of(view.corners(view.layout.cells().get(piece.index())));
              case COVER -> carrier(piece.index());
            });
    return box.empty()
        ? Optional.empty()
        : Optional.of(
            new double[] {
              piece.kind() == PieceRef.Kind.CELL ? box.left() + ASIDE * box.width() : box.middleX(),
              box.middleY()
            });
  }

  private Box carrier(int cover) {
    int carrier = view.layout.covers().get(cover).carrier();
    return view.layout.covers().get(cover).vertical()
        ? view.whole(view.layout.verticals().get(carrier))
        : Box.of(view.corners(view.layout.horizontals().get(carrier)));
  }
}
