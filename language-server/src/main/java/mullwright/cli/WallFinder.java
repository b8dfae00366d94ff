package mullwright.cli;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.PatternSyntaxException;

/**
 * Finds the files that arguments mean: a file itself, all wall files below a folder, or those a
 * pattern fits. Hidden folders and the outputs of builds are passed over, as in the editor.
 */
final class WallFinder {
  /** The most files one command takes. */
  static final int COUNT_LIMIT = mullwright.workspace.Files.COUNT_LIMIT;

  private static final int DEPTH_LIMIT = 64;
  private static final Set<String> PASSED_OVER = Set.of("node_modules", "target", "build");
  private static final String SUFFIX = ".wall";

  private WallFinder() {}

  /**
   * The files, in the order of the arguments; those of one argument sorted by path; each once.
   *
   * @throws CannotException if an argument means no file or a folder cannot be read
   */
  static List<Path> find(Path directory, List<String> given) throws CannotException {
    Set<Path> found = new LinkedHashSet<>();
    for (String argument : given.isEmpty() ? List.of(".") : given) {
      found.addAll(of(directory, argument));
      if (found.size() > COUNT_LIMIT) {
        throw new CannotException(
            "More than " + COUNT_LIMIT + " files are meant; name fewer at a time.");
      }
    }
    return List.copyOf(found);
  }

  private static List<Path> of(Path directory, String argument) throws CannotException {
    boolean pattern = argument.matches(".*[*?\\[{].*");
    // a file may be called as a pattern looks
    if (pattern && !exists(directory, argument)) {
      return matching(directory, argument);
    }
    Path path = path(directory, argument);
    if (Files.isDirectory(path)) {
      List<Path> below = below(path, file -> file.toString().endsWith(SUFFIX));
      if (below.isEmpty()) {
        throw new CannotException(
            "No *" + SUFFIX + " file lies below “" + argument + "”. Give a file or its folder.");
      }
      return below;
    }
    if (!Files.exists(path)) {
      throw new CannotException("There is no file “" + argument + "”.");
    }
    return List.of(path);
  }

  private static boolean exists(Path directory, String argument) {
    try {
      return Files.exists(directory.resolve(argument));
    } catch (InvalidPathException noPath) {
      // a star is no part of a name on some systems
      return false;
    }
  }

  /** The path an argument means. */
  static Path path(Path directory, String argument) throws CannotException {
    try {
      return directory.resolve(argument).normalize();
    } catch (InvalidPathException wrong) {
      throw new CannotException("“" + argument + "” is no path: " + wrong.getReason() + ".");
    }
  }

  private static List<Path> matching(Path directory, String pattern) throws CannotException {
    String whole = pattern.replace('\\', '/');
    int wild = whole.replaceAll("[*?\\[{].*", "").lastIndexOf('/') + 1;
    Path start = path(directory, wild == 0 ? "." : whole.substring(0, wild));
    if (!Files.isDirectory(start)) {
      throw new CannotException(
          "No file fits “" + pattern + "”: there is no folder “" + start + "”.");
    }
    String rest = whole.substring(wild);
    List<PathMatcher> matchers = new ArrayList<>();
    try {
      // two stars stand for no folder as well
      for (String one : List.of(rest, rest.replace("**/", ""))) {
        matchers.add(FileSystems.getDefault().getPathMatcher("glob:" + one));
      }
    } catch (PatternSyntaxException wrong) {
      throw new CannotException("“" + pattern + "” is no pattern: " + wrong.getDescription() + ".");
    }
    List<Path> found =
        below(
            start, file -> matchers.stream().anyMatch(one -> one.matches(start.relativize(file))));
    if (found.isEmpty()) {
      throw new CannotException("No file fits “" + pattern + "”.");
    }
    return found;
  }

  /** Which files are meant. */
  private interface Wanted {
    boolean file(Path file);
  }

  private static List<Path> below(Path folder, Wanted wanted) throws CannotException {
    // by its names with / between, so that the order is the same on any machine
    TreeMap<String, Path> found = new TreeMap<>();
    List<String> unreadable = new ArrayList<>();
    try {
      Files.walkFileTree(
          folder, Set.of(), DEPTH_LIMIT, new Walk(folder, wanted, found, unreadable));
    } catch (IOException failed) {
      unreadable.add(folder.toString());
    }
    if (!unreadable.isEmpty()) {
      throw new CannotException("“" + unreadable.get(0) + "” cannot be read.");
    }
    return List.copyOf(found.values());
  }

  private static final class Walk extends SimpleFileVisitor<Path> {
    private final Path top;
    private final Wanted wanted;
    private final TreeMap<String, Path> found;
    private final List<String> unreadable;

    Walk(Path top, Wanted wanted, TreeMap<String, Path> found, List<String> unreadable) {
      this.top = top;
      this.wanted = wanted;
      this.found = found;
      this.unreadable = unreadable;
    }

    @Override
    public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes is) {
      String name = folder.equals(top) ? "" : folder.getFileName().toString();
      return name.startsWith(".") || PASSED_OVER.contains(name)
          ? FileVisitResult.SKIP_SUBTREE
          : FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes is) {
      if (is.isRegularFile() && wanted.file(file)) {
        found.put(top.relativize(file).toString().replace('\\', '/'), file);
      }
      return found.size() <= COUNT_LIMIT ? FileVisitResult.CONTINUE : FileVisitResult.TERMINATE;
    }

    @Override
    public FileVisitResult visitFileFailed(Path file, IOException why) {
      unreadable.add(file.toString());
      return FileVisitResult.CONTINUE;
    }
  }
}
