package mullwright.server;

import java.util.List;
import java.util.Optional;
import mullwright.workspace.Cancel;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/** What a feature has before it when it answers: the texts, the client, the way to give up. */
public interface Desk {
  /** What the client can take. */
  Client client();

  /** Asked in loops; true once nobody wants the answer. */
  Cancel cancel();

  /** The file of that address, open or on disk; empty if there is none. */
  Optional<Document> document(String address);

  /**
   * The document last opened, changed or asked about; if that one is closed, the one opened last.
   */
  Optional<Document> touched();

  /**
   * Where the live view is to be seen; it begins when first asked for. Empty if there is none.
   *
   * @throws java.io.UncheckedIOException if it cannot listen
   */
  Optional<String> liveView();

  /** The way back to the editor. */
  Editor editor();

  /** What the reader of a document has switched. */
  Settings settings(Document document);

  /**
   * Begins long work that is told to the editor.
   *
   * @param token the editor's own, null if it gave none
   */
  Progress progress(Either<String, Integer> token, String title);

  /**
   * The editor shows what follows from a document at an address of the server's own; it is told
   * when that becomes another.
   */
  void shown(String address, Document document);

  /** Every workspace as it stands now. */
  List<View> views();
}
