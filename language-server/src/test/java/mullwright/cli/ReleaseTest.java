package mullwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A released wall and the proof that texts and results are those of the release. */
class ReleaseTest {
  private static final String RECORD = "ferry/east.wall.release.json";

  @TempDir Path folder;

  @BeforeEach
  void ferry() {
    Path examples = Path.of("..", "examples");
    Fixtures.write(
        folder, "catalog/captured.wall", Fixtures.read(examples.resolve("catalog/captured.wall")));
    Fixtures.write(
        folder, "ferry/east.wall", Fixtures.read(examples.resolve("ferry-terminal/east.wall")));
  }

  private void replace(String file, String from, String to) {
    String text = Fixtures.read(folder.resolve(file));
    assertThat(text).contains(from);
    Fixtures.write(folder, file, text.replace(from, to));
  }

  private Ran release(String... more) {
    String[] all = new String[more.length + 4];
    System.arraycopy(new String[] {"release", "ferry/east.wall", "--as", "Rev B"}, 0, all, 0, 4);
    System.arraycopy(more, 0, all, 4, more.length);
    return Ran.in(folder, all);
  }

  @Test
  void whatWasReleasedIsProved() {
    Fixtures.write(folder, "ferry/cuts.csv", "mark,length\n");
    Ran released = release("--with", "ferry/cuts.csv");
    assertThat(released.err()).isEmpty();
    assertThat(released.code()).isEqualTo(Exit.CLEAN);
    Ran verified = Ran.in(folder, "verify", RECORD);
    assertThat(verified.out()).contains("are those released as Rev B");
    assertThat(verified.code()).isEqualTo(Exit.CLEAN);
    // the record stands in its folder, whatever folder one stands in
    assertThat(Ran.in(folder.resolve("catalog"), "verify", "../" + RECORD).code())
        .isEqualTo(Exit.CLEAN);
  }

  @Test
  void theSameTextMakesTheSameRecord() {
    release();
    String first = Fixtures.read(folder.resolve(RECORD));
    release();
    assertThat(Fixtures.read(folder.resolve(RECORD))).isEqualTo(first);
  }

  @Test
  void anotherTextCatalogOrFileIsSeen() {
    Fixtures.write(folder, "ferry/cuts.csv", "mark,length\n");
    release("--with", "ferry/cuts.csv");
    replace("ferry/east.wall", "gap 5/8\"", "gap 3/4\"");
    Ran text = Ran.in(folder, "verify", RECORD);
    assertThat(text.code()).isEqualTo(Exit.FINDINGS);
    assertThat(text.out())
        .contains(
            "“ferry/east.wall” is not the one that was released",
            "The result “lengths --output csv”");
    replace("ferry/east.wall", "gap 3/4\"", "gap 5/8\"");
    assertThat(Ran.in(folder, "verify", RECORD).code()).isEqualTo(Exit.CLEAN);
    replace("catalog/captured.wall", "depth 6\"", "depth 6 1/2\"");
    assertThat(Ran.in(folder, "verify", RECORD).out()).contains("“catalog/captured.wall” is not");
    replace("catalog/captured.wall", "depth 6 1/2\"", "depth 6\"");
    Fixtures.write(folder, "ferry/cuts.csv", "mark,length\nV1,10\n");
    assertThat(Ran.in(folder, "verify", RECORD).out())
        .contains("The file “ferry/cuts.csv” is not the one that was released");
  }

  @Test
  void theLedgerBesideTheWallBelongsToIt() {
    assertThat(Ran.in(folder, "tickets", "ferry/east.wall", "--issue").code())
        .isEqualTo(Exit.CLEAN);
    release();
    assertThat(Ran.in(folder, "verify", RECORD).code()).isEqualTo(Exit.CLEAN);
    Path ledger = folder.resolve("ferry/east.marks");
    String marks = Fixtures.read(ledger);
    Fixtures.write(folder, "ferry/east.marks", marks.replaceFirst("\n[^#\n]*\n", "\n"));
    assertThat(Ran.in(folder, "verify", RECORD).out())
        .contains("The file “ferry/east.marks” is not the one that was released");
  }

  /** Writes what the shop is given into a folder, as a user would from {@code from}. */
  private void handOut(Path from, String wall) throws IOException {
    Path shop = Files.createDirectories(folder.resolve("shop/drawings"));
    for (String command :
        new String[] {
          "tickets --output csv",
          "tickets --output xlsx",
          "cut",
          "cut --each --output json",
          "takeoff --output markdown",
          "glass --output csv",
          "sequence",
          "sequence --output csv",
          "lengths --each --output xlsx",
          "transmittance"
        }) {
      List<String> all = new ArrayList<>(List.of(command.split(" ")));
      all.addAll(List.of(wall, "--root", folder.toString()));
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      Shell shell =
          new Shell(
              InputStream.nullInputStream(),
              new PrintStream(out, false, StandardCharsets.UTF_8),
              System.err,
              from,
              Map.of(),
              false);
      assertThat(CommandRun.run(shell, all.toArray(String[]::new))).isEqualTo(Exit.CLEAN);
      shell.out().flush();
      Files.write(folder.resolve("shop").resolve(command.replace(' ', '_')), out.toByteArray());
    }
    String root = "--root=" + folder;
    Ran.in(from, "draw", wall, root, "--to", shop.resolve("east.pdf").toString());
    Ran.in(from, "draw", wall, root, "--output", "dxf", "--to", shop.toString());
    Ran.in(from, "draw", wall, root, "--output", "svg", "--to", shop.toString());
  }

