package mullwright.syntax;

import java.util.List;

/**
 * A mistake in the text, as raw facts; the rule {@code unreadable} puts it into words.
 *
 * <p>One mistake gives one problem.
 */
public sealed interface SyntaxProblem {
  /** Where it is; never empty except at the end of the text. */
  TextRange range();

  /** Something stands where something else should; {@code expected} in words a drafter knows. */
  record Unexpected(String found, List<String> expected, String inside, TextRange range)
      implements SyntaxProblem {
    public Unexpected {
      expected = List.copyOf(expected);
    }
  }

  /**
   * A slip of the pen that shows what was meant.
   *
   * @param found what stands there
   * @param meant what may be meant in its place, best first; of a comma, what may be meant instead
   * @param inside the statement's word
   */
  record Garbled(How how, String found, List<String> meant, String inside, TextRange range)
      implements SyntaxProblem {
    public Garbled {
      meant = List.copyOf(meant);
    }

    /** What happened to it. */
    public enum How {
      MISSPELT,
      RUN_TOGETHER,
      /** A word before it is missing. */
      WORD_LEFT_OUT,
      /** A comma before it is missing. */
      COMMA_LEFT_OUT,
      /** The {@code ..} before it is missing. */
      RANGE_LEFT_OUT,
      /** A word or a dash stands in place of {@code ..}. */
      RANGE_IN_WORDS,
      /** One of the two; only the drafter can tell which. */
      COMMA_OR_RANGE_LEFT_OUT,
      /** One of the two; only the drafter can tell which. */
      WORD_OR_COMMA_LEFT_OUT
    }
  }

  /** The first word of a line is none the block knows; nearest known words first. */
  record UnknownKeyword(Word word, BlockKind block, List<String> known, TextRange range)
      implements SyntaxProblem {
    public UnknownKeyword {
      known = List.copyOf(known);
    }
  }

  /** A clause the statement does not take. */
  record ClauseNotTaken(StatementKind statement, ClauseWord clause, TextRange range)
      implements SyntaxProblem {}

  /** A clause given twice in one statement. */
  record ClauseTwice(ClauseWord clause, TextRange first, TextRange range)
      implements SyntaxProblem {}

  /** A block that may not stand here, or a statement that takes no block. */
  record BlockNotTaken(Word keyword, TextRange range) implements SyntaxProblem {}

  /**
   * A line that opens a block lacks its opening brace.
   *
   * @param heading the line as written, up to where the brace should stand
   * @param alone false if the block follows, which is read as if the brace stood there; true if
   *     nothing follows that could be meant
   */
  record BraceMissing(String heading, boolean alone, TextRange range) implements SyntaxProblem {}

  /**
   * A closing brace too many; what follows is read as if it did not stand there.
   *
   * @param block the first word of the block it would close too early; empty if none is open
   */
  record BraceExtra(String block, TextRange range) implements SyntaxProblem {}

  /** An opening brace right after another; it is read as if it did not stand there. */
  record BraceTwice(TextRange range) implements SyntaxProblem {}

  /** {@code 5'-6}: feet and a number without its inch mark. */
  record InchMarkMissing(String literal, TextRange range) implements SyntaxProblem {}

  /** {@code a -b}: a minus with a space on one side only. */
  record MinusUnclear(String asLiteral, String asMinus, TextRange range) implements SyntaxProblem {}

  /** {@code 1,200}: a comma between two digits. */
  record CommaBetweenDigits(String asOne, String asTwo, TextRange range) implements SyntaxProblem {}

  /** A number after a name without a word between. */
  record BareNumber(String number, TextRange range) implements SyntaxProblem {}

  /**
   * Braces without the word that says what they hold, which is told by what stands in them.
   *
   * @param word the word
   * @param range the opening brace
   */
  record BlockWordMissing(String word, TextRange range) implements SyntaxProblem {}

  /**
   * A block that does not end.
   *
   * @param block the first word of the line that opens it
   * @param end where its last line ends, as it is read
   * @param range its opening brace
   */
  record BlockNotClosed(String block, int end, TextRange range) implements SyntaxProblem {}

  /** A string, comment or parenthesis that does not end. */
  record NotClosed(What what, TextRange range) implements SyntaxProblem {
    /** What is open. */
    public enum What {
      STRING,
      COMMENT,
      PARENTHESIS
    }
  }

  /** A character the language has no use for. */
  record StrayCharacter(String character, TextRange range) implements SyntaxProblem {}

  /** A named limit was passed (nesting, size, number of problems). */
  record TooMuch(String limit, long allowed, TextRange range) implements SyntaxProblem {}
}
