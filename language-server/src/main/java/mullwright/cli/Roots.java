package mullwright.cli;

import java.nio.file.Path;
import java.util.List;

/** Finds the folder above which nothing is used. */
final class Roots {
  private Roots() {}

  /**
   * The current folder if all files lie below it; else the nearest folder that holds it and all of
   * them; if that is the top of the disk, the nearest that holds the files.
   */
  static Path of(Path directory, List<Path> files) {
    Path common = directory;
    for (Path file : files) {
      common = common(common, file.getParent());
    }
    if (common != null && common.getNameCount() > 0) {
      return common;
    }
    Path ofFiles = files.isEmpty() ? directory : files.get(0).getParent();
    for (Path file : files) {
      ofFiles = common(ofFiles, file.getParent());
    }
    // on different drives nothing is common
    return ofFiles == null ? directory : ofFiles;
  }

  private static Path common(Path one, Path other) {
    Path folder = one;
    while (folder != null && !other.startsWith(folder)) {
      folder = folder.getParent();
    }
    return folder;
  }
}
