package mullwright.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import org.eclipse.jgit.api.Git;
import org.eclipse.jgit.api.errors.GitAPIException;
import org.eclipse.jgit.lib.PersonIdent;

/** A git repository with the ferry terminal and its catalog, to be edited and committed. */
final class GitWall implements AutoCloseable {
  static final String WALL = "ferry-terminal/east.wall";
  private static final Path EXAMPLES = Path.of("..", "examples");

  final Path folder;
  private final Git git;
  private int commits;

  GitWall(Path folder) {
    this.folder = folder;
    try {
      this.git = Git.init().setDirectory(folder.toFile()).setInitialBranch("main").call();
    } catch (GitAPIException failed) {
      throw new IllegalStateException(failed);
    }
    Fixtures.write(
        folder, "catalog/captured.wall", Fixtures.read(EXAMPLES.resolve("catalog/captured.wall")));
    Fixtures.write(folder, WALL, Fixtures.read(EXAMPLES.resolve(WALL)));
    commit("first");
  }

  String text() {
    return Fixtures.read(folder.resolve(WALL));
  }

  /** Puts other words in the place of some that must be there. */
  void edit(String from, String to) {
    String text = text();
    if (!text.contains(from)) {
      throw new IllegalArgumentException("not in the wall: " + from);
    }
    Fixtures.write(folder, WALL, text.replace(from, to));
  }

  /** Commits everything; the hash. */
  String commit(String message) {
    try {
      git.add().addFilepattern(".").call();
      git.add().setUpdate(true).addFilepattern(".").call();
      commits++;
      PersonIdent who =
          new PersonIdent(
              "Drafter", "drafter@example.invalid", Instant.ofEpochSecond(commits), ZoneOffset.UTC);
      return git.commit()
          .setMessage(message)
          .setAuthor(who)
          .setCommitter(who)
          .setSign(false)
          .call()
          .name();
    } catch (GitAPIException failed) {
      throw new IllegalStateException(failed);
    }
  }

  void branch(String name, String at) {
    try {
      git.checkout().setCreateBranch(true).setName(name).setStartPoint(at).call();
    } catch (GitAPIException failed) {
      throw new IllegalStateException(failed);
    }
  }

  void stage() {
    try {
      git.add().addFilepattern(".").call();
    } catch (GitAPIException failed) {
      throw new IllegalStateException(failed);
    }
  }

  void move(String from, String to) {
    try {
      Files.createDirectories(folder.resolve(to).getParent());
      Files.move(folder.resolve(from), folder.resolve(to));
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  @Override
  public void close() {
    git.close();
  }
}
