package mullwright.workspace;

import mullwright.syntax.Clause;
import mullwright.syntax.Expression;
import mullwright.syntax.Remark;
import mullwright.syntax.Statement;
import mullwright.syntax.TextRange;
import mullwright.syntax.Word;

/** The smallest thing of the tree a cursor can be on. Ranges count from the segment's start. */
public sealed interface Leaf {
  /** Where it stands. */
  TextRange range();

  /** The first word of a statement. */
  record Keyword(Statement statement) implements Leaf {
    @Override
    public TextRange range() {
      return statement.keyword().range();
    }
  }

  /** The word or words that open a clause. */
  record ClauseHead(Clause clause, TextRange range) implements Leaf {}

  /** A name, or a word of a property. */
  record Name(Word word) implements Leaf {
    @Override
    public TextRange range() {
      return word.range();
    }
  }

  /** A number with its unit. */
  record Value(Expression.Literal literal) implements Leaf {
    @Override
    public TextRange range() {
      return literal.range();
    }
  }

  /** A count: how many times, how many of, every how many. */
  record Count(Expression.Literal literal) implements Leaf {
    @Override
    public TextRange range() {
      return literal.range();
    }
  }

  /** Text in quotes that is no name: a path, a title, a mark. */
  record Text(Word string) implements Leaf {
    @Override
    public TextRange range() {
      return string.range();
    }
  }

  /** Note, verify or hold, with its text. */
  record Remarked(Remark remark) implements Leaf {
    @Override
    public TextRange range() {
      return remark.range();
    }
  }
}
