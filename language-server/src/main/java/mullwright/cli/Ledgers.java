package mullwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import mullwright.report.Marks;
import mullwright.report.Report;
import mullwright.takeoff.MarkLedger;
import mullwright.workspace.WholeFile;

/** The ledgers of marks beside the wall files: {@code east.marks} beside {@code east.wall}. */
final class Ledgers {
  /** What a ledger's name ends with. */
  static final String SUFFIX = ".marks";

  private static final long SIZE_LIMIT = 16 << 20;

  private final Shell shell;
  private final boolean issue;
  private final Map<Path, MarkLedger> byPath = new TreeMap<>();

  Ledgers(Shell shell, boolean issue) {
    this.shell = shell;
    this.issue = issue;
  }

  /** The walls with their ledgers: those that are there, and with {@code issue} new ones. */
  List<Report.WallAtHand> with(List<Report.WallAtHand> walls) throws CannotException {
    List<Report.WallAtHand> all = new ArrayList<>();
    for (Report.WallAtHand wall : walls) {
      Path path = path(wall);
      if (!byPath.containsKey(path) && (issue || Files.exists(path))) {
        byPath.put(path, read(path));
      }
      MarkLedger ledger = byPath.get(path);
      all.add(ledger == null ? wall : wall.with(ledger));
    }
    return all;
  }

  private Path path(Report.WallAtHand wall) {
    Path file = shell.directory().resolve(wall.file());
    String name = file.getFileName().toString().replaceFirst("\\.wall$", "");
    return file.resolveSibling(name + SUFFIX);
  }

  private static MarkLedger read(Path path) throws CannotException {
    String text = "";
    try {
      if (Files.exists(path)) {
        if (Files.size(path) > SIZE_LIMIT) {
          throw new CannotException("“" + path + "” is too large for a ledger of marks.");
        }
        text = Files.readString(path);
      }
    } catch (IOException failed) {
      throw new CannotException(
          "The ledger “" + path + "” cannot be read: " + failed.getMessage() + ".");
    }
    MarkLedger ledger = MarkLedger.read(text);
    if (!ledger.faults().isEmpty()) {
      MarkLedger.Fault fault = ledger.faults().get(0);
      throw new CannotException(path + ":" + fault.line() + ": " + fault.sentence());
    }
    return ledger;
  }

  /** Writes what was issued, if that was asked for. */
  void keep(List<Report.WallAtHand> walls) throws CannotException {
    if (!issue) {
      return;
    }
    walls.forEach(Marks::of);
    for (Map.Entry<Path, MarkLedger> each : byPath.entrySet()) {
      if (!each.getValue().fresh().isEmpty()) {
        try {
          // an editor may be reading it: it comes into its place whole
          WholeFile.put(each.getKey(), whole -> Files.writeString(whole, each.getValue().write()));
        } catch (IOException failed) {
          throw new CannotException(
              "The ledger “" + each.getKey() + "” cannot be written: " + failed.getMessage() + ".");
        }
      }
    }
  }
}
