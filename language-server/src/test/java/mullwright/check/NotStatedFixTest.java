package mullwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a wall lacks while it is being written is put in by a fix, where its names are known. */
class NotStatedFixTest {
  private static final String CATALOG = RulePage.fixture("fixture.wall");
  private static final String WALL =
      """
      use "fixture.wall"

      wall Test {
        // of the office
        system fixture

        grid {
          lines A..C spaced 2 @ 5'-0"
          floor L1 at 0"
          row sill at 2" above L1
          row rail at 3'-0" above L1
          row head at 9'-0" above L1
        }

        members {
          vertical all
          horizontal all
        }
      }
      """;

  private static List<Finding> found(String text) {
    Map<String, String> texts = new TreeMap<>(Map.of("a.wall", text, "fixture.wall", CATALOG));
    return new CheckedText("a.wall", texts, Rules.find())
        .findings().stream().filter(it -> it.rule().equals("not-stated")).toList();
  }

  /** Each fix in turn, until none is left. */
  private static String mended(String text) {
    List<Fix> fixes = new ArrayList<>();
    found(text).forEach(it -> fixes.addAll(it.fixes()));
    if (fixes.isEmpty()) {
      return text;
    }
    Fix.Edit edit = fixes.get(0).edits().get(0);
    int base = mullwright.syntax.ParsedFile.parse(text).segmentStart(edit.origin().segment());
    StringBuilder after = new StringBuilder(text);
    after.replace(
        base + edit.origin().range().start(), base + edit.origin().range().end(), edit.text());
    assertThat(found(after.toString()).size()).isLessThan(found(text).size());
    return mended(after.toString());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "horizontal all | horizontal sill       | horizontal rail, head",
        "horizontal all | horizontal sill..rail | horizontal head",
        "vertical all   | vertical B            | vertical A, C",
        "vertical all   | vertical A, C         | vertical B as mullion",
      })
  void membersAreAdded(String whole, String some, String added) {
    String text = WALL.replace(whole, some);
    String after = mended(text);
    assertThat(after).contains("    " + added + "\n");
    assertThat(found(after)).isEmpty();
  }

  @Test
  void theOnlySystemIsAdded() {
    String text = WALL.replace("  system fixture\n", "");
    assertThat(mended(text))
        .isEqualTo(text.replace("wall Test {\n", "wall Test {\n  system fixture\n"));
  }
}
