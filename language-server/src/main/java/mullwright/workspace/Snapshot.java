package mullwright.workspace;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import mullwright.check.Finding;
import mullwright.check.Severities;
import mullwright.check.Unused;
import mullwright.model.Origin;
import mullwright.model.Symbol;
import mullwright.syntax.ParsedFile;
import mullwright.syntax.TextRange;

/**
 * All texts at one moment and what follows from them.
 *
 * <p>Never changes: the same question has the same answer. What nobody asks for is not computed;
 * what was made from the very same texts in an earlier snapshot is taken over. Safe for any thread.
 */
public final class Snapshot {
  private final Files files;
  private final Map<String, ParsedFile> buffers;
  private final Disk disk;
  private final Memory memory;
  private final Map<String, Reading> readings = new ConcurrentHashMap<>();
  private final Map<String, Set<Origin>> namedElsewhere = new ConcurrentHashMap<>();

  Snapshot(Files files, Map<String, ParsedFile> buffers, Disk disk, Memory memory) {
    this.files = files;
    this.buffers = Map.copyOf(buffers);
    this.disk = disk;
    this.memory = memory;
  }

  Map<String, ParsedFile> buffers() {
    return buffers;
  }

  Disk disk() {
    return disk;
  }

  /** The same with other buffers; what it computes is not remembered for snapshots to come. */
  Snapshot with(Map<String, ParsedFile> others) {
    return new Snapshot(files, others, disk, memory.emptied());
  }

  /**
   * The same after an edit that nobody has made yet: files with other texts, or new ones. What it
   * computes is not remembered.
   *
   * @param texts by path
   */
  public Snapshot supposing(Map<String, String> texts) {
    Map<String, ParsedFile> supposed = new java.util.HashMap<>(buffers);
    texts.forEach((path, text) -> supposed.put(path, ParsedFile.parse(text)));
    return with(supposed);
  }

  /** The paths of the open buffers, in alphabetical order. */
  public Set<String> open() {
    return Collections.unmodifiableSet(new TreeSet<>(buffers.keySet()));
  }

  /** True if there is an open buffer of that path. */
  public boolean isOpen(String path) {
    return buffers.containsKey(path);
  }

  /** False if its text has no place among files yet. */
  public boolean placed() {
    return files.placed();
  }

  /** The tree of a file: of its buffer if one is open, else as it stands on disk. */
  public Optional<ParsedFile> file(String path) {
    ParsedFile buffer = buffers.get(path);
    return buffer != null ? Optional.of(buffer) : disk.get(path).file();
  }

  /** What a path holds: its buffer if one is open, else what is on disk, without parsing it. */
  public Files.Read look(String path) {
    ParsedFile buffer = buffers.get(path);
    return buffer != null ? new Files.Read.Text(buffer.text(), false) : files.read(path);
  }

  /** What a path on disk held when first looked at; kept from edit to edit. */
  Files.Read settled(String path) {
    return disk.get(path).read();
  }

  /**
   * All that the findings of a file hang on, by path: the file, what it uses, what those use, the
   * project's settings; what was looked for and is not there as well. Empty if there is no such
   * file.
   */
  public Map<String, Files.Read> standsOn(String path) {
    Map<String, Files.Read> held = new TreeMap<>();
    Optional<Reading> reading = reading(path);
    if (reading.isPresent()) {
      for (String file : reading.get().files()) {
        held.put(file, buffers.containsKey(file) ? look(file) : settled(file));
      }
      held.put(Severities.FILE, settled(Severities.FILE));
    }
    return Collections.unmodifiableMap(held);
  }

  /** The text of the project's own file of settings at the root, "" if there is none. */
  public String projectSettings() {
    return settled(Severities.FILE) instanceof Files.Read.Text text ? text.text() : "";
  }

  /** What came of reading a file that is not open. */
  Optional<Files.Read> read(String path) {
    return buffers.containsKey(path) ? Optional.empty() : Optional.of(disk.get(path).read());
  }

