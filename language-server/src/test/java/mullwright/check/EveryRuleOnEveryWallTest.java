package mullwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import mullwright.syntax.TextRange;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** All rules over all walls, also each other's: none breaks, and none leans on another. */
class EveryRuleOnEveryWallTest {
  private static final int CUTS = 12;

  private final Rules rules = Rules.find();

  @TestFactory
  Stream<DynamicTest> noRuleBreaksAndNoFindingIsNowhere() {
    return Fixture.all().stream()
        .map(
            fixture ->
                DynamicTest.dynamicTest(
                    fixture.path(), () -> holds(fixture.path(), fixture.bare())));
  }

  @TestFactory
  Stream<DynamicTest> aWallCutShortIsCheckedAsFarAsItGoes() {
    return Fixture.all().stream()
        .map(
            fixture ->
                DynamicTest.dynamicTest(
                    fixture.path(),
                    () -> {
                      Random chance = new Random(fixture.path().hashCode());
                      for (int cut = 0; cut < CUTS; cut++) {
                        int at = chance.nextInt(fixture.bare().length() + 1);
                        holds(fixture.path(), fixture.bare().substring(0, at));
                      }
                    }));
  }

  private void holds(String path, String text) {
    CheckedText checked = check(path, text, rules);
    assertThat(checked.failures()).isEmpty();
    for (Finding finding : checked.findings()) {
      TextRange place = checked.place(finding.origin());
      boolean atTheEnd = place.start() == text.length();
      assertThat(place.length() > 0 || atTheEnd).as("%s has a place", finding).isTrue();
      assertThat(finding.what()).isNotBlank();
      assertThat(finding.mend()).isNotBlank();
    }
    assertThat(checked.findings()).doesNotHaveDuplicates();
  }

  @TestFactory
  Stream<DynamicTest> everyRuleFindsAloneWhatItFindsAmongTheOthers() {
    return Fixture.all().stream()
        .filter(Fixture::trips)
        .map(
            fixture ->
                DynamicTest.dynamicTest(
                    fixture.path(),
                    () -> {
                      List<Finding> alone = new ArrayList<>();
                      for (Rule rule : rules.all()) {
                        Rules one = new Rules(List.of(rule));
                        alone.addAll(check(fixture.path(), fixture.bare(), one).findings());
                      }
                      assertThat(check(fixture.path(), fixture.bare(), rules).findings())
                          .containsExactlyInAnyOrderElementsOf(alone);
                    }));
  }

  private static CheckedText check(String path, String text, Rules rules) {
    Map<String, String> texts = new HashMap<>(Fixture.texts());
    texts.put(path, text);
    return new CheckedText(path, texts, rules);
  }
}
