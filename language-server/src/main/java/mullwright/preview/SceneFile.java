package mullwright.preview;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.check.Finding;
import mullwright.check.Severity;
import mullwright.check.WallFacts;
import mullwright.workspace.Cancel;
import mullwright.workspace.Reading;
import mullwright.workspace.Snapshot;
import mullwright.workspace.WallDetails;

/**
 * A file as it is at one moment, laid out; checked too, if somebody had the time.
 *
 * @param key tells it from the others, such as the editor's address of it
 * @param shown its path as people know it
 * @param path in its snapshot
 * @param disk where it lies on the disk, if it does
 * @param reading of it in that snapshot
 * @param checked what is found in it; empty while that is not known
 */
public record SceneFile(
    String key,
    String shown,
    String path,
    Snapshot snapshot,
    Optional<Path> disk,
    Reading reading,
    Optional<Checked> checked) {
  /**
   * What follows from a layout.
   *
   * @param facts of the walls, in the order of {@link SceneFile#details}
   */
  public record Checked(List<WallFacts> facts, List<Finding> findings) {
    public Checked {
      facts = List.copyOf(facts);
      findings = List.copyOf(findings);
    }
  }

  /** The file laid out; empty if there is none of that path. */
  public static Optional<SceneFile> laidOut(
      String key, String shown, String path, Snapshot snapshot, Optional<Path> disk) {
    return snapshot
        .reading(path)
        .map(reading -> new SceneFile(key, shown, path, snapshot, disk, reading, Optional.empty()));
  }

  /** Its walls laid out. */
  public List<WallDetails> details() {
    return reading.details();
  }

  /** How many errors are found in it. */
  public int errors() {
    return (int)
        checked.stream()
            .flatMap(known -> known.findings().stream())
            .filter(finding -> finding.severity() == Severity.ERROR)
            .count();
  }

  /**
   * The same, checked.
   *
   * @throws java.util.concurrent.CancellationException if nobody wants it any more
   */
  public SceneFile withFindings(Cancel cancel) {
    List<Finding> findings = reading.findings(cancel);
    return new SceneFile(
        key,
        shown,
        path,
        snapshot,
        disk,
        reading,
        Optional.of(new Checked(reading.walls(), findings)));
  }

  List<SceneWall> walls() {
    List<SceneWall> walls = new ArrayList<>();
    for (int at = 0; at < details().size(); at++) {
      walls.add(new SceneWall(this, at));
    }
    return walls;
  }
}
