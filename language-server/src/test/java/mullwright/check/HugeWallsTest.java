package mullwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import mullwright.bench.GeneratedWalls;
import mullwright.bench.LocalEdit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The tower of the examples made very long and very tall, sound and with one mistake told of every
 * storey: no rule breaks, and what is found grows with the wall as counted by hand.
 */
class HugeWallsTest {
  private static final Path EXAMPLES = Path.of("..", "examples");
  private static final String PATH = "tower/huge.wall";

  private final Rules rules = Rules.find();

  private CheckedText check(int floors, int bays, String was, String now) throws IOException {
    Map<String, String> texts = new HashMap<>();
    String catalog = "catalog/captured.wall";
    texts.put(catalog, Files.readString(EXAMPLES.resolve(catalog)));
    String tower = Files.readString(EXAMPLES.resolve("tower/north.wall"));
    String text = GeneratedWalls.tower(tower, floors, bays);
    assertThat(text).contains(was);
    texts.put(PATH, text.replace(was, now));
    return new CheckedText(PATH, texts, rules);
  }

  @ParameterizedTest
  @CsvSource({"12, 20", "400, 20", "12, 1200", "60, 100"})
  void aSoundOneIsSound(int floors, int bays) throws IOException {
    CheckedText checked = check(floors, bays, "5/8\"", "5/8\"");
    assertThat(checked.failures()).isEmpty();
    assertThat(checked.findings()).isEmpty();
  }

  private static int splicesTold() {
    return (int) LocalEdit.ALL.stream().filter(edit -> edit.one().startsWith("splice")).count();
  }

  /**
   * A splice on each line over each floor but the first: without the one in the louvre, which takes
   * its vertical, and those that a statement of their own speaks of.
   */
  @ParameterizedTest
  @CsvSource({"12, 20", "300, 20", "12, 500"})
  void everySpliceWithTooSmallAGapIsFoundOnce(int floors, int bays) throws IOException {
    CheckedText checked =
        check(
            floors,
            bays,
            "splice all  at 2'-0\" above L2..L" + floors + "  gap 5/8\"",
            "splice all  at 2'-0\" above L2..L" + floors + "  gap 1/4\"");
    assertThat(checked.failures()).isEmpty();
    assertThat(checked.findings())
        .filteredOn(finding -> finding.rule().equals("splice-gap-too-small"))
        .hasSize((bays + 1) * (floors - 1) - 1 - splicesTold());
    assertThat(FoldedFinding.fold(checked.findings()))
        .filteredOn(folded -> folded.shown().rule().equals("splice-gap-too-small"))
        .as("and told once")
        .hasSize(1);
  }

  /** A nought too many in the name of a floor is one mistake, however high the wall then seems. */
  @Test
  void aSlipInACountIsToldByItself() throws IOException {
    CheckedText checked = check(40, 20, "floors L1..L40, Roof", "floors L1..L400, Roof");
    assertThat(checked.failures()).isEmpty();
    assertThat(checked.findings()).extracting(Finding::rule).containsExactly("count-mismatch");
  }

  /**
   * A spandrel that reaches higher over its floor is a hazard: a lite in each bay of each floor,
   * but for the lowest, where safety glass is given, and the one that has a curb.
   */
  @ParameterizedTest
  @CsvSource({"12, 20", "300, 20", "12, 500"})
  void everyLiteThatIsNotSafeIsFoundOnce(int floors, int bays) throws IOException {
    CheckedText checked = check(floors, bays, "rail    at 3'-0\"", "rail    at 3'-10\"");
    assertThat(checked.failures()).isEmpty();
    assertThat(checked.findings())
        .filteredOn(finding -> finding.rule().equals("glass-safety"))
        .hasSize(bays * (floors - 2));
    assertThat(FoldedFinding.fold(checked.findings())).as("and told once").hasSize(1);
  }
}
