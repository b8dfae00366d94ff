package mullwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import mullwright.check.Rules;
import mullwright.workspace.DiskFiles;
import mullwright.workspace.Files;
import mullwright.workspace.Workspace;

/**
 * A folder on disk and the files of it asked for.
 *
 * @param paths of the files below the root
 */
record Opened(Path directory, DiskFiles disk, List<String> paths) {
  Opened {
    paths = List.copyOf(paths);
  }

  /** A workspace over the folder, a new one each time. */
  Workspace workspace() {
    return new Workspace(disk, Rules.find());
  }

  /** How a path is shown: from the current folder where that is short, else whole. */
  String shown(String path) {
    return Shown.path(directory, disk.absolute(path));
  }

  /** The files that can be read as text; why another cannot is said, and noted in the answer. */
  Readable readable(Shell shell) {
    return readable(shell, path -> false);
  }

  /**
   * The same.
   *
   * @param sound true of a path that is known to hold text without damage, and need not be read
   */
  Readable readable(Shell shell, Predicate<String> sound) {
    List<String> good = new ArrayList<>();
    for (String path : paths) {
      if (sound.test(path)) {
        good.add(path);
        continue;
      }
      Files.Read read = disk.read(path);
      String name = "“" + shown(path) + "” ";
      if (read instanceof Files.Read.TooLarge large) {
        Say.wrong(
            shell,
            name
                + "is not read: it takes "
                + large.bytes()
                + " bytes, and a wall file may take "
                + Files.SIZE_LIMIT
                + ".");
      } else if (read instanceof Files.Read.Failed failed) {
        Say.wrong(shell, name + "cannot be read: " + failed.why() + ".");
      } else if (read instanceof Files.Read.Missing) {
        Say.wrong(shell, name + "is not there, or is a link that leads out of the root.");
      } else if (read instanceof Files.Read.Text text && text.text().indexOf('\0') >= 0) {
        Say.wrong(shell, name + "is no text: it holds zero bytes. Give a wall file.");
      } else {
        if (read instanceof Files.Read.Text text && text.damaged()) {
          Say.wrong(shell, name + "holds bytes that are no UTF-8; they are read as “\ufffd”.");
        }
        good.add(path);
      }
    }
    return new Readable(good, good.size() == paths.size());
  }

  /**
   * What can be read.
   *
   * @param all true if nothing had to be left out
   */
  record Readable(List<String> paths, boolean all) {}
}
