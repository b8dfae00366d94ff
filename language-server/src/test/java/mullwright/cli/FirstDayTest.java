package mullwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What somebody meets who asks for help first and mistypes names. */
class FirstDayTest {
  @TempDir private Path folder;

  @Test
  void whatEachCommandDoesIsAWholeSentenceInTheList() {
    String help = Ran.in(folder, "--help").out();
    String list = help.substring(help.indexOf("Commands:"), help.indexOf("Exit codes:"));
    List<String> commands = List.of(list.split("\n  (?=[a-z])"));
    assertThat(commands).hasSizeGreaterThan(15);
    assertThat(commands.subList(1, commands.size()))
        .allSatisfy(command -> assertThat(command.strip()).endsWith("."));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "check none.wall",
        "facts none.wall",
        "release none.wall --as A",
        "verify none.wall",
        "draw none.wall",
        "format none.wall"
      })
  void aFileThatIsNotThereIsToldAsThat(String line) {
    Ran ran = Ran.in(folder, line.split(" "));
    assertThat(ran.code()).isEqualTo(Exit.COULD_NOT);
    assertThat(ran.err()).contains("There is no file “none.wall”.");
  }

  @Test
  void whatAProfileDoesNotStateIsToldAndNoMore() {
    String out =
        Ran.in(Path.of("../examples").toAbsolutePath().normalize(), "calculations", "first-wall")
            .out();
    assertThat(out).contains("buckling sideways, since sill-6 does not state J ");
  }
}
