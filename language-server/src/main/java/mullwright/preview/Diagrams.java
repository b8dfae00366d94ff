package mullwright.preview;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import mullwright.analysis.beam.BeamResponse;
import mullwright.analysis.wall.RunSupport;
import mullwright.analysis.wall.Tributary;
import mullwright.analysis.wall.VerticalRun;
import mullwright.layout.WallLayout;
import mullwright.model.Grid;
import mullwright.quantity.Kind;
import mullwright.quantity.Quantity;
import mullwright.quantity.QuantityPrinter;
import mullwright.quantity.UnitSystem;

/**
 * The diagrams of one run: wind on its left, moment and deflection on both sides of its line, each
 * to a scale of its own at which it fills its bay.
 *
 * <p>Every load case is a line; its peak is written beside it. Moment is drawn on the side that is
 * pulled: to the right is inward, where wind from outdoors pulls the inner flange.
 */
record Diagrams(WallLayout layout, VerticalRun run, Plane plane, UnitSystem units) {
  private static final int SAMPLES = 96;

  /** Share of the narrower bay beside it that a diagram may fill. */
  private static final double FILLED = 0.42;

  private static final double WIDTH_WITHOUT_BAY = 600;
  private static final double METRES_IN_A_FOOT = 0.3048;

  void draw(Slot slot) {
    double x = plane.x(run.pieces().get(0).x());
    double width = room();
    supports(x, slot);
    if (run.tributaries().isEmpty()) {
      return;
    }
    winds(x, width, slot);
    if (run.standing().isPresent()) {
      curves("moment", x, width, slot);
      curves("deflection", x, width * 0.7, slot);
    }
  }

  /** Width on paper a diagram may take to either side. */
  private double room() {
    double least = Double.POSITIVE_INFINITY;
    int line = run.pieces().get(0).line();
    for (Grid.Bay bay : layout.wall().grid().bays()) {
      if (bay.left() == line || bay.right() == line) {
        least = Math.min(least, bay.width().toMillimetres());
      }
    }
    return (least < Double.POSITIVE_INFINITY ? least * FILLED : WIDTH_WITHOUT_BAY) / plane.ratio();
  }

  private void supports(double x, Slot slot) {
    StringBuilder out = new StringBuilder("<g class=\"diagram supports\">");
    for (RunSupport support : run.supports()) {
      out.append("<g transform=\"translate(")
          .append(Markup.number(x))
          .append(' ')
          .append(Markup.number(plane.y(support.y())))
          .append(")\"><g class=\"fixed\"><title>")
          .append(Markup.escaped(support.name()))
          .append("</title><path d=\"M0 0L-9 5V-5Z\"/></g></g>");
    }
    slot.put("supports", out.append("</g>").toString());
  }

  private void winds(double x, double width, Slot slot) {
    double most = 0;
    for (Tributary each : run.tributaries()) {
      most = Math.max(most, Math.max(each.in(), each.out()));
    }
    if (most <= 0) {
      return;
    }
    double scale = width * 0.5 / most;
    StringBuilder out = new StringBuilder("<g class=\"diagram loads\">");
    wind(x, scale, true, out);
    wind(x, scale, false, out);
    double[] in = greatest(true);
    double[] away = greatest(false);
    // one label low on the run, where neither moment nor deflection has its peak
    double low = run.tributaries().get(0).from();
    label(
        x - Math.max(in[1], away[1]) * scale,
        low + (run.tributaries().get(0).to() - low) / 2,
        "up to " + force(in[1]) + " in, " + force(away[1]) + " out",
        "end",
        out);
    slot.put("loads", out.append("</g>").toString());
  }

  private void wind(double x, double scale, boolean in, StringBuilder out) {
    for (Tributary each : run.tributaries()) {
      double load = in ? each.in() : each.out();
      if (load <= 0) {
        continue;
      }
      double left = x - load * scale;
      out.append("<path class=\"")
          .append(in ? "in" : "out")
          .append("\" d=\"M")
          .append(Markup.number(x))
          .append(' ')
          .append(Markup.number(plane.y(each.from())))
          .append('H')
          .append(Markup.number(left))
          .append('V')
          .append(Markup.number(plane.y(each.to())))
          .append('H')
          .append(Markup.number(x))
          .append("Z\"/>");
    }
  }

  /** Height and size of the greatest line load. */
  private double[] greatest(boolean in) {
    double[] most = {0, 0};
    for (Tributary each : run.tributaries()) {
      double load = in ? each.in() : each.out();
      if (load > most[1]) {
        most = new double[] {(each.from() + each.to()) / 2, load};
      }
    }
    return most;
  }

