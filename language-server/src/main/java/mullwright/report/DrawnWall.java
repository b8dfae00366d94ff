package mullwright.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import mullwright.check.Finding;
import mullwright.check.FoldedFinding;
import mullwright.drawing.Keynote;
import mullwright.drawing.Labels;
import mullwright.drawing.TextPlace;
import mullwright.drawing.TitleBlock;
import mullwright.layout.PieceMarks;
import mullwright.layout.PieceRef;
import mullwright.layout.WallLayout;
import mullwright.model.Given;
import mullwright.model.Model;
import mullwright.model.Origin;
import mullwright.model.Remarked;
import mullwright.workspace.Cancel;
import mullwright.workspace.Reading;
import mullwright.workspace.Snapshot;

/**
 * A wall with what its drawings say beside its geometry: marks, places in the text, remarks, and
 * what the rules found.
 *
 * @param wall as a report sees it
 * @param marks of its pieces
 * @param findings of the rules in it, those left out that the text allows
 */
public record DrawnWall(
    Report.WallAtHand wall, Snapshot snapshot, PieceMarks marks, List<Finding> findings) {
  /** More pieces of one finding than these are told in words, not each with a number. */
  private static final int MOST_NUMBERS = 12;

  public DrawnWall {
    findings = List.copyOf(findings);
  }

  /** A wall of a file, by the file's path below the workspace's root. */
  public static DrawnWall of(Report.WallAtHand wall, Snapshot snapshot, String path) {
    List<Finding> found = new ArrayList<>();
    for (Reading reading : snapshot.reading(path).stream().toList()) {
      Set<Found> stand = new HashSet<>();
      reading.findings(Cancel.NEVER).forEach(finding -> stand.add(Found.of(finding)));
      reading.findingsOf(wall.facts(), Cancel.NEVER).stream()
          .filter(finding -> stand.contains(Found.of(finding)))
          .forEach(found::add);
    }
    return new DrawnWall(wall, snapshot, Marks.of(wall), found);
  }

  private record Found(String rule, Origin origin, String message) {
    static Found of(Finding finding) {
      return new Found(finding.rule(), finding.origin(), finding.message());
    }
  }

  /** Where everything of it is. */
  public WallLayout layout() {
    return wall.facts().layout();
  }

  /** Marks and places for its drawings. */
  public Labels labels() {
    return new Labels() {
      @Override
      public String mark(PieceRef piece) {
        return marks.mark(piece);
      }

      @Override
      public Optional<TextPlace> place(Origin statement) {
        return snapshot
            .place(statement)
            .map(place -> new TextPlace(place.path(), place.start(), place.end()));
      }
    };
  }

  /** What its title block says. */
  public TitleBlock titleBlock() {
    Optional<Model.Project> project = wall.facts().text().model().project();
    return new TitleBlock(
        project.map(Model.Project::name).orElse(""),
        layout().wall().name(),
        project.flatMap(Model.Project::revision).map(Given::value).orElse(""),
        "For review, not for construction",
        Caution.WORDS);
  }

  /** The remarks of its own text, and its finish. */
  public List<String> notes() {
    List<String> notes = new ArrayList<>();
    String finish = Finish.of(layout().wall());
    if (!finish.isEmpty()) {
      notes.add("Finish: " + finish + ".");
    }
    Origin own = layout().wall().origin();
    for (Remarked remark : wall.facts().text().model().remarks()) {
      if (remark.origin().file().equals(own.file()) && remark.origin().segment() == own.segment()) {
        notes.add(
            switch (remark.kind()) {
              case NOTE -> remark.text();
              case VERIFY -> "Verify in the field: " + remark.text();
              case HOLD -> "Hold, not to be released: " + remark.text();
            });
      }
    }
    return notes;
  }

  /** What the rules found, numbered; equal findings of one statement together. */
  public List<Keynote> keynotes() {
    Map<String, PieceRef> byName = pieces();
    List<Keynote> notes = new ArrayList<>();
    for (FoldedFinding folded : FoldedFinding.fold(findings)) {
      List<PieceRef> pieces = new ArrayList<>();
      Optional.ofNullable(byName.get(folded.shown().piece())).ifPresent(pieces::add);
      if (folded.others().size() < MOST_NUMBERS) {
        folded.others().stream()
            .map(other -> byName.get(other.piece()))
            .filter(piece -> piece != null && !pieces.contains(piece))
            .forEach(pieces::add);
      }
      String more = folded.more(0);
      String text = folded.shown().message() + (more.isEmpty() ? "" : " (" + more + ")");
      notes.add(new Keynote(notes.size() + 1, text, pieces));
    }
    return notes;
  }

  private Map<String, PieceRef> pieces() {
    Map<String, PieceRef> byName = new HashMap<>();
    WallLayout layout = layout();
    layout
        .verticals()
        .forEach(it -> byName.put(it.name(), new PieceRef(PieceRef.Kind.VERTICAL, it.index())));
    layout
        .horizontals()
        .forEach(it -> byName.put(it.name(), new PieceRef(PieceRef.Kind.HORIZONTAL, it.index())));
    layout
        .splices()
        .forEach(it -> byName.put(it.name(), new PieceRef(PieceRef.Kind.SPLICE, it.index())));
    layout
        .anchors()
        .forEach(it -> byName.put(it.name(), new PieceRef(PieceRef.Kind.ANCHOR, it.index())));
    layout
        .cells()
        .forEach(it -> byName.put(it.name(), new PieceRef(PieceRef.Kind.CELL, it.index())));
    return byName;
  }
}
