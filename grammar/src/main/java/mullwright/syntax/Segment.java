package mullwright.syntax;

import java.util.List;

/**
 * A stretch of a file that is read by itself: one top-level statement with the comments and blank
 * lines before it. All ranges inside count from the segment's own start, so an edit elsewhere
 * leaves it as it is.
 *
 * @param text its text
 * @param statements the top-level statements read from it, as a rule one
 * @param comments all comments in it, in order
 * @param problems what is wrong in it, in order
 */
public record Segment(
    String text, List<Statement> statements, List<Comment> comments, List<SyntaxProblem> problems) {
  public Segment {
    statements = List.copyOf(statements);
    comments = List.copyOf(comments);
    problems = List.copyOf(problems);
  }

  /**
   * True if something is wrong in the statement itself, its block left out: what it lacks may be
   * what could not be read, and is no second mistake.
   */
  public boolean isBroken(Statement statement) {
    int start = statement.range().start();
    int end =
        statement.block().map(block -> block.range().start() + 1).orElse(statement.range().end());
    for (SyntaxProblem problem : problems) {
      if (problem.range().start() < end && start < problem.range().end()) {
        return true;
      }
    }
    return false;
  }
}
