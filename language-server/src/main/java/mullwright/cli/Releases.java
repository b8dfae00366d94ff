package mullwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import mullwright.check.Rules;
import mullwright.report.CheckJson;
import mullwright.report.CheckPart;
import mullwright.report.CheckReport;
import mullwright.report.FactsText;
import mullwright.report.ReleaseRecord;
import mullwright.report.Report;
import mullwright.report.WallsAtHand;
import mullwright.workspace.Cancel;
import mullwright.workspace.DiskFiles;
import mullwright.workspace.Snapshot;
import mullwright.workspace.Workspace;

/** Makes the record of a wall as it stands, to be kept or to be compared with one that was. */
final class Releases {
  private final Shell shell;
  private final DiskFiles disk;
  private final Snapshot snapshot;
  private final String path;

  /**
   * @param root folder the paths of the record count from
   * @param path of the wall file below it
   */
  Releases(Shell shell, DiskFiles root, String path) {
    this.shell = shell;
    this.disk = root;
    this.path = path;
    this.snapshot = new Workspace(disk, Rules.find()).snapshot();
  }

  Snapshot snapshot() {
    return snapshot;
  }

  /** What the rules find in it. */
  CheckReport check() {
    return CheckReport.together(
        List.of(CheckPart.of(snapshot, path, Cancel.NEVER)), shown -> shown);
  }

  /** The record of texts, results and files as they are now. */
  ReleaseRecord record(String as, List<String> given) throws CannotException {
    SortedMap<String, String> results = new TreeMap<>();
    results.put("check", ReleaseRecord.hash(CheckJson.write(check())));
    List<Report.WallAtHand> walls =
        WallsAtHand.of(snapshot, List.of(path), shown -> shown, Cancel.NEVER);
    StringBuilder facts = new StringBuilder();
    walls.forEach(wall -> facts.append(FactsText.of(wall.facts(), wall.units(), true)));
    results.put("facts", ReleaseRecord.hash(facts.toString()));
    results.putAll(new Handouts(shell, disk.root(), disk.absolute(path)).hashes(walls));
    SortedMap<String, String> files = new TreeMap<>();
    for (String file : given) {
      Path found = disk.absolute(file);
      try {
        if (Files.isRegularFile(found)) {
          files.put(file, ReleaseRecord.hash(Files.readAllBytes(found)));
        }
      } catch (IOException failed) {
        throw CannotException.unreadable(String.valueOf(file), failed);
      }
    }
    return new ReleaseRecord(
        path, as, Program.version(), ReleaseRecord.texts(path, disk), results, files);
  }
}
