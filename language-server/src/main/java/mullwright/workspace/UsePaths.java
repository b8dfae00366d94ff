package mullwright.workspace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.syntax.Argument;
import mullwright.syntax.ParsedFile;
import mullwright.syntax.Segment;
import mullwright.syntax.Statement;
import mullwright.syntax.StatementKind;
import mullwright.syntax.TextRange;
import mullwright.syntax.Word;

/** The paths of {@code use} that must be written otherwise when files move. */
public final class UsePaths {
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

  /** What must be written otherwise, in the order of paths and text. */
  public static List<Rewrite> after(List<Move> moves, Snapshot snapshot, Cancel cancel) {
    List<Rewrite> rewrites = new ArrayList<>();
    for (String path : snapshot.walls()) {
      cancel.check();
      snapshot.file(path).ifPresent(file -> rewrites(path, file, moves, rewrites));
    }
    return rewrites;
  }

  private static void rewrites(
      String path, ParsedFile file, List<Move> moves, List<Rewrite> rewrites) {
    for (int i = 0; i < file.segments().size(); i++) {
      Segment segment = file.segments().get(i);
      for (Statement statement : segment.statements()) {
        if (statement.kind() == StatementKind.USE) {
          int at = i;
          statement
              .argument(Argument.Text.class)
              .map(Argument.Text::string)
              .flatMap(
                  written ->
                      rewritten(path, written, moves)
                          .map(text -> new Rewrite(path, file.absolute(at, written.range()), text)))
              .ifPresent(rewrites::add);
        }
      }
    }
  }

  private static Optional<String> rewritten(String path, Word written, List<Move> moves) {
    Optional<String> used = UsedFile.resolve(path, written.text());
    if (used.isEmpty()) {
      return Optional.empty();
    }
    String user = moved(path, moves);
    String now = moved(used.get(), moves);
    boolean still = UsedFile.resolve(user, written.text()).filter(now::equals).isPresent();
    return still ? Optional.empty() : Optional.of("\"" + relative(user, now) + "\"");
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

  /** The path of a file as another in the same workspace writes it. */
  public static String relative(String user, String used) {
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
