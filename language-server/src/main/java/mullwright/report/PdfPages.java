package mullwright.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** Sets headings, paragraphs and tables on pages, from the top down. */
final class PdfPages {
  private static final float WIDTH = 595;
  private static final float HEIGHT = 792;
  private static final float MARGIN = 40;
  private static final float TEXT = 8;
  private static final float LINE = 10.5f;
  private static final float GAP = 8;
  private static final float FOOT = 52;

  private final PDDocument pdf;
  private final String title;
  private final PdfFont plain;
  private final PdfFont bold;
  private final List<PDPage> pages = new ArrayList<>();
  private PDPageContentStream out;
  private float y;

  PdfPages(PDDocument pdf, String title) throws IOException {
    this.pdf = pdf;
    this.title = title;
    this.plain = new PdfFont(pdf, "DejaVuSansCondensed.ttf");
    this.bold = new PdfFont(pdf, "DejaVuSansCondensed-Bold.ttf");
    page();
  }

  private void page() throws IOException {
    if (out != null) {
      out.close();
    }
    PDPage page = new PDPage(new PDRectangle(WIDTH, HEIGHT));
    pdf.addPage(page);
    pages.add(page);
    out = new PDPageContentStream(pdf, page);
    y = HEIGHT - MARGIN;
  }

  private boolean full(float needed) {
    return y - needed < FOOT;
  }

  void gap(float points) {
    y -= points;
  }

  void heading(String words, float size) throws IOException {
    if (full(size + 5 * LINE)) {
      page();
    }
    y -= size;
    text(bold, size, MARGIN, words);
    y -= size / 2;
  }

  void paragraph(String words, boolean loud) throws IOException {
    PdfFont font = loud ? bold : plain;
    for (String line : font.wrap(font.printable(words), TEXT, WIDTH - 2 * MARGIN)) {
      if (full(LINE)) {
        page();
      }
      y -= LINE;
      text(font, TEXT, MARGIN, line);
    }
    y -= LINE / 2;
  }

  /**
   * A table; its heading is said again on every page it goes on to.
   *
   * @param said words under its title
   * @param right which columns stand to the right
   */
  void table(
      String name,
      List<String> said,
      List<String> headings,
      List<Boolean> right,
      List<List<String>> rows)
      throws IOException {
    List<List<String>> safe = new ArrayList<>();
    rows.forEach(row -> safe.add(row.stream().map(plain::printable).toList()));
    float[] widths = widths(headings, safe);
    List<List<String>> head = wrapped(bold, headings, widths);
    gap(10);
    heading(name, 9);
    for (String words : said) {
      paragraph(words, false);
    }
    headings(head, right, widths);
    for (List<String> row : safe) {
      List<List<String>> cells = wrapped(plain, row, widths);
      if (full(height(cells))) {
        page();
        headings(head, right, widths);
      }
      row(plain, cells, right, widths);
    }
  }

  private void headings(List<List<String>> head, List<Boolean> right, float[] widths)
      throws IOException {
    row(bold, head, right, widths);
    y -= 3;
    out.setLineWidth(0.5f);
    out.moveTo(MARGIN, y);
    out.lineTo(MARGIN + sum(widths) + GAP * (widths.length - 1), y);
    out.stroke();
  }

  private static float height(List<List<String>> cells) {
    return cells.stream().mapToInt(List::size).max().orElse(1) * LINE + 1.5f;
  }

  private void row(PdfFont font, List<List<String>> cells, List<Boolean> right, float[] widths)
      throws IOException {
    float top = y;
    float x = MARGIN;
    for (int at = 0; at < cells.size(); at++) {
      y = top;
      for (String line : cells.get(at)) {
        y -= LINE;
        float indent = right.get(at) ? widths[at] - font.width(line, TEXT) : 0;
        text(font, TEXT, x + indent, line);
      }
      x += widths[at] + GAP;
    }
    y = top - height(cells);
  }

  private List<List<String>> wrapped(PdfFont font, List<String> row, float[] widths) {
    List<List<String>> cells = new ArrayList<>();
    for (int at = 0; at < row.size(); at++) {
      cells.add(font.wrap(row.get(at), TEXT, widths[at] + 0.01f));
    }
    return cells;
  }

  /** As wide as they like; where that is too wide the widest gives way first. */
  private float[] widths(List<String> headings, List<List<String>> rows) {
    float[] widths = new float[headings.size()];
    float[] least = new float[headings.size()];
    for (int at = 0; at < widths.length; at++) {
      widths[at] = bold.width(headings.get(at), TEXT);
      least[at] = bold.widestWord(headings.get(at), TEXT);
      for (List<String> row : rows) {
        widths[at] = Math.max(widths[at], plain.width(row.get(at), TEXT));
        least[at] = Math.max(least[at], plain.widestWord(row.get(at), TEXT));
      }
    }
    float most = WIDTH - 2 * MARGIN - GAP * (widths.length - 1);
    while (sum(widths) > most) {
      int widest = -1;
      for (int at = 0; at < widths.length; at++) {
        boolean gives = widths[at] > Math.min(least[at], most / widths.length);
        widest = gives && (widest < 0 || widths[at] > widths[widest]) ? at : widest;
      }
      if (widest < 0) {
        break;
      }
      widths[widest] -= 1;
    }
    return widths;
  }

  private static float sum(float[] numbers) {
    float sum = 0;
    for (float number : numbers) {
      sum += number;
    }
    return sum;
  }

  private void text(PdfFont font, float size, float x, String words) throws IOException {
    out.beginText();
    out.setFont(font.font(), size);
    out.newLineAtOffset(x, y);
    out.showText(font.printable(words));
    out.endText();
  }

  /** Puts the foot on every page and closes the last. */
  void finish() throws IOException {
    out.close();
    for (int at = 0; at < pages.size(); at++) {
      out =
          new PDPageContentStream(
              pdf, pages.get(at), PDPageContentStream.AppendMode.APPEND, true, true);
      y = MARGIN - 10;
      text(plain, 7, MARGIN, Caution.WORDS);
      String number = title + ", page " + (at + 1) + " of " + pages.size();
      text(plain, 7, WIDTH - MARGIN - plain.width(number, 7), number);
      out.close();
    }
  }
}
