package mullwright.drawing.svg;

import java.util.EnumSet;
import java.util.Set;
import java.util.TreeMap;
import mullwright.drawing.Lettering;
import mullwright.drawing.LineType;
import mullwright.drawing.Pen;
import mullwright.drawing.Tone;

/**
 * The style sheet of a drawing: one class a pen, a filling and a kind of letters.
 *
 * <p>Each rule names one class and nothing round it: what a symbol is made of has nothing round it
 * where it is used.
 */
final class SvgStyle {
  private final Svg.Colours colours;

  SvgStyle(Svg.Colours colours) {
    this.colours = colours;
  }

  /** What a drawing made use of, by class. */
  static final class Used {
    final TreeMap<String, Pen> pens = new TreeMap<>();
    final Set<Tone> tones = EnumSet.noneOf(Tone.class);
    final TreeMap<String, Lettering> letterings = new TreeMap<>();
  }

  static String of(Pen pen) {
    StringBuilder name = new StringBuilder("d-w");
    name.append(Math.round(pen.weight().millimetres() * 100));
    if (pen.type() != LineType.CONTINUOUS) {
      name.append('-').append(pen.type().word());
    }
    if (pen.tone() != Tone.INK) {
      name.append('-').append(pen.tone().word());
    }
    return name.toString();
  }

  static String of(Tone fill) {
    return "d-f-" + fill.word();
  }

  static String of(Lettering lettering) {
    StringBuilder name = new StringBuilder("d-t");
    name.append(Math.round(lettering.height() * 10));
    if (lettering.bold()) {
      name.append('b');
    }
    if (lettering.tone() != Tone.INK) {
      name.append('-').append(lettering.tone().word());
    }
    return name.toString();
  }

  void write(Used used, StringBuilder out) {
    out.append(".drawing{font-family:\"")
        .append(Lettering.FAMILY)
        .append("\",\"DejaVu Sans\",\"Arial Narrow\",Arial,sans-serif}\n")
        .append(".d-c{text-anchor:middle}\n.d-r{text-anchor:end}\n");
    if (colours == Svg.Colours.PAPER) {
      out.append(".d-paper{fill:").append(colour(Tone.PAPER)).append("}\n");
    }
    used.pens.forEach((name, pen) -> pen(name, pen, out));
    for (Tone tone : used.tones) {
      out.append(".").append(of(tone)).append("{fill:").append(colour(tone)).append("}\n");
    }
    used.letterings.forEach((name, lettering) -> lettering(name, lettering, out));
  }

  private void pen(String name, Pen pen, StringBuilder out) {
    out.append(".").append(name).append("{fill:none;stroke:").append(colour(pen.tone()));
    out.append(";stroke-width:");
    Numbers.append(pen.weight().millimetres(), out);
    double[] dashes = pen.type().dashes();
    for (int at = 0; at < dashes.length; at++) {
      out.append(at == 0 ? ";stroke-dasharray:" : " ");
      Numbers.append(dashes[at], out);
    }
    out.append(";stroke-linejoin:round}\n");
  }

  private void lettering(String name, Lettering lettering, StringBuilder out) {
    out.append(".").append(name).append("{fill:").append(colour(lettering.tone()));
    out.append(";font-size:");
    Numbers.append(lettering.fontSize(), out);
    out.append(lettering.bold() ? "px;font-weight:bold}\n" : "px}\n");
  }

  private String colour(Tone tone) {
    String plain = String.format("#%06x", tone.rgb());
    return colours == Svg.Colours.PAPER
        ? plain
        : "var(--drawing-" + tone.word() + "," + plain + ")";
  }
}
