package mullwright.workspace;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.eclipse.jgit.dircache.DirCache;
import org.eclipse.jgit.dircache.DirCacheEntry;
import org.eclipse.jgit.errors.MissingObjectException;
import org.eclipse.jgit.lib.Config;
import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectLoader;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.revwalk.RevTree;
import org.eclipse.jgit.revwalk.RevWalk;
import org.eclipse.jgit.revwalk.filter.RevFilter;
import org.eclipse.jgit.storage.file.FileBasedConfig;
import org.eclipse.jgit.storage.file.FileRepositoryBuilder;
import org.eclipse.jgit.treewalk.TreeWalk;
import org.eclipse.jgit.util.FS;
import org.eclipse.jgit.util.SystemReader;

/**
 * Wall files of a git repository at any revision, read without a checkout.
 *
 * <p>Nothing is written, no program is run, and no configuration but the repository's own is read.
 */
public final class GitRepository implements AutoCloseable {
  private final Repository repository;

  private GitRepository(Repository repository) {
    this.repository = repository;
  }

  /**
   * The repository a folder lies in; empty if it lies in none.
   *
   * @throws IOException if there is one that cannot be read
   */
  public static Optional<GitRepository> around(Path folder) throws IOException {
    SystemReader.setInstance(new Alone(SystemReader.getInstance()));
    FileRepositoryBuilder builder = new FileRepositoryBuilder().findGitDir(folder.toFile());
    if (builder.getGitDir() == null) {
      return Optional.empty();
    }
    return Optional.of(new GitRepository(builder.setMustExist(true).build()));
  }

  /** The top folder of its work tree; empty for a bare repository. */
  public Optional<Path> top() {
    return repository.isBare()
        ? Optional.empty()
        : Optional.of(repository.getWorkTree().toPath().toAbsolutePath().normalize());
  }

  /**
   * The files at a revision.
   *
   * @return empty if there is no such revision
   * @throws IOException if the repository cannot be read
   */
  public Optional<Files> at(String revision) throws IOException {
    Optional<ObjectId> commit = commit(revision);
    if (commit.isEmpty()) {
      return Optional.empty();
    }
    try (RevWalk walk = new RevWalk(repository)) {
      RevTree tree = walk.parseCommit(commit.get()).getTree();
      Map<String, ObjectId> blobs = new TreeMap<>();
      try (TreeWalk files = new TreeWalk(repository)) {
        files.addTree(tree);
        files.setRecursive(true);
        while (files.next()) {
          if (isFile(files.getFileMode(0))) {
            blobs.put(files.getPathString(), files.getObjectId(0));
          }
        }
      }
      return Optional.of(new Blobs(repository, blobs));
    }
  }

  /**
   * The files as they are staged for the next commit.
   *
   * @throws IOException if the index cannot be read
   */
  public Files staged() throws IOException {
    Map<String, ObjectId> blobs = new TreeMap<>();
    DirCache index = repository.readDirCache();
    for (int at = 0; at < index.getEntryCount(); at++) {
      DirCacheEntry entry = index.getEntry(at);
      if (isFile(entry.getFileMode())) {
        blobs.put(entry.getPathString(), entry.getObjectId());
      }
    }
    return new Blobs(repository, blobs);
  }

  /**
   * The first ten digits of a revision's commit.
   *
   * @return empty if there is no such revision
   */
  public Optional<String> shortName(String revision) throws IOException {
    return commit(revision).map(id -> id.abbreviate(10).name());
  }

  /**
   * The newest commit both revisions stand on.
   *
   * @return empty if they share none
   */
  public Optional<String> mergeBase(String one, String other) throws IOException {
    Optional<ObjectId> first = commit(one);
    Optional<ObjectId> second = commit(other);
    if (first.isEmpty() || second.isEmpty()) {
      return Optional.empty();
    }
    try (RevWalk walk = new RevWalk(repository)) {
      walk.setRevFilter(RevFilter.MERGE_BASE);
      walk.markStart(walk.parseCommit(first.get()));
      walk.markStart(walk.parseCommit(second.get()));
      RevCommit base = walk.next();
      return Optional.ofNullable(base).map(commit -> commit.getId().name());
    }
  }

  private Optional<ObjectId> commit(String revision) throws IOException {
    try {
      return Optional.ofNullable(repository.resolve(revision + "^{commit}"));
    } catch (org.eclipse.jgit.errors.RevisionSyntaxException
        | org.eclipse.jgit.errors.IncorrectObjectTypeException
        | org.eclipse.jgit.errors.AmbiguousObjectException none) {
      return Optional.empty();
    }
  }

  private static boolean isFile(FileMode mode) {
    return mode.equals(FileMode.REGULAR_FILE.getBits())
        || mode.equals(FileMode.EXECUTABLE_FILE.getBits());
  }

  @Override
  public void close() {
    repository.close();
  }

  /** Files by the objects that hold them. */
  private record Blobs(Repository repository, Map<String, ObjectId> blobs) implements Files {
    @Override
    public Read read(String path) {
      ObjectId blob = blobs.get(path);
      if (blob == null) {
        return new Read.Missing();
      }
      try {
        ObjectLoader loader = repository.open(blob);
        return loader.getSize() > SIZE_LIMIT
            ? new Read.TooLarge(loader.getSize())
            : DiskFiles.decoded(loader.getBytes());
      } catch (MissingObjectException absent) {
        return new Read.Failed("its object is not in this clone (a shallow or partial one?)");
      } catch (IOException failed) {
        return new Read.Failed(failed.getClass().getSimpleName() + ": " + failed.getMessage());
      }
    }

    @Override
    public Object stamp(String path) {
      ObjectId blob = blobs.get(path);
      return blob == null ? "" : blob;
    }

    @Override
    public List<String> walls() {
      List<String> walls = new ArrayList<>();
      for (String path : blobs.keySet()) {
        if (path.endsWith(".wall") && walls.size() < COUNT_LIMIT) {
          walls.add(path);
        }
      }
      return walls;
    }
  }

  /** The machine without its configuration: what a revision holds hangs on nothing else. */
  private static final class Alone extends SystemReader.Delegate {
    /** No file system in use counts the times of files in coarser steps. */
    private static final long COARSEST_SECONDS = 2;

    Alone(SystemReader machine) {
      super(machine);
    }

    private static FileBasedConfig none(Config parent, FS files) {
      return new FileBasedConfig(parent, new File("none"), files) {
        @Override
        public void load() {
          // there is nothing to load
        }

        @Override
        public boolean isOutdated() {
          return false;
        }

        @Override
        public void save() {
          // what the library measures of this disk is not kept
        }

        // told here, since it would else be measured by writing files into the repository
        @Override
        public long getTimeUnit(
            String section, String subsection, String name, long usual, TimeUnit unit) {
          return section.equals("filesystem")
              ? unit.convert(COARSEST_SECONDS, TimeUnit.SECONDS)
              : super.getTimeUnit(section, subsection, name, usual, unit);
        }
      };
    }

    @Override
    public FileBasedConfig openUserConfig(Config parent, FS files) {
      return none(parent, files);
    }

    @Override
    public FileBasedConfig openSystemConfig(Config parent, FS files) {
      return none(parent, files);
    }

    @Override
    public FileBasedConfig openJGitConfig(Config parent, FS files) {
      return none(parent, files);
    }
  }
}
