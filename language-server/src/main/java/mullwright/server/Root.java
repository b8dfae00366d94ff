package mullwright.server;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import mullwright.check.Rules;
import mullwright.workspace.DiskFiles;
import mullwright.workspace.Files;
import mullwright.workspace.NoFiles;
import mullwright.workspace.Workspace;

/** One workspace of the session with the client's spelling of its addresses. */
final class Root {
  private final Path folder;
  private final Files files;
  private final Supplier<Rules> rules;
  private final Map<String, String> spelled = new ConcurrentHashMap<>();
  private final Map<String, Integer> versions = new ConcurrentHashMap<>();

  private Workspace workspace;
  private SettingsFile settings = SettingsFile.NONE;

  private Root(Path folder, Files files, Supplier<Rules> rules) {
    this.folder = folder;
    this.files = files;
    this.rules = rules;
  }

  /** A folder of the disk. */
  static Root of(Path folder, Supplier<Rules> rules) {
    return new Root(folder, new DiskFiles(folder), rules);
  }

  /** A text that has no folder, such as a new buffer nobody saved yet. */
  static Root ofBuffer(Supplier<Rules> rules) {
    return new Root(null, new NoFiles(), rules);
  }

  /** Its texts; made when first asked for, since to check them takes the rules. */
  Workspace workspace() {
    if (workspace == null) {
      workspace = new Workspace(files, rules.get());
    }
    return workspace;
  }

  /** The folder, if it is one of the disk. */
  Optional<Path> folder() {
    return Optional.ofNullable(folder);
  }

  /** What the project's own file of settings says; read once for each content of it. */
  SettingsFile settings() {
    String text = workspace().snapshot().projectSettings();
    if (!text.equals(settings.text())) {
      settings = SettingsFile.read(text, rules.get());
    }
    return settings;
  }

  /** What a path holds now: its buffer if one is open, else what is on disk. */
  Files.Read look(String path) {
    return workspace == null ? files.read(path) : workspace.snapshot().look(path);
  }

  /** How the client spells the address of a path; "" if it has not told. */
  String spelled(String path) {
    return spelled.getOrDefault(path, "");
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
        workspace().snapshot(), this::address, Map.copyOf(versions)::get, this::path, encoding);
  }

  private Optional<String> path(String address) {
    return folder == null
        ? Optional.empty()
        : Addresses.path(address).flatMap(file -> new DiskFiles(folder).relative(file));
  }
}
