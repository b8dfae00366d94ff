package mullwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.model.Model;
import mullwright.model.ModelMemory;
import mullwright.model.ModelReader;
import mullwright.syntax.ParsedFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The first fix of a slip, applied to the text it was found in, leaves a text without a slip. */
class TextFixesTest {
  private static final String FILE = "a.wall";

  // the line that is mistaken, and what becomes of it in a grid
  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '|',
      value = {
        "line C at 5'-6,                      line C at 5'-6\"",
        "line C at 5' -6\",                   line C at 5'-6\"",
        "line C at 132 \",                    line C at 132\"",
        "row rail at 60 \" above L2,          row rail at 60\" above L2",
        "row rail at 60\u201c above L2,        row rail at 60\" above L2",
        "line C at 132\"\",                    line C at 132\"",
        "line C at 132\" \"  // C,             line C at 132\"   // C",
        "line C at 132\".,                    line C at 132\"",
        "line C at 132.\",                    line C at 132\"",
        "lines F..G at 20' spaced 1. @ 5',    lines F..G at 20' spaced 1 @ 5'",
        "line C at bay &,                     line C at bay",
        "row rail at 60\"\" above L2,          row rail at 60\" above L2",
        "; line C at bay,                     | line C at bay|",
        "& line C at bay,                     | line C at bay|",
        "|lines F; G at 20', 25'|,            |lines F, G at 20', 25'|",
        "row rail at 5'-6 \" above L2,        row rail at 5'-6\" above L2",
        "row rail at 5'-6\u201c above L2,      row rail at 5'-6\" above L2",
        "line C at 11' & // C,                line C at 11' // C",
        "row rail at 8' - 6\"-2.75\" above L2, row rail at 8' - 6\" - 2.75\" above L2",
        "|line C at 1,200 mm|,                line C at 1200 mm",
        "lnie C at 9',                        line C at 9'",
        "lines F..M at 20' spaced 7 @ 30'-0\" / 7, lines F..M at 20' spaced 7 equal in 30'-0\"",
        "|lines F..N at 20' spaced 5', 7 @ 30' / 7|, |lines F..N at 20' spaced 5', 7 equal in 30'|",
        "row rail at 4' above l2,             row rail at 4' above L2",
        "row rail at 3' above Levl3,          row rail at 3' above Level3",
        "opening vent P bays A..B rows R2..R1, opening vent P bays A..B rows R1..R2",
        "opening vnet P bays A..B rows R1..R2, opening vent P bays A..B rows R1..R2",
      })
  void mends(String line, String mended) {
    String text = wall(line);
    List<Finding> found = check(text);
    String after = after(text, found);
    assertThat(after).isEqualTo(wall(mended));
    assertThat(check(after)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"temperd clear", "\"temperd clear\"", "clear  temperd", "clear\ttemperd"})
  void aTreatmentOfGlassIsMendedByItself(String words) {
    String text = "catalog {\n  glass g {\n    ply 1/4\" " + words + "  // g\n  }\n}\n";
    String after = after(text, check(text));
    assertThat(after).isEqualTo(text.replace("temperd", "tempered"));
    assertThat(check(after)).isEmpty();
  }

  /** Which unit is meant nobody knows until the word is mended. */
  @Test
  void aMisspeltUnitIsToldOnce() {
    List<Finding> found = check("units fete\n" + wall("line C at 11"));
    assertThat(found).extracting(Finding::rule).containsExactly("unknown-name");
  }

  @ParameterizedTest
  @CsvSource({"11, 11\"", "half, ''", "12 - half, ''", "half * 2, ''"})
  void aUnitIsOfferedBehindANumberOnly(String written, String mended) {
    String text = "let half = 5\n" + wall("line C at " + written);
    List<Finding> found =
        check(text).stream().filter(it -> it.rule().equals("wrong-unit")).toList();
    assertThat(found).hasSize(1);
    if (mended.isEmpty()) {
      assertThat(found.get(0).fixes()).isEmpty();
    } else {
      assertThat(after(text, found)).isEqualTo(text.replace(written + "\n", mended + "\n"));
    }
  }

  @Test
  void offersEqualSpacesOnlyWhereTheyAreAsManyAsTheDivisor() {
    // four of seven spaces: 7 equal in 30'-0" would put three lines more
    List<Finding> found = check(wall("lines F..J at 20' spaced 4 @ 30'-0\" / 7"));
    assertThat(found).extracting(Finding::rule).containsExactly("bad-value");
    assertThat(found.get(0).fixes()).isEmpty();
    assertThat(found.get(0).mend()).startsWith("Write the length itself");
  }

  @Test
  void offersNoNameThatIsNotNear() {
    List<Finding> found = check(wall("row rail at 3' above Penthouse"));
    assertThat(found).extracting(Finding::rule).containsExactly("unknown-name");
    assertThat(found.get(0).fixes()).isEmpty();
    assertThat(found.get(0).mend()).contains("Level3");
  }

  private static String wall(String line) {
    return """
        let bay = 10'

        wall North {
          grid {
            line  A      at 0"
            line  B      at bay / 2
            floor L2     at 0"
            floor Level3 at 13'
            row   R1     at 3' above L2
            row   R2     at 9' above L2
            %s
          }
        }
        """
        .formatted(line);
  }

  private static List<Finding> check(String text) {
    ParsedFile file = ParsedFile.parse(text);
    Model model =
        ModelReader.read(
            FILE, path -> Optional.of(file).filter(f -> path.equals(FILE)), new ModelMemory());
    List<Rule> texts = Rules.find().all().stream().filter(TextRule.class::isInstance).toList();
    Checker.Checked checked =
        new Checker(new Rules(texts))
            .check(new TextFacts(model, Map.of(FILE, file)), List.of(), () -> false);
    assertThat(checked.failures()).isEmpty();
    return checked.findings();
  }

  private static String after(String text, List<Finding> found) {
    assertThat(found).hasSize(1);
    ParsedFile file = ParsedFile.parse(text);
    String after = text;
    List<Fix.Edit> edits = new ArrayList<>(found.get(0).fixes().get(0).edits());
    edits.sort((a, b) -> b.origin().range().start() - a.origin().range().start());
    for (Fix.Edit edit : edits) {
      int start = file.segmentStart(edit.origin().segment());
      after =
          after.substring(0, start + edit.origin().range().start())
              + edit.text()
              + after.substring(start + edit.origin().range().end());
    }
    return after;
  }
}
