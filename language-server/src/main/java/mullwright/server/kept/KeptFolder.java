package mullwright.server.kept;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import mullwright.workspace.WholeFile;

/**
 * Findings kept in a folder of the user's, one file a document and kind of client, each readable by
 * the user alone.
 *
 * @param folder made when the first are kept
 * @param program names the build of this program: what another one found counts for nothing
 */
public record KeptFolder(Path folder, String program) {
  /** Documents whose findings are kept; those kept longest ago make room. */
  static final int DOCUMENTS = 64;

  /** No file is larger, in bytes; findings of which it would be are not kept. */
  static final int MOST = 1 << 20;

  private static final String PREFIX = "findings-";

  // 64-bit FNV-1a; of two questions with one name the later has the file
  private static final long BASIS = 0xcbf29ce484222325L;
  private static final long PRIME = 0x100000001b3L;

  /** What was found when that was asked last; empty if nothing is kept of it. */
  public Optional<KeptFindings> find(KeptFindings.Question question) {
    byte[] bytes = bytes(file(question));
    return bytes.length == 0
        ? Optional.empty()
        : KeptForm.read(bytes, program).filter(kept -> kept.question().equals(question));
  }

  /** Keeps findings in the place of earlier ones of the document; false if that cannot be done. */
  public boolean keep(KeptFindings findings) {
    Path file = file(findings.question());
    try {
      byte[] now = KeptForm.write(findings, program);
      if (now.length > MOST) {
        Files.deleteIfExists(file);
        return false;
      }
      if (Arrays.equals(bytes(file), now)) {
        Files.setLastModifiedTime(file, FileTime.fromMillis(System.currentTimeMillis()));
        return true;
      }
      Files.createDirectories(folder);
      WholeFile.putPrivately(file, whole -> Files.write(whole, now));
      forget();
      return true;
    } catch (IOException | DirectoryIteratorException unwritable) {
      return false;
    }
  }

  /** The file for a question. */
  Path file(KeptFindings.Question question) {
    long hash = BASIS;
    for (String word : List.of(question.address(), question.folder(), question.shape())) {
      for (int i = 0; i < word.length(); i++) {
        hash = (hash ^ word.charAt(i)) * PRIME;
      }
    }
    return folder.resolve(PREFIX + Long.toHexString(hash));
  }

  private static byte[] bytes(Path file) {
    try {
      return Files.isRegularFile(file) && Files.size(file) <= MOST
          ? Files.readAllBytes(file)
          : new byte[0];
    } catch (IOException gone) {
      return new byte[0];
    }
  }

  /** Lets go of those not kept for longest, and of nothing else that lies there. */
  private void forget() throws IOException {
    record Aged(Path file, FileTime time) {}

    List<Aged> all = new ArrayList<>();
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, PREFIX + "*")) {
      for (Path file : files) {
        all.add(new Aged(file, Files.getLastModifiedTime(file)));
      }
    }
    all.sort(Comparator.comparing(Aged::time).reversed());
    for (Aged old : all.subList(Math.min(DOCUMENTS, all.size()), all.size())) {
      Files.deleteIfExists(old.file);
    }
  }
}
