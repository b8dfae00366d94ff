package mullwright.server.kept;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.List;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DiagnosticCodeDescription;
import org.eclipse.lsp4j.DiagnosticRelatedInformation;
import org.eclipse.lsp4j.DiagnosticSeverity;
import org.eclipse.lsp4j.DiagnosticTag;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Findings come back as they were kept, or not at all. */
class KeptFolderTest {
  @TempDir Path place;

  private KeptFolder folder;

  @BeforeEach
  void make() {
    folder = new KeptFolder(place.resolve("findings"), "a build");
  }

  private static KeptFindings.Question about(String address) {
    return new KeptFindings.Question(address, "/walls", "utf-16 related ");
  }

  private static KeptFindings findings(String address, String text) {
    Range range = new Range(new Position(1, 2), new Position(3, 40_000));
    Diagnostic plain = new Diagnostic(range, "Größe 🙂", DiagnosticSeverity.Error, "mullwright");
    plain.setCode("duplicate");
    Diagnostic full = new Diagnostic(range, "", DiagnosticSeverity.Information, "mullwright");
    full.setCode("unused");
    full.setTags(List.of(DiagnosticTag.Unnecessary));
    full.setCodeDescription(new DiagnosticCodeDescription("file:///pages/unused.md"));
    full.setRelatedInformation(
        List.of(new DiagnosticRelatedInformation(new Location(address, range), "the first")));
    JsonObject data = new JsonObject();
    data.addProperty("mends", 2);
    full.setData(data);
    Diagnostic related = new Diagnostic(range, "x", DiagnosticSeverity.Warning, "mullwright");
    related.setCode("other");
    related.setRelatedInformation(List.of());
    return new KeptFindings(
        about(address),
        List.of(
            new KeptFindings.Source(
                "east.wall", "", new mullwright.workspace.Files.Read.Text(text, false)),
            new KeptFindings.Source(
                "bad.wall", "x:y", new mullwright.workspace.Files.Read.Text("\uFFFD", true)),
            new KeptFindings.Source(
                "gone.wall", "", new mullwright.workspace.Files.Read.Missing())),
        List.of(
            new KeptFindings.Published(address, List.of(plain, full, related)),
            new KeptFindings.Published("file:///other.wall", List.of())));
  }

  @Test
  void whatComesBackIsWhatWasKept() {
    KeptFindings kept = findings("file:///east.wall", "wall East {\r\n}\n");
    assertThat(folder.find(about("file:///east.wall"))).isEmpty();
    assertThat(folder.keep(kept)).isTrue();
    assertThat(folder.find(about("file:///east.wall"))).contains(kept);
    KeptFindings later = findings("file:///east.wall", "wall East {\n}\n");
    assertThat(folder.keep(later)).isTrue();
    assertThat(folder.find(about("file:///east.wall"))).contains(later);
    assertThat(place.resolve("findings")).isDirectoryContaining(it -> true);
  }

  @Test
  void anotherQuestionOrProgramFindsNothing() {
    folder.keep(findings("file:///east.wall", ""));
    assertThat(folder.find(new KeptFindings.Question("file:///east.wall", "/walls", "utf-16 ")))
        .isEmpty();
    assertThat(folder.find(new KeptFindings.Question("file:///east.wall", "/", "utf-16 related ")))
        .isEmpty();
    assertThat(new KeptFolder(folder.folder(), "b build").find(about("file:///east.wall")))
        .isEmpty();
  }

  @Test
  void twoQuestionsOfOneNameAreToldApart() throws IOException {
    folder.keep(findings("file:///east.wall", ""));
    Files.copy(folder.file(about("file:///east.wall")), folder.file(about("file:///west.wall")));
    assertThat(folder.find(about("file:///west.wall"))).isEmpty();
  }

  @Test
  void halfAFileAndADamagedOneAreNone() throws IOException {
    folder.keep(findings("file:///east.wall", "wall"));
    Path file = folder.file(about("file:///east.wall"));
    byte[] whole = Files.readAllBytes(file);
    for (int length = 0; length < whole.length; length++) {
      Files.write(file, Arrays.copyOf(whole, length));
      assertThat(folder.find(about("file:///east.wall"))).as("%d bytes", length).isEmpty();
    }
    for (int at = 0; at < whole.length; at++) {
      byte[] damaged = whole.clone();
      damaged[at] ^= (byte) (1 << at % Byte.SIZE);
      Files.write(file, damaged);
      assertThat(folder.find(about("file:///east.wall"))).as("byte %d", at).isEmpty();
    }
    Files.write(file, Arrays.copyOf(whole, whole.length + 1));
    assertThat(folder.find(about("file:///east.wall"))).isEmpty();
    Files.write(file, whole);
    assertThat(folder.find(about("file:///east.wall"))).isPresent();
  }

  @Test
  void aTextThatNoFileCanHoldIsNotKept() {
    // UTF-8 has no half of a surrogate pair; written as "?" it would pass for another text
    assertThat(folder.keep(findings("file:///east.wall", "wall \uD83D {"))).isFalse();
    assertThat(folder.find(about("file:///east.wall"))).isEmpty();
  }

  @Test
  void whatWouldBeTooLargeIsNotKeptAndTakesTheOlderAway() {
    String most = "x".repeat(KeptFolder.MOST / 2);
    assertThat(folder.keep(findings("file:///east.wall", most))).isTrue();
    assertThat(folder.keep(findings("file:///east.wall", most + most))).isFalse();
    assertThat(folder.file(about("file:///east.wall"))).doesNotExist();
  }

  @Test
  void thoseKeptLongestAgoMakeRoomAndNothingElseGoes() throws IOException {
    folder.keep(findings("file:///0.wall", ""));
    Path strange = Files.writeString(folder.folder().resolve("somebody's"), "else's");
    for (int i = 0; i < KeptFolder.DOCUMENTS; i++) {
      Files.setLastModifiedTime(
          folder.file(about("file:///" + i + ".wall")), FileTime.fromMillis(1_000_000L * (i + 1)));
      if (i == KeptFolder.DOCUMENTS / 2) {
        // kept once more as it was: it is as new as any
        folder.keep(findings("file:///1.wall", ""));
      }
      folder.keep(findings("file:///" + (i + 1) + ".wall", ""));
    }
    assertThat(folder.find(about("file:///0.wall"))).isEmpty();
    assertThat(folder.find(about("file:///1.wall"))).isPresent();
    folder.keep(findings("file:///one-more.wall", ""));
    assertThat(folder.find(about("file:///1.wall"))).isPresent();
    assertThat(folder.find(about("file:///2.wall"))).isEmpty();
    assertThat(folder.find(about("file:///3.wall"))).isPresent();
    assertThat(strange).exists();
  }

  @Test
  @EnabledOnOs({OS.LINUX, OS.MAC})
  void onlyTheUserMayReadThem() throws IOException {
    folder.keep(findings("file:///east.wall", ""));
    folder.keep(findings("file:///east.wall", "new"));
    assertThat(
            PosixFilePermissions.toString(
                Files.getPosixFilePermissions(folder.file(about("file:///east.wall")))))
        .isEqualTo("rw-------");
  }

  @Test
  void aFolderThatIsAFileKeepsNothing() throws IOException {
    Path file = Files.writeString(place.resolve("file"), "");
    KeptFolder none = new KeptFolder(file.resolve("findings"), "a build");
    assertThat(none.keep(findings("file:///east.wall", ""))).isFalse();
    assertThat(none.find(about("file:///east.wall"))).isEmpty();
  }
}
