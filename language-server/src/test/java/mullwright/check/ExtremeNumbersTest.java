package mullwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Walls whose numbers are as large or as fine as text may say: no rule breaks on them. */
class ExtremeNumbersTest {
  private static final int WALLS_OF_A_FIXTURE = 4;

  /** A number with its unit, as a wall or a catalog says it; a length in inches, or in feet. */
  private static final Pattern NUMBER =
      Pattern.compile(
          "(?<length>\\d+'(?:-\\d+(?: \\d+/\\d+)?\")?|\\d+(?: \\d+/\\d+|/\\d+)?\"|[\\d.]+ mm\\b)"
              + "|(?<number>-?\\d[\\d.]*(?:e-?\\d+)?)"
              + " (?<unit>psf|kPa|Pa|ksi|MPa|in[234]|mm[234]|lb/ft|kg/m|lb|kg|lbf|kN|N|F|C|deg)\\b");

  private static final List<String> LENGTHS =
      List.of(
          "10000 m",
          "9999.999999 m",
          "2345 m",
          "120 m",
          "1/64\"",
          "1/64\"",
          "0.000001 mm",
          "0.0000000625 mm",
          "0\"",
          "17 11/64\"");

  private static final List<String> NUMBERS =
      List.of("1e25", "1e12", "1e6", "1e-6", "1e-12", "1e-25", "0", "0.0000001234567");

  private final Rules rules = Rules.find();

  /** Some numbers of a wall, or of the catalog it takes its parts from, are exchanged at a time. */
  @TestFactory
  Stream<DynamicTest> noRuleBreaks() {
    return Fixture.all().stream()
        .filter(Fixture::trips)
        .map(
            fixture ->
                DynamicTest.dynamicTest(
                    fixture.path(),
                    () -> {
                      SplittableRandom random = new SplittableRandom(fixture.path().hashCode());
                      for (int i = 0; i < WALLS_OF_A_FIXTURE; i++) {
                        holds(fixture, random);
                      }
                    }));
  }

  private void holds(Fixture fixture, SplittableRandom random) {
    Map<String, String> texts = new HashMap<>(Fixture.texts());
    texts.put(fixture.path(), exchanged(fixture.bare(), random));
    if (random.nextInt(3) == 0) {
      texts.computeIfPresent("fixture.wall", (path, text) -> exchanged(text, random));
    }
    CheckedText checked = new CheckedText(fixture.path(), texts, rules);
    assertThat(checked.failures())
        .as(() -> texts.get(fixture.path()) + "\n----\n" + texts.get("fixture.wall"))
        .isEmpty();
  }

  private static String exchanged(String text, SplittableRandom random) {
    int numbers = (int) NUMBER.matcher(text).results().count();
    int one = 1 + random.nextInt(Math.max(1, numbers));
    Matcher number = NUMBER.matcher(text);
    StringBuilder other = new StringBuilder();
    for (int i = 1; number.find(); i++) {
      if (i == one || random.nextInt(12) == 0) {
        String put =
            number.group("length") != null
                ? LENGTHS.get(random.nextInt(LENGTHS.size()))
                : NUMBERS.get(random.nextInt(NUMBERS.size())) + " " + number.group("unit");
        number.appendReplacement(other, Matcher.quoteReplacement(put));
      }
    }
    return number.appendTail(other).toString();
  }

  /**
   * A vertical that nothing holds for kilometres bends further than a length of the text may be: by
   * L⁴, so from 12 ft to 9 km the deflection grows by 13 powers of ten, to more than the way to the
   * moon.
   */
  @Test
  void aSpanThatBendsBeyondAllMeasureIsTold() {
    Map<String, String> texts = new HashMap<>(Fixture.texts());
    String path = "span-deflection/trips.wall";
    texts.computeIfPresent(path, (name, text) -> text.replace("24'-0\"", "9000 m"));
    CheckedText checked = new CheckedText(path, texts, rules);
    assertThat(checked.failures()).isEmpty();
    assertThat(checked.findings())
        .filteredOn(finding -> finding.rule().equals("span-deflection"))
        .filteredOn(finding -> finding.piece().startsWith("vertical B"))
        .anySatisfy(
            finding -> assertThat(finding.what()).containsPattern("bends [\\d.e]+ m under"));
  }

  /** Places are put together from lengths, and reach no further than a length may. */
  @Test
  void aPlaceBeyondTheReachOfAWallIsRefusedAndTold() {
    Map<String, String> texts = new HashMap<>(Fixture.texts());
    String path = "span-deflection/trips.wall";
    for (String[] slip :
        new String[][] {
          {"2 @ 5'-0\"", "2 @ 6 km"},
          {"at 24'-0\"", "at 9 km above L2"},
          {"4\" above L3", "9999 m above L3"}
        }) {
      String line = slip[1].replace(" km", "000 m");
      texts.computeIfPresent(path, (name, text) -> text.replace(slip[0], line));
      if (slip[1].contains("above L2")) {
        texts.computeIfPresent(path, (n, text) -> text.replace("L2 at 12'-0\"", "L2 at 2000 m"));
      }
      CheckedText checked = new CheckedText(path, texts, rules);
      assertThat(checked.failures()).isEmpty();
      assertThat(checked.findings())
          .as(line)
          .filteredOn(finding -> finding.rule().equals("bad-value"))
          .anySatisfy(finding -> assertThat(finding.what()).contains(line).contains("range"));
      texts.putAll(Fixture.texts());
    }
  }
}
