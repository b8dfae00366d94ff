package mullwright.server;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import mullwright.workspace.Cancel;
import org.eclipse.lsp4j.Diagnostic;

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

  /** What is wrong in the projects' own files of settings, by their addresses. */
  Map<String, List<Diagnostic>> settingsProblems();

  /**
   * Tells the editor how far the answer is; work that asks {@link #cancel} in its loops need not
   * tell that it goes on. Empty where nobody could be told.
   */
  Optional<Progress> progress();

  /**
   * The editor shows what follows from a document at an address of the server's own; it is told
   * when that becomes another.
   */
  void shown(String address, Document document);

  /**
   * The editor shows that beside a document; it is told when an edit of another document makes it
   * something else.
   *
   * @param what as the protocol spells it in {@code workspace/inlayHint/refresh}
   * @param holds true if the same would be told of the document as it then stands
   */
  void beside(String what, Document document, Predicate<Document> holds);

  /** Where texts are written for an editor that shows nothing but files. */
  ShownFiles shownFiles();

  /** Every workspace as it stands now. */
  List<View> views();
}
