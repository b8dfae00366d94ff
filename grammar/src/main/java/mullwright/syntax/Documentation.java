package mullwright.syntax;

import static mullwright.syntax.antlr.WallLexer.*;

import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;

/** Finds the {@code ///} comments that stand right before a statement. */
final class Documentation {
  private final List<Comment> comments;
  private final List<WallToken> tokens;
  private int next;

  /**
   * @param comments in order
   * @param tokens as typed, in order
   */
  Documentation(List<Comment> comments, List<WallToken> tokens) {
    this.comments = comments;
    this.tokens = tokens;
  }

  /** The documentation before that keyword; to be asked in the order of the text. */
  Optional<String> before(WallToken keyword) {
    int index = keyword.getTokenIndex();
    int from = index == 0 ? 0 : tokens.get(index - 1).end();
    StringJoiner text = new StringJoiner("\n");
    boolean found = false;
    while (next < comments.size() && comments.get(next).range().start() < keyword.start()) {
      Comment comment = comments.get(next++);
      if (comment.documents() && comment.range().start() >= from) {
        found = true;
        text.add(withoutMarks(comment.text()));
      }
    }
    return found ? Optional.of(text.toString()) : Optional.empty();
  }

  private static String withoutMarks(String comment) {
    String text = comment.substring(3);
    return (text.startsWith(" ") ? text.substring(1) : text).stripTrailing();
  }
}
