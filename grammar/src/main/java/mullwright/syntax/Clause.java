package mullwright.syntax;

import java.util.List;
import java.util.Optional;

/**
 * One clause of a statement: a closed word and what follows it. One record per form; {@link #word}
 * tells which clause it is.
 */
public sealed interface Clause {
  /** Which clause. */
  ClauseWord word();

  /** From the clause word to the last token of the clause. */
  TextRange range();

  /** {@code at PLACE} and {@code at PLACE to PLACE} (a sloped row: left end, right end). */
  record At(ClauseWord word, List<Place> places, Optional<Place> to, TextRange range)
      implements Clause {
    public At {
      places = List.copyOf(places);
    }
  }

  /** {@code from PLACE to PLACE}. */
  record Extent(ClauseWord word, Place from, Place to, TextRange range) implements Clause {}

  /** {@code spaced 1200, 4 @ b, 75} and {@code spaced 7 equal in 30'-0"}. */
  record Spaced(ClauseWord word, List<Step> steps, TextRange range) implements Clause {
    public Spaced {
      steps = List.copyOf(steps);
    }

    /**
     * One or more equal spaces.
     *
     * @param count how many, empty for one
     * @param equal true for {@code N equal in LENGTH}: {@code length} is their total
     * @param length one space, or the total
     */
    public record Step(
        Optional<Expression.Literal> count, boolean equal, Expression length, TextRange range) {}
  }

  /** A word followed by one name: {@code as}, {@code part}, {@code with}, {@code spread by} … */
  record Named(ClauseWord word, Word name, TextRange range) implements Clause {}

  /** A word followed by a selection: {@code bays}, {@code rows}, {@code lines}, {@code only} … */
  record Selecting(ClauseWord word, Selection selection, TextRange range) implements Clause {}

  /**
   * A word followed by a value, perhaps with a direction: {@code gap 5/8"}, {@code offset 1 1/2"
   * right}, {@code edge 300 behind glass}.
   *
   * @param direction the word after the value ({@code right}, {@code left}, {@code behind}, {@code
   *     before} …), if any
   */
  record Valued(ClauseWord word, Expression value, Optional<Word> direction, TextRange range)
      implements Clause {}

  /** {@code bolted 2 x hex-half}. */
  record Counted(ClauseWord word, Expression.Literal count, Word name, TextRange range)
      implements Clause {}

  /**
   * A word or word pair that says all by itself: {@code by others}, {@code mirrored}, {@code edge}.
   */
  record Flag(ClauseWord word, TextRange range) implements Clause {}

  /** The point loads of a bracket: {@code 150 N down at 600 out, 900 N out}. */
  record Loads(ClauseWord word, List<Load> loads, TextRange range) implements Clause {
    public Loads {
      loads = List.copyOf(loads);
    }

    /**
     * One force.
     *
     * @param direction {@code down}, {@code up}, {@code in}, {@code out}, {@code left}, {@code
     *     right}
     * @param arm its distance from the face, if stated, and which way
     */
    public record Load(
        Expression force, Word direction, Optional<Expression> arm, Optional<Word> armDirection) {}
  }
}
