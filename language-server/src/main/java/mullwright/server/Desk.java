package mullwright.server;

import java.util.List;
import java.util.Optional;
import mullwright.workspace.Cancel;

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

  /** Every workspace as it stands now. */
  List<View> views();
}
