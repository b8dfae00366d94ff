package mullwright.server.action;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import mullwright.check.Finding;
import mullwright.check.Fix;
import mullwright.server.Document;
import mullwright.server.Edits;
import mullwright.workspace.FilePlace;

/**
 * Many mends at once: of every finding the only one, or where it has more the first that one of
 * them says is best. Two that touch the same text are not both made; the one that stands first is.
 *
 * @param fixes each once, in the order of the text
 */
record AllMends(List<Fix> fixes) {
  AllMends {
    fixes = List.copyOf(fixes);
  }

  /**
   * Those of the findings of some rules; a finding with a choice of mends is left to the reader.
   */
  static AllMends of(List<Finding> findings, Predicate<String> rules) {
    Map<List<Fix.Edit>, Fix> fixes = new LinkedHashMap<>();
    for (Finding finding : findings) {
      if (rules.test(finding.rule()) && finding.fixes().size() == 1) {
        Fix fix = finding.fixes().get(0);
        fixes.putIfAbsent(fix.edits(), fix);
      }
    }
    return new AllMends(List.copyOf(fixes.values()));
  }

  int count() {
    return fixes.size();
  }

  /** True if everything it would change is still there. */
  static boolean stands(Fix fix, Document document) {
    return fix.edits().stream()
        .allMatch(
            edit ->
                document
                    .view()
                    .document(edit.origin().file())
                    .flatMap(file -> file.range(edit.origin()))
                    .isPresent());
  }

  Edits edits(Document document) {
    Edits edits = new Edits(document.view());
    List<FilePlace> taken = new ArrayList<>();
    for (Fix fix : fixes) {
      List<FilePlace> places = new ArrayList<>();
      for (Fix.Edit edit : fix.edits()) {
        document.snapshot().place(edit.origin()).ifPresent(places::add);
      }
      boolean free =
          places.size() == fix.edits().size()
              && places.stream()
                  .noneMatch(place -> taken.stream().anyMatch(other -> overlap(place, other)));
      if (free) {
        taken.addAll(places);
        fix.edits().forEach(edit -> edits.replace(edit.origin(), edit.text()));
      }
    }
    return edits;
  }

  /** Two insertions at one place do not overlap: they come one after the other. */
  private static boolean overlap(FilePlace one, FilePlace other) {
    return one.path().equals(other.path())
        && one.start() < other.end()
        && other.start() < one.end();
  }
}
