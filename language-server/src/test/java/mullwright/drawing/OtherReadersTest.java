package mullwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import mullwright.drawing.dxf.Dxf;
import mullwright.drawing.elevation.Elevation;
import mullwright.drawing.elevation.ElevationSheets;
import mullwright.drawing.pdf.Pdf;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Drawings read by programs that know nothing of this one; each is skipped where it is not
 * installed. Pictures of every sheet are left in {@code target/drawings} for a person to look at.
 */
class OtherReadersTest {
  private static final Path PICTURES = Path.of("target", "drawings");

  @TempDir Path folder;

  static Stream<String> examples() {
    return ExampleWalls.PATHS.stream();
  }

  private OtherPrograms programs() {
    return new OtherPrograms(folder);
  }

  private static String name(String path) {
    return path.replaceAll("/.*", "");
  }

  private static List<Sheet> sheets(String path) {
    ExampleWalls.Example example = ExampleWalls.of(path);
    return ElevationSheets.of(
        example.layout(),
        example.options(),
        Optional.empty(),
        Paper.named("A3").orElseThrow(),
        new TitleBlock("Invented", name(path), "A", "For review, not for construction", "-"),
        List.of());
  }

  private Path dxf(String path) throws IOException {
    ExampleWalls.Example example = ExampleWalls.of(path);
    String text =
        Dxf.of(Elevation.of(example.layout(), example.options()), example.options().units());
    return Files.writeString(folder.resolve(name(path) + ".dxf"), text);
  }

  @ParameterizedTest
  @MethodSource("examples")
  void anAuditOfTheExchangeFileFindsNothing(String path) throws Exception {
    String audit = programs().audit(dxf(path));
    int anchors = ExampleWalls.of(path).layout().anchors().size();
    // AC1009: release 12 (DXF reference, from memory)
    assertThat(audit).isEqualTo("AC1009 0 0 " + anchors);
  }

  @Test
  void aDraftingProgramPrintsTheExchangeFile() throws Exception {
    // asked for its version it opens a window and waits
    assumeTrue(programs().there("which", "librecad"), "skipped: no LibreCAD here; Debian has it");
    Path file = dxf("library-corner/reading-room.wall");
    assertThat(programs().run("librecad", "dxf2pdf", "-a", file.toString()).code()).isZero();
    Path printed = folder.resolve("library-corner.pdf");
    assertThat(printed).exists();
    try (PDDocument pdf = Loader.loadPDF(printed.toFile())) {
      var image = new PDFRenderer(pdf).renderImageWithDPI(0, 60, ImageType.GRAY);
      Files.createDirectories(PICTURES);
      ImageIO.write(image, "png", PICTURES.resolve("library-corner-dxf.png").toFile());
      int ink = 0;
      for (int y = 0; y < image.getHeight(); y++) {
        for (int x = 0; x < image.getWidth(); x++) {
          ink += image.getRaster().getSample(x, y, 0) < 200 ? 1 : 0;
        }
      }
      // neither an empty page nor a black one
      assertThat((double) ink / (image.getWidth() * image.getHeight())).isBetween(0.005, 0.4);
    }
  }

  @Test
  void textOfAPdfIsFoundByAnotherProgram() throws Exception {
    assumeTrue(
        programs().there("pdftotext", "-v"), "skipped: no pdftotext here; Debian: poppler-utils");
    Path file = folder.resolve("east.pdf");
    try (OutputStream out = Files.newOutputStream(file)) {
      Pdf.write("East", sheets("ferry-terminal/east.wall"), out);
    }
    OtherPrograms.Ran ran = programs().run("pdftotext", "-layout", file.toString(), "-");
    // by hand, as in ElevationTest: 60 − 2 1/2 in; 6 × 60 + 2 1/2 in; floor L2 at 13'-0"
    assertThat(ran.out()).contains("4'-9 1/2\"", "30'-2 1/2\"", "Elevation East", "+13'-0\"", "V1");
  }

  @ParameterizedTest
  @MethodSource("examples")
  void picturesForAPersonToLookAt(String path) throws Exception {
    Files.createDirectories(PICTURES);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    List<Sheet> sheets = sheets(path);
    Pdf.write(name(path), sheets, bytes);
    List<Path> written = new ArrayList<>();
    try (PDDocument pdf = Loader.loadPDF(bytes.toByteArray())) {
      for (int page = 0; page < pdf.getNumberOfPages(); page++) {
        Path file = PICTURES.resolve(name(path) + "-" + (page + 1) + ".png");
        ImageIO.write(new PDFRenderer(pdf).renderImageWithDPI(page, 90), "png", file.toFile());
        written.add(file);
      }
    }
    assertThat(written).hasSameSizeAs(sheets);
    for (Path file : written) {
      try (InputStream in = Files.newInputStream(file)) {
        assertThat(ImageIO.read(in).getWidth()).isGreaterThan(1000);
      }
    }
  }
}
