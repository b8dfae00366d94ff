package mullwright.report;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import mullwright.check.Finding;
import mullwright.check.Severity;
import mullwright.check.WallFacts;
import mullwright.model.Origin;
import mullwright.quantity.UnitSystem;
import mullwright.workspace.Cancel;
import mullwright.workspace.Reading;
import mullwright.workspace.Snapshot;

/** Takes the walls of some files out of a snapshot, ready for a report. */
public final class WallsAtHand {
  private WallsAtHand() {}

  /** The walls, in the order of the files and of their text. */
  public static List<Report.WallAtHand> of(
      Snapshot snapshot, Collection<String> paths, UnaryOperator<String> shown, Cancel cancel) {
    List<Report.WallAtHand> walls = new ArrayList<>();
    for (String path : paths) {
      UnitSystem units = FileUnits.of(snapshot.file(path));
      for (Reading reading : snapshot.reading(path).stream().toList()) {
        for (WallFacts facts : reading.walls()) {
          walls.add(
              new Report.WallAtHand(
                  shown.apply(path), units, facts, errors(reading, facts, cancel)));
        }
      }
    }
    return walls;
  }

  /** Errors in the wall, in its file outside all walls, and in the files it uses. */
  private static int errors(Reading reading, WallFacts wall, Cancel cancel) {
    Set<Integer> others =
        reading.walls().stream()
            .map(other -> other.wall().origin().segment())
            .filter(segment -> segment != wall.wall().origin().segment())
            .collect(Collectors.toSet());
    return (int)
        reading.findings(cancel).stream()
            .filter(finding -> finding.severity() == Severity.ERROR)
            .map(Finding::origin)
            .filter(origin -> !inOther(origin, reading.path(), others))
            .count();
  }

  private static boolean inOther(Origin origin, String path, Set<Integer> others) {
    return origin.file().equals(path) && others.contains(origin.segment());
  }
}
