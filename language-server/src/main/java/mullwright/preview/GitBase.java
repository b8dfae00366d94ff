package mullwright.preview;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.check.Rules;
import mullwright.workspace.Cancel;
import mullwright.workspace.DiskFiles;
import mullwright.workspace.FileReview;
import mullwright.workspace.Files;
import mullwright.workspace.GitRepository;
import mullwright.workspace.Reviews;
import mullwright.workspace.State;
import mullwright.workspace.Workspace;

/**
 * What a file was in the last commit of the repository it lies in.
 *
 * <p>Opened when a page first asks for it; for one thread.
 */
final class GitBase implements AutoCloseable {
  private static final String REVISION = "HEAD";

  private Path folder;
  private GitRepository repository;
  private String commit = "";
  private Workspace workspace;

  /**
   * What changed since.
   *
   * @param commit the first digits of its name
   * @param file empty if nothing differs
   */
  record Compared(String commit, Optional<FileReview> file) {}

  /**
   * Compares a file with the last commit.
   *
   * @return empty if it lies in no repository, or in one without a commit
   * @throws IOException if the repository cannot be read
   */
  Optional<Compared> compare(SceneFile file) throws IOException {
    if (file.disk().isEmpty() || !openAround(file.disk().get().getParent())) {
      return Optional.empty();
    }
    Optional<String> path =
        repository.top().flatMap(top -> new DiskFiles(top).relative(file.disk().get()));
    if (path.isEmpty() || !openCommit()) {
      return Optional.empty();
    }
    State old =
        new State(
            workspace.snapshot(),
            workspace.files().walls().contains(path.get()) ? Map.of("", path.get()) : Map.of());
    State now = new State(file.snapshot(), Map.of("", file.path()));
    List<FileReview> reviews = Reviews.of(old, now, Cancel.NEVER);
    return Optional.of(new Compared(commit, reviews.stream().findFirst()));
  }

  private boolean openAround(Path there) throws IOException {
    if (!there.equals(folder)) {
      close();
      folder = there;
      repository = GitRepository.around(there).orElse(null);
    }
    return repository != null;
  }

  /** Reads the last commit, unless it is the one that is known. */
  private boolean openCommit() throws IOException {
    Optional<String> newest = repository.shortName(REVISION);
    if (newest.isEmpty()) {
      return false;
    }
    if (!newest.get().equals(commit)) {
      Files files = repository.at(REVISION).orElseThrow();
      workspace = new Workspace(files, Rules.find());
      commit = newest.get();
    }
    return true;
  }

  @Override
  public void close() {
    if (repository != null) {
      repository.close();
    }
    repository = null;
    folder = null;
    commit = "";
  }
}
