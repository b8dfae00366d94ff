package mullwright.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.workspace.DiskFiles;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The files a command is about, and the folder above which nothing is used. */
final class Targets {
  @Parameters(
      paramLabel = "FILE",
      arity = "0..*",
      description =
          "Files, folders (all *.wall below them) or patterns such as '**/*.wall'; the current"
              + " folder if none is given.")
  private List<String> given = new ArrayList<>();

  @Option(
      names = "--root",
      paramLabel = "DIR",
      description =
          "Folder above which no file is used: where a catalog outside the current folder lies."
              + " Else the current folder, or the nearest that holds it and all files.")
  private String root;

  /** The files found, opened as those of one folder. */
  Opened open(Shell shell) throws CannotException {
    return open(shell, Optional.empty());
  }

  /** The same with a root to take unless one is stated. */
  Opened open(Shell shell, Optional<String> top) throws CannotException {
    List<Path> files = WallFinder.find(shell.directory(), given);
    return open(shell, files, root == null ? top.orElse(null) : root);
  }

  static Opened open(Shell shell, List<Path> files, String root) throws CannotException {
    Path top = root == null ? Roots.of(shell.directory(), files) : stated(shell, root);
    DiskFiles disk = new DiskFiles(top);
    List<String> paths = new ArrayList<>();
    for (Path file : files) {
      paths.add(
          disk.relative(file)
              .orElseThrow(
                  () ->
                      new CannotException(
                          "“" + file + "” does not lie below the root “" + top + "”.")));
    }
    return new Opened(shell.directory(), disk, paths);
  }

  private static Path stated(Shell shell, String root) throws CannotException {
    Path top = WallFinder.path(shell.directory(), root);
    if (!Files.isDirectory(top)) {
      throw new CannotException("--root “" + root + "” is no folder.");
    }
    return top;
  }
}
