package mullwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
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
  @DisabledOnOs(OS.WINDOWS)
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
  @DisabledOnOs(OS.WINDOWS)
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
}
