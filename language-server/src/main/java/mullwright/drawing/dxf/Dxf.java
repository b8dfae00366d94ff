package mullwright.drawing.dxf;

import java.util.Locale;
import mullwright.drawing.Align;
import mullwright.drawing.Box;
import mullwright.drawing.Drawing;
import mullwright.drawing.Layer;
import mullwright.drawing.Lettering;
import mullwright.drawing.LineType;
import mullwright.quantity.UnitSystem;

/** Writes a drawing as DXF. The same drawing gives the same text every time. */
public final class Dxf {
  private static final double INCH = 25.4;

  private Dxf() {}

  /**
   * The drawing at the size of the thing, in inches or millimetres; letters are as high as they
   * must be to come out right at the drawing's scale.
   */
  public static String of(Drawing drawing, UnitSystem units) {
    boolean inches = units == UnitSystem.US;
    double unit = drawing.scale().ratio() / (inches ? INCH : 1);
    DxfSurface surface = new DxfSurface(unit);
    drawing.paint(surface);
    note(drawing, inches, surface);
    Tags out = new Tags();
    out.text(999, "Mullwright, " + drawing.title() + ", " + unitWords(inches));
    header(out, drawing.extent().grown(10), unit, inches);
    tables(out, unit);
    out.text(0, "SECTION").text(2, "BLOCKS").all(surface.blocks()).text(0, "ENDSEC");
    out.text(0, "SECTION").text(2, "ENTITIES").all(surface.entities()).text(0, "ENDSEC");
    return out.text(0, "EOF").toString();
  }

  private static String unitWords(boolean inches) {
    return inches ? "1 unit is 1 inch, full size" : "1 unit is 1 millimetre, full size";
  }

  private static void note(Drawing drawing, boolean inches, DxfSurface surface) {
    Box extent = drawing.extent();
    surface.beginLayer(Layer.NOTE);
    surface.text(
        "Drawing unit: "
            + unitWords(inches)
            + ". Letters are sized for "
            + drawing.scale().words()
            + ".",
        extent.left(),
        extent.bottom() - 6,
        Lettering.NOTE,
        Align.LEFT);
    surface.endLayer();
  }

  private static void header(Tags out, Box box, double unit, boolean inches) {
    out.text(0, "SECTION").text(2, "HEADER");
    out.text(9, "$ACADVER").text(1, "AC1009");
    out.text(9, "$INSBASE").point(0, 0, 0);
    out.text(9, "$EXTMIN").point(0, box.left() * unit, box.bottom() * unit);
    out.text(9, "$EXTMAX").point(0, box.right() * unit, box.top() * unit);
    out.text(9, "$LIMMIN").flat(0, box.left() * unit, box.bottom() * unit);
    out.text(9, "$LIMMAX").flat(0, box.right() * unit, box.top() * unit);
    out.text(9, "$LTSCALE").number(40, 1);
    out.text(9, "$TEXTSIZE").number(40, Lettering.NOTE.height() * unit);
    out.text(9, "$TEXTSTYLE").text(7, "STANDARD");
    // 4: feet and inches with fractions, to 1/16; 2: decimals
    out.text(9, "$LUNITS").whole(70, inches ? 4 : 2);
    out.text(9, "$LUPREC").whole(70, inches ? 4 : 1);
    out.text(9, "$PSLTSCALE").whole(70, 1);
    out.text(0, "ENDSEC");
  }

  private static void tables(Tags out, double unit) {
    out.text(0, "SECTION").text(2, "TABLES");
    out.text(0, "TABLE").text(2, "LTYPE").whole(70, LineType.values().length);
    for (LineType type : LineType.values()) {
      double[] dashes = type.dashes();
      double whole = 0;
      for (double dash : dashes) {
        whole += dash * unit;
      }
      out.text(0, "LTYPE").text(2, name(type)).whole(70, 0).text(3, type.word()).whole(72, 65);
      out.whole(73, dashes.length).number(40, whole);
      for (int i = 0; i < dashes.length; i++) {
        out.number(49, (i % 2 == 0 ? 1 : -1) * dashes[i] * unit);
      }
    }
    out.text(0, "ENDTAB");
    out.text(0, "TABLE").text(2, "LAYER").whole(70, Layer.values().length + 1);
    out.text(0, "LAYER").text(2, "0").whole(70, 0).whole(62, 7).text(6, "CONTINUOUS");
    for (Layer layer : Layer.values()) {
      out.text(0, "LAYER").text(2, layer.name()).whole(70, 0).whole(62, layer.colour());
      out.text(6, "CONTINUOUS");
    }
    out.text(0, "ENDTAB");
    out.text(0, "TABLE").text(2, "STYLE").whole(70, 1);
    out.text(0, "STYLE").text(2, "STANDARD").whole(70, 0).number(40, 0);
    // letters of the usual stroke font are wider than the drawing counts on
    out.number(41, DxfSurface.NARROW).number(50, 0).whole(71, 0);
    out.number(42, Lettering.NOTE.height() * unit).text(3, "txt").text(4, "");
    out.text(0, "ENDTAB");
    out.text(0, "ENDSEC");
  }

  /** The name of a kind of lines: {@code CONTINUOUS}, {@code LONG_DASH_DOT}. */
  static String name(LineType type) {
    return type.name().toUpperCase(Locale.ROOT);
  }
}
