package mullwright.server;

import java.io.IOException;
import java.util.List;

/**
 * A view of what the editor has open that stands outside of it, such as a page with the drawing.
 *
 * <p>Implemented above the server and found in {@code META-INF/services} when an editor first asks
 * for it, so that it costs nothing before. All methods but {@link Places#show} are called between
 * edits by the one thread that computes: they take what they are given and come back at once.
 */
public interface LiveView {
  /**
   * Begins to show.
   *
   * @return where it is to be seen, an address for a browser
   * @throws IOException if it cannot listen there
   */
  String begin(Places places) throws IOException;

  /**
   * Texts changed; their findings are not known yet.
   *
   * @param open every document that is open, the one last touched at the end
   */
  void edited(List<Document> open);

  /** The findings of these are known and at hand. */
  void checked(List<Document> open);

  /** The editor asked about a place where its cursor seems to stand. */
  void cursor(Document document, int offset);

  /** The talk with the editor is over. */
  void end();

  /** The way from the view to places of texts. */
  interface Places {
    /** True if the editor can be asked to go somewhere. */
    boolean canShow();

    /**
     * Asks the editor to go to a place; may be called from any thread.
     *
     * @param address of any document of the workspace
     * @param path of the file to be shown, below the root of that workspace
     * @param start offset in its text, {@code end} the offset after it
     */
    void show(String address, String path, int start, int end);
  }
}
