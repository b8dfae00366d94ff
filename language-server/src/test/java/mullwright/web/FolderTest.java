package mullwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What of a disk can be read and written: walls and settings of the folder, whole and unlost. */
class FolderTest {
  private static final String WALL = "wall East {\n}\n";

  @TempDir Path disk;
  private Path root;
  private Folder folder;

  @BeforeEach
  void lay() throws IOException {
    root = Files.createDirectories(disk.resolve("walls"));
    Files.createDirectories(root.resolve("north/.hidden"));
    Files.writeString(root.resolve("east.wall"), WALL);
    Files.writeString(root.resolve("north/tower.wall"), WALL);
    Files.writeString(root.resolve("mullwright.properties"), "severity.unused = off\n");
    Files.writeString(root.resolve("notes.txt"), "not a wall");
    Files.writeString(disk.resolve("secret.wall"), "wall Secret {\n}\n");
    folder = new Folder(root);
  }

  private String version(String path) throws IOException {
    return folder.read(path).orElseThrow().version();
  }

  @Test
  void wallsAndSettingsAreListed() {
    assertThat(folder.list())
        .extracting(Folder.Entry::path)
        .containsExactly("east.wall", "north/tower.wall", "mullwright.properties");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "../secret.wall",
        "north/../../secret.wall",
        "north/../east.wall",
        "./east.wall",
        "/etc/passwd",
        "//east.wall",
        "north//tower.wall",
        "..\\secret.wall",
        "C:east.wall",
        "notes.txt",
        "north/mullwright.properties",
        ".hidden.wall",
        "north/.hidden/a.wall",
        "east.wall\u0000.txt",
        "east.wall/"
      })
  void nothingElseIsReadOrWritten(String path) throws IOException {
    assertThat(folder.read(path)).isEmpty();
    assertThat(folder.save(path, "changed", Optional.empty())).isInstanceOf(Folder.Refused.class);
    assertThat(texts()).doesNotContain("changed");
  }

  private List<String> texts() throws IOException {
    try (Stream<Path> all = Files.walk(disk)) {
      List<String> texts = new java.util.ArrayList<>();
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        texts.add(Files.readString(file));
      }
      return texts;
    }
  }

  @Test
  @DisabledOnOs(value = OS.WINDOWS, disabledReason = "links are made by administrators only")
  void noLinkLeadsOut() throws IOException {
    Files.createSymbolicLink(root.resolve("link.wall"), disk.resolve("secret.wall"));
    Files.createSymbolicLink(root.resolve("out"), disk);
    Files.createSymbolicLink(root.resolve("nowhere.wall"), disk.resolve("gone.wall"));
    for (String path : List.of("link.wall", "out/secret.wall", "out/new.wall", "nowhere.wall")) {
      assertThat(folder.read(path)).as(path).isEmpty();
      for (Optional<String> edited : List.of(Optional.<String>empty(), Optional.of("any"))) {
        assertThat(folder.save(path, "changed", edited))
            .as(path)
            .isInstanceOf(Folder.Refused.class);
      }
    }
    assertThat(texts()).doesNotContain("changed");
    assertThat(disk.resolve("new.wall")).doesNotExist();
    assertThat(disk.resolve("gone.wall")).doesNotExist();
  }

  @Test
  void whatWasEditedIsSaved() throws IOException {
    Folder.Outcome saved =
        folder.save("east.wall", "wall West {\n}\n", version("east.wall").describeConstable());
    assertThat(saved).isEqualTo(new Folder.Saved(version("east.wall")));
    assertThat(root.resolve("east.wall")).hasContent("wall West {\n}");
  }

  @Test
  void aTextThatChangedMeanwhileIsNotWrittenOver() throws IOException {
    Optional<String> edited = Optional.of(version("east.wall"));
    Files.writeString(root.resolve("east.wall"), "wall Other {\n}\n");
    assertThat(folder.save("east.wall", "mine", edited))
        .isEqualTo(
            new Folder.Conflict(
                "“east.wall” changed since it was opened, so nothing was written over it."));
    assertThat(root.resolve("east.wall")).hasContent("wall Other {\n}");
  }

  @Test
  void aFileThatWentOrCameMeanwhileIsAConflictToo() throws IOException {
    Optional<String> edited = Optional.of(version("east.wall"));
    Files.delete(root.resolve("east.wall"));
    assertThat(folder.save("east.wall", "mine", edited)).isInstanceOf(Folder.Conflict.class);
    assertThat(root.resolve("east.wall")).doesNotExist();
    assertThat(folder.save("north/tower.wall", "mine", Optional.empty()))
        .isInstanceOf(Folder.Conflict.class);
    assertThat(root.resolve("north/tower.wall")).hasContent("wall East {\n}");
  }

  @Test
  void aNewWallIsMadeInAFolderThatExists() throws IOException {
    assertThat(folder.save("north/new.wall", WALL, Optional.empty()))
        .isInstanceOf(Folder.Saved.class);
    assertThat(root.resolve("north/new.wall")).hasContent("wall East {\n}");
    assertThat(folder.save("nowhere/new.wall", WALL, Optional.empty()))
        .isInstanceOf(Folder.Refused.class);
  }

  @Test
  void nothingIsLeftBesideTheFile() throws IOException {
    folder.save("east.wall", "wall West {\n}\n", Optional.of(version("east.wall")));
    try (Stream<Path> all = Files.list(root)) {
      assertThat(all.map(path -> path.getFileName().toString()))
          .containsExactlyInAnyOrder("east.wall", "north", "notes.txt", "mullwright.properties");
    }
  }

  @Test
  @DisabledOnOs(value = OS.WINDOWS, disabledReason = "files have no POSIX permissions")
  void whoMayReadTheFileMayStill() throws IOException {
    Path file = root.resolve("east.wall");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw-r--"));
    folder.save("east.wall", "wall West {\n}\n", Optional.of(version("east.wall")));
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
        .isEqualTo("rw-rw-r--");
  }

  @Test
  void aByteOrderMarkStays() throws IOException {
    byte[] marked = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF, 'a'};
    Files.write(root.resolve("east.wall"), marked);
    assertThat(folder.read("east.wall").orElseThrow().text()).isEqualTo("a");
    folder.save("east.wall", "b", Optional.of(version("east.wall")));
    assertThat(Files.readAllBytes(root.resolve("east.wall")))
        .containsExactly(0xEF, 0xBB, 0xBF, 'b');
  }

  @Test
  void bytesThatAreNoTextAreSaid() throws IOException {
    Files.write(root.resolve("east.wall"), new byte[] {'a', (byte) 0xFF});
    assertThat(folder.read("east.wall").orElseThrow().damaged()).isTrue();
  }

  /** A version that is not the text's would let a later save go over what nobody saw. */
  @Test
  void aTextAndItsVersionAreOfOneMoment() throws Exception {
    Path file = root.resolve("east.wall");
    Map<String, String> versions = new HashMap<>();
    for (String text : List.of("one", "other")) {
      Files.writeString(file, text);
      versions.put(text, version("east.wall"));
    }
    AtomicBoolean over = new AtomicBoolean();
    Thread writer = new Thread(() -> alternate(file, over));
    writer.start();
    try {
      for (int i = 0; i < 5000; i++) {
        Folder.Content read = folder.read("east.wall").orElseThrow();
        assertThat(read.version()).isEqualTo(versions.get(read.text()));
      }
    } finally {
      over.set(true);
      writer.join();
    }
  }

  private void alternate(Path file, AtomicBoolean over) {
    try {
      Path whole = disk.resolve("whole");
      for (int i = 0; !over.get(); i++) {
        Files.writeString(whole, i % 2 == 0 ? "one" : "other");
        Files.move(whole, file, StandardCopyOption.ATOMIC_MOVE);
      }
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  @Test
  void whatIsListedCanBeOpened() throws IOException {
    for (String name : List.of(".hidden.wall", "._east.wall")) {
      Files.writeString(root.resolve(name), WALL);
    }
    assertThat(folder.list())
        .extracting(Folder.Entry::path)
        .containsExactly("east.wall", "north/tower.wall", "mullwright.properties");
  }

  @Test
  void aFilePutInThePlaceOfOneAsOldAndAsLongIsAnother() throws IOException {
    Path file = root.resolve("east.wall");
    FileTime then = Files.getLastModifiedTime(file);
    Path other = Files.writeString(disk.resolve("other.wall"), WALL.replace("East", "West"));
    Files.setLastModifiedTime(other, then);
    List<Folder.Entry> before = folder.list();
    Files.move(other, file, StandardCopyOption.ATOMIC_MOVE);
    assertThat(folder.list()).isNotEqualTo(before);
  }

  @Test
  @DisabledOnOs(value = OS.WINDOWS, disabledReason = "files have no POSIX permissions")
  void aFileThatIsWriteProtectedStaysAsItIs() throws IOException {
    Path file = root.resolve("east.wall");
    Optional<String> edited = Optional.of(version("east.wall"));
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("r--r--r--"));
    assertThat(folder.save("east.wall", "mine", edited))
        .isEqualTo(
            new Folder.Refused(
                "“east.wall” is write-protected, so nothing was written: allow writing to it"
                    + " first."));
    assertThat(file).hasContent("wall East {\n}");
  }

  /** As after an answer that got lost: the page knows the version before it. */
  @Test
  void whatIsOnTheDiskAlreadyIsSaved() throws IOException {
    Optional<String> edited = Optional.of(version("east.wall"));
    Folder.Outcome saved = folder.save("east.wall", "mine", edited);
    assertThat(folder.save("east.wall", "mine", edited)).isEqualTo(saved);
  }

  @ParameterizedTest
  @CsvSource({
    "a:b.wall, “:”",
    "a\\b.wall, “\\”",
    ".hidden.wall, dot",
    "north/.wall, dot",
    "north//x.wall, dot",
    "nowhere/x.wall, there is no such folder",
    "east.wall/x.wall, there is no such folder",
    "notes.txt, Only wall files"
  })
  void whyANameCannotBeIsSaid(String path, String why) throws IOException {
    assertThat(folder.save(path, WALL, Optional.empty()))
        .isInstanceOfSatisfying(
            Folder.Refused.class, refused -> assertThat(refused.sentence()).contains(path, why));
  }

  @Test
  void thatTheWholeFolderIsGoneIsSaid() throws IOException {
    Files.move(root, disk.resolve("elsewhere"));
    assertThat(folder.read("east.wall")).isEmpty();
    assertThat(folder.list()).isEmpty();
    assertThat(folder.save("east.wall", "mine", Optional.empty()))
        .isInstanceOfSatisfying(
            Folder.Refused.class,
            refused -> assertThat(refused.sentence()).contains("there is no such folder"));
  }

  @Test
  void aNameTooLongForTheDiskIsRefusedWithTheReason() throws IOException {
    assertThat(folder.save("x".repeat(300) + ".wall", WALL, Optional.empty()))
        .isInstanceOfSatisfying(
            Folder.Refused.class,
            refused -> assertThat(refused.sentence()).containsIgnoringCase("too long"));
  }
}
