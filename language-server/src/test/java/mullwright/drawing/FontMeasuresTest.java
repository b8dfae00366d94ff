package mullwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.InputStream;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Widths of letters, against another reader of the same font. */
class FontMeasuresTest {
  @ParameterizedTest
  @CsvSource({
    "false, " + FontMeasures.PLAIN_FILE,
    "true, " + FontMeasures.BOLD_FILE,
  })
  void agreesWithTheFontLibrary(boolean bold, String file) throws Exception {
    try (InputStream in = FontMeasures.class.getResourceAsStream(file);
        TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in))) {
      for (char c = ' '; c < 0x3000; c++) {
        int glyph = font.getUnicodeCmapLookup().getGlyphId(c);
        assertThat(FontMeasures.of(bold).width(String.valueOf(c)))
            .as("width of %04x", (int) c)
            .isEqualTo(font.getAdvanceWidth(glyph) / 2048.0);
      }
      assertThat(font.getUnitsPerEm()).isEqualTo(2048);
      assertThat(FontMeasures.CAPITAL)
          .isCloseTo(font.getPath("H").getBounds2D().getHeight() / 2048, within(1e-9));
    }
  }
}
