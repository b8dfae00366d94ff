package mullwright.drawing.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import mullwright.drawing.Align;
import mullwright.drawing.Box;
import mullwright.drawing.FontMeasures;
import mullwright.drawing.Hatch;
import mullwright.drawing.HatchLines;
import mullwright.drawing.Layer;
import mullwright.drawing.Lettering;
import mullwright.drawing.Moved;
import mullwright.drawing.Pen;
import mullwright.drawing.Subject;
import mullwright.drawing.Surface;
import mullwright.drawing.Symbol;
import mullwright.drawing.Tone;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.util.Matrix;

/**
 * Writes what is painted into a page whose unit is the millimetre.
 *
 * <p>Errors of the stream come out as {@link UncheckedIOException}.
 */
final class PdfSurface implements Surface {
  /** How far the handles of a quarter of a circle lie from its ends, in radii: 4/3 (√2 − 1). */
  private static final double HANDLE = 4.0 / 3 * (Math.sqrt(2) - 1);

  private static final int RED = 16;
  private static final int GREEN = 8;
  private static final int BLUE = 0;

  private final PDPageContentStream out;
  private final PdfFonts fonts;
  private final PdfLayers layers;
  private Pen pen;
  private Tone fill;

  PdfSurface(PDPageContentStream out, PdfFonts fonts, PdfLayers layers) {
    this.out = out;
    this.fonts = fonts;
    this.layers = layers;
  }

  /** Some writing to the page. */
  private interface Writing {
    void write() throws IOException;
  }

  private static void write(Writing writing) {
    try {
      writing.write();
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  @Override
  public void beginLayer(Layer layer) {
    write(() -> out.beginMarkedContent(COSName.OC, layers.of(layer)));
  }

  @Override
  public void endLayer() {
    write(out::endMarkedContent);
  }

  @Override
  public void begin(Subject subject) {}

  @Override
  public void end() {}

  private void take(Pen next) throws IOException {
    if (next.equals(pen)) {
      return;
    }
    pen = next;
    out.setStrokingColor(share(pen.tone(), RED), share(pen.tone(), GREEN), share(pen.tone(), BLUE));
    out.setLineWidth((float) pen.weight().millimetres());
    out.setLineJoinStyle(1);
    double[] dashes = pen.type().dashes();
    float[] pattern = new float[dashes.length];
    for (int i = 0; i < dashes.length; i++) {
      pattern[i] = (float) dashes[i];
    }
    out.setLineDashPattern(pattern, 0);
  }

  private static float share(Tone tone, int shift) {
    return (tone.rgb() >> shift & 0xff) / 255f;
  }

  private void take(Tone next) throws IOException {
    if (next != fill) {
      fill = next;
      out.setNonStrokingColor(share(fill, RED), share(fill, GREEN), share(fill, BLUE));
    }
  }

  private void path(double[] points) throws IOException {
    out.moveTo((float) points[0], (float) points[1]);
    for (int at = 2; at < points.length; at += 2) {
      out.lineTo((float) points[at], (float) points[at + 1]);
    }
  }

  private void finish(Pen line, Tone tone) throws IOException {
    if (line != null && tone != null) {
      out.closeAndFillAndStroke();
    } else if (tone != null) {
      out.fill();
    } else {
      out.closeAndStroke();
    }
  }

  private void prepare(Pen line, Tone tone) throws IOException {
    if (line != null) {
      take(line);
    }
    if (tone != null) {
      take(tone);
    }
  }

  @Override
  public void line(double x1, double y1, double x2, double y2, Pen line) {
    polyline(new double[] {x1, y1, x2, y2}, line);
  }

  @Override
  public void polyline(double[] points, Pen line) {
    write(
        () -> {
          take(line);
          path(points);
          out.stroke();
        });
  }

  @Override
  public void polygon(double[] points, Pen line, Tone tone) {
    if (line == null && tone == null) {
      return;
    }
    write(
        () -> {
          prepare(line, tone);
          path(points);
          finish(line, tone);
        });
  }

  @Override
  public void circle(double x, double y, double radius, Pen line, Tone tone) {
    if (line == null && tone == null) {
      return;
    }
    write(
        () -> {
          prepare(line, tone);
          out.moveTo((float) (x + radius), (float) y);
          for (int quarter = 0; quarter < 4; quarter++) {
            curve(x, y, radius, quarter * Math.PI / 2, Math.PI / 2, HANDLE);
          }
          finish(line, tone);
        });
  }

  @Override
  public void arc(double x, double y, double radius, double start, double sweep, Pen line) {
    int parts = Math.max(1, (int) Math.ceil(Math.abs(sweep) / 90));
    double step = Math.toRadians(sweep) / parts;
    double handle = 4.0 / 3 * Math.tan(step / 4);
    write(
        () -> {
          take(line);
          double from = Math.toRadians(start);
          out.moveTo((float) (x + radius * Math.cos(from)), (float) (y + radius * Math.sin(from)));
          for (int i = 0; i < parts; i++) {
            curve(x, y, radius, from + i * step, step, handle);
          }
          out.stroke();
        });
  }

  private void curve(double x, double y, double radius, double from, double step, double handle)
      throws IOException {
    double cos = radius * Math.cos(from);
    double sin = radius * Math.sin(from);
    double cosTo = radius * Math.cos(from + step);
    double sinTo = radius * Math.sin(from + step);
    out.curveTo(
        (float) (x + cos - handle * sin),
        (float) (y + sin + handle * cos),
        (float) (x + cosTo + handle * sinTo),
        (float) (y + sinTo - handle * cosTo),
        (float) (x + cosTo),
        (float) (y + sinTo));
  }

  @Override
  public void hatch(double[] polygon, Hatch hatch, List<Box> clear) {
    write(
        () -> {
          take(hatch.pen());
          for (double[] line : HatchLines.of(polygon, hatch, clear)) {
            path(line);
          }
          out.stroke();
        });
  }

  @Override
  public void text(
      String text, double x, double y, double angle, Lettering lettering, Align align) {
    String words = FontMeasures.printable(text, lettering.bold());
    if (words.isBlank()) {
      return;
    }
    double turn = Math.toRadians(angle);
    double back = lettering.width(words) * align.share();
    write(
        () -> {
          take(lettering.tone());
          out.beginText();
          out.setFont(fonts.of(lettering.bold()), (float) lettering.fontSize());
          out.setTextMatrix(
              Matrix.getRotateInstance(
                  turn, (float) (x - back * Math.cos(turn)), (float) (y - back * Math.sin(turn))));
          out.showText(words);
          out.endText();
        });
  }

  @Override
  public void symbol(Symbol symbol, double x, double y) {
    symbol.paint().accept(new Moved(this, x, y));
  }
}
