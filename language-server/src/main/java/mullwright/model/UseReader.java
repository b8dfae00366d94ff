package mullwright.model;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import mullwright.model.ModelProblem.BadUse;
import mullwright.model.ModelProblem.BadUse.Reason;
import mullwright.syntax.ParsedFile;

/** Follows {@code use} from file to file: by relative path, inside the workspace, in no circle. */
final class UseReader {
  private static final Pattern ABSOLUTE = Pattern.compile("[/\\\\~].*|[A-Za-z][A-Za-z0-9+.-]*:.*");

  private final Sources sources;
  private final ModelMemory memory;
  private final Collector collector;
  private final Map<String, FileReading> files = new LinkedHashMap<>();
  private final Map<String, Origin> via = new HashMap<>();
  private final List<String> chain = new ArrayList<>();
  private boolean complete = true;

  UseReader(Sources sources, ModelMemory memory, Collector collector) {
    this.sources = sources;
    this.memory = memory;
    this.collector = collector;
  }

  Library read(FileReading main) {
    files.put(main.path(), main);
    follow(main, null);
    List<FileReading> used = new ArrayList<>(files.values());
    used.remove(0);
    return new Library(main, used, via, complete);
  }

  /**
   * @param from the main file's use that led here, null in the main file
   */
  private void follow(FileReading file, Origin from) {
    chain.add(file.path());
    for (FileReading.Use use : file.uses()) {
      follow(file, use, from == null ? use.origin() : from);
    }
    chain.remove(chain.size() - 1);
  }

  private void follow(FileReading file, FileReading.Use use, Origin from) {
    if (use.path().isEmpty()) {
      complete = false;
      return;
    }
    if (!sources.placed()) {
      bad(Reason.NO_PLACE, use, List.of(), use.origin());
      return;
    }
    if (ABSOLUTE.matcher(use.path()).matches()) {
      bad(Reason.ABSOLUTE, use, List.of(), use.origin());
      return;
    }
    Optional<String> path = resolve(file.path(), use.path());
    if (path.isEmpty()) {
      bad(Reason.ABOVE_ROOT, use, List.of(), use.origin());
      return;
    }
    int start = chain.indexOf(path.get());
    if (start >= 0) {
      List<String> circle = new ArrayList<>(chain.subList(start, chain.size()));
      circle.add(path.get());
      bad(Reason.CIRCLE, use, circle, from);
      return;
    }
    if (files.containsKey(path.get())) {
      return;
    }
    if (chain.size() >= Limits.USE_DEPTH || files.size() > Limits.USES) {
      boolean deep = chain.size() >= Limits.USE_DEPTH;
      complete = false;
      collector.problem(
          new ModelProblem.TooMany(
              deep ? "uses in a row" : "files used",
              deep ? Limits.USE_DEPTH : Limits.USES,
              deep ? chain.size() : files.size(),
              use.origin()));
      return;
    }
    Optional<ParsedFile> found = sources.find(path.get());
    if (found.isEmpty()) {
      bad(Reason.NOT_FOUND, use, List.of(), use.origin());
      return;
    }
    FileReading used = memory.reading(path.get(), found.get());
    files.put(path.get(), used);
    via.put(path.get(), from);
    follow(used, from);
  }

  private void bad(Reason reason, FileReading.Use use, List<String> circle, Origin origin) {
    // what a circle closes on has been read
    complete &= reason == Reason.CIRCLE;
    collector.problem(new BadUse(reason, use.path(), circle, origin));
  }

  /** The workspace path that a relative one means, or empty if it leaves the workspace. */
  static Optional<String> resolve(String file, String path) {
    List<String> folders = new ArrayList<>(List.of(file.split("/", -1)));
    folders.remove(folders.size() - 1);
    for (String step : path.split("/", -1)) {
      if (step.equals("..")) {
        if (folders.isEmpty()) {
          return Optional.empty();
        }
        folders.remove(folders.size() - 1);
      } else if (!step.equals(".") && !step.isEmpty()) {
        folders.add(step);
      }
    }
    return Optional.of(String.join("/", folders));
  }
}
