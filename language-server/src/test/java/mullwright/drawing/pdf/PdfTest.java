package mullwright.drawing.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.drawing.ExampleWalls;
import mullwright.drawing.Paper;
import mullwright.drawing.Sheet;
import mullwright.drawing.TitleBlock;
import mullwright.drawing.elevation.ElevationSheets;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

class PdfTest {
  private static byte[] drawn(String path, String paper) throws IOException {
    ExampleWalls.Example example = ExampleWalls.of(path);
    List<Sheet> sheets =
        ElevationSheets.of(
            example.layout(),
            example.options(),
            Optional.empty(),
            Paper.named(paper).orElseThrow(),
            new TitleBlock("Larkhaven Ferry Terminal", "East", "B", "For review", "Caution."),
            List.of("Ω ⌀ ½ \u4e2d"));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Pdf.write("East", sheets, out);
    return out.toByteArray();
  }

  @Test
  void textIsText() throws Exception {
    try (PDDocument pdf = Loader.loadPDF(drawn("ferry-terminal/east.wall", "A3"))) {
      String text = new PDFTextStripper().getText(pdf);
      // by hand, as in ElevationTest: 60 − 2 1/2 in; 6 × 60 + 2 1/2 in; floor L2 at 13'-0"
      assertThat(text)
          .contains("Larkhaven Ferry Terminal", "4'-9 1/2\"", "30'-2 1/2\"", "Roof", "+13'-0\"")
          // a letter the font has not shows as a question mark, the others as they are
          .contains("Ø ½ ?");
    }
  }

  @Test
  void theSheetIsAsLargeAsItsPaper() throws Exception {
    try (PDDocument pdf = Loader.loadPDF(drawn("ferry-terminal/east.wall", "A3"))) {
      // ISO 216: A3 is 297 × 420 mm; a point is 1/72 inch (from memory)
      assertThat(pdf.getPage(0).getMediaBox().getWidth()).isEqualTo((float) (420 / 25.4 * 72));
      assertThat(pdf.getPage(0).getMediaBox().getHeight()).isEqualTo((float) (297 / 25.4 * 72));
    }
  }

  @Test
  void everyFontIsInTheFile() throws Exception {
    try (PDDocument pdf = Loader.loadPDF(drawn("ferry-terminal/east.wall", "A3"))) {
      List<String> fonts = new ArrayList<>();
      for (COSName name : pdf.getPage(0).getResources().getFontNames()) {
        PDFont font = pdf.getPage(0).getResources().getFont(name);
        assertThat(font.isEmbedded()).as(font.getName()).isTrue();
        fonts.add(font.getName());
      }
      assertThat(fonts).hasSize(2);
    }
  }

  @Test
  void kindsOfThingsCanBeSwitchedOff() throws Exception {
    try (PDDocument pdf = Loader.loadPDF(drawn("ferry-terminal/east.wall", "A3"))) {
      assertThat(pdf.getDocumentCatalog().getOCProperties().getGroupNames())
          .contains("member", "dimension", "anchor", "grid", "mark");
    }
  }

  @Test
  void theSameBytesEveryTime() throws Exception {
    assertThat(drawn("tower/north.wall", "A3")).isEqualTo(drawn("tower/north.wall", "A3"));
  }
}
