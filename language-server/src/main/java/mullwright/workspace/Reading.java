package mullwright.workspace;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.check.Finding;
import mullwright.layout.WallLayout;
import mullwright.model.Model;
import mullwright.syntax.ParsedFile;

/**
 * One file read with all it uses: its model, the layout of its walls, what is found in them.
 *
 * <p>It remembers every text it was made from, those included that were asked for and are not
 * there. As long as those are the very same it holds, whatever else changes.
 */
public final class Reading {
  private final String path;
  private final Map<String, Optional<ParsedFile>> sources;
  private final Model model;
  private List<WallLayout> layouts;
  private List<Finding> findings;

  private Reading(String path, Map<String, Optional<ParsedFile>> sources, Model model) {
    this.path = path;
    this.sources = sources;
    this.model = model;
  }

  static Optional<Reading> of(String path, Snapshot snapshot, Reading last) {
    Map<String, Optional<ParsedFile>> asked = new HashMap<>();
    Optional<ParsedFile> file = snapshot.file(path);
    asked.put(path, file);
    if (file.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new Reading(path, asked, null));
  }

  /** True if it would come out the same in that snapshot, since its texts are the same. */
  boolean holdsIn(Snapshot snapshot) {
    for (Map.Entry<String, Optional<ParsedFile>> source : sources.entrySet()) {
      ParsedFile now = snapshot.file(source.getKey()).orElse(null);
      if (now != source.getValue().orElse(null)) {
        return false;
      }
    }
    return true;
  }

  public Model model() {
    return model;
  }

  public synchronized List<WallLayout> layouts() {
    return layouts;
  }

  public synchronized List<Finding> findings(Cancel cancel) {
    return findings;
  }
}
