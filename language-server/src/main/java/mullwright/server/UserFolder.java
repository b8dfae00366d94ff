package mullwright.server;

import java.nio.file.Path;
import java.util.Locale;

/** The user's own folder for what can be made again. */
public final class UserFolder {
  private static final String FOLDER = "mullwright.cache";

  private UserFolder() {}

  /** Where it lies; nothing is made. */
  public static Path path() {
    String told = System.getProperty(FOLDER);
    if (told != null) {
      return Path.of(told);
    }
    String shared = System.getenv("XDG_CACHE_HOME");
    if (shared != null && Path.of(shared).isAbsolute()) {
      return Path.of(shared, "mullwright");
    }
    String local = System.getenv("LOCALAPPDATA");
    boolean windows =
        System.getProperty("os.name", "").toLowerCase(Locale.ROOT).startsWith("windows");
    return windows && local != null
        ? Path.of(local, "mullwright", "cache")
        : Path.of(System.getProperty("user.home", ""), ".cache", "mullwright");
  }
}
