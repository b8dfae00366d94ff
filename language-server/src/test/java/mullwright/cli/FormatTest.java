package mullwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code format} changes what it should and nothing else. */
class FormatTest {
  private static final String UNTIDY = "let    a = 5\"\n";
  private static final String TIDY = "let a = 5\"\n";

  @TempDir Path folder;

  @Test
  void laysOutInPlaceAndNamesWhatChanged() {
    Fixtures.write(folder, "b/untidy.wall", UNTIDY);
    Fixtures.write(folder, "a/tidy.wall", TIDY);
    Ran ran = Ran.in(folder, "format");
    assertThat(ran.out()).isEqualTo("b/untidy.wall\n");
    assertThat(Fixtures.read(folder.resolve("b/untidy.wall"))).isEqualTo(TIDY);
    assertThat(Ran.in(folder, "format").out()).isEmpty();
  }

  @Test
  void checkChangesNothing() {
    Path file = Fixtures.write(folder, "untidy.wall", UNTIDY);
    Ran ran = Ran.in(folder, "format", "--check");
    assertThat(ran.code()).isEqualTo(Exit.FINDINGS);
    assertThat(ran.out()).isEqualTo("untidy.wall\n");
    assertThat(Fixtures.read(file)).isEqualTo(UNTIDY);
  }

  @Test
  void standardInputGoesToStandardOutput() {
    Ran ran =
        Ran.with(folder, Map.of(), false, UNTIDY.getBytes(StandardCharsets.UTF_8), "format", "-");
    assertThat(ran.out()).isEqualTo(TIDY);
    assertThat(ran.code()).isEqualTo(Exit.CLEAN);
    assertThat(
            Ran.with(
                    folder,
                    Map.of(),
                    false,
                    UNTIDY.getBytes(StandardCharsets.UTF_8),
                    "format",
                    "--check",
                    "-")
                .code())
        .isEqualTo(Exit.FINDINGS);
  }

  @Test
  void lineEndsAndByteOrderMarkStay() {
    Path file = Fixtures.write(folder, "a.wall", "\ufefflet    a = 5\"\r\n// end\r\n");
    Ran.in(folder, "format");
    assertThat(Fixtures.read(file)).isEqualTo("\ufefflet a = 5\"\r\n// end\r\n");
  }

  @Test
  void aBrokenLineStaysAsItIs() {
    Path file = Fixtures.write(folder, "a.wall", "let    a = 5\"\nlet   b  =  = 6\"\n");
    Ran.in(folder, "format");
    assertThat(Fixtures.read(file)).isEqualTo("let a = 5\"\nlet   b  =  = 6\"\n");
  }

  @Test
  void bytesThatAreNoTextAreNeverWritten() throws IOException {
    byte[] latin = "let    a = 5\" // Ma\u00df\n".getBytes(StandardCharsets.ISO_8859_1);
    byte[] zero = {'l', 'e', 't', 0, ' ', ' '};
    for (byte[] bytes : List.of(latin, zero)) {
      Path file = Files.write(folder.resolve("a.wall"), bytes);
      Ran ran = Ran.in(folder, "format");
      assertThat(ran.code()).isEqualTo(Exit.COULD_NOT);
      assertThat(Files.readAllBytes(file)).isEqualTo(bytes);
    }
  }

  @Test
  void oneFileThatCannotBeReadDoesNotKeepTheOthers() throws IOException {
    Files.write(folder.resolve("a.wall"), new byte[] {(byte) 0xff, 0});
    Path good = Fixtures.write(folder, "b.wall", UNTIDY);
    assertThat(Ran.in(folder, "format").code()).isEqualTo(Exit.COULD_NOT);
    assertThat(Fixtures.read(good)).isEqualTo(TIDY);
  }

  @Test
  void aLinkStaysALinkAndPermissionsStay() throws IOException {
    Path file = Fixtures.write(folder, "real/a.wall", UNTIDY);
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r-----"));
    Path link = Files.createSymbolicLink(folder.resolve("link.wall"), file);
    Ran.in(folder, "format", "link.wall");
    assertThat(Files.isSymbolicLink(link)).isTrue();
    assertThat(Fixtures.read(file)).isEqualTo(TIDY);
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
        .isEqualTo("rw-r-----");
  }

  @Test
  void nothingIsLeftBeside() throws IOException {
    Fixtures.write(folder, "a.wall", UNTIDY);
    Ran.in(folder, "format");
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files.map(file -> file.getFileName().toString())).containsExactly("a.wall");
    }
  }
}