  private void curves(String what, double x, double width, Slot slot) {
    boolean moment = what.equals("moment");
    List<BeamResponse> cases = run.responses();
    List<Double> heights = heights();
    double most = 0;
    for (BeamResponse response : cases) {
      for (double y : heights) {
        most = Math.max(most, Math.abs(value(response, moment).applyAsDouble(y)));
      }
    }
    if (most <= 0) {
      return;
    }
    double scale = width / most;
    StringBuilder out = new StringBuilder("<g class=\"diagram " + what + "\">");
    for (BeamResponse response : cases) {
      curve(x, scale, heights, value(response, moment), response.name(), out);
    }
    for (int sign : new int[] {1, -1}) {
      peak(x, scale, heights, moment, sign, out);
    }
    slot.put(what, out.append("</g>").toString());
  }

  private static DoubleUnaryOperator value(BeamResponse response, boolean moment) {
    return moment ? response::momentAt : response::deflectionAt;
  }

  private void curve(
      double x,
      double scale,
      List<Double> heights,
      DoubleUnaryOperator value,
      String name,
      StringBuilder out) {
    out.append("<path class=\"")
        .append(name.contains("out") ? "out" : "in")
        .append("\" d=\"M")
        .append(Markup.number(x))
        .append(' ')
        .append(Markup.number(plane.y(heights.get(0))));
    for (double y : heights) {
      out.append('L')
          .append(Markup.number(x + value.applyAsDouble(y) * scale))
          .append(' ')
          .append(Markup.number(plane.y(y)));
    }
    out.append('L')
        .append(Markup.number(x))
        .append(' ')
        .append(Markup.number(plane.y(heights.get(heights.size() - 1))))
        .append("\"><title>")
        .append(Markup.escaped(name))
        .append("</title></path>");
  }

  /** Writes the largest value to one side, with its case. */
  private void peak(
      double x, double scale, List<Double> heights, boolean moment, int sign, StringBuilder out) {
    double most = 0;
    double at = 0;
    String by = "";
    for (BeamResponse response : run.responses()) {
      DoubleUnaryOperator value = value(response, moment);
      for (double y : heights) {
        if (sign * value.applyAsDouble(y) > most) {
          most = sign * value.applyAsDouble(y);
          at = y;
          by = response.name();
        }
      }
    }
    if (most > 0) {
      Kind kind = moment ? Kind.MOMENT : Kind.LENGTH;
      String words = QuantityPrinter.in(units, Quantity.ofSi(most, kind), kind) + ", " + by;
      label(x + sign * most * scale, at, words, sign > 0 ? "start" : "end", out);
    }
  }

  private void label(double x, double height, String words, String anchor, StringBuilder out) {
    out.append("<g transform=\"translate(")
        .append(Markup.number(x))
        .append(' ')
        .append(Markup.number(plane.y(height)))
        .append(")\"><g class=\"fixed\"><text text-anchor=\"")
        .append(anchor)
        .append("\" x=\"")
        .append(anchor.equals("end") ? -5 : 5)
        .append("\" y=\"4\">")
        .append(Markup.escaped(words))
        .append("</text></g></g>");
  }

  /** Places to look at, from below: evenly, and wherever a curve may turn. */
  private List<Double> heights() {
    TreeSet<Double> places = new TreeSet<>();
    BeamResponse any = run.responses().get(0);
    double start = any.beam().start();
    double end = any.beam().end();
    for (int at = 0; at <= SAMPLES; at++) {
      places.add(start + (end - start) * at / SAMPLES);
    }
    any.beam().supports().forEach(support -> places.add(support.at()));
    any.beam().hinges().forEach(hinge -> places.add(hinge.at()));
    for (BeamResponse response : run.responses()) {
      places.add(response.moments().greatest().at());
      places.add(response.moments().least().at());
    }
    return new ArrayList<>(places.subSet(start, true, end, true));
  }

  /** A force per length has no kind of its own among the units: it is written as force a foot. */
  private String force(double newtonsPerMetre) {
    boolean us = units == UnitSystem.US;
    double size = us ? newtonsPerMetre * METRES_IN_A_FOOT : newtonsPerMetre;
    String force = QuantityPrinter.in(units, Quantity.ofSi(size, Kind.FORCE), Kind.FORCE);
    return force + (us ? "/ft" : "/m");
  }
}
