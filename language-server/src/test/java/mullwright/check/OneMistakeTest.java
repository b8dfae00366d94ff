package mullwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * One mistake gives one error: what follows from a line that could not be read is not told as well.
 */
class OneMistakeTest {
  private static final Path EXAMPLES = Path.of("../examples");

  private static String wall;
  private static String catalog;

  @BeforeAll
  static void readTheExample() throws IOException {
    wall =
        Files.readString(EXAMPLES.resolve("ferry-terminal/east.wall"), StandardCharsets.UTF_8)
            .replaceAll("(?<=\\S) +", " ");
    catalog = Files.readString(EXAMPLES.resolve("catalog/captured.wall"), StandardCharsets.UTF_8);
  }

  private static List<Finding> check(String text) {
    CheckedText checked =
        new CheckedText(
            "ferry-terminal/east.wall",
            Map.of("ferry-terminal/east.wall", text, "catalog/captured.wall", catalog),
            Rules.find());
    assertThat(checked.failures()).isEmpty();
    return checked.findings();
  }

  @Test
  void theExampleItselfHasNothing() {
    assertThat(check(wall)).isEmpty();
  }

  // each line: what stands in the example, what a newcomer writes, the rule that tells it
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "row R1 at|rows R1 at|unreadable",
        "row R1 at 3'-0\"|row R1 at 36,5\"|unreadable",
        "row R1 at 3'-0\"|row R1 at 36 in|unreadable",
        "row R1 at 3'-0\"|row R1 3'-0\"|unreadable",
        "row R1 at 3'-0\"|row R1 = 3'-0\"|unreadable",
        "row R1 at 3'-0\"|row R1 at 914 MM|bad-value",
        "row R1 at 3'-0\"|row R1 at b|unknown-name",
        "row sill at 2\" above|row sill at 2'- above|unreadable",
        "floor L2 at|Floor L2 at|unreadable",
        "floor L2 at 13'-0\"|floor L2 at 13'–0\"|unreadable",
        "slab 10\"|slab 10 psf|wrong-unit",
        "grid {|Grid {|unreadable",
        "members {|member {|unreadable",
        "anchors {|anchor {|unreadable",
        "lites {|lite {|unreadable",
        "vertical A, G|verticals A, G|unreadable",
        "vertical A, G|vertical A & G|unreadable",
        "vertical A, G|vertical A, H|unknown-name",
        "horizontal sill..head|horizontal ALL|unknown-name",
        "at 2'-0\" above L2 gap|over 2'-0\" above L2 gap|unreadable",
        "above L2 gap|above L7 gap|unknown-name",
        "gap 5/8\"|gap|unreadable",
        "gap 5/8\"|gap 5/0\"|bad-value",
        "gap 5/8\"|gap 5/8\"\"|unreadable",
        "part slot-6|slot-6|unreadable",
        "isolated by nylon-pad|isolated with nylon-pad|unreadable",
        "bolted 2 x hex-half|bolted with 2 x hex-half|unreadable",
        "vision V1|vision V9|unknown-name",
        "lines A..G spaced|lines A to G spaced|unreadable",
        "lines A..G spaced|line A..G spaced|unreadable",
        "use \"../catalog/captured.wall\"|use ../catalog/captured.wall|unreadable",
        "use \"../catalog/captured.wall\"|use '../catalog/captured.wall'|unreadable",
        "  members {|  # the members\\n  members {|unreadable",
        "  members {|  /* the members\\n  members {|unreadable",
        "wall East {|wall East|unreadable",
        "  members {|  members {\\n  }|unreadable",
        "  installation {\\n|  installation\\n|unreadable",
        "  members {|  anchors\\n  members {|unreadable",
        "system captured-6|let b 5'-0\"\\n  system captured-6|unreadable",
      })
  void oneMistakeIsToldOnce(String right, String wrong, String rule) {
    assertThat(wall).contains(right.replace("\\n", "\n"));
    List<Finding> found = check(wall.replaceFirst(quote(right), quoted(wrong)));
    assertThat(found).extracting(Finding::rule).containsExactly(rule);
  }

  private static String quote(String text) {
    return Pattern.quote(text.replace("\\n", "\n"));
  }

  private static String quoted(String text) {
    return Matcher.quoteReplacement(text.replace("\\n", "\n"));
  }

  @Test
  void whatDoesNotHangOnABrokenLineIsStillTold() {
    // a broken lite costs the glass checks, not those of the frame: the gap is too small
    String text = wall.replace("vision V1", "vison V1").replace("gap 5/8\"", "gap 1/8\"");
    assertThat(check(text))
        .extracting(Finding::rule)
        .contains("unreadable", "splice-gap-too-small")
        .doesNotContain("glass-missing", "glass-opacity");
  }

  @Test
  void theMendOfACommaIsADecimalPointUnlessThousandsAreGrouped() {
    assertThat(check(wall.replace("row R1 at 3'-0\"", "row R1 at 36,5\"")).get(0).mend())
        .contains("36.5\"");
    assertThat(check(wall.replace("row R1 at 3'-0\"", "row R1 at 1,200 mm")).get(0).mend())
        .contains("1200");
  }
}
