package mullwright.syntax;

import java.util.List;

/** What stands between a statement's keyword and its first clause. */
public sealed interface Argument {
  /** Where it stands. */
  TextRange range();

  /** A name: of a wall, a row, a part, a glass. */
  record Name(Word word) implements Argument {
    @Override
    public TextRange range() {
      return word.range();
    }
  }

  /** Text in quotes: a path, a project's name. */
  record Text(Word string) implements Argument {
    @Override
    public TextRange range() {
      return string.range();
    }
  }

  /** A value: a {@code let}'s, a slab depth, a corner's angle. */
  record Value(Expression expression) implements Argument {
    @Override
    public TextRange range() {
      return expression.range();
    }
  }

  /** Lines, floors, rows: which are meant. */
  record Select(Selection selection) implements Argument {
    @Override
    public TextRange range() {
      return selection.range();
    }
  }

  /**
   * One comma-separated phrase of a property: values, words and texts in the order written. {@code
   * 32 psf in} is a value and a word; {@code -10 F to 150 F} is value, word, value.
   */
  record Phrase(List<Part> parts, TextRange range) implements Argument {
    public Phrase {
      parts = List.copyOf(parts);
    }

    /** One member of a phrase. */
    public sealed interface Part {
      /** Where it stands. */
      TextRange range();

      /** A value. A lone name is a {@link Plain}, never a reference. */
      record Measured(Expression expression) implements Part {
        @Override
        public TextRange range() {
          return expression.range();
        }
      }

      /** A word or name. */
      record Plain(Word word) implements Part {
        @Override
        public TextRange range() {
          return word.range();
        }
      }

      /** Text in quotes. */
      record Quoted(Word string) implements Part {
        @Override
        public TextRange range() {
          return string.range();
        }
      }
    }
  }
}
