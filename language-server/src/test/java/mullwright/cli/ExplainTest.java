package mullwright.cli;

import static mullwright.cli.Fixtures.LENGTHS;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import mullwright.check.Rule;
import mullwright.check.Rules;
import org.junit.jupiter.api.Test;

/** {@code explain} and {@code rules}. */
class ExplainTest {
  @Test
  void tracesTheLengthsOfALineDownToWhatIsStated() {
    List<String> lines = Fixtures.read(LENGTHS.resolve("east.wall")).lines().toList();
    int mullions = 1;
    while (!lines.get(mullions - 1).strip().startsWith("vertical   B..F")) {
      mullions++;
    }
    String out = Ran.in(LENGTHS, "explain", "east.wall:" + mullions).out();
    assertThat(out)
        .contains("V2  vertical B, lower length, L1 to L2 and 4 more like it")
        // closed form, recomputed: 180 − 5/16 − 3/4 = 178 15/16"
        .contains("cut length = 14'-10 15/16\" (4545 mm)")
        .contains("gap = 5/8\" (15.88 mm), stated")
        .contains("licensed engineer");
    assertThat(Ran.in(LENGTHS, "explain", "east.wall:" + mullions + ":5").out()).isEqualTo(out);
  }

  @Test
  void listsEveryDefaultOnce() {
    String out = Ran.in(LENGTHS, "explain", "east.wall").out();
    // common practice: 1/32" an end
    assertThat(out).contains("profile mullion-6\n").contains("end allowance = 1/32\" (0.79 mm)");
    List<String> ofProfile =
        out.lines().dropWhile(line -> !line.equals("  profile mullion-6")).skip(1).toList();
    List<String> told = ofProfile.subList(0, ofProfile.indexOf(""));
    assertThat(told).doesNotHaveDuplicates().isNotEmpty();
  }

  @Test
  void everyRuleIsListedAndExplained() {
    String list = Ran.in(LENGTHS, "rules").out();
    for (Rule rule : Rules.find().all()) {
      assertThat(list).contains("  " + rule.name() + " ");
      Ran page = Ran.in(LENGTHS, "explain", rule.name());
      assertThat(page.code()).isEqualTo(Exit.CLEAN);
      assertThat(page.out()).startsWith(rule.name() + "  ");
      assertThat(page.out().lines()).filteredOn(line -> line.startsWith("#")).isEmpty();
    }
  }
}
