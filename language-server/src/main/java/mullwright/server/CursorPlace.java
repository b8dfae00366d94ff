package mullwright.server;

import java.util.Optional;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.DocumentHighlightParams;
import org.eclipse.lsp4j.Position;

/**
 * Where the cursor stands, as far as a request tells. The protocol has no word for it, but editors
 * ask for highlights and for actions where it stands; hovers follow the pointer and are no sign.
 */
record CursorPlace(String address, Position position) {
  static Optional<CursorPlace> of(Object parameters) {
    if (parameters instanceof DocumentHighlightParams asked
        && asked.getTextDocument() != null
        && asked.getPosition() != null) {
      return Optional.of(new CursorPlace(asked.getTextDocument().getUri(), asked.getPosition()));
    }
    if (parameters instanceof CodeActionParams asked
        && asked.getTextDocument() != null
        && asked.getRange() != null
        && asked.getRange().getEnd() != null) {
      return Optional.of(
          new CursorPlace(asked.getTextDocument().getUri(), asked.getRange().getEnd()));
    }
    return Optional.empty();
  }
}
