package mullwright.syntax;

import java.util.List;
import java.util.Optional;

/**
 * One statement: a keyword, what it speaks of, its clauses, and perhaps a block.
 *
 * @param kind what it says; {@link StatementKind#UNKNOWN} if the block does not know the keyword
 * @param keyword the first word as written
 * @param arguments what stands before the first clause, in the order written
 * @param clauses in the order written, whether they stood on the line or in braces
 * @param remarks note, verify, hold
 * @param block the block it opens, if it opens one
 * @param documentation the text of the {@code ///} comments right before it, without marks
 * @param range from the keyword to the last token, block included
 */
public record Statement(
    StatementKind kind,
    Word keyword,
    List<Argument> arguments,
    List<Clause> clauses,
    List<Remark> remarks,
    Optional<Block> block,
    Optional<String> documentation,
    TextRange range) {
  public Statement {
    arguments = List.copyOf(arguments);
    clauses = List.copyOf(clauses);
    remarks = List.copyOf(remarks);
  }

  /** The first clause of that word, if there is one. */
  public Optional<Clause> clause(ClauseWord word) {
    for (Clause clause : clauses) {
      if (clause.word() == word) {
        return Optional.of(clause);
      }
    }
    return Optional.empty();
  }

  /** The first argument of that form, if there is one. */
  public <A extends Argument> Optional<A> argument(Class<A> form) {
    for (Argument argument : arguments) {
      if (form.isInstance(argument)) {
        return Optional.of(form.cast(argument));
      }
    }
    return Optional.empty();
  }
}
