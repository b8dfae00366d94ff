package mullwright.workspace;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import mullwright.check.Finding;
import mullwright.check.Rules;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The door to a disk: what it lets through, and what it says of the rest. */
class DiskFilesTest {
  @TempDir Path folder;

  private DiskFiles files;

  @BeforeEach
  void open() throws IOException {
    java.nio.file.Files.createDirectories(folder.resolve("root/walls"));
    files = new DiskFiles(folder.resolve("root"));
  }

  private void write(String path, byte[] bytes) throws IOException {
    java.nio.file.Files.write(files.absolute(path), bytes);
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  @Test
  void readsUtf8WithAndWithoutAByteOrderMark() throws IOException {
    write("walls/a.wall", utf8("wall Süd {}\n"));
    write("walls/b.wall", utf8("\uFEFFwall Süd {}\n"));
    assertThat(files.read("walls/a.wall")).isEqualTo(new Files.Read.Text("wall Süd {}\n", false));
    assertThat(files.read("walls/b.wall")).isEqualTo(new Files.Read.Text("wall Süd {}\n", false));
  }

  @Test
  void readsOtherBytesWithReplacementAndReportsThem() throws IOException {
    write("walls/a.wall", "// S\u00fcd\nunits inches\n".getBytes(StandardCharsets.ISO_8859_1));
    assertThat(files.read("walls/a.wall"))
        .isEqualTo(new Files.Read.Text("// S\uFFFDd\nunits inches\n", true));
    List<Finding> found =
        new Workspace(files, Rules.find())
            .snapshot()
            .findings(List.of("walls/a.wall"), Cancel.NEVER)
            .get("walls/a.wall");
    assertThat(found)
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.rule()).isEqualTo("unreadable");
              assertThat(finding.origin().range().start()).isEqualTo(4);
              assertThat(finding.message()).contains("no UTF-8 text", "Save the file as UTF-8.");
            });
  }

  @Test
  void readsNothingAboveTheRootNotEvenThroughALink() throws IOException {
    java.nio.file.Files.writeString(folder.resolve("secret.wall"), "units inches\n");
    java.nio.file.Files.createSymbolicLink(
        folder.resolve("root/link.wall"), folder.resolve("secret.wall"));
    assertThat(files.read("../secret.wall")).isEqualTo(new Files.Read.Missing());
    assertThat(files.read("link.wall")).isEqualTo(new Files.Read.Missing());
    assertThat(files.relative(folder.resolve("secret.wall"))).isEmpty();
  }

  @Test
  void saysWhatIsMissingAFolderOrTooLarge() throws IOException {
    assertThat(files.read("walls/none.wall")).isEqualTo(new Files.Read.Missing());
    assertThat(files.read("walls")).isEqualTo(new Files.Read.Missing());
    assertThat(files.read("nul\0.wall")).isEqualTo(new Files.Read.Missing());
    try (RandomAccessFile large =
        new RandomAccessFile(files.absolute("walls/large.wall").toFile(), "rw")) {
      large.setLength(Files.SIZE_LIMIT + 1);
    }
    assertThat(files.read("walls/large.wall"))
        .isEqualTo(new Files.Read.TooLarge(Files.SIZE_LIMIT + 1));
  }

  @Test
  void listsWallsInOrderAndPassesHiddenFoldersOver() throws IOException {
    for (String name : List.of("b.wall", "walls/a.wall", "walls/notes.txt")) {
      write(name, utf8(""));
    }
    java.nio.file.Files.createDirectories(folder.resolve("root/.git"));
    write(".git/c.wall", utf8(""));
    assertThat(files.walls()).containsExactly("b.wall", "walls/a.wall");
    assertThat(new DiskFiles(folder.resolve("gone")).walls()).isEmpty();
  }

  /** The order of a listing is the disk's own, so only the number is sure. */
  @Test
  void looksAtNoMoreThanSoManyFilesAndFoldersOnTheWay() throws IOException {
    for (int i = 0; i < 20; i++) {
      write("walls/w" + i + ".wall", utf8(""));
    }
    Path root = folder.resolve("root");
    assertThat(new DiskFiles(root, 21).walls()).as("a folder and its files").hasSize(20);
    assertThat(new DiskFiles(root, 10).walls()).hasSize(9);
    for (int i = 0; i < 20; i++) {
      java.nio.file.Files.createDirectories(root.resolve("walls/w" + i + ".wall.old/deep"));
    }
    assertThat(new DiskFiles(root, 1).walls()).isEmpty();
    assertThat(new DiskFiles(root, 61).walls()).hasSize(20);
    assertThat(DiskFiles.PASS_LIMIT).as("a large project, not a home folder").isEqualTo(100_000);
  }

  @Test
  void seesAFileThatVanishesAndComesBackWhenAskedToLook() throws IOException {
    write("walls/a.wall", utf8("units inches\n"));
    Workspace workspace = new Workspace(files, Rules.find());
    Snapshot before = workspace.snapshot();
    assertThat(before.file("walls/a.wall")).isPresent();
    java.nio.file.Files.delete(files.absolute("walls/a.wall"));
    Snapshot after = workspace.lookAgain();
    assertThat(after.file("walls/a.wall")).isEmpty();
    assertThat(after.reading("walls/a.wall")).isEmpty();
    assertThat(before.file("walls/a.wall")).as("a snapshot never changes").isPresent();
    write("walls/a.wall", utf8("units inches\n"));
    assertThat(workspace.lookAgain().file("walls/a.wall")).isPresent();
  }
}
