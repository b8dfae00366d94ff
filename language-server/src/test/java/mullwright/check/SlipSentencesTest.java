package mullwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import mullwright.syntax.ClauseWord;
import mullwright.syntax.StatementKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A slip of the pen that shows what was meant is one error on its line, says so, and its first fix
 * makes the wall whole again.
 */
class SlipSentencesTest {
  private static final Path EXAMPLES = Path.of("../examples");
  private static final Map<String, String> USED =
      Map.of(
          "ferry-terminal/east.wall", "catalog/captured.wall",
          "library-corner/reading-room.wall", "catalog/captured-metric.wall",
          "tower/north.wall", "catalog/captured.wall");

  private static final String EAST = "ferry-terminal/east.wall";
  private static final String ROOM = "library-corner/reading-room.wall";
  private static final String NORTH = "tower/north.wall";

  private static List<Finding> check(String path, String text) throws IOException {
    return checked(path, text).findings();
  }

  private static CheckedText checked(String path, String text) throws IOException {
    Map<String, String> texts = new HashMap<>();
    String used = USED.get(path);
    texts.put(used, Files.readString(EXAMPLES.resolve(used), StandardCharsets.UTF_8));
    texts.put(path, text);
    return new CheckedText(path, texts, Rules.find());
  }

  private static void isOneError(String path, String right, String wrong, String message)
      throws IOException {
    String whole = Files.readString(EXAMPLES.resolve(path), StandardCharsets.UTF_8);
    assertThat(whole).contains(right);
    String text = whole.replace(right, wrong);
    CheckedText checked = checked(path, text);
    assertThat(checked.findings()).as(wrong).hasSize(1);
    Finding finding = checked.findings().get(0);
    assertThat(finding.message()).contains(message);
    assertThat(finding.severity()).isEqualTo(Severity.ERROR);
    int start = checked.place(finding.origin()).start();
    assertThat(text.substring(0, start).lines().count())
        .as(finding.message())
        .isEqualTo(text.substring(0, text.indexOf(wrong) + wrong.length()).lines().count());
    String mended = checked.after(finding.fixes().get(0)).get(path);
    assertThat(check(path, mended)).as("after “%s”", finding.fixes().get(0).title()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          vision  V1  rows rail..top | vision  V1  rail..top | the word “rows” is missing
          rows L7.curb..L7.top    // | L7.curb..L7.top    // | Write rows L7.curb..L7.top.
          as beam-6   bays 10..12 | as beam-6   10..12 | Write bays 10..12 or
          bays 9..11  rows | 9..11  rows | Write bays 9..11.
          vertical    1, 21   as | vertical    1, 21   | Write as jamb
          clip all  at sill | clip all  sill | Write at sill.
          above L2..L12  gap | above L2..L12  | Write gap 5/8".
          """)
  void aClauseWordLeftOut(String right, String wrong, String message) throws IOException {
    isOneError(NORTH, right, wrong, message);
  }

  /** A word that joins, or a whole mark, is missing; every mend that is offered is read. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          spaced 20 @ 5'-0" | spaced 20 5'-0" | Write @ 5'-0", or put a comma before it
          14'-0", 11 @ 13'-0" | 14'-0", 11 13'-0" | Write @ 13'-0", or put a comma before it
          at 2'-0" above L2..L12  gap | at 2'-0" L2..L12  gap | Write above L2..L12 or below
          vision  V1  rows rail..top | vision  V1  rwos rail..top | Did you mean rows?
          """)
  void aWordThatJoinsLeftOut(String right, String wrong, String message) throws IOException {
    isOneError(NORTH, right, wrong, message);
  }

  /** Words of the trade, or of a keyboard, that the language writes in another way. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          at 1'-0"    below L2 | at 1'-0"    under L2 | Did you mean below?
          at 1'-0"    above L7 | at 1'-0"    over L7 | Did you mean above?
          clip all  at sill | clip all  @ sill | Did you mean at?
          at 2'-0" above L2 | @ 2'-0" above L2 | Did you mean at?
          2..20   as mullion | 2..20   = mullion | Did you mean as?
          1, 21   as jamb | 1 & 21   as jamb | Put a comma between names
          1, 21   as jamb | 1 and 21   as jamb | Put a comma between the names.
          1, 21   as jamb | 1, 21   as: jamb | Take it out.
          at 2'-0" above L2..L12  gap 5/8" | at 2'-0" above L2..L12  gap 5/8"; | else take it out.
          1, 21   as jamb | 1; 21   as jamb | Put a comma between names
          dead-load   1, 21 | dead load   1, 21 | Did you mean dead-load?
          opening door    D1 | door    D1 | Write opening door.
          vision  V1 | glass  V1 | Write vision or spandrel.
          vertical    2..20   as mullion | mullion 2..20 | Write vertical, and as mullion after
          vertical    1, 21   as jamb | jamb 1, 21 // at the ends | as jamb after its lines
          spaced 20 @ 5'-0" | spaced 20 at 5'-0" | Write @ for at
          at 3'-0" | at 36'' | “36” lacks its inch mark. Write 36".
          slab    14"     L7 | slab    1'-2''     L7 | “1'-2” lacks its inch mark. Write 1'-2".
          """)
  void aWordInUseElsewhere(String right, String wrong, String message) throws IOException {
    isOneError(NORTH, right, wrong, message);
  }

  @Test
  void eachOfferOfAnIncompleteLineIsRead() throws IOException {
    String whole = Files.readString(EXAMPLES.resolve(EAST), StandardCharsets.UTF_8);
    for (String[] slip :
        new String[][] {
          {
            "bolted 2 x hex-half     isolated by bituminous-paint\n",
            "bolted 2 hex-half     isolated by bituminous-paint\n"
          },
          {"R1..R2, R4..R5", "R1..R2 R4..R5"},
          {"R1..R2, R4..R5", "R1..R2, R4R5"},
          {"ladder A..C", "ladder AC"},
          {"B..F    as mullion", "B..F    mullion"},
          {"part slot-6", "slot-6"},
          {"field   32 psf in", "field   32 in"},
          {"grid {", "/* grid {"}
        }) {
      assertThat(whole).contains(slip[0]);
      CheckedText checked = checked(EAST, whole.replace(slip[0], slip[1]));
      assertThat(checked.findings()).as(slip[1]).hasSize(1);
      List<Fix> fixes = checked.findings().get(0).fixes();
      assertThat(fixes).as(slip[1]).isNotEmpty();
      boolean closesToo = slip[1].startsWith("/*");
      for (Fix fix : closesToo ? fixes.subList(0, 1) : fixes) {
        assertThat(check(EAST, checked.after(fix).get(EAST)))
            .as(slip[1] + " after " + fix.title())
            .isEmpty();
      }
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          at 2'-0" above L2 | at2'-0" above L2 | Write at 2'-0".
          at 3'-0" | at3'-0" | Write at 3'-0".
          gap 5/8" | gap5/8" | Write gap 5/8".
          gap 5/8" | gap-5/8" | Write gap 5/8".
          spaced 20 @ | spaced20 @ | Write spaced 20.
          clear 1/4" | clear1/4" | Write clear 1/4".
          """)
  void aValueRunIntoTheWordBeforeIt(String right, String wrong, String message) throws IOException {
    isOneError(NORTH, right, wrong, message);
  }

  /** The first word of a line, too; the line is read as if the blank stood there. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          slab    10"     all | slab10"     all | Write slab 10".
          slab    14"     L7 | slab1'-2"     L7 | Write slab 1'-2".
          vertical    9..12   as | vertical9..12   as | Write vertical 9..12.
          vertical    1, 21   as | vertical1, 21   as | Write vertical 1.
          lines 1..21  spaced | lines1..21  spaced | Write lines 1..21.
          floors L1..L12, Roof | floorsL1..L12, Roof | Write floors L1..L12.
          clip all | clipall | Write clip all.
          row top     at | rowtop     at | Write row top.
          stick 9..21 | stick9..21 | Write stick 9..21.
          """)
  void aValueOrNameRunIntoTheFirstWord(String right, String wrong, String message)
      throws IOException {
    isOneError(NORTH, right, wrong, message);
  }

  /** In a block of properties any word may stand first; none has a mark of length in it. */
  @ParameterizedTest
  @ValueSource(strings = {"kerf1/8\"", "kerf3\"", "kerf0'-1\""})
  void aLengthRunIntoAProperty(String wrong) throws IOException {
    String whole = Files.readString(EXAMPLES.resolve(NORTH), StandardCharsets.UTF_8);
    String text =
        whole.replace(
            "exposure outdoor\n  }", "exposure outdoor\n  }\n  fabrication {\n" + wrong + "\n}");
    CheckedText checked = checked(NORTH, text);
    assertThat(checked.findings())
        .extracting(Finding::message)
        .containsExactly(
            "“"
                + wrong
                + "” is two words without a blank between. Write "
                + wrong.replace("kerf", "kerf ")
                + ".");
    Fix fix = checked.findings().get(0).fixes().get(0);
    assertThat(check(NORTH, checked.after(fix).get(NORTH))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          9..12   as | 9 to 12   as | “9 to 12” is no range, in “vertical”: a range is written
          9..12   as | 9 - 12   as | Write 9..12.
          9..12   as | 9 -12   as | Write 9..12.
          9..12   as | 9- 12   as | Write 9..12.
          9..12   as | 9 through 12   as | Write 9..12.
          9..12   as | 9 thru 12   as | Write 9..12.
          9..12   as | from 9 to 12   as | “from 9 to 12” is no range
          bays 10..12     // | bays from 10 to 12     // | Write 10..12.
          bays 10..12     // | bays 10 to 12     // | Write 10..12.
          rows rail..top | rows rail to top | Write rail..top.
          rows rail..top | rows rail - top | Write rail..top.
          rows rail..top | rows rail through top | Write rail..top.
          ladder 1..9 | ladder 1 to 9 | Write 1..9.
          lines 1..21 | lines 1 - 21 | Write 1..21.
          lines 1..21 | lines 1-21 | “1-21” is one name, and the spaces are those of a range
          floors L1..L12, Roof | floors L1 to L12, Roof | Write L1..L12.
          floors L1..L12, Roof | floors L1-L12, Roof | Write L1..L12.
          above L1..L12 except L7 | above L1 - L12 except L7 | Write L1..L12.
          above L2..L12  gap | above L2 to L12  gap | Write L2..L12.
          2..20   at L2..L12, Roof | 2..20   at L2 to L12, Roof | Write L2..L12.
          2..20   at L2..L12, Roof | 2..20   at L2 - L12, Roof | these are names of floors or rows
          9..12   as | 9–12   as | Write .. for a range, - for a minus.
          9..12   as | 9 … 12   as | Write .. for a range.
          spaced 14'-0", | spaced 14'–0", | Write .. for a range, - for a minus.
          """)
  void aRangeInWordsOrWithADash(String right, String wrong, String message) throws IOException {
    isOneError(NORTH, right, wrong, message);
  }

  /** What only looks like such a slip. */
  @Test
  void aNameLikeAWordAndARowThatGoesFromOnePlaceToAnotherAreRight() throws IOException {
    String whole = Files.readString(EXAMPLES.resolve(NORTH), StandardCharsets.UTF_8);
    String text =
        whole
            .replace(
                "system captured-6\n", "system captured-6\n  let gap5 = 5/4\"\n  let a = 5\"\n")
            .replace("gap 5/8\"", "gap gap5/2")
            .replace("sill    at 2\" ", "sill    at a - 3\" ")
            .replace("head    at 4\"  ", "head at 4\" above Roof to 4\"  ");
    assertThat(text).contains("let gap5", "gap gap5/2", "at a - 3", "Roof to 4");
    assertThat(check(NORTH, text)).isEmpty();
  }

  /** Only a row leads from one place to another; elsewhere the second would be lost in silence. */
  @Test
  void aPlaceThatLeadsOnWhereNoneCanIsTold() throws IOException {
    String whole = Files.readString(EXAMPLES.resolve(NORTH), StandardCharsets.UTF_8);
    String text = whole.replace("above L2..L12  gap", "above L2 to 2'-0\" above L12  gap");
    assertThat(check(NORTH, text))
        .extracting(Finding::message)
        .containsExactly("“to” cannot stand here, in “splice”. Expected: , or ...");
  }

  /** It is told where the comma is, not on the line that it joins to its own. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          11 @ 13'-0" | 11 @ 13'-0", | The line ends too early, in “floors”
          exposure outdoor | exposure outdoor, | The line ends too early, in “exposure”
          story drift 5/8" | story drift 5/8", | “exposure” is read as more of “story”
          stick 9..21 | stick 9..21, | The line ends too early, in “stick”
          """)
  void aCommaAtTheEndOfALine(String right, String wrong, String message) throws IOException {
    isOneError(NORTH, right, wrong, message);
  }

  /** Every statement about lines of the grid, and none of them forgotten. */
  @ParameterizedTest
  @MethodSource("aboutLines")
  void aCommaLeftOutBetweenLinesMayBeWhatIsMissing(StatementKind kind) throws IOException {
    String block = kind.standsIn().iterator().next().name().toLowerCase(Locale.ROOT);
    String whole = Files.readString(EXAMPLES.resolve(NORTH), StandardCharsets.UTF_8);
    String place = kind.clauses().contains(ClauseWord.AT) ? " at L2" : "";
    String line = kind.spelling() + " A C" + place;
    String text = whole.replace(block + " {", block + " {\n    " + line);
    assertThat(text).isNotEqualTo(whole);
    assertThat(check(NORTH, text))
        .extracting(Finding::message)
        .anyMatch(it -> it.contains("comma before “C” is missing, in “" + kind.spelling() + "”"));
  }

  private static Stream<StatementKind> aboutLines() {
    return Arrays.stream(StatementKind.values())
        .filter(kind -> kind.form() == StatementKind.Form.LINES);
  }

  /** After rows, bays, ladder and the like a space is meant, so nothing but .. can be missing. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          rows rail..top | rows rail top | The .. before “top” is missing
          bays 9..11  rows | bays 9 11  rows | The .. before “11” is missing
          ladder 1..9 | ladder 1 9 | The .. before “9” is missing
          rows rail..top | rows rail.top | Did you mean rail..top?
          rows rail..top | rows rail. .top | The language has no use for “.” here.
          2..20   as | 2.20   as | Did you mean 2..20?
          9..12   as | 9-12   as | Did you mean 9..12?
          above L2..L12  gap | above L2.L12  gap | Did you mean L2..L12?
          L7.curb..L7.top    by | L7.curb.L7.top    by | Did you mean L7.curb..L7.top?
          """)
  void aRangeWithoutItsDots(String right, String wrong, String message) throws IOException {
    isOneError(NORTH, right, wrong, message);
  }
}
