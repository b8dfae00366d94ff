package mullwright.server.kept;

import java.util.List;
import mullwright.workspace.Files;
import org.eclipse.lsp4j.Diagnostic;

/**
 * What was found in a document and in what it uses, with everything that hangs on.
 *
 * @param question what is no text
 * @param sources every file that was read, and those that were looked for and are not there
 * @param published the diagnostics of each file that was told of, the document's own first
 */
public record KeptFindings(Question question, List<Source> sources, List<Published> published) {
  public KeptFindings {
    sources = List.copyOf(sources);
    published = List.copyOf(published);
  }

  /**
   * Which document was asked about, and how.
   *
   * @param address of the document, as the client spells it
   * @param folder its workspace
   * @param shape what the client can take of a diagnostic
   */
  public record Question(String address, String folder, String shape) {}

  /**
   * A file the findings hang on.
   *
   * @param path below the folder
   * @param spelled the client's own spelling of its address, "" if it has told none
   * @param read what it held
   */
  public record Source(String path, String spelled, Files.Read read) {}

  /** What a client was told of a file. */
  public record Published(String address, List<Diagnostic> diagnostics) {
    public Published {
      diagnostics = List.copyOf(diagnostics);
    }
  }
}
