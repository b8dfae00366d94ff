package mullwright.report;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import mullwright.check.Checker;
import mullwright.check.Finding;
import mullwright.check.Severity;
import mullwright.check.Waiting;
import mullwright.model.Origin;
import mullwright.quantity.UnitSystem;
import mullwright.workspace.Cancel;
import mullwright.workspace.Snapshot;
import mullwright.workspace.TextOrder;

/**
 * Everything the rules found in some files, with the places as people count them.
 *
 * @param files those asked for, in the order asked; then those they use in which something was
 *     found. Within a file in the order of the text
 * @param walls how many walls the files asked for hold
 * @param failures rules that broke: faults of this program, which leave the answer incomplete
 * @param allowed what the texts asked for allow, with the reasons
 * @param waiting walls of which some checks wait for a line to be mended
 */
public record CheckReport(
    List<FileFindings> files,
    int walls,
    List<Checker.Failure> failures,
    List<AllowedItem> allowed,
    List<Waiting> waiting) {
  public CheckReport {
    files = List.copyOf(files);
    allowed = List.copyOf(allowed);
    waiting = List.copyOf(waiting);
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

    /** The same with its paths as the reader is shown them. */
    Item shown(UnaryOperator<String> shown) {
      return new Item(
          finding,
          spot.shown(shown),
          excerpt,
          related.stream()
              .map(other -> new RelatedSpot(other.spot().shown(shown), other.word()))
              .toList(),
          fixes.stream()
              .map(
                  mend ->
                      new Mend(
                          mend.title(),
                          mend.edits().stream()
                              .map(edit -> new MendEdit(edit.spot().shown(shown), edit.text()))
                              .toList()))
              .toList());
    }
  }

  /** A finding the text allows, with the reason it gives. */
  public record AllowedItem(Item item, String reason) {}

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
    return together(
        paths.stream().map(path -> CheckPart.of(snapshot, path, cancel)).toList(), shown);
  }

  /**
   * Puts together what was found file by file: what two files tell of a third is told once.
   *
   * @param parts in the order of the files asked for
   */
  public static CheckReport together(List<CheckPart> parts, UnaryOperator<String> shown) {
    Map<String, List<Item>> items = new LinkedHashMap<>();
    Map<String, UnitSystem> units = new HashMap<>();
    Set<Told> told = new HashSet<>();
    int walls = 0;
    List<Checker.Failure> failures = new ArrayList<>();
    List<AllowedItem> allowed = new ArrayList<>();
    List<Waiting> waiting = new ArrayList<>();
    Map<String, String> names = new HashMap<>();
    UnaryOperator<String> once = path -> names.computeIfAbsent(path, shown);
    for (CheckPart part : parts) {
      walls += part.walls();
      failures.addAll(part.failures());
      allowed.addAll(part.allowed());
      waiting.addAll(part.waiting());
      units.putAll(part.units());
      items.computeIfAbsent(part.path(), any -> new ArrayList<>());
      for (Item item : part.items()) {
        Finding finding = item.finding();
        String file = finding.origin().file();
        // two walls that use one catalog both tell what is wrong in it
        if (told.add(Told.of(finding))) {
          items.computeIfAbsent(file, any -> new ArrayList<>()).add(item);
        }
      }
    }
    List<FileFindings> files = new ArrayList<>();
    items.forEach(
        (path, found) -> {
          found.sort((one, other) -> TextOrder.OF_FINDINGS.compare(one.finding(), other.finding()));
          files.add(
              new FileFindings(
                  once.apply(path),
                  units.getOrDefault(path, UnitSystem.US),
                  found.stream().map(item -> item.shown(once)).toList()));
        });
    return new CheckReport(
        files,
        walls,
        failures,
        allowed.stream().map(one -> new AllowedItem(one.item().shown(once), one.reason())).toList(),
        waiting.stream()
            .map(one -> new Waiting(once.apply(one.file()), one.wall(), one.groups()))
            .toList());
  }

  /** What makes two findings one: the same place, in the same words. */
  private record Told(String rule, Origin origin, String piece, String what, String mend) {
    static Told of(Finding finding) {
      return new Told(
          finding.rule(), finding.origin(), finding.piece(), finding.what(), finding.mend());
    }
  }

  /**
   * The report without findings that are known, each as often as it is known.
   *
   * @param known fingerprints
   */
  public CheckReport without(Set<String> known) {
    Fingerprint fingerprint = new Fingerprint();
    List<FileFindings> left = new ArrayList<>();
    for (FileFindings file : files) {
      left.add(
          new FileFindings(
              file.file(),
              file.units(),
              file.items().stream()
                  .filter(item -> !known.contains(fingerprint.next(item.finding())))
                  .toList()));
    }
    return new CheckReport(left, walls, failures, allowed, waiting);
  }

  /** The fingerprints of all findings, in the order of the report. */
  public List<String> fingerprints() {
    Fingerprint fingerprint = new Fingerprint();
    return files.stream()
        .flatMap(file -> file.items().stream())
        .map(item -> fingerprint.next(item.finding()))
        .toList();
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
}
