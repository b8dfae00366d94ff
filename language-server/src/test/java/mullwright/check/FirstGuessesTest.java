package mullwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What somebody writes who does not know the language yet, and what it is answered. */
class FirstGuessesTest {
  private static final String FILE = "a.wall";

  private static List<Finding> check(String text) {
    return new CheckedText(FILE, Map.of(FILE, text), Rules.find()).findings();
  }

  private static Finding first(String text, String rule) {
    return check(text).stream().filter(it -> it.rule().equals(rule)).findFirst().orElseThrow();
  }

  private static String inside(String block, String line) {
    return switch (block) {
      case "file" -> line + "\n";
      case "project" -> "project \"P\" {\n  " + line + "\n}\n";
      case "criteria" -> "project \"P\" {\n  criteria {\n    " + line + "\n  }\n}\n";
      case "wall" -> "wall W {\n  " + line + "\n}\n";
      default -> "wall W {\n  " + block + " {\n    " + line + "\n  }\n}\n";
    };
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          grid    | level 1 at 0            | Write floor.          | floor
          grid    | columns A..E            | Write lines.          | lines
          grid    | door D1 bays B..C       | Write opening door.   | opening door
          grid    | louver LV rows a..b     | Write opening louvre. | opening louvre
          grid    | head at 10'             | Write row head.       | row head
          members | mullions all            | Write vertical.       | vertical
          members | mullion all             | Write vertical, and as mullion after its lines. | vertical
          grid    | Door D1 bays B..C       | Write opening door.   | opening door
          grid    | Sill at 2"              | Write row sill.       | row sill
          members | Jamb A                  | Write vertical, and as jamb after its lines. | vertical
          members | Transom all             | Write horizontal.     | horizontal
          lites   | glass all               | Write vision or spandrel. | vision
          lites   | glazing all             | Write vision.         | vision
          anchors | anchor all at L2        | Write dead-load.      | dead-load
          """)
  void theTradesOtherWordIsToldByTheLanguagesAndMended(
      String block, String line, String message, String mend) {
    Finding finding = first(inside(block, line), "unreadable");
    assertThat(finding.message()).endsWith(message);
    assertThat(finding.fixes()).isNotEmpty();
    assertThat(finding.fixes().get(0).edits().get(0).text()).isEqualTo(mend);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          project | grid {}               | It stands in “wall”: put it there.
          members | row sill at 2"        | It stands in “grid”: put it there.
          grid    | splice all            | It stands in “members”: put it there.
          lites   | dead-load all         | It stands in “anchors”: put it there.
          grid    | kerf 1/8"             | It stands in “fabrication”: put it there.
          members | system captured-6     | It stands in “wall”: put it there.
          file    | profile mullion-6 {}  | It stands in “catalog”: put it there.
          file    | wind field 25 psf     | It stands in “criteria”: put it there.
          grid    | fabrication {}        | It stands in “project” or “wall”: put it there.
          grid    | use "a.wall"          | It stands outside of all blocks: put it there.
          """)
  void aStatementOfAnotherBlockIsToldWhereItStands(String block, String line, String message) {
    assertThat(first(inside(block, line), "unreadable").message()).endsWith(message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          grid    | mullion all   | What may be meant is “vertical”, which stands in “members”.
          wall    | door D1       | What may be meant is “opening door”, which stands in “grid”.
          anchors | rail all      | What may be meant is “horizontal”, which stands in “members”.
          members | glazing all   | What may be meant is “vision”, which stands in “lites”.
          """)
  void aWordOfAnotherBlockIsNamedWithItsBlock(String block, String line, String message) {
    Finding finding = first(inside(block, line), "unreadable");
    assertThat(finding.message()).endsWith(message);
    assertThat(finding.fixes()).isEmpty();
  }

  @Test
  void whatStandsOnLinesKeepsItsRole() {
    Finding finding = first(inside("members", "Jamb A, G // the ends"), "unreadable");
    assertThat(finding.fixes())
        .singleElement()
        .satisfies(
            fix -> {
              assertThat(fix.title()).isEqualTo("Write vertical A, G as jamb");
              assertThat(fix.edits())
                  .extracting(Fix.Edit::text)
                  .containsExactly("vertical", " as jamb");
            });
  }

  @Test
  void aWordThatTellsNothingIsAnsweredWithWhatThereIs() {
    assertThat(first(inside("lites", "sky all"), "unreadable").message()).contains("Known here: ");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      textBlock =
          """
          wind field 25 psf      | wind [WORD] PRESSURE in|out [within LENGTH of ends] [from PLACE to PLACE].
          wind ground low        | wind [WORD] PRESSURE in|out [within LENGTH of ends] [from PLACE to PLACE] or ground at LENGTH.
          deflection limit 2'    | deflection limit SPAN_RATIO or limit NUMBER.
          story drift            | story drift LENGTH or drift RATIO or drift SPAN_RATIO.
          exposure outside       | exposure outdoor|sheltered|coastal|indoor.
          """)
  void ofManyFormsThoseAreToldThatTheLineBeginsLike(String row) {
    String line = row.substring(0, row.indexOf('|')).strip();
    String form = row.substring(row.indexOf('|') + 1).strip();
    assertThat(first(inside("criteria", line), "unknown-property").message())
        .endsWith("Write it as: " + form);
  }

  @Test
  void theOnlyPartThereIsIsOfferedWhateverWasWritten() {
    String text =
        "catalog \"C\" {\n  spread-plate plate-spread-6 {\n    thickness 1/4\"\n  }\n}\n"
            + inside("grid", "lines A, B spaced 5'")
                .replace(
                    "  }\n}",
                    "  }\n  anchors {\n    clip A at 0\" spread by plate-6\n"
                        + "    dead-load A at 0\" spread by plate-9\n  }\n}");
    Finding finding = first(text, "unknown-name");
    assertThat(finding.message()).endsWith("Known here: plate-spread-6.");
    assertThat(finding.fixes().get(0).edits().get(0).text()).isEqualTo("plate-spread-6");
  }

  @Test
  void aVerticalInOnePieceIsNotToldToMoveItsSplice() throws IOException {
    Path examples = Path.of("../examples");
    String lobby = Files.readString(examples.resolve("first-wall/lobby.wall"));
    String catalog = Files.readString(examples.resolve("catalog/captured.wall"));
    String hung =
        lobby.replaceAll(" +dead-load .*\\n", "").replace("4\"       above Roof", "4\" below Roof");
    assertThat(hung).contains("4\" below Roof").doesNotContain("dead-load");
    List<Finding> found =
        new CheckedText(
                "first-wall/lobby.wall",
                Map.of("first-wall/lobby.wall", hung, "catalog/captured.wall", catalog),
                Rules.find())
            .findings();
    assertThat(found)
        .filteredOn(it -> it.rule().equals("splice-unsupported"))
        .isNotEmpty()
        .allSatisfy(
            it ->
                assertThat(it.message())
                    .contains("give it a dead-load anchor at a row or height")
                    .doesNotContain("splice"));
  }

  @Test
  void aPartsNameWithABlankInItIsPutTogether() throws IOException {
    Path examples = Path.of("../examples");
    String lobby = Files.readString(examples.resolve("first-wall/lobby.wall"));
    String catalog = Files.readString(examples.resolve("catalog/captured.wall"));
    String split = lobby.replaceFirst("nylon-pad", "nylon pad");
    CheckedText checked =
        new CheckedText(
            "first-wall/lobby.wall",
            Map.of("first-wall/lobby.wall", split, "catalog/captured.wall", catalog),
            Rules.find());
    assertThat(checked.findings()).hasSize(1);
    Finding finding = checked.findings().get(0);
    assertThat(finding.message())
        .isEqualTo("“nylon pad” is one name, which has no blank in it. Write nylon-pad.");
    assertThat(checked.after(finding.fixes().get(0)).get("first-wall/lobby.wall")).isEqualTo(lobby);
  }
}
