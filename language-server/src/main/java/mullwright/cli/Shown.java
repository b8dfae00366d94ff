package mullwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** Paths as a reader is shown them: with / between names on any machine. */
final class Shown {
  private Shown() {}

  /** From the current folder if they have a folder in common, else the whole path. */
  static String path(Path directory, Path file) {
    Path whole = file.normalize();
    boolean near =
        Objects.equals(directory.getRoot(), whole.getRoot())
            && directory.getNameCount() > 0
            && whole.getNameCount() > 0
            && directory.getName(0).equals(whole.getName(0));
    Path shown = near ? directory.relativize(whole) : whole;
    List<String> names = new ArrayList<>();
    shown.forEach(name -> names.add(name.toString()));
    String root = shown.isAbsolute() ? shown.getRoot().toString().replace('\\', '/') : "";
    return root + String.join("/", names);
  }
}