  /** What a file and the files it uses say, with what follows; empty if there is no such file. */
  public Optional<Reading> reading(String path) {
    Reading known = readings.get(path);
    if (known == null) {
      Reading last = memory.last(path);
      if (last != null && last.holdsIn(this)) {
        known = last;
      } else if (file(path).isPresent()) {
        known = Reading.of(path, this, last, memory);
      } else {
        return Optional.empty();
      }
      readings.put(path, known);
      memory.remember(path, known);
    }
    return Optional.of(known);
  }

  /** The wall files of the workspace, open or on disk, in alphabetical order. */
  public Collection<String> walls() {
    return withBuffers(files.walls());
  }

  /** The same as they were listed when first asked for, with the buffers: cheap to ask again. */
  Collection<String> listed() {
    return withBuffers(disk.walls());
  }

  private Collection<String> withBuffers(List<String> onDisk) {
    Set<String> paths = new TreeSet<>(onDisk);
    paths.addAll(buffers.keySet());
    return Collections.unmodifiableSet(paths);
  }

  /**
   * What is found in a file and in what it uses, in the order of the text: what its reading finds
   * but for parts that another file uses, which that reading cannot know of.
   */
  public List<Finding> findings(String path, Cancel cancel) {
    Optional<Reading> reading = reading(path);
    List<Finding> all = reading.map(it -> it.findings(cancel)).orElse(List.of());
    List<Symbol> parts = reading.map(Reading::unnamedParts).orElse(List.of());
    if (parts.isEmpty()) {
      return all;
    }
    Set<Origin> used = namedElsewhere.get(path);
    if (used == null) {
      used = new HashSet<>();
      for (Symbol part : NamedElsewhere.of(parts, path, this, cancel)) {
        used.add(part.definition());
      }
      namedElsewhere.put(path, used);
    }
    List<Finding> left = new ArrayList<>();
    for (Finding finding : all) {
      if (!finding.rule().equals(Unused.NAME) || !used.contains(finding.origin())) {
        left.add(finding);
      }
    }
    return List.copyOf(left);
  }

  /**
   * All findings of the given files and of what they use, each under the file it belongs to and
   * once; within a file in the order of the text.
   */
  public Map<String, List<Finding>> findings(Collection<String> roots, Cancel cancel) {
    Map<String, List<Finding>> byFile = new LinkedHashMap<>();
    Set<Told> told = new HashSet<>();
    for (String root : roots) {
      byFile.computeIfAbsent(root, path -> new ArrayList<>());
      for (Finding finding : findings(root, cancel)) {
        // two walls that use one catalog both tell what is wrong in it
        if (told.add(new Told(finding))) {
          byFile.computeIfAbsent(finding.origin().file(), path -> new ArrayList<>()).add(finding);
        }
      }
    }
    byFile.values().forEach(found -> found.sort(TextOrder.OF_FINDINGS));
    return Collections.unmodifiableMap(byFile);
  }

  /** A finding as the reader sees it; sentences are put together only where the rest agrees. */
  private record Told(Finding finding) {
    @Override
    public boolean equals(Object other) {
      return other instanceof Told told
          && finding.rule().equals(told.finding.rule())
          && finding.origin().equals(told.finding.origin())
          && finding.message().equals(told.finding.message());
    }

    @Override
    public int hashCode() {
      return finding.hashCode();
    }
  }

  /** Where in its file an origin stands; empty if the file or the segment is gone. */
  public Optional<FilePlace> place(Origin origin) {
    return file(origin.file())
        .filter(file -> origin.segment() < file.segments().size())
        .map(
            file -> {
              TextRange range = file.absolute(origin.segment(), origin.range());
              int length = file.text().length();
              return new FilePlace(
                  origin.file(), Math.min(range.start(), length), Math.min(range.end(), length));
            });
  }

  /** What is under an offset of a file; empty if there is no such file. */
  public Optional<Cursor> cursor(String path, int offset) {
    return file(path).map(file -> Cursor.at(this, path, file, offset));
  }
}
