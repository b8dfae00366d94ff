package mullwright.server;

import java.util.Optional;
import mullwright.check.Severities;
import mullwright.server.kept.KeptFindings;
import mullwright.server.kept.KeptFolder;
import mullwright.workspace.Files;

/**
 * What an earlier server found in a document that is being opened, if all it hangs on is what it
 * was then. Asked before the first wall is read, so it reads none.
 */
final class Earlier {
  private final Optional<KeptFolder> folder;

  /**
   * @param folder where findings are kept, if they are
   */
  Earlier(Optional<KeptFolder> folder) {
    this.folder = folder;
  }

  Optional<KeptFindings> of(String address, String text, Session session) {
    if (folder.isEmpty() || VirtualDocument.at(address).isPresent()) {
      return Optional.empty();
    }
    Roots.Held held = session.hold(address, text);
    if (held.root().folder().isEmpty() || held.path().equals(Severities.FILE)) {
      return Optional.empty();
    }
    Optional<KeptFindings> kept = folder.get().find(question(address, held.root(), session));
    return kept.isPresent() && holds(kept.get(), held, text) ? kept : Optional.empty();
  }

  /** What is asked about a document of a folder, beside the texts. */
  static KeptFindings.Question question(String address, Root root, Session session) {
    return new KeptFindings.Question(
        address,
        root.folder().orElseThrow().toString(),
        session.encoding().word() + " " + Diagnostics.shape(session.client()));
  }

  private static boolean holds(KeptFindings kept, Roots.Held held, String text) {
    for (KeptFindings.Source source : kept.sources()) {
      boolean own = source.path().equals(held.path());
      Files.Read now = own ? new Files.Read.Text(text, false) : held.root().look(source.path());
      if (!source.read().equals(now)
          || !(own || source.spelled().equals(held.root().spelled(source.path())))) {
        return false;
      }
    }
    return true;
  }
}
