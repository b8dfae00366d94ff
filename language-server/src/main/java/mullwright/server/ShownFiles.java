package mullwright.server;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/**
 * Files a server writes for an editor that cannot take its texts in another way: one temporary
 * folder for all of them, made with the first and gone when the server ends.
 */
public final class ShownFiles {
  /** What was made, each before what lies in it. */
  private final Set<Path> made = new LinkedHashSet<>();

  private final Map<String, Path> folders = new HashMap<>();
  private Path folder;
  private boolean ended;

  /**
   * Writes a text, over the one that went by that name before.
   *
   * @param about address of the document it is about; those of two documents may have one name
   * @param name the file's own name
   * @return the file
   */
  public synchronized Path write(String about, String name, String text) throws IOException {
    if (ended) {
      throw new IOException("the server has ended");
    }
    if (folder == null) {
      folder = noted(Files.createTempDirectory("mullwright-"));
    }
    Path own = folders.get(about);
    if (own == null) {
      String number = Integer.toString(folders.size() + 1);
      own = noted(Files.createDirectory(folder.resolve(number)));
      folders.put(about, own);
    }
    Path file = own.resolve(name);
    Files.writeString(file, text);
    return noted(file);
  }

  /** For a server that is stopped from outside the machine takes its files away. */
  private Path noted(Path path) {
    if (made.add(path)) {
      path.toFile().deleteOnExit();
    }
    return path;
  }

  /** Takes everything away; nothing is written from now on. */
  synchronized void end() throws IOException {
    ended = true;
    Path[] each = made.toArray(new Path[0]);
    for (int i = each.length - 1; i >= 0; i--) {
      Files.deleteIfExists(each[i]);
    }
    made.clear();
  }
}
