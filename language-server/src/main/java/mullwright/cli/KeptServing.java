package mullwright.cli;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;
import mullwright.server.UserFolder;
import mullwright.server.kept.KeptFolder;

/** Where a server keeps what it found for servers to come. An editor waits for it: it is quick. */
final class KeptServing {
  /** Switches it off. */
  static final String OFF = "--no-cache";

  private KeptServing() {}

  /** The folder; empty where none can be named, or this program runs from loose classes. */
  static Optional<KeptFolder> folder() {
    Path own = UserFolder.path();
    String program = program();
    return program.isEmpty() || !own.isAbsolute()
        ? Optional.empty()
        : Optional.of(new KeptFolder(own.resolve("findings"), program));
  }

  /**
   * Names this build: to hash the jar, as {@link Program#identity} does, would take longer than to
   * check a wall.
   */
  private static String program() {
    StringBuilder name = new StringBuilder(Program.version());
    for (String jar : System.getProperty("java.class.path", "").split(File.pathSeparator)) {
      try {
        BasicFileAttributes is = Files.readAttributes(Path.of(jar), BasicFileAttributes.class);
        if (!is.isRegularFile()) {
          return "";
        }
        name.append('\n').append(jar).append(' ').append(is.size()).append(' ');
        name.append(is.lastModifiedTime().toMillis());
      } catch (IOException gone) {
        return "";
      }
    }
    return name.toString();
  }
}
