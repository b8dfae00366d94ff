package mullwright.drawing.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import mullwright.drawing.Box;
import mullwright.drawing.Drawing;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.util.Matrix;

/** Writes drawings as PDF, one a page. The same drawings give the same bytes every time. */
public final class Pdf {
  /** Points in a millimetre. */
  private static final double POINTS = 72 / 25.4;

  private static final double MARGIN = 5;

  private Pdf() {}

  /**
   * Writes them.
   *
   * @throws IOException if the stream does not take it
   */
  public static void write(String title, List<? extends Drawing> drawings, OutputStream out)
      throws IOException {
    try (PDDocument pdf = new PDDocument()) {
      // neither clock nor chance may decide a byte
      pdf.setDocumentId(1L);
      PDDocumentInformation about = new PDDocumentInformation();
      about.setTitle(title);
      about.setProducer("Mullwright");
      pdf.setDocumentInformation(about);
      PdfFonts fonts = new PdfFonts(pdf);
      PdfLayers layers = new PdfLayers();
      PDDocumentOutline outline = new PDDocumentOutline();
      for (int i = 0; i < drawings.size(); i++) {
        PDPage page = page(pdf, drawings.get(i), fonts, layers);
        PDOutlineItem item = new PDOutlineItem();
        item.setTitle((i + 1) + "  " + drawings.get(i).title());
        item.setDestination(page);
        outline.addLast(item);
      }
      pdf.getDocumentCatalog().setDocumentOutline(outline);
      pdf.getDocumentCatalog().setOCProperties(layers.properties());
      pdf.save(out);
    }
  }

  private static PDPage page(PDDocument pdf, Drawing drawing, PdfFonts fonts, PdfLayers layers)
      throws IOException {
    Box box = drawing.extent().grown(drawing.bordered() ? 0 : MARGIN);
    PDPage page =
        new PDPage(
            new PDRectangle((float) (box.width() * POINTS), (float) (box.height() * POINTS)));
    pdf.addPage(page);
    try (PDPageContentStream content = new PDPageContentStream(pdf, page)) {
      content.transform(
          new Matrix(
              (float) POINTS,
              0,
              0,
              (float) POINTS,
              (float) (-box.left() * POINTS),
              (float) (-box.bottom() * POINTS)));
      drawing.paint(new PdfSurface(content, fonts, layers));
    } catch (java.io.UncheckedIOException failed) {
      throw failed.getCause();
    }
    return page;
  }
}
