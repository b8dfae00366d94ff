package mullwright.server;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntBinaryOperator;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import mullwright.check.Rules;
import mullwright.workspace.DiskFiles;

/**
 * Which workspace an address belongs to.
 *
 * <p>That of the outermost folder the client has open: of two folders, one inside the other, the
 * inner has nothing of its own, so that its files use those above as if it were not open. A file
 * outside of them all, or a client without folders, gets a workspace of its own: the nearest folder
 * above it that holds {@code .mullwright} or {@code .git}, else the folder it lies in or, if it
 * uses files of folders above, the lowest from which all of them can be reached. An address that is
 * no file of the disk stands by itself.
 */
final class Roots {
  private static final List<String> ROOT_MARKS = List.of(".mullwright", ".git");
  private static final int STEPS_UP = 4;
  private static final String BUFFER = "buffer.wall";

  /** Made for the first file that lies outside of all folders. */
  private static final class Patterns {
    static final Pattern USE = Pattern.compile("(?m)^use\\s+\"([^\"\\r\\n]*)\"");
  }

  private final Map<Path, Root> folders = new LinkedHashMap<>();
  private final Map<Path, Root> strays = new LinkedHashMap<>();
  private final Map<String, Root> buffers = new LinkedHashMap<>();

  private final Supplier<Rules> rules;

  /**
   * @param rules asked for by the first workspace that reads a text
   */
  Roots(Supplier<Rules> rules) {
    this.rules = rules;
  }

  /** A file of a workspace. */
  record Held(Root root, String path) {}

  void add(String folder) {
    Addresses.path(folder)
        .ifPresent(path -> folders.computeIfAbsent(path, root -> Root.of(root, rules)));
    // one that is inside another now is not looked at; it begins anew once it is outermost again
    folders.replaceAll((path, root) -> isOutermost(path) ? root : Root.of(path, rules));
  }

  private boolean isOutermost(Path folder) {
    for (Path other : folders.keySet()) {
      if (folder.startsWith(other) && !folder.equals(other)) {
        return false;
      }
    }
    return true;
  }

  void remove(String folder) {
    Addresses.path(folder).ifPresent(folders::remove);
  }

  /** Lets go of the workspaces of single files that none of these is. */
  void keep(Collection<Root> used) {
    strays.values().removeIf(root -> !used.contains(root));
  }

  /** All workspaces that anything was asked of. */
  Collection<Root> all() {
    List<Root> all = new ArrayList<>();
    folders.forEach(
        (path, root) -> {
          if (isOutermost(path)) {
            all.add(root);
          }
        });
    all.addAll(strays.values());
    all.addAll(buffers.values());
    return all;
  }

  /** The workspace and path of an address, if a workspace is open that it belongs to. */
  Optional<Held> find(String address) {
    Optional<Path> file = Addresses.path(address).filter(path -> path.getFileName() != null);
    if (file.isEmpty()) {
      return Optional.ofNullable(buffers.get(address)).map(root -> new Held(root, BUFFER));
    }
    return around(file.get(), folders, Math::min)
        .or(() -> around(file.get(), strays, Math::max))
        .map(root -> held(root, file.get()));
  }

  /**
   * The same; the workspace of a single file is made if there is none yet.
   *
   * @param text of the file
   */
  Held hold(String address, String text) {
    return find(address)
        .orElseGet(
            () ->
                Addresses.path(address)
                    .filter(path -> path.getFileName() != null)
                    .map(
                        file ->
                            held(
                                strays.computeIfAbsent(
                                    home(file, text), root -> Root.of(root, rules)),
                                file))
                    .orElseGet(
                        () ->
                            new Held(
                                buffers.computeIfAbsent(address, unknown -> Root.ofBuffer(rules)),
                                BUFFER)));
  }

  private static Held held(Root root, Path file) {
    Path folder = root.folder().orElseThrow();
    return new Held(root, new DiskFiles(folder).relative(file).orElseThrow());
  }

  /** Lets go of a buffer that no disk holds. */
  void release(String address) {
    buffers.remove(address);
  }

  /**
   * The workspace of a folder above a file.
   *
   * @param better the depth that counts where there are two
   */
  private static Optional<Root> around(
      Path file, Map<Path, Root> folders, IntBinaryOperator better) {
    Path found = null;
    for (Path folder : folders.keySet()) {
      int depth = folder.getNameCount();
      if (file.startsWith(folder)
          && !file.equals(folder)
          && (found == null || better.applyAsInt(depth, found.getNameCount()) == depth)) {
        found = folder;
      }
    }
    return Optional.ofNullable(found).map(folders::get);
  }

  private static Path home(Path file, String text) {
    Path folder = file.getParent();
    for (Path above = folder; above != null; above = above.getParent()) {
      for (String mark : ROOT_MARKS) {
        if (Files.exists(above.resolve(mark))) {
          return above;
        }
      }
    }
    for (int up = stepsUp(text); up > 0 && folder.getParent() != null; up--) {
      folder = folder.getParent();
    }
    return folder;
  }

  /** How many folders up the farthest {@code use} of a text leads, within reason. */
  private static int stepsUp(String text) {
    int most = 0;
    Matcher use = Patterns.USE.matcher(text);
    while (use.find()) {
      int steps = 0;
      int depth = 0;
      for (String name : use.group(1).split("/")) {
        depth += name.equals("..") ? 1 : name.equals(".") || name.isEmpty() ? 0 : -1;
        steps = Math.max(steps, depth);
      }
      most = Math.max(most, steps);
    }
    return Math.min(most, STEPS_UP);
  }
}
