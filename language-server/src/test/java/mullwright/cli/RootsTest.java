package mullwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Above which folder nothing is used. */
class RootsTest {
  @TempDir Path folder;

  @BeforeEach
  void files() {
    Fixtures.write(folder, "catalog/office.wall", "catalog {\n}\n");
    Fixtures.write(folder, "ferry/east.wall", "use \"../catalog/office.wall\"\n");
  }

  @Test
  void isTheCurrentFolderIfTheFilesLieBelowIt() {
    assertThat(Roots.of(folder, List.of(folder.resolve("ferry/east.wall")))).isEqualTo(folder);
    assertThat(Ran.in(folder, "check", "ferry").code()).isEqualTo(Exit.CLEAN);
    assertThat(Ran.in(folder.resolve("ferry"), "check").out()).contains("broken-use");
  }

  @Test
  void canBeSaid() {
    Ran ran = Ran.in(folder.resolve("ferry"), "check", "--root", "..", "east.wall");
    assertThat(ran.code()).as(ran.out()).isEqualTo(Exit.CLEAN);
  }

  @Test
  void isTheNearestThatHoldsTheFilesAndTheCurrentFolder() throws IOException {
    Path other = Files.createDirectory(folder.resolve("other"));
    Ran ran = Ran.in(other, "check", "../ferry/east.wall");
    assertThat(ran.code()).as(ran.out()).isEqualTo(Exit.CLEAN);
    Fixtures.write(folder, "ferry/east.wall", "nonsense\n");
    assertThat(Ran.in(other, "check", "../ferry/east.wall").out())
        .contains("../ferry/east.wall:1:1");
  }

  @Test
  void isNeverTheTopOfTheDisk() {
    Path top = folder.getRoot();
    List<Path> files = List.of(top.resolve("jobs/a/x.wall"), top.resolve("jobs/b/y.wall"));
    assertThat(Roots.of(top.resolve("home/me"), files)).isEqualTo(top.resolve("jobs"));
  }
}
