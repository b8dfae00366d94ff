package mullwright.drawing.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.util.Objects;
import mullwright.drawing.FontMeasures;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The fonts of a document; only what is used of them goes into it. */
final class PdfFonts {
  private final PDDocument pdf;
  private PDType0Font plain;
  private PDType0Font bold;

  PdfFonts(PDDocument pdf) {
    this.pdf = pdf;
  }

  PDType0Font of(boolean heavy) throws IOException {
    if (heavy) {
      bold = bold == null ? load(FontMeasures.BOLD_FILE) : bold;
      return bold;
    }
    plain = plain == null ? load(FontMeasures.PLAIN_FILE) : plain;
    return plain;
  }

  private PDType0Font load(String file) throws IOException {
    try (InputStream in = FontMeasures.class.getResourceAsStream(file)) {
      return PDType0Font.load(pdf, Objects.requireNonNull(in, file), true);
    }
  }
}
