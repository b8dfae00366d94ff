package mullwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.stream.Stream;
import mullwright.report.ReleaseRecord;

/** Says of files which of them a release record knows, byte for byte. */
final class HandedOut {
  private static final int MOST = 10_000;
  private static final int DEPTH = 16;

  private final Shell shell;
  private final ReleaseRecord record;
  private final Map<String, String> words = new HashMap<>();

  HandedOut(Shell shell, ReleaseRecord record) {
    this.shell = shell;
    this.record = record;
    know(record.files(), "the file “", "” handed out with it");
    know(record.results(), "“", "”");
    know(record.texts(), "the text “", "”");
  }

  private void know(SortedMap<String, String> hashes, String before, String after) {
    hashes.forEach(
        (name, hash) -> words.put(hash, before + name.replace(Handouts.BESIDE, "") + after));
  }

  /**
   * Says a line on each.
   *
   * @param given files, and folders of which all files are meant
   * @param own the record's own file, which is passed over in a folder
   * @return true if all are known
   */
  boolean tell(List<String> given, Path own) throws CannotException {
    boolean all = true;
    for (Path file : files(given, own)) {
      Optional<String> known = known(file);
      all &= known.isPresent();
      shell
          .out()
          .println(
              Shown.path(shell.directory(), file)
                  + ": "
                  + known
                      .map(it -> "of " + record.as() + ", " + it)
                      .orElse(
                          "NOT of "
                              + record.as()
                              + ": changed, of another state of the text, or made with other"
                              + " options"));
    }
    return all;
  }

  private Optional<String> known(Path file) throws CannotException {
    try {
      byte[] bytes = Files.readAllBytes(file);
      String text = ReleaseRecord.hash(new String(bytes, StandardCharsets.UTF_8));
      return Optional.ofNullable(words.get(ReleaseRecord.hash(bytes)))
          .or(
              () ->
                  record.texts().containsValue(text)
                      ? Optional.of(words.get(text))
                      : Optional.empty());
    } catch (IOException failed) {
      throw CannotException.unreadable(String.valueOf(file), failed);
    }
  }

  private Set<Path> files(List<String> given, Path own) throws CannotException {
    Set<Path> files = new LinkedHashSet<>();
    for (String one : given) {
      Path path = WallFinder.path(shell.directory(), one);
      if (Files.isRegularFile(path)) {
        files.add(path);
      } else if (Files.isDirectory(path)) {
        files.addAll(below(path, own));
      } else {
        throw new CannotException("There is no file or folder “" + one + "”.");
      }
    }
    if (files.isEmpty()) {
      throw new CannotException("No file lies there, so there is nothing to compare.");
    }
    return files;
  }

  private static List<Path> below(Path folder, Path own) throws CannotException {
    try (Stream<Path> inside = Files.walk(folder, DEPTH)) {
      List<Path> found =
          inside
              .filter(Files::isRegularFile)
              .filter(file -> !file.equals(own))
              .limit(MOST + 1L)
              .sorted()
              .toList();
      if (found.size() > MOST) {
        throw new CannotException(
            "More than " + MOST + " files lie below “" + folder + "”; name fewer at a time.");
      }
      return found;
    } catch (IOException failed) {
      throw new CannotException("“" + folder + "” cannot be read: " + failed.getMessage() + ".");
    }
  }
}
