package mullwright.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every wall under {@code syntax} reads as the printed tree beside it says. */
class SyntaxFixturesTest {
  static List<Path> ok() {
    return Fixtures.walls("ok");
  }

  static Stream<Path> all() {
    return Fixtures.all().stream();
  }

  @ParameterizedTest
  @MethodSource("all")
  void readsAsThePrintedTreeSays(Path wall) {
    String printed = TreePrinter.print(ParsedFile.parse(Fixtures.read(wall)));
    assertThat(printed).isEqualTo(Fixtures.expected(wall, ".tree", printed));
  }

  @ParameterizedTest
  @MethodSource("ok")
  void hasNoProblem(Path wall) {
    assertThat(ParsedFile.parse(Fixtures.read(wall)).segments())
        .allSatisfy(segment -> assertThat(segment.problems()).isEmpty());
  }
}
