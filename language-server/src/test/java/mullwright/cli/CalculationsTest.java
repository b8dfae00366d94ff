package mullwright.cli;

import static mullwright.cli.Fixtures.LENGTHS;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The calculations of the wall whose lengths are counted by hand, in all their forms. */
class CalculationsTest {
  private static final String CAUTION =
      "Structural and safety results are aids to drafting: a licensed engineer and the local code"
          + " govern.";

  private static byte[] pdf() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Shell shell =
        new Shell(
            new ByteArrayInputStream(new byte[0]),
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8),
            LENGTHS,
            Map.of(),
            false);
    CommandRun.run(shell, "calculations", "--output", "pdf", "east.wall");
    return out.toByteArray();
  }

  @Test
  void textBeginsWithTheCautionAndFitsTheTerminal() {
    for (int width : new int[] {80, 120}) {
      Ran ran = Ran.in(LENGTHS, "calculations", "--width", "" + width, "east.wall");
      assertThat(ran.code()).isEqualTo(Exit.CLEAN);
      assertThat(ran.out().indexOf("aids to drafting")).isBetween(0, 200);
      assertThat(ran.out().lines()).allMatch(line -> line.length() <= width);
    }
  }

  @Test
  void aPdfIsTextWithTheCautionOnEveryPage() throws IOException {
    try (PDDocument read = Loader.loadPDF(pdf())) {
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setSortByPosition(true);
      for (int page = 1; page <= read.getNumberOfPages(); page++) {
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        assertThat(stripper.getText(read)).contains(CAUTION);
      }
      stripper.setStartPage(1);
      stripper.setEndPage(read.getNumberOfPages());
      assertThat(stripper.getText(read))
          .contains("Verticals: bending stress", "Anchors: load down", "÷ 1.65", "-10 °F");
    }
  }

  @Test
  void theSameWallGivesTheSamePdf() {
    assertThat(pdf()).isEqualTo(pdf());
  }

  @Test
  void aPdfIsNotSentToATerminal() {
    Ran ran =
        Ran.with(
            LENGTHS, Map.of(), true, new byte[0], "calculations", "--output", "pdf", "east.wall");
    assertThat(ran.code()).isEqualTo(Exit.COULD_NOT);
    assertThat(ran.err()).contains("send it to a file");
  }

  @Test
  void litesStandByTheirKindWithAllTheirNumbers() {
    String out = Ran.in(LENGTHS, "calculations", "--output", "markdown", "east.wall").out();
    assertThat(out)
        .contains(
            "### Lites: wind and what they bear",
            "### Lites: share of each pane",
            "### Lites: deflection of the centre",
            "### Lites: bite under tolerances and heat",
            "### Working: load resistance of lite in bay A-B");
    // handbook CHECK 7.2 (closed form, recomputed): block centres for 58.5 in, and 4 in blocks for
    // all lites under 40 ft²
    assertThat(rows(out, "### Lites: setting blocks"))
        .isNotEmpty()
        .allMatch(row -> row.contains("| 4.000 | 14.625 | 43.875 |"));
    // the four conditions of IBC 2406.4.3, then the verdict, for each kind of lite
    assertThat(rows(out, "### Lites: safety glazing").size() % 5).isZero();
    assertThat(rows(out, "### Lites: safety glazing").get(0))
        .contains("area of one pane is more than 9 ft²", "| yes |");
    // half the load on each of two equal panes (closed form); minimum thickness of 1/4" glass,
    // 5.56 mm, is 0.219 in (ASTM E1300, the same as ASTM C1036, from memory)
    assertThat(rows(out, "### Lites: share of each pane"))
        .allMatch(row -> row.contains("| 0.219 | 50.00 |"));
  }

  private static List<String> rows(String markdown, String heading) {
    String section = markdown.substring(markdown.indexOf(heading));
    section = section.substring(0, section.indexOf("\n###"));
    return section.lines().filter(line -> line.startsWith("| lite")).toList();
  }

  @Test
  void markdownHasATableForEachNumber() {
    String out = Ran.in(LENGTHS, "calculations", "--output", "markdown", "east.wall").out();
    assertThat(out).contains("### Splices: gap needed", "### Horizontals: sag under glass");
    assertThat(out.indexOf("aids to drafting")).isBetween(0, 200);
  }

  @Test
  void jsonKeepsItsSchema() {
    JsonObject out = json();
    assertThat(SchemaCheck.of("document.schema.json").faults(out)).isEmpty();
    assertThat(out.get("caution").getAsString()).isEqualTo(CAUTION);
  }

  private static JsonObject json(String... more) {
    String[] arguments = new String[4 + more.length];
    System.arraycopy(
        new String[] {"calculations", "--output", "json", "east.wall"}, 0, arguments, 0, 4);
    System.arraycopy(more, 0, arguments, 4, more.length);
    return JsonParser.parseString(Ran.in(LENGTHS, arguments).out()).getAsJsonObject();
  }

  private static JsonObject table(JsonObject report, String name) {
    for (JsonElement table :
        report.getAsJsonArray("sections").get(0).getAsJsonObject().getAsJsonArray("tables")) {
      if (table.getAsJsonObject().get("name").getAsString().equals(name)) {
        return table.getAsJsonObject();
      }
    }
    throw new AssertionError("no table " + name);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "verticals-greatest-moment",
        "verticals-deflection-under-wind",
        "horizontals-bending-stress",
        "splices-gap-needed",
        "anchors-load-in"
      })
  void eachPieceStandsOnceHoweverTheyAreGrouped(String name) {
    int grouped = 0;
    for (JsonElement row : table(json(), name).getAsJsonArray("rows")) {
      grouped += row.getAsJsonObject().getAsJsonArray("piece").size();
    }
    assertThat(table(json("--each"), name).getAsJsonArray("rows")).hasSize(grouped);
  }

  @Test
  void nothingToComputeIsSaid() {
    Ran ran = Ran.in(LENGTHS, "calculations", "captured.wall");
    assertThat(ran.code()).isEqualTo(Exit.COULD_NOT);
  }
}
