package mullwright.server;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.check.Rules;
import mullwright.workspace.DiskFiles;

/**
 * Which workspace an address belongs to.
 *
 * <p>That of the innermost folder the client has open. A file outside of them all, or a client
 * without folders, gets a workspace of its own: the nearest folder above it that holds {@code
 * .git}, else the folder it lies in. An address that is no file of the disk stands by itself.
 */
final class Roots {
  private static final String BUFFER = "buffer.wall";

  private final Map<Path, Root> folders = new LinkedHashMap<>();
  private final Map<Path, Root> strays = new LinkedHashMap<>();
  private final Map<String, Root> buffers = new LinkedHashMap<>();

  private final Rules rules;

  Roots(Rules rules) {
    this.rules = rules;
  }

  /** A file of a workspace. */
  record Held(Root root, String path) {}

  void add(String folder) {
    Addresses.path(folder)
        .ifPresent(path -> folders.computeIfAbsent(path, root -> Root.of(root, rules)));
  }

  void remove(String folder) {
    Addresses.path(folder).ifPresent(folders::remove);
  }

  /** All workspaces that anything was asked of. */
  Collection<Root> all() {
    List<Root> all = new ArrayList<>(folders.values());
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
    return innermost(file.get(), folders)
        .or(() -> innermost(file.get(), strays))
        .map(root -> held(root, file.get()));
  }

  /** The same; the workspace of a single file is made if there is none yet. */
  Held hold(String address) {
    return find(address)
        .orElseGet(
            () ->
                Addresses.path(address)
                    .filter(path -> path.getFileName() != null)
                    .map(
                        file ->
                            held(
                                strays.computeIfAbsent(home(file), root -> Root.of(root, rules)),
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

  private static Optional<Root> innermost(Path file, Map<Path, Root> folders) {
    return folders.keySet().stream()
        .filter(folder -> file.startsWith(folder) && !file.equals(folder))
        .max(Comparator.comparingInt(Path::getNameCount))
        .map(folders::get);
  }

  private static Path home(Path file) {
    Path folder = file.getParent();
    for (Path above = folder; above != null; above = above.getParent()) {
      if (Files.exists(above.resolve(".git"))) {
        return above;
      }
    }
    return folder;
  }
}
