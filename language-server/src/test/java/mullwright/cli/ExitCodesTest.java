package mullwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The exit code of every command, and that the reason for a 2 is a sentence. */
class ExitCodesTest {
  @TempDir Path folder;

  @BeforeEach
  void files() {
    Fixtures.write(folder, "clean.wall", "// nothing\n");
    Fixtures.write(folder, "broken.wall", "nonsense\n");
    Fixtures.write(folder, "unused.wall", "let a = 5\"\n");
    Fixtures.write(folder, "untidy.wall", "let    a = 5\"\n");
    Fixtures.write(folder, "deep/er/clean.wall", "// nothing\n");
    Fixtures.write(folder, "empty/readme.txt", "no wall\n");
    Fixtures.lengths(folder.resolve("walls"));
  }

  @ParameterizedTest
  @CsvSource({
    "0, check clean.wall",
    "1, check broken.wall",
    "1, check",
    "1, check .",
    "1, check *.wall",
    "0, check **/clean.wall",
    "0, check deep/**/*.wall",
    "0, check deep",
    "0, check unused.wall",
    "0, check --fail-on error unused.wall",
    "1, check --fail-on information unused.wall",
    "1, check --fail-on error broken.wall",
    "2, check missing.wall",
    "2, check clean.wall missing.wall",
    "2, check empty",
    "2, check nothing-*.wall",
    "2, check [.wall",
    "2, check --bogus",
    "2, check --fail-on nobody clean.wall",
    "2, check --output tea clean.wall",
    "2, check --width 3 clean.wall",
    "2, check --width wide clean.wall",
    "2, check --root missing clean.wall",
    "2, check --root deep clean.wall",
    "0, format clean.wall",
    "0, format --check clean.wall",
    "1, format --check untidy.wall",
    "0, format untidy.wall",
    "2, format missing.wall",
    "2, format - clean.wall",
    "0, lengths walls",
    "0, lengths --wall East walls",
    "2, lengths --wall West walls",
    "2, lengths clean.wall",
    "0, explain unknown-name",
    "2, explain unknown-nam",
    "2, explain",
    "0, explain clean.wall",
    "0, explain clean.wall:1",
    "2, explain clean.wall:99",
    "2, explain missing.wall:1",
    "0, rules",
    "0, --help",
    "0, check --help",
    "0, --version",
    "2, chekc",
  })
  void is(int code, String arguments) {
    Ran ran = Ran.in(folder, arguments.split(" "));
    assertThat(ran.code()).as(ran.out() + ran.err()).isEqualTo(code);
    if (code == Exit.COULD_NOT) {
      assertThat(ran.err()).startsWith("mullwright: ").contains(".").doesNotContain("\tat ");
    } else {
      assertThat(ran.err()).isEmpty();
    }
  }

  @Test
  void noCommandAtAllIsToldWhereToRead() {
    Ran ran = Ran.in(folder);
    assertThat(ran.code()).isEqualTo(Exit.COULD_NOT);
    assertThat(ran.err()).contains("--help");
  }

  @Test
  void anUnknownCommandOrRuleIsOfferedTheNearest() {
    assertThat(Ran.in(folder, "chekc").err()).contains("check");
    assertThat(Ran.in(folder, "explain", "unknwn-name").err()).contains("unknown-name");
  }

  @Test
  void everyCommandIsFoundByItself() {
    assertThat(Ran.in(folder, "--help").out())
        .contains("calculations", "check", "explain", "format", "lengths", "rules", "serve");
  }
}
