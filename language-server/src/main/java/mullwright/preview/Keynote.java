package mullwright.preview;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import mullwright.check.Finding;
import mullwright.check.FoldedFinding;
import mullwright.layout.PieceRef;
import mullwright.workspace.FilePlace;

/**
 * A finding with the number it has in the list and on the drawing.
 *
 * @param pieces it is about; none if it is about the text alone
 */
record Keynote(int number, FoldedFinding folded, Set<PieceRef> pieces, Optional<FilePlace> place) {

  /** The findings of a wall, errors first, else in the order of the text. */
  static List<Keynote> of(SceneWall wall, Pieces pieces) {
    List<FoldedFinding> folded =
        new ArrayList<>(FoldedFinding.fold(wall.findings().orElse(List.of())));
    folded.sort(Comparator.comparing(found -> found.shown().severity()));
    List<Keynote> notes = new ArrayList<>();
    for (FoldedFinding found : folded) {
      Set<PieceRef> about = new LinkedHashSet<>(about(found.shown(), wall, pieces));
      found.others().forEach(other -> about.addAll(about(other, wall, pieces)));
      notes.add(
          new Keynote(
              notes.size() + 1,
              found,
              about,
              wall.file().snapshot().place(found.shown().origin())));
    }
    return notes;
  }

  private static List<PieceRef> about(Finding finding, SceneWall wall, Pieces pieces) {
    List<PieceRef> named = pieces.named(finding.piece());
    if (!named.isEmpty() || finding.piece().isEmpty()) {
      return named;
    }
    // a line or a row as a whole, say: what its statement made
    return wall.details().index().madeBy(finding.origin()).stream()
        .filter(piece -> piece.kind() != PieceRef.Kind.COVER)
        .toList();
  }
}
