package mullwright.report;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import mullwright.quantity.Length;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/**
 * Writes a document as a workbook: a sheet of words first, then a sheet for each table.
 *
 * <p>A length takes two columns, as printed and exactly in millimetres, as a number; amounts are
 * numbers in their column's unit. The workbook carries no date, so the same document gives the same
 * bytes.
 */
public final class XlsxWriter {
  private static final int NAME_LIMIT = 31;
  private static final int WIDEST = 60;
  private static final int NARROWEST = 8;

  /** The whole workbook. */
  public byte[] write(Document document) {
    try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      Workbook book = new Workbook(out, "Mullwright", null);
      Set<String> names = new HashSet<>();
      words(document, book.newWorksheet(name("Read first", names)));
      for (Document.Section section : document.sections()) {
        for (Table table : section.tables()) {
          sheet(table, book.newWorksheet(name(section.wall() + " " + table.name(), names)));
        }
      }
      book.finish();
      return dateless(out.toByteArray());
    } catch (IOException failed) {
      throw new UncheckedIOException("memory was full", failed);
    }
  }

  /** A name a sheet may have that none has yet. */
  private static String name(String wanted, Set<String> taken) {
    String bare = wanted.replaceAll("[\\\\/?*\\[\\]:']", "-");
    for (int again = 1; ; again++) {
      String end = again == 1 ? "" : " " + again;
      int room = NAME_LIMIT - end.length();
      String name = (bare.length() > room ? bare.substring(0, room) : bare) + end;
      if (taken.add(name.toLowerCase(Locale.ROOT))) {
        return name;
      }
    }
  }

  private static void words(Document document, Worksheet sheet) {
    sheet.value(0, 0, document.title());
    sheet.style(0, 0).bold().set();
    int row = 2;
    for (Document.Section section : document.sections()) {
      sheet.value(row, 0, section.title() + ", " + section.file());
      sheet.style(row++, 0).bold().set();
      for (String warning : section.warnings()) {
        sheet.value(row++, 0, warning);
      }
      for (Table table : section.tables()) {
        sheet.value(row++, 0, table.name() + ": " + table.title());
      }
      row++;
    }
    for (String closing : document.closing()) {
      sheet.value(row++, 0, closing);
    }
    sheet.width(0, WIDEST);
  }

  private static void sheet(Table table, Worksheet sheet) {
    int at = 0;
    for (int column = 0; column < table.columns().size(); column++) {
      at = column(table, column, at, sheet);
    }
    sheet.freezePane(0, 1);
  }

  /** Writes a column of the table; where the next one begins. */
  private static int column(Table table, int column, int at, Worksheet sheet) {
    Column declared = table.columns().get(column);
    List<String> heads =
        switch (declared.kind()) {
          case LENGTH -> List.of(declared.heading(), declared.heading() + ", mm");
          case RECTANGLE ->
              List.of(
                  declared.heading() + " width",
                  declared.heading() + " width, mm",
                  declared.heading() + " height",
                  declared.heading() + " height, mm");
          case AMOUNT -> List.of(declared.heading() + ", " + declared.unit().symbol());
          case TEXT, NAMES, COUNT -> List.of(declared.heading());
        };
    for (int i = 0; i < heads.size(); i++) {
      sheet.value(0, at + i, heads.get(i));
      sheet.style(0, at + i).bold().set();
      sheet.width(at + i, Math.max(NARROWEST, Math.min(WIDEST, heads.get(i).length() + 2)));
    }
    int widest = NARROWEST;
    for (int row = 0; row < table.rows().size(); row++) {
      widest =
          Math.max(widest, cell(table.rows().get(row).get(column), declared, row + 1, at, sheet));
    }
    if (!table.totals().isEmpty()) {
      cell(table.totals().get(column), declared, table.rows().size() + 1, at, sheet);
    }
    if (heads.size() == 1) {
      sheet.width(at, Math.max(heads.get(0).length() + 2, Math.min(WIDEST, widest + 2)));
    }
    return at + heads.size();
  }

  private static int cell(Entry cell, Column column, int row, int at, Worksheet sheet) {
    if (cell instanceof Entry.Count count) {
      sheet.value(row, at, count.count());
      return NARROWEST;
    }
    if (cell instanceof Entry.Size size) {
      sheet.value(row, at, column.format().print(size.length()));
      sheet.value(row, at + 1, millimetres(size.length()));
      return NARROWEST;
    }
    if (cell instanceof Entry.Rectangle size) {
      sheet.value(row, at, column.format().print(size.width()));
      sheet.value(row, at + 1, millimetres(size.width()));
      sheet.value(row, at + 2, column.format().print(size.height()));
      sheet.value(row, at + 3, millimetres(size.height()));
      return NARROWEST;
    }
    if (cell instanceof Entry.Amount amount) {
      sheet.value(row, at, new BigDecimal(Printed.amount(amount, column.unit())));
      return NARROWEST;
    }
    String text = "";
    if (cell instanceof Entry.Names names) {
      text = String.join("; ", names.names());
    } else if (cell instanceof Entry.Phrases phrases) {
      text = String.join("; ", phrases.phrases());
    } else if (cell instanceof Entry.Text plain) {
      text = plain.text();
    }
    if (!text.isEmpty()) {
      sheet.value(row, at, TextWidth.harmless(text));
    }
    return text.length();
  }

  private static BigDecimal millimetres(Length length) {
    return new BigDecimal(length.millimetres().toPlainString());
  }

  // the library writes the hour into the book's properties and into every entry of the archive
  private static byte[] dateless(byte[] book) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream(book.length);
    try (ZipOutputStream again = new ZipOutputStream(out, StandardCharsets.UTF_8)) {
      for (Map.Entry<String, byte[]> part : ZipParts.of(book).entrySet()) {
        byte[] content = part.getValue();
        if (part.getKey().equals("docProps/core.xml")) {
          String text = new String(content, StandardCharsets.UTF_8);
          content =
              text.replaceAll(
                      "(?<=<dcterms:(?:created|modified) xsi:type=\"dcterms:W3CDTF\">)[^<]*",
                      "1980-01-01T00:00:00Z")
                  .getBytes(StandardCharsets.UTF_8);
        }
        ZipEntry same = new ZipEntry(part.getKey());
        same.setTimeLocal(LocalDateTime.of(1980, 1, 1, 0, 0));
        again.putNextEntry(same);
        again.write(content);
        again.closeEntry();
      }
    }
    return out.toByteArray();
  }
}
