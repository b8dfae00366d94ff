package mullwright.cli;

import com.google.auto.service.AutoService;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import mullwright.report.CalculationsReport;
import mullwright.report.CutReport;
import mullwright.report.Explanation;
import mullwright.report.GlassReport;
import mullwright.report.LengthsReport;
import mullwright.report.Paint;
import mullwright.report.Report;
import mullwright.report.SequenceReport;
import mullwright.report.TakeoffReport;
import mullwright.report.TextWriter;
import mullwright.report.TicketsReport;
import mullwright.report.WallsAtHand;
import mullwright.server.Schedules;
import mullwright.takeoff.MarkLedger;
import mullwright.workspace.Cancel;
import mullwright.workspace.Snapshot;

/** The reports of the command line as an editor shows them: the same words, the same marks. */
@AutoService(Schedules.class)
public final class EditorSchedules implements Schedules {
  private static final int COLUMNS = 100;
  private static final String EXPLAIN = "explain";

  @Override
  public List<String> names() {
    return List.of(
        "lengths", "takeoff", "glass", "tickets", "cut", "sequence", "calculations", EXPLAIN);
  }

  @Override
  public String text(
      String name, Snapshot snapshot, String path, Optional<Path> file, Cancel cancel) {
    if (name.equals(EXPLAIN)) {
      return new Explanation(snapshot, path, path, COLUMNS, new Paint(false)).defaults();
    }
    List<Report.WallAtHand> walls = WallsAtHand.of(snapshot, List.of(path), shown -> shown, cancel);
    if (walls.isEmpty()) {
      return "No wall stands in " + path + ", so there is nothing to tell.\n";
    }
    cancel.check();
    Optional<String> fault = Optional.empty();
    Optional<Path> kept = file.flatMap(EditorSchedules::ledger);
    if (kept.isPresent()) {
      try {
        MarkLedger ledger = MarkLedger.read(Files.readString(kept.get()));
        if (ledger.faults().isEmpty()) {
          walls = walls.stream().map(wall -> wall.with(ledger)).toList();
        } else {
          fault = Optional.of(ledger.faults().get(0).sentence());
        }
      } catch (IOException unreadable) {
        fault = Optional.of("it cannot be read: " + unreadable.getMessage());
      }
    }
    if (fault.isPresent()) {
      // marks that are not those of the shop would be worse than none
      return "The ledger of marks "
          + kept.get().getFileName()
          + " is at fault: "
          + fault.get()
          + "\n";
    }
    return new TextWriter(COLUMNS, new Paint(false))
        .write(report(name).make(walls, new Report.Options(false)));
  }

  private static Report report(String name) {
    return switch (name) {
      case "lengths" -> new LengthsReport();
      case "takeoff" -> new TakeoffReport();
      case "glass" -> new GlassReport();
      case "tickets" -> new TicketsReport();
      case "cut" -> new CutReport();
      case "sequence" -> new SequenceReport(1, true);
      case "calculations" -> new CalculationsReport();
      default -> throw new IllegalArgumentException("no schedule " + name);
    };
  }

  private static Optional<Path> ledger(Path wall) {
    String name = wall.getFileName().toString().replaceFirst("\\.wall$", "");
    Path ledger = wall.resolveSibling(name + Ledgers.SUFFIX);
    return Files.isRegularFile(ledger) ? Optional.of(ledger) : Optional.empty();
  }
}
