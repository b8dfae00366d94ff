package mullwright.server;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import mullwright.check.Rules;
import mullwright.workspace.DiskFiles;
import mullwright.workspace.MemoryFiles;
import mullwright.workspace.Workspace;

/** One workspace of the session with the client's spelling of its addresses. */
final class Root {
  private final Path folder;
  private final Workspace workspace;
  private final Rules rules;
  private final Map<String, String> spelled = new ConcurrentHashMap<>();
  private final Map<String, Integer> versions = new ConcurrentHashMap<>();

  private SettingsFile settings = SettingsFile.NONE;

  private Root(Path folder, Workspace workspace, Rules rules) {
    this.folder = folder;
    this.workspace = workspace;
    this.rules = rules;
  }

  /** A folder of the disk. */
  static Root of(Path folder, Rules rules) {
    return new Root(folder, new Workspace(new DiskFiles(folder), rules), rules);
  }

  /** A text that has no folder, such as a new buffer nobody saved yet. */
  static Root ofBuffer(Rules rules) {
    return new Root(null, new Workspace(new MemoryFiles(Map.of()), rules), rules);
  }

  Workspace workspace() {
    return workspace;
  }

  /** The folder, if it is one of the disk. */
  Optional<Path> folder() {
    return Optional.ofNullable(folder);
  }

  /** What the project's own file of settings says; read once for each content of it. */
  SettingsFile settings() {
    String text = workspace.snapshot().projectSettings();
    if (!text.equals(settings.text())) {
      settings = SettingsFile.read(text, rules);
    }
    return settings;
  }

  /** Remembers how the client spells the address of a path. */
  void spell(String path, String address) {
    spelled.put(path, address);
  }

  /** Remembers which version of a path the client has open; null once it has it no longer. */
  void number(String path, Integer version) {
    versions.compute(path, (known, was) -> version);
  }

  String address(String path) {
    String known = spelled.get(path);
    if (known != null) {
      return known;
    }
    return folder == null ? "untitled:" + path : Addresses.of(folder.resolve(path));
  }

  View view(PositionEncoding encoding) {
    return new View(
        workspace.snapshot(), this::address, Map.copyOf(versions)::get, this::path, encoding);
  }

  private Optional<String> path(String address) {
    return folder == null
        ? Optional.empty()
        : Addresses.path(address).flatMap(file -> new DiskFiles(folder).relative(file));
  }
}
