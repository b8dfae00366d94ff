package mullwright.server.feature;

import java.util.List;
import java.util.Optional;
import mullwright.model.Origin;
import mullwright.server.Document;
import mullwright.server.piece.StatementPlace;
import mullwright.syntax.TextRange;
import mullwright.workspace.Cursor;
import mullwright.workspace.Leaf;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.LocationLink;
import org.eclipse.lsp4j.Range;

/** Links from a word to a statement, in the form the client can take. */
final class Links {
  private Links() {}

  /** The word or value under a cursor; where there is none, the empty range there. */
  static Range under(Document document, Cursor cursor) {
    TextRange range =
        cursor.leaf().map(Leaf::range).orElse(new TextRange(cursor.offset(), cursor.offset()));
    return document.range(cursor.segment(), range);
  }

  /** A link to the statement that holds an origin; empty if its text is gone. */
  static Optional<LocationLink> to(Document from, Range word, Origin target) {
    return StatementPlace.of(from.view(), target)
        .map(place -> new LocationLink(place.address(), place.whole(), place.shown(), word));
  }

  /**
   * Links for a client that takes them, else places.
   *
   * @param whole true if the client takes links
   */
  static List<?> told(List<LocationLink> links, boolean whole) {
    return whole
        ? links
        : links.stream()
            .map(link -> new Location(link.getTargetUri(), link.getTargetSelectionRange()))
            .toList();
  }
}
