package mullwright.report;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import mullwright.check.Checker;
import mullwright.check.Finding;
import mullwright.check.Fix;
import mullwright.check.Severity;
import mullwright.model.Origin;
import mullwright.quantity.UnitSystem;
import mullwright.syntax.ParsedFile;
import mullwright.workspace.Cancel;
import mullwright.workspace.FilePlace;
import mullwright.workspace.Reading;
import mullwright.workspace.Snapshot;

/**
 * Everything the rules found in some files, with the places as people count them.
 *
 * @param files those asked for, in the order asked; then those they use in which something was
 *     found. Within a file in the order of the text
 * @param walls how many walls the files asked for hold
 * @param failures rules that broke: faults of this program, which leave the answer incomplete
 */
public record CheckReport(List<FileFindings> files, int walls, List<Checker.Failure> failures) {
  public CheckReport {
    files = List.copyOf(files);
    failures = List.copyOf(failures);
  }

  /**
   * What was found in one file.
   *
   * @param file its path as shown to the reader
   * @param units the system its lengths are told in first
   */
  public record FileFindings(String file, UnitSystem units, List<Item> items) {
    public FileFindings {
      items = List.copyOf(items);
    }
  }

  /**
   * A finding and its places.
   *
   * @param related other places that have a part in it
   * @param fixes edits that mend it
   */
  public record Item(
      Finding finding, Spot spot, Excerpt excerpt, List<RelatedSpot> related, List<Mend> fixes) {
    public Item {
      related = List.copyOf(related);
      fixes = List.copyOf(fixes);
    }
  }

  /** Another place, with a word on its part. */
  public record RelatedSpot(Spot spot, String word) {}

  /** An edit that mends, with its places. */
  public record Mend(String title, List<MendEdit> edits) {}

  /** Puts the text in the place of what stands at the spot. */
  public record MendEdit(Spot spot, String text) {}

  /**
   * Checks files.
   *
   * @param shown how a path below the root is shown to the reader
   */
  public static CheckReport of(
      Snapshot snapshot, Collection<String> paths, UnaryOperator<String> shown, Cancel cancel) {
    Maker maker = new Maker(snapshot, shown);
    List<FileFindings> files = new ArrayList<>();
    for (Map.Entry<String, List<Finding>> file : snapshot.findings(paths, cancel).entrySet()) {
      UnitSystem units = FileUnits.of(snapshot.file(file.getKey()));
      files.add(
          new FileFindings(
              shown.apply(file.getKey()),
              units,
              file.getValue().stream().flatMap(finding -> maker.item(finding).stream()).toList()));
    }
    int walls = 0;
    List<Checker.Failure> failures = new ArrayList<>();
    for (String path : paths) {
      Optional<Reading> reading = snapshot.reading(path);
      walls += reading.map(read -> read.model().walls().size()).orElse(0);
      reading.ifPresent(read -> failures.addAll(read.failures(cancel)));
    }
    return new CheckReport(files, walls, failures);
  }

  /** How many findings are of that severity. */
  public long count(Severity severity) {
    return files.stream()
        .flatMap(file -> file.items().stream())
        .filter(item -> item.finding().severity() == severity)
        .count();
  }

  /** True if a finding is at least as bad as that. */
  public boolean hasAtLeast(Severity least) {
    return files.stream()
        .flatMap(file -> file.items().stream())
        .anyMatch(item -> item.finding().severity().compareTo(least) <= 0);
  }

  private record Maker(Snapshot snapshot, UnaryOperator<String> shown) {
    /** Empty if the place is gone, which no snapshot allows. */
    Optional<Item> item(Finding finding) {
      Optional<FilePlace> place = snapshot.place(finding.origin());
      Optional<ParsedFile> file = snapshot.file(finding.origin().file());
      if (place.isEmpty() || file.isEmpty()) {
        return Optional.empty();
      }
      List<RelatedSpot> related = new ArrayList<>();
      finding
          .related()
          .forEach(
              other ->
                  spot(other.origin())
                      .ifPresent(spot -> related.add(new RelatedSpot(spot, other.word()))));
      return Optional.of(
          new Item(
              finding,
              Spot.of(shown.apply(finding.origin().file()), file.get(), place.get()),
              Excerpt.of(file.get(), place.get()),
              related,
              finding.fixes().stream().map(this::mend).toList()));
    }

    private Mend mend(Fix fix) {
      List<MendEdit> edits = new ArrayList<>();
      for (Fix.Edit edit : fix.edits()) {
        spot(edit.origin()).ifPresent(spot -> edits.add(new MendEdit(spot, edit.text())));
      }
      return new Mend(fix.title(), List.copyOf(edits));
    }

    private Optional<Spot> spot(Origin origin) {
      return snapshot
          .place(origin)
          .flatMap(
              place ->
                  snapshot
                      .file(origin.file())
                      .map(file -> Spot.of(shown.apply(origin.file()), file, place)));
    }
  }
}
