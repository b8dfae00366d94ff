package mullwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DrawTest {
  private static final Path EXAMPLES = Path.of("").toAbsolutePath().getParent().resolve("examples");

  @TempDir Path folder;

  private List<String> written() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void sheetsOfAllWallsAreNumberedThrough() throws IOException {
    Path pdf = folder.resolve("all.pdf");
    Ran ran =
        Ran.in(
            EXAMPLES,
            "draw",
            "ferry-terminal",
            "first-wall",
            "--view",
            "elevation",
            "--to",
            pdf.toString());
    assertThat(ran.err()).isEmpty();
    assertThat(ran.code()).isEqualTo(Exit.CLEAN);
    try (PDDocument read = Loader.loadPDF(pdf.toFile())) {
      assertThat(read.getNumberOfPages()).isEqualTo(2);
      assertThat(new PDFTextStripper().getText(read))
          .contains("1 of 2", "2 of 2", "Elevation East", "Elevation Lobby")
          .contains("licensed engineer");
    }
  }

  @Test
  void oneSvgGoesToStandardOutput() {
    Ran ran =
        Ran.in(EXAMPLES, "draw", "first-wall", "--view", "elevation", "--output", "svg", "--uncut");
    assertThat(ran.code()).as(ran.err()).isEqualTo(Exit.CLEAN);
    assertThat(ran.out()).startsWith("<?xml").contains("Elevation Lobby").endsWith("</svg>\n");
  }

  @Test
  void severalFilesNeedAFolder() throws IOException {
    Ran ran = Ran.in(EXAMPLES, "draw", "tower", "--view", "elevation", "--output", "svg");
    assertThat(ran.code()).isEqualTo(Exit.COULD_NOT);
    assertThat(ran.err()).contains("name a folder");
    ran =
        Ran.in(
            EXAMPLES,
            "draw",
            "tower",
            "--view",
            "elevation",
            "--output",
            "svg",
            "--to",
            folder.toString());
    assertThat(ran.code()).as(ran.err()).isEqualTo(Exit.CLEAN);
    assertThat(written()).contains("sheet-01.svg", "sheet-02.svg");
  }

  @Test
  void dxfIsOneFileAWall() throws IOException {
    Ran ran =
        Ran.in(
            EXAMPLES,
            "draw",
            "ferry-terminal",
            "library-corner",
            "--view",
            "elevation",
            "--output",
            "dxf",
            "--to",
            folder.toString());
    assertThat(ran.code()).as(ran.err()).isEqualTo(Exit.CLEAN);
    assertThat(written()).containsExactly("East-elevation.dxf", "Reading-room-elevation.dxf");
  }

  @Test
  void findingsAreKeyed() throws IOException {
    String text = Files.readString(EXAMPLES.resolve("first-wall/lobby.wall"));
    Path copy = folder.resolve("walls/lobby.wall");
    Files.createDirectories(copy.getParent());
    Files.createDirectories(folder.resolve("catalog"));
    Files.copy(EXAMPLES.resolve("catalog/captured.wall"), folder.resolve("catalog/captured.wall"));
    Files.writeString(copy, text.replace("spread by plate-spread-6", ""));
    String[] draw = {"draw", "walls", "--view", "elevation", "--output", "svg"};
    Ran ran = Ran.in(folder, draw);
    assertThat(ran.code()).isEqualTo(Exit.FINDINGS);
    assertThat(ran.err()).contains("Errors stand in these walls");
    assertThat(ran.out()).contains("Keynotes", "class=\"subject keynote\"");
    Ran without =
        Ran.in(
            folder,
            Stream.concat(Stream.of(draw), Stream.of("--without-findings")).toArray(String[]::new));
    assertThat(without.out()).doesNotContain("Keynotes");
  }

  @Test
  void whatCannotBeIsSaid() {
    assertThat(Ran.in(EXAMPLES, "draw", "tower", "--sheet", "B7").err())
        .contains("There is no sheet “B7”", "ANSI-D");
    assertThat(Ran.in(EXAMPLES, "draw", "tower", "--scale", "0:0").err())
        .contains("is no scale", "write 1:50");
    assertThat(Ran.in(EXAMPLES, "draw", "tower", "--view", "plan").err())
        .contains("There is no drawing called “plan”", "elevation");
    assertThat(Ran.in(EXAMPLES, "draw", "tower", "--wall", "South").err())
        .contains("There is no wall “South”", "North");
    assertThat(Ran.with(EXAMPLES, Map.of(), true, new byte[0], "draw", "tower").err())
        .contains("no text for a terminal");
  }

  @Test
  void aFolderThatCannotBeIsSaid() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "");
    Ran ran = Ran.in(EXAMPLES, "draw", "first-wall", "--to", file + "/below/a.pdf");
    assertThat(ran.code()).isEqualTo(Exit.COULD_NOT);
    assertThat(ran.err()).contains("cannot be written");
  }
}
