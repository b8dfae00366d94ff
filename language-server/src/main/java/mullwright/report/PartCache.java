package mullwright.report;

import com.google.gson.JsonParseException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import mullwright.check.Severities;
import mullwright.workspace.UsedTexts;

/**
 * Keeps what was found in files, in a folder, by the content that led to it: this program, the
 * file's text, the texts of all it uses and the project's settings. An entry that cannot be read is
 * as good as none; one that cannot be written is done without.
 */
public final class PartCache {
  private static final String FORM = "part-1";

  private final Path folder;
  private final String program;
  private final mullwright.workspace.Files files;
  private final Map<String, mullwright.workspace.Files.Read> known = new ConcurrentHashMap<>();
  private final Map<String, String> hashes = new ConcurrentHashMap<>();

  /**
   * A cache in that folder, which is made when first needed.
   *
   * @param program names this program so that another build has another name
   */
  public PartCache(Path folder, String program, mullwright.workspace.Files files) {
    this.folder = folder;
    this.program = program;
    this.files = files;
  }

  /** The key of a file as it stands. */
  public String key(String path) {
    StringBuilder all = new StringBuilder(FORM + "\n" + program + "\n" + path + "\n");
    Map<String, mullwright.workspace.Files.Read> texts =
        new HashMap<>(UsedTexts.of(path, this::read));
    texts.put(Severities.FILE, read(Severities.FILE));
    texts.keySet().stream()
        .sorted()
        .forEach(name -> all.append(name).append('\n').append(hash(name)).append('\n'));
    return Fingerprint.hash(all.toString());
  }

  private mullwright.workspace.Files.Read read(String path) {
    return known.computeIfAbsent(path, files::read);
  }

  private String hash(String path) {
    return hashes.computeIfAbsent(path, any -> Fingerprint.hash(read(path).toString()));
  }

  /** What is kept under a key. */
  public Optional<CheckPart> get(String key) {
    try {
      Path file = file(key);
      return Files.exists(file)
          ? Optional.of(CheckPartJson.read(Files.readString(file)))
          : Optional.empty();
    } catch (IOException
        | JsonParseException
        | IllegalStateException
        | IllegalArgumentException damaged) {
      return Optional.empty();
    }
  }

  /**
   * Keeps a part, unless a rule broke while it was made.
   *
   * @return false if it cannot be written
   */
  public boolean put(String key, CheckPart part) {
    if (!part.failures().isEmpty()) {
      return true;
    }
    try {
      Path file = file(key);
      Files.createDirectories(file.getParent());
      Path beside = Files.createTempFile(file.getParent(), "part", ".tmp");
      Files.write(beside, CheckPartJson.write(part).getBytes(StandardCharsets.UTF_8));
      try {
        Files.move(
            beside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
      } catch (AtomicMoveNotSupportedException apart) {
        Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING);
      }
      return true;
    } catch (IOException full) {
      return false;
    }
  }

  private Path file(String key) {
    return folder.resolve(key.substring(0, 2)).resolve(key.substring(2) + ".json");
  }
}
