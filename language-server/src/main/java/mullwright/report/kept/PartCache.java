package mullwright.report.kept;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import mullwright.check.Severities;
import mullwright.report.CheckPart;
import mullwright.report.Fingerprint;
import mullwright.report.KeptParts;
import mullwright.workspace.Packing;

/**
 * Keeps what was found in files by the content that led to it: this program, the file's text, the
 * texts of all it uses and the project's settings. All stand in one file, the last few states of
 * each path.
 */
public final class PartCache implements KeptParts {
  private static final String FORM = "mullwright parts 2";

  /** States of one path that are kept: a few branches. */
  private static final int STATES = 4;

  private static final int MOST = 20_000;

  private final KeptFile file;
  private final String program;
  private final KeptTexts texts;
  private final String settings;

  /** By path the parts by key, as bytes, the newest last. */
  private final Map<String, Map<String, byte[]>> before;

  private final Map<String, Kept> now = new ConcurrentHashMap<>();

  private record Kept(String key, byte[] part, boolean found) {}

  /**
   * A cache in that folder, which is made when first needed.
   *
   * @param program names this program so that another build has another name
   */
  public PartCache(Path folder, String program, KeptTexts texts) {
    this.file = new KeptFile(folder.resolve("parts"), FORM);
    this.program = program;
    this.texts = texts;
    this.settings = texts.state(Severities.FILE);
    this.before = file.read().map(PartCache::read).orElse(Map.of());
  }

  private String key(String path) {
    return Fingerprint.hash(String.join("\n", FORM, program, path, texts.state(path), settings));
  }

  @Override
  public Optional<CheckPart> get(String path) {
    String key = key(path);
    byte[] kept = before.getOrDefault(path, Map.of()).get(key);
    if (kept == null) {
      return Optional.empty();
    }
    try {
      CheckPart part = PartBytes.read(kept);
      now.put(path, new Kept(key, kept, true));
      return Optional.of(part);
    } catch (IOException | IllegalArgumentException damaged) {
      return Optional.empty();
    }
  }

  @Override
  public void put(CheckPart part) {
    // what was found in a text that changed meanwhile is not what its first state leads to
    if (part.failures().isEmpty() && texts.still(List.of(part.path(), Severities.FILE))) {
      now.put(part.path(), new Kept(key(part.path()), PartBytes.write(part), false));
    }
  }

  /** Writes what is new into the folder; false if it cannot. */
  public boolean save() {
    if (now.values().stream().allMatch(Kept::found)) {
      return true;
    }
    Map<String, Map<String, byte[]>> all = new TreeMap<>(before);
    now.forEach(
        (path, kept) -> {
          Map<String, byte[]> states = new LinkedHashMap<>(all.getOrDefault(path, Map.of()));
          states.remove(kept.key);
          states.put(kept.key, kept.part);
          List<String> keys = new ArrayList<>(states.keySet());
          keys.subList(0, Math.max(0, keys.size() - STATES)).forEach(states::remove);
          all.put(path, states);
        });
    if (all.size() > MOST) {
      all.keySet().retainAll(now.keySet());
    }
    return file.write(out -> write(out, all));
  }

  private static void write(DataOutputStream out, Map<String, Map<String, byte[]>> all)
      throws IOException {
    out.writeInt(all.size());
    for (Map.Entry<String, Map<String, byte[]>> entry : all.entrySet()) {
      Packing.text(out, entry.getKey());
      out.writeInt(entry.getValue().size());
      for (Map.Entry<String, byte[]> state : entry.getValue().entrySet()) {
        Packing.text(out, state.getKey());
        Packing.bytes(out, state.getValue());
      }
    }
  }

  private static Map<String, Map<String, byte[]>> read(DataInputStream in) {
    try {
      Map<String, Map<String, byte[]>> all = new HashMap<>();
      int paths = Packing.count(in);
      for (int at = 0; at < paths; at++) {
        String path = Packing.text(in);
        Map<String, byte[]> states = new LinkedHashMap<>();
        int count = Packing.count(in);
        for (int state = 0; state < count; state++) {
          states.put(Packing.text(in), Packing.bytes(in));
        }
        all.put(path, states);
      }
      return all;
    } catch (IOException damaged) {
      return Map.of();
    }
  }
}
