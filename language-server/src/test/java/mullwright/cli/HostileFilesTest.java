package mullwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Random;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files nobody should give, and that must neither crash nor hang a command. */
class HostileFilesTest {
  private static final Duration PATIENCE = Duration.ofSeconds(60);

  @TempDir Path folder;

  @Test
  void aBinaryFileIsRefusedAndTheOthersAreChecked() throws IOException {
    byte[] bytes = new byte[10_000];
    new Random(1).nextBytes(bytes);
    bytes[7] = 0;
    Files.write(folder.resolve("a.wall"), bytes);
    Fixtures.write(folder, "b.wall", "nonsense\n");
    Ran ran = Ran.in(folder, "check");
    assertThat(ran.code()).isEqualTo(Exit.COULD_NOT);
    assertThat(ran.err()).contains("a.wall").contains("no text");
    assertThat(ran.out()).contains("b.wall:1:1").doesNotContain("a.wall:");
  }

  @Test
  void fiveMegabytesOfJunkAreCheckedInTime() {
    StringBuilder junk = new StringBuilder();
    Random random = new Random(2);
    String letters = "abc {}()'\"@.,-+*/\n\t5é中";
    while (junk.length() < 5_000_000) {
      junk.append(letters.charAt(random.nextInt(letters.length())));
    }
    Fixtures.write(folder, "junk.wall", junk.toString());
    Ran ran =
        Assertions.assertTimeoutPreemptively(PATIENCE, () -> Ran.in(folder, "check", "junk.wall"));
    assertThat(ran.code()).isIn(Exit.FINDINGS, Exit.COULD_NOT);
    assertThat(ran.out() + ran.err()).contains("junk.wall").doesNotContain("\tat ");
    assertThat(ran.out().length()).isLessThan(5_000_000);
  }

  @Test
  void oneLineOfAMegabyteIsShownInPart() {
    Fixtures.write(folder, "a.wall", "nonsense " + "x".repeat(1_000_000));
    Ran ran =
        Assertions.assertTimeoutPreemptively(PATIENCE, () -> Ran.in(folder, "check", "a.wall"));
    assertThat(ran.out().lines()).allMatch(line -> line.length() <= 100);
  }

  @Test
  void aFileAboveTheLimitIsNamed() throws IOException {
    Files.write(folder.resolve("a.wall"), new byte[(8 << 20) + 1]);
    for (String command : new String[] {"check", "format", "lengths", "calculations", "explain"}) {
      Ran ran = Ran.in(folder, command, "a.wall");
      assertThat(ran.code()).as(command).isEqualTo(Exit.COULD_NOT);
      assertThat(ran.err()).as(command).contains("8388608");
    }
  }

  @Test
  void bytesThatAreNoUtf8AreToldAndReadOn() throws IOException {
    Files.write(folder.resolve("a.wall"), "// Ma\u00df\n".getBytes(StandardCharsets.ISO_8859_1));
    Ran ran = Ran.in(folder, "check", "a.wall");
    assertThat(ran.err()).contains("no UTF-8");
    assertThat(ran.code()).isEqualTo(Exit.FINDINGS);
  }

  @Test
  void linksThatGoInCirclesAreNotFollowed() throws IOException {
    Fixtures.write(folder, "a/a.wall", "// nothing\n");
    Files.createSymbolicLink(folder.resolve("a/again"), folder);
    assertThat(Ran.in(folder, "check").out()).startsWith("1 file,");
  }

  @Test
  void aLinkOutOfTheRootIsAsGoodAsMissing() throws IOException {
    Path inside = Files.createDirectory(folder.resolve("inside"));
    Path secret = Fixtures.write(folder, "secret.wall", "secret\n");
    Files.createSymbolicLink(inside.resolve("a.wall"), secret);
    Ran ran = Ran.in(inside, "check", "a.wall");
    assertThat(ran.code()).isEqualTo(Exit.COULD_NOT);
    assertThat(ran.out()).doesNotContain("secret");
  }

  @Test
  void aNameCannotSteerTheTerminal() throws IOException {
    Files.write(folder.resolve("a\u001b[31m.wall"), new byte[] {0});
    Ran ran = Ran.in(folder, "check");
    assertThat(ran.err()).doesNotContain("\u001b");
    Fixtures.write(folder, "b\u001b[31m.wall", "nonsense\n");
    assertThat(Ran.in(folder, "check").out())
        .contains("b\ufffd[31m.wall:1:1")
        .doesNotContain("\u001b");
  }
}
