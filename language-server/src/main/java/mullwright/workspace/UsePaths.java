package mullwright.workspace;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import mullwright.syntax.Argument;
import mullwright.syntax.ParsedFile;
import mullwright.syntax.Statement;
import mullwright.syntax.StatementKind;
import mullwright.syntax.TextRange;
import mullwright.syntax.Word;

/** The paths of {@code use} that must be written otherwise when files move. */
public final class UsePaths {
  private static final Pattern UNWRITABLE = Pattern.compile("[\"\\\\:\\p{Cntrl}]|^~");

  private UsePaths() {}

  /** A file, or a folder with all in it, goes from a path below the root to another. */
  public record Move(String from, String to) {}

  /**
   * A path as it must be written.
   *
   * @param path of the file it stands in, where that is before the move
   * @param range of the path with its quotes, in that file
   * @param text the path with its quotes
   */
  public record Rewrite(String path, TextRange range, String text) {}

  /**
   * What follows for the texts.
   *
   * @param rewrites what must be written otherwise, in the order of paths and text
   * @param lost files that are used and then lie where no {@code use} can be written to lead: by
   *     their paths after the move, the files that use them
   */
  public record After(List<Rewrite> rewrites, Map<String, Set<String>> lost) {}

  /** What follows from moves. */
  public static After after(List<Move> moves, Snapshot snapshot, Cancel cancel) {
    After after = new After(new ArrayList<>(), new TreeMap<>());
    for (String path : snapshot.walls()) {
      cancel.check();
      snapshot.file(path).ifPresent(file -> follow(path, file, moves, after));
    }
    return after;
  }

  private static void follow(String path, ParsedFile file, List<Move> moves, After after) {
    for (int i = 0; i < file.segments().size(); i++) {
      for (Statement statement : file.segments().get(i).statements()) {
        if (statement.kind() == StatementKind.USE) {
          int at = i;
          statement
              .argument(Argument.Text.class)
              .map(Argument.Text::string)
              .ifPresent(
                  written ->
                      follow(path, written, file.absolute(at, written.range()), moves, after));
        }
      }
    }
  }

  private static void follow(
      String path, Word written, TextRange range, List<Move> moves, After after) {
    Optional<String> used = UsedFile.resolve(path, written.text());
    if (used.isEmpty()) {
      return;
    }
    String user = moved(path, moves);
    String now = moved(used.get(), moves);
    if (UsedFile.resolve(user, written.text()).filter(now::equals).isPresent()) {
      return;
    }
    Optional<String> text = written(user, now);
    if (text.isPresent()) {
      after.rewrites.add(new Rewrite(path, range, "\"" + text.get() + "\""));
    } else {
      after.lost.computeIfAbsent(now, any -> new TreeSet<>()).add(user);
    }
  }

  private static String moved(String path, List<Move> moves) {
    for (Move move : moves) {
      if (path.equals(move.from())) {
        return move.to();
      }
      if (path.startsWith(move.from() + "/")) {
        return move.to() + path.substring(move.from().length());
      }
    }
    return path;
  }

  /**
   * The path of a file as another in the same workspace writes it; empty if none can: a name that
   * holds a quote ends the text it stands in, and one with a colon or backslash is no path of every
   * machine.
   */
  public static Optional<String> written(String user, String used) {
    String path = relative(user, used);
    return UNWRITABLE.matcher(path).find() ? Optional.empty() : Optional.of(path);
  }

  private static String relative(String user, String used) {
    String[] from = user.split("/");
    String[] to = used.split("/");
    int common = 0;
    while (common < from.length - 1 && common < to.length - 1 && from[common].equals(to[common])) {
      common++;
    }
    StringBuilder path = new StringBuilder();
    for (int i = common; i < from.length - 1; i++) {
      path.append("../");
    }
    for (int i = common; i < to.length; i++) {
      path.append(i == common ? "" : "/").append(to[i]);
    }
    return path.toString();
  }
}
