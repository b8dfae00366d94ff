package mullwright.cli;

import static mullwright.cli.Fixtures.CHECK;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What {@code check} shows to people. */
class CheckTextTest {
  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(ints = {80, 120})
  void isLaidOutAsStored(int width) {
    Ran ran = Ran.in(CHECK, "check", "--width", "" + width, "broken.wall");
    Fixtures.assertSame(CHECK.resolve("broken." + width + ".txt"), ran.out());
    assertThat(ran.code()).isEqualTo(Exit.FINDINGS);
  }

  @ParameterizedTest
  @ValueSource(ints = {40, 80, 100, 120})
  void noLineIsLongerThanAskedFor(int width) {
    Ran ran = Ran.in(CHECK, "check", "--width", "" + width, "broken.wall");
    // the Chinese words of the fixture take two columns a letter: none of its lines is that long
    assertThat(ran.out().lines()).allMatch(line -> line.codePointCount(0, line.length()) <= width);
  }

  @Test
  void caretsStandUnderThePlaceWhereTabsComeBefore() {
    String out = Ran.in(CHECK, "check", "broken.wall").out();
    String[] lines = out.split("\n");
    for (int at = 1; at < lines.length; at++) {
      if (lines[at].contains("^^^^^^") && lines[at - 1].contains("spacde")) {
        assertThat(lines[at].indexOf("^^^^^^")).isEqualTo(lines[at - 1].indexOf("spacde"));
        return;
      }
    }
    assertThat(out).as("no carets under spacde").isEmpty();
  }

  @Test
  void whatAFileHoldsIsShownAndNeverObeyedByTheTerminal() {
    assertThat(Ran.in(CHECK, "check", "broken.wall").out()).doesNotContain("\u001b");
  }

  @Test
  void coloursOnlyWhereAPersonLooks() {
    Map<String, String> none = Map.of();
    Map<String, String> unwanted = Map.of("NO_COLOR", "1");
    assertThat(painted(none, true)).isTrue();
    assertThat(painted(none, false)).isFalse();
    assertThat(painted(unwanted, true)).isFalse();
    assertThat(painted(unwanted, false, "--color", "always")).isTrue();
    assertThat(painted(none, true, "--color=never")).isFalse();
  }

  private boolean painted(Map<String, String> environment, boolean terminal, String... options) {
    Fixtures.write(folder, "a.wall", "nonsense\n");
    String[] arguments = new String[options.length + 1];
    arguments[0] = "check";
    System.arraycopy(options, 0, arguments, 1, options.length);
    Ran ran = Ran.with(folder, environment, terminal, new byte[0], arguments);
    assertThat(ran.out()).contains("unreadable");
    return ran.out().contains("\u001b[1;31m");
  }

  @Test
  void theWidthIsTheTerminalsUnlessSaid() {
    Fixtures.write(folder, "a.wall", "nonsense " + "x ".repeat(300));
    assertThat(widest(Map.of("COLUMNS", "60"))).isBetween(50, 60);
    assertThat(widest(Map.of())).isBetween(90, 100);
    assertThat(widest(Map.of("COLUMNS", "60"), "--width", "140")).isBetween(120, 140);
    assertThat(widest(Map.of("COLUMNS", "no number"))).isBetween(90, 100);
  }

  private int widest(Map<String, String> environment, String... options) {
    String[] arguments = new String[options.length + 1];
    arguments[0] = "check";
    System.arraycopy(options, 0, arguments, 1, options.length);
    Ran ran = Ran.with(folder, environment, false, new byte[0], arguments);
    return ran.out().lines().mapToInt(String::length).max().orElse(0);
  }

  @Test
  void endsWithASummaryAndTheCaution() {
    Fixtures.write(folder, "a.wall", "nonsense\n");
    Fixtures.write(folder, "b.wall", "// nothing here\n");
    assertThat(Ran.in(folder, "check").out())
        .contains("2 files, 0 walls: 1 error\n")
        .endsWith("a licensed engineer and the local code govern.\n");
    assertThat(Ran.in(folder, "check", "b.wall").out())
        .startsWith("1 file, 0 walls: nothing found\n");
  }

  @Test
  void aCatalogAloneIsCheckedToo() {
    Fixtures.write(folder, "office.wall", "catalog {\n  profile rail {\n    role nobody\n  }\n}\n");
    assertThat(Ran.in(folder, "check", "office.wall").code()).isEqualTo(Exit.FINDINGS);
  }

  @Test
  void aFindingInAUsedFileIsToldOnce() {
    Fixtures.write(folder, "office.wall", "catalog {\n  profil rail\n}\n");
    Fixtures.write(folder, "a.wall", "use \"office.wall\"\n");
    Fixtures.write(folder, "b.wall", "use \"office.wall\"\n");
    String out = Ran.in(folder, "check", "a.wall", "b.wall").out();
    assertThat(out.split("office.wall:2:3", -1)).hasSize(2);
  }
}
