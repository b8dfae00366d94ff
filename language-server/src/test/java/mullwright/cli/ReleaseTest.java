package mullwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
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
        .contains("“ferry/east.wall” is not the one that was released", "The result “lengths”");
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
    Fixtures.write(folder, "ferry/east.marks", "V1 …\n");
    release();
    assertThat(Ran.in(folder, "verify", RECORD).code()).isEqualTo(Exit.CLEAN);
    Fixtures.write(folder, "ferry/east.marks", "V2 …\n");
    assertThat(Ran.in(folder, "verify", RECORD).out())
        .contains("The file “ferry/east.marks” is not the one that was released");
  }

  @Test
  void aCommentAloneChangesTheTextAndNoResult() {
    release();
    replace("ferry/east.wall", "/// Waiting hall", "/// The waiting hall");
    assertThat(Ran.in(folder, "verify", RECORD).out())
        .contains("The text “ferry/east.wall”")
        .doesNotContain("“lengths”", "“facts”");
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
