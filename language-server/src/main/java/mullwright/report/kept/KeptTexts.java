package mullwright.report.kept;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import mullwright.report.Fingerprint;
import mullwright.workspace.DiskFiles;
import mullwright.workspace.FileStamp;
import mullwright.workspace.Files;
import mullwright.workspace.Packing;
import mullwright.workspace.UsedTexts;

/**
 * The content of files, as hashes, and what they use. A file that the disk says is the one of an
 * earlier run is not read again; one that was written so shortly before it was read that a later
 * change need not show is always read.
 */
public final class KeptTexts {
  private static final String FORM = "mullwright texts 1";
  private static final int MOST = 20_000;
  private static final String ELSEWHERE = "//";

  private final KeptFile file;
  private final DiskFiles disk;
  private final Map<String, Known> before;
  private final Map<String, Known> now = new ConcurrentHashMap<>();
  private final Map<String, String> states = new ConcurrentHashMap<>();
  private final DiskClock clock;

  private KeptTexts(KeptFile file, DiskFiles disk, Map<String, Known> before) {
    this.file = file;
    this.disk = disk;
    this.before = before;
    this.clock = new DiskClock(file.path().getParent());
  }

  /**
   * A file as it was read.
   *
   * @param stamp as it was just before it was read
   * @param settled true if any later change will show in the stamp
   * @param hash of its content
   * @param uses paths below the root of the files it names
   * @param sound true if it is text without damage
   */
  private record Known(
      Optional<FileStamp> stamp, boolean settled, String hash, List<String> uses, boolean sound) {}

  /** What is known by that folder of files below that root. */
  public static KeptTexts open(Path folder, DiskFiles disk) {
    KeptFile file = new KeptFile(folder.resolve("texts"), FORM);
    return new KeptTexts(file, disk, file.read().map(in -> read(in, disk)).orElse(Map.of()));
  }

  /** True if the file can be read and is text without damage. */
  public boolean sound(String path) {
    return known(path).sound;
  }

  /** A hash of the content of all the files stand on: themselves, what they use, what those use. */
  public String state(Collection<String> paths) {
    StringBuilder all = new StringBuilder();
    standsOn(paths)
        .forEach((name, known) -> all.append(name).append('\n').append(known.hash).append('\n'));
    return Fingerprint.hash(all.toString());
  }

  private Map<String, Known> standsOn(Collection<String> paths) {
    Map<String, Known> found = new TreeMap<>();
    Deque<String> open = new ArrayDeque<>(paths);
    while (!open.isEmpty()) {
      String next = open.poll();
      if (!found.containsKey(next)) {
        Known known = known(next);
        found.put(next, known);
        open.addAll(known.uses);
      }
    }
    return found;
  }

  /** The same of one file. */
  public String state(String path) {
    return states.computeIfAbsent(path, any -> state(List.of(any)));
  }

  /** A hash of the bytes of any file on the disk. */
  public String hash(Path any) throws IOException {
    String name = ELSEWHERE + any;
    Optional<FileStamp> stamp = FileStamp.of(any);
    Optional<Known> known = known(name, stamp);
    if (known.isEmpty()) {
      long read = clock.time();
      String hash = Fingerprint.hash(java.nio.file.Files.readAllBytes(any));
      known = Optional.of(new Known(stamp, settled(stamp, read), hash, List.of(), false));
    }
    now.put(name, known.get());
    return known.get().hash;
  }

  private Known known(String path) {
    return now.computeIfAbsent(
        path,
        any -> {
          Optional<FileStamp> stamp = FileStamp.of(disk.absolute(path));
          return known(path, stamp).orElseGet(() -> read(path, stamp));
        });
  }

  private Optional<Known> known(String name, Optional<FileStamp> stamp) {
    return stamp.isEmpty()
        ? Optional.empty()
        : Optional.ofNullable(before.get(name)).filter(known -> known.stamp.equals(stamp));
  }

  private Known read(String path, Optional<FileStamp> stamp) {
    long time = clock.time();
    Files.Read read = disk.read(path);
    if (read instanceof Files.Read.Text text) {
      boolean sound = !text.damaged() && text.text().indexOf('\0') < 0;
      return new Known(
          stamp,
          settled(stamp, time),
          (sound ? "sound " : "damaged ") + Fingerprint.hash(text.text()),
          UsedTexts.named(path, text.text()),
          sound);
    }
    // why it cannot be read may go away without the file's changing
    return new Known(stamp, false, read.toString(), List.of(), false);
  }

  private static boolean settled(Optional<FileStamp> stamp, long read) {
    return stamp.filter(it -> it.before(read)).isPresent();
  }

  /** True unless the disk says that one of the files, or what they use, changed while we ran. */
  public boolean still(Collection<String> paths) {
    return standsOn(paths).entrySet().stream()
        .allMatch(it -> FileStamp.of(disk.absolute(it.getKey())).equals(it.getValue().stamp));
  }

  /** Keeps what is known for the next run; false if it cannot. */
  public boolean save() {
    Map<String, Known> all = new TreeMap<>(before);
    all.putAll(now);
    all.values().removeIf(known -> !known.settled);
    if (all.size() > MOST) {
      all.keySet().retainAll(now.keySet());
    }
    return all.equals(before) || file.write(out -> write(out, all));
  }

  private void write(DataOutputStream out, Map<String, Known> all) throws IOException {
    Packing.text(out, disk.root().toString());
    out.writeInt(all.size());
    for (Map.Entry<String, Known> entry : all.entrySet()) {
      Known known = entry.getValue();
      FileStamp stamp = known.stamp.orElseThrow();
      Packing.text(out, entry.getKey());
      out.writeLong(stamp.modified());
      out.writeLong(stamp.changed());
      out.writeLong(stamp.size());
      Packing.text(out, stamp.key());
      Packing.text(out, known.hash);
      out.writeBoolean(known.sound);
      out.writeInt(known.uses.size());
      for (String use : known.uses) {
        Packing.text(out, use);
      }
    }
  }

  private static Map<String, Known> read(DataInputStream in, DiskFiles disk) {
    try {
      Map<String, Known> all = new HashMap<>();
      // of the same files below another root other links may lead out
      if (!Packing.text(in).equals(disk.root().toString())) {
        return Map.of();
      }
      int count = Packing.count(in);
      for (int at = 0; at < count; at++) {
        String path = Packing.text(in);
        FileStamp stamp =
            new FileStamp(in.readLong(), in.readLong(), in.readLong(), Packing.text(in));
        String hash = Packing.text(in);
        boolean sound = in.readBoolean();
        List<String> uses = new ArrayList<>();
        int used = Packing.count(in);
        for (int use = 0; use < used; use++) {
          uses.add(Packing.text(in));
        }
        all.put(path, new Known(Optional.of(stamp), true, hash, uses, sound));
      }
      return all;
    } catch (IOException damaged) {
      return Map.of();
    }
  }
}
