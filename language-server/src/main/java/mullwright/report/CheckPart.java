package mullwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import mullwright.check.Allowances;
import mullwright.check.Checker;
import mullwright.check.Finding;
import mullwright.check.Fix;
import mullwright.check.Waiting;
import mullwright.model.Origin;
import mullwright.quantity.UnitSystem;
import mullwright.syntax.ParsedFile;
import mullwright.workspace.Cancel;
import mullwright.workspace.FilePlace;
import mullwright.workspace.Reading;
import mullwright.workspace.Snapshot;

/**
 * What was found in one file and in what it uses; hangs on those texts only, so it may be kept.
 *
 * @param path of the file below the root, as are all paths in it
 * @param walls how many walls the file holds
 * @param units the system each file with findings is told in
 * @param items in the order of the text
 * @param waiting walls of which some checks wait
 */
public record CheckPart(
    String path,
    int walls,
    Map<String, UnitSystem> units,
    List<CheckReport.Item> items,
    List<CheckReport.AllowedItem> allowed,
    List<Waiting> waiting,
    List<Checker.Failure> failures) {
  public CheckPart {
    units = Map.copyOf(units);
    items = List.copyOf(items);
    allowed = List.copyOf(allowed);
    waiting = List.copyOf(waiting);
    failures = List.copyOf(failures);
  }

  /** Checks a file. */
  public static CheckPart of(Snapshot snapshot, String path, Cancel cancel) {
    Maker maker = new Maker(snapshot);
    Map<String, UnitSystem> units = new TreeMap<>();
    units.put(path, FileUnits.of(snapshot.file(path)));
    List<CheckReport.Item> items = new ArrayList<>();
    snapshot
        .findings(List.of(path), cancel)
        .forEach(
            (file, findings) -> {
              units.put(file, FileUnits.of(snapshot.file(file)));
              findings.forEach(finding -> maker.item(finding).ifPresent(items::add));
            });
    Optional<Reading> reading = snapshot.reading(path);
    List<CheckReport.AllowedItem> allowed = new ArrayList<>();
    for (Allowances.Allowed one : reading.map(read -> read.allowed(cancel)).orElse(List.of())) {
      maker
          .item(one.finding())
          .ifPresent(item -> allowed.add(new CheckReport.AllowedItem(item, one.reason())));
    }
    return new CheckPart(
        path,
        reading.map(read -> read.model().walls().size()).orElse(0),
        units,
        items,
        allowed,
        reading.map(read -> Waiting.of(path, read.walls())).orElse(List.of()),
        reading.map(read -> read.failures(cancel)).orElse(List.of()));
  }

  private record Maker(Snapshot snapshot) {
    /** Empty if the place is gone, which no snapshot allows. */
    Optional<CheckReport.Item> item(Finding finding) {
      Optional<FilePlace> place = snapshot.place(finding.origin());
      Optional<ParsedFile> file = snapshot.file(finding.origin().file());
      if (place.isEmpty() || file.isEmpty()) {
        return Optional.empty();
      }
      List<CheckReport.RelatedSpot> related = new ArrayList<>();
      finding
          .related()
          .forEach(
              other ->
                  spot(other.origin())
                      .ifPresent(
                          spot -> related.add(new CheckReport.RelatedSpot(spot, other.word()))));
      return Optional.of(
          new CheckReport.Item(
              finding,
              Spot.of(finding.origin().file(), file.get(), place.get()),
              Excerpt.of(file.get(), place.get()),
              related,
              finding.fixes().stream().map(this::mend).toList()));
    }

    private CheckReport.Mend mend(Fix fix) {
      List<CheckReport.MendEdit> edits = new ArrayList<>();
      for (Fix.Edit edit : fix.edits()) {
        spot(edit.origin())
            .ifPresent(spot -> edits.add(new CheckReport.MendEdit(spot, edit.text())));
      }
      return new CheckReport.Mend(fix.title(), List.copyOf(edits));
    }

    private Optional<Spot> spot(Origin origin) {
      return snapshot
          .place(origin)
          .flatMap(
              place ->
                  snapshot.file(origin.file()).map(file -> Spot.of(origin.file(), file, place)));
    }
  }
}
