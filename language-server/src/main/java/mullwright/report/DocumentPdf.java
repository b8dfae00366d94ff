package mullwright.report;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;

/**
 * Writes a document as PDF. Text stays text, in a font that is put into the file; the same document
 * gives the same bytes every time.
 *
 * <p>A page is as narrow as A4 and as low as Letter, so it prints on either. The caution stands at
 * the head of the first page and at the foot of every page.
 */
public final class DocumentPdf {
  private DocumentPdf() {}

  /**
   * Writes it.
   *
   * @throws IOException if the stream does not take it
   */
  public static void write(Document document, OutputStream out) throws IOException {
    try (PDDocument pdf = new PDDocument()) {
      // neither clock nor chance may decide a byte
      pdf.setDocumentId(1L);
      PDDocumentInformation about = new PDDocumentInformation();
      about.setTitle(document.title());
      about.setProducer("Mullwright");
      pdf.setDocumentInformation(about);
      PdfPages pages = new PdfPages(pdf, document.title());
      pages.heading(document.title(), 16);
      pages.paragraph(Caution.WORDS, true);
      for (Document.Section section : document.sections()) {
        pages.gap(8);
        pages.heading(section.title() + ", " + section.file(), 12);
        for (String words : section.warnings()) {
          if (!words.equals(Caution.WORDS)) {
            pages.paragraph(words, true);
          }
        }
        for (Table table : section.tables()) {
          write(table, pages);
        }
      }
      pages.finish();
      pdf.save(out);
    }
  }

  private static void write(Table table, PdfPages pages) throws IOException {
    Folded folded = Folded.of(table);
    List<Column> columns = folded.kept().stream().map(table.columns()::get).toList();
    List<List<String>> rows = new ArrayList<>();
    table.rows().forEach(row -> rows.add(printed(row, folded, columns)));
    if (!table.totals().isEmpty()) {
      rows.add(printed(table.totals(), folded, columns));
    }
    pages.table(
        table.title(),
        folded.said(),
        columns.stream().map(Printed::heading).toList(),
        columns.stream().map(Column::right).toList(),
        rows);
  }

  private static List<String> printed(List<Entry> row, Folded folded, List<Column> columns) {
    List<String> cells = new ArrayList<>();
    for (int at = 0; at < columns.size(); at++) {
      cells.add(Printed.plain(row.get(folded.kept().get(at)), columns.get(at)));
    }
    return cells;
  }
}
