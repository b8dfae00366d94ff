package mullwright.workspace;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Files that stand in memory only: for tests, and for texts that no disk has. */
public final class MemoryFiles implements Files {
  private final Map<String, String> texts;

  /** Those texts by path. */
  public MemoryFiles(Map<String, String> texts) {
    this.texts = new TreeMap<>(texts);
  }

  @Override
  public Read read(String path) {
    String text = texts.get(path);
    return text == null ? new Read.Missing() : new Read.Text(text, false);
  }

  @Override
  public Object stamp(String path) {
    return texts.getOrDefault(path, "");
  }

  @Override
  public List<String> walls() {
    return texts.keySet().stream()
        .filter(path -> path.endsWith(".wall"))
        .limit(COUNT_LIMIT)
        .toList();
  }
}
