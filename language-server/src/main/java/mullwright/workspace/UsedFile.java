package mullwright.workspace;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/** Resolves the path of a {@code use}: relative to the file it stands in, never above the root. */
public final class UsedFile {
  private UsedFile() {}

  /**
   * The path below the root.
   *
   * @param user the file the {@code use} stands in
   * @param written the path as written
   * @return empty if it is absolute or leads above the root
   */
  public static Optional<String> resolve(String user, String written) {
    if (written.startsWith("/") || written.contains(":")) {
      return Optional.empty();
    }
    Deque<String> folders = new ArrayDeque<>();
    int slash = user.lastIndexOf('/');
    String whole = (slash < 0 ? "" : user.substring(0, slash + 1)) + written.replace('\\', '/');
    for (String name : whole.split("/")) {
      if (name.equals("..")) {
        if (folders.isEmpty()) {
          return Optional.empty();
        }
        folders.removeLast();
      } else if (!name.isEmpty() && !name.equals(".")) {
        folders.addLast(name);
      }
    }
    return Optional.of(String.join("/", folders));
  }
}
