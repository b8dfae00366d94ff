package mullwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.check.Rules;
import mullwright.workspace.DiskFiles;
import mullwright.workspace.GitRepository;
import mullwright.workspace.State;
import mullwright.workspace.Workspace;

/**
 * Finds what the arguments of a comparison mean: a file, a folder, {@code REVISION:PATH}, or a
 * revision of the git repository round the current folder.
 */
final class Sources implements AutoCloseable {
  private final Shell shell;
  private final String root;
  private final Optional<String> as;
  private final Rules rules = Rules.find();
  private GitRepository repository;

  /**
   * @param root folder above which no file is used, or null
   * @param as path single files are read as, so that what they use is found from there
   */
  Sources(Shell shell, String root, Optional<String> as) {
    this.shell = shell;
    this.root = root;
    this.as = as;
  }

  /**
   * One side of a comparison.
   *
   * @param label what it is called
   * @param prefix folder its paths are paired from, "" or ending with a slash
   * @param paths in the workspace
   * @param single true if one file was named
   */
  record Side(
      String label, Workspace workspace, String prefix, List<String> paths, boolean single) {

    /** The side with its files by the path they are paired by. */
    State state() {
      Map<String, String> keyed = new LinkedHashMap<>();
      for (String path : paths) {
        keyed.put(single ? "" : path.substring(prefix.length()), path);
      }
      return new State(workspace.snapshot(), keyed);
    }
  }

  /** True if the argument is a file or a folder on disk. */
  boolean onDisk(String argument) {
    try {
      return Files.exists(shell.directory().resolve(argument));
    } catch (InvalidPathException none) {
      return false;
    }
  }

  /**
   * What the argument means.
   *
   * @param beside a path on disk the other side is about; a bare revision is then taken there
   */
  Side side(String argument, Optional<String> beside) throws CannotException {
    if (onDisk(argument)) {
      return disk(WallFinder.path(shell.directory(), argument), argument);
    }
    int colon = argument.indexOf(':');
    if (colon > 0) {
      return revision(argument.substring(0, colon), argument.substring(colon + 1), argument);
    }
    String path = beside.isEmpty() ? "" : inRepository(beside.get());
    return revision(argument, path, argument);
  }

  /** The work tree of the repository, or that part of it. */
  Side workTree(Optional<String> only) throws CannotException {
    Path top = top();
    Path start = only.isEmpty() ? top : WallFinder.path(shell.directory(), only.get());
    return disk(start, "the work tree");
  }

  /** What is staged for the next commit. */
  Side staged() throws CannotException {
    try {
      return tree(git().staged(), "", "what is staged");
    } catch (IOException failed) {
      throw unreadable(failed);
    }
  }

  /** The newest commit two revisions share. */
  String mergeBase(String one, String other) throws CannotException {
    try {
      return git()
          .mergeBase(one, other)
          .orElseThrow(
              () -> new CannotException("“" + one + "” and “" + other + "” share no commit."));
    } catch (IOException failed) {
      throw unreadable(failed);
    }
  }

  private Side disk(Path start, String label) throws CannotException {
    boolean folder = Files.isDirectory(start);
    List<Path> files = folder ? walls(start) : List.of(start);
    if (!folder && as.isPresent()) {
      return readAs(start, label);
    }
    Opened opened = open(files, folder ? start : null);
    String prefix = folder ? opened.disk().relative(start).map(path -> path + "/").orElse("") : "";
    return new Side(label, opened.workspace(), prefix, opened.paths(), !folder);
  }

  /** A folder without walls is a state without walls. */
  private static List<Path> walls(Path folder) throws CannotException {
    try (var any = Files.walk(folder, 16)) {
      boolean none = any.noneMatch(file -> file.toString().endsWith(".wall"));
      return none ? List.of() : WallFinder.find(folder, List.of("."));
    } catch (IOException failed) {
      throw new CannotException("“" + folder + "” cannot be read: " + failed.getMessage() + ".");
    }
  }

  private Opened open(List<Path> files, Path folder) throws CannotException {
    Path start = folder == null ? files.get(0).getParent() : folder;
    return Targets.open(shell, files, root == null ? rootOf(start, files) : root);
  }

  /**
   * The top of the repository the files lie in, if they lie in one: catalogs stand beside walls.
   */
  private static String rootOf(Path start, List<Path> files) {
    for (Path folder = start; folder != null; folder = folder.getParent()) {
      if (Files.exists(folder.resolve(".git"))) {
        return folder.toString();
      }
    }
    return files.isEmpty() ? start.toString() : null;
  }

  private Side readAs(Path file, String label) throws CannotException {
    Path meant = WallFinder.path(shell.directory(), as.get());
    Opened opened = open(List.of(meant), null);
    String text = WallText.read(file, label).text();
    Workspace workspace = opened.workspace();
    workspace.open(opened.paths().get(0), text);
    return new Side(label, workspace, "", opened.paths(), true);
  }

  private Side revision(String revision, String path, String label) throws CannotException {
    try {
      Optional<mullwright.workspace.Files> files = git().at(revision);
      if (files.isEmpty()) {
        throw new CannotException(
            "“"
                + revision
                + "” is neither a file or folder here nor a revision of the repository at “"
                + top()
                + "”.");
      }
      String called =
          label
              + git()
                  .shortName(revision)
                  .filter(id -> !label.startsWith(id))
                  .map(id -> " (" + id + ")")
                  .orElse("");
      return tree(files.get(), path, called);
    } catch (IOException failed) {
      throw unreadable(failed);
    }
  }

  private Side tree(mullwright.workspace.Files files, String path, String label) {
    Workspace workspace = new Workspace(files, rules);
    List<String> walls = files.walls();
    if (walls.contains(path)) {
      return new Side(label, workspace, "", List.of(path), true);
    }
    String prefix = path.isEmpty() || path.endsWith("/") ? path : path + "/";
    return new Side(
        label,
        workspace,
        prefix,
        walls.stream().filter(wall -> wall.startsWith(prefix)).toList(),
        path.endsWith(".wall"));
  }

  private String inRepository(String argument) throws CannotException {
    Path path = WallFinder.path(shell.directory(), argument);
    return new DiskFiles(top()).relative(path).orElse("");
  }

  /** The top folder of the repository. */
  Path top() throws CannotException {
    return git()
        .top()
        .orElseThrow(() -> new CannotException("The repository here has no work tree."));
  }

  private GitRepository git() throws CannotException {
    if (repository == null) {
      try {
        repository =
            GitRepository.around(shell.directory())
                .orElseThrow(
                    () ->
                        new CannotException(
                            "“"
                                + shell.directory()
                                + "” lies in no git repository, so there is no revision to read."
                                + " Name two files or folders."));
      } catch (IOException failed) {
        throw unreadable(failed);
      }
    }
    return repository;
  }

  private static CannotException unreadable(IOException failed) {
    return new CannotException("The git repository cannot be read: " + failed.getMessage() + ".");
  }

  @Override
  public void close() {
    if (repository != null) {
      repository.close();
    }
  }
}
