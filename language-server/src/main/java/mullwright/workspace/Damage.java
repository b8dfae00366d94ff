package mullwright.workspace;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import mullwright.check.Finding;
import mullwright.check.Severity;
import mullwright.model.Origin;
import mullwright.syntax.ParsedFile;
import mullwright.syntax.TextRange;

/** Tells of files that were read although bytes in them are no text. */
final class Damage {
  private static final char REPLACEMENT = '\uFFFD';

  private Damage() {}

  /** One finding for each damaged file, at the first place that could not be read. */
  static List<Finding> findings(Map<String, Optional<ParsedFile>> sources, Snapshot snapshot) {
    List<Finding> found = new ArrayList<>();
    new TreeMap<>(sources)
        .forEach(
            (path, file) -> {
              boolean damaged =
                  snapshot.read(path).orElse(null) instanceof Files.Read.Text text
                      && text.damaged();
              if (damaged && file.isPresent()) {
                found.add(finding(path, file.get()));
              }
            });
    return found;
  }

  private static Finding finding(String path, ParsedFile file) {
    int at = Math.max(0, file.text().indexOf(REPLACEMENT));
    int segment = file.segmentAt(at);
    int start = at - file.segmentStart(segment);
    return new Finding(
        "unreadable",
        Severity.WARNING,
        new Origin(path, segment, new TextRange(start, start + 1)),
        "",
        "The file holds bytes that are no UTF-8 text; they are read as " + REPLACEMENT + ".",
        "Save the file as UTF-8.",
        Optional.empty(),
        Optional.empty(),
        List.of(),
        List.of());
  }
}