  @Test
  void everyFileHandedOutIsToldFromAnotherByOneByte() throws IOException {
    release();
    Random random = new Random(7);
    for (Path from : new Path[] {folder, folder.resolve("ferry")}) {
      handOut(from, from.equals(folder) ? "ferry/east.wall" : "east.wall");
      Ran whole = Ran.in(folder, "verify", RECORD, "shop");
      assertThat(whole.out()).doesNotContain("NOT of").contains("are those released as Rev B");
      assertThat(whole.code()).isEqualTo(Exit.CLEAN);
      assertThat(whole.out())
          .contains(
              "shop/tickets_--output_csv: of Rev B, “tickets --output csv”",
              "shop/drawings/east.pdf: of Rev B, “draw --output pdf: ",
              "shop/drawings/sheet-01.svg: of Rev B");
      try (Stream<Path> all = Files.walk(folder.resolve("shop"))) {
        List<Path> files = all.filter(Files::isRegularFile).toList();
        assertThat(files).hasSizeGreaterThan(14);
        for (Path file : files) {
          byte[] bytes = Files.readAllBytes(file);
          byte[] other = bytes.clone();
          other[random.nextInt(other.length)] ^= (byte) (1 << random.nextInt(8));
          Files.write(file, other);
          String shown = folder.relativize(file).toString();
          assertThat(new HandedOutFiles(folder).unknown()).containsExactly(shown);
          Files.write(file, bytes);
        }
      }
    }
  }

  /** What is said of the folder, by a record that stands apart from all texts. */
  private record HandedOutFiles(Path folder) {
    List<String> unknown() throws IOException {
      Path apart = Files.createDirectories(folder.resolve("apart"));
      Files.copy(
          folder.resolve(RECORD),
          apart.resolve("rev-b.release.json"),
          StandardCopyOption.REPLACE_EXISTING);
      Ran ran = Ran.in(folder, "verify", "apart/rev-b.release.json", "shop", "--root", "apart");
      return ran.out()
          .lines()
          .filter(line -> line.contains(": NOT of Rev B: "))
          .map(line -> line.substring(0, line.indexOf(": NOT")))
          .toList();
    }
  }

  @Test
  void theShopNeedsTheRecordAndNoTexts() throws IOException {
    release();
    handOut(folder, "ferry/east.wall");
    Path away = Files.createDirectories(folder.resolve("away/shop"));
    Files.copy(folder.resolve(RECORD), away.resolve("rev-b.release.json"));
    Files.copy(folder.resolve("shop/cut"), away.resolve("cut.txt"));
    Files.delete(folder.resolve("ferry/east.wall"));
    Ran ran = Ran.in(away, "verify", "rev-b.release.json", ".");
    assertThat(ran.out()).contains("cut.txt: of Rev B, “cut --output text”", "The texts are not");
    assertThat(ran.code()).isEqualTo(Exit.CLEAN);
    Fixtures.write(away, "cut.txt", Fixtures.read(away.resolve("cut.txt")) + "\n");
    assertThat(Ran.in(away, "verify", "rev-b.release.json", "cut.txt").code())
        .isEqualTo(Exit.FINDINGS);
    assertThat(Ran.in(away, "verify", "rev-b.release.json", "none").err())
        .contains("There is no file or folder “none”");
  }

  @Test
  void aCommentAloneChangesTheTextAndNoResult() {
    release();
    Path wall = folder.resolve("ferry/east.wall");
    Fixtures.write(folder, "ferry/east.wall", Fixtures.read(wall) + "// reviewed\n");
    assertThat(Ran.in(folder, "verify", RECORD).out())
        .contains("The text “ferry/east.wall”")
        .doesNotContain("The result");
  }

  @Test
  void holdsVerifiesAndErrorsBlock() {
    replace("ferry/east.wall", "gap 5/8\"", "gap 5/8\" hold \"await the movement report\"");
    Ran held = release();
    assertThat(held.code()).isEqualTo(Exit.FINDINGS);
    assertThat(held.err()).contains("held: await the movement report", "is not released");
    replace("ferry/east.wall", "hold \"await the movement report\"", "verify \"as built\"");
    assertThat(release().err()).contains("to be taken in the field: as built");
    replace("ferry/east.wall", " verify \"as built\"", " note \"as built\"");
    assertThat(release().code()).isEqualTo(Exit.CLEAN);
    replace("ferry/east.wall", "at 2'-0\" above L2", "at 3'-0\" above L2");
    assertThat(release().err()).contains("errors stand");
  }

  @Test
  void aRecordThatWasChangedIsNone() {
    release();
    replace(RECORD, "Rev B", "Rev C");
    Ran ran = Ran.in(folder, "verify", RECORD);
    assertThat(ran.code()).isEqualTo(Exit.COULD_NOT);
    assertThat(ran.err()).contains("was changed after it was made");
    assertThat(Ran.in(folder, "verify", "ferry/east.wall").code()).isEqualTo(Exit.COULD_NOT);
  }
}
