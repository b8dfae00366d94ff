package mullwright.server.piece;

import java.util.Optional;
import mullwright.model.Origin;
import mullwright.server.Document;
import mullwright.server.View;
import mullwright.syntax.Statement;
import mullwright.workspace.Cursor;
import org.eclipse.lsp4j.Range;

/**
 * A statement as an editor points at it.
 *
 * @param address of its file
 * @param whole from its first to its last token
 * @param shown what of it is shown as selected: the name it gives, else its first word
 */
public record StatementPlace(String address, Range whole, Range shown) {
  /** The statement that is, or holds, an origin; empty if its text is gone. */
  public static Optional<StatementPlace> of(View view, Origin origin) {
    return view.document(origin.file()).flatMap(document -> of(document, origin));
  }

  private static Optional<StatementPlace> of(Document document, Origin origin) {
    Optional<Range> named = document.range(origin);
    if (named.isEmpty()) {
      return Optional.empty();
    }
    int offset = document.file().segmentStart(origin.segment()) + origin.range().start();
    Optional<Statement> around =
        document.snapshot().cursor(document.path(), offset).flatMap(Cursor::statement);
    if (around.isEmpty()) {
      return Optional.of(new StatementPlace(document.address(), named.get(), named.get()));
    }
    Statement statement = around.get();
    Range whole = document.range(origin.segment(), statement.range());
    boolean itself = statement.range().equals(origin.range());
    Range shown =
        itself ? document.range(origin.segment(), statement.keyword().range()) : named.get();
    return Optional.of(new StatementPlace(document.address(), whole, shown));
  }
}
