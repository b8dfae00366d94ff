package mullwright.report;

import java.util.List;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;

/** One cell of a table: an exact value. How it is rounded and printed is the column's business. */
public sealed interface Entry {
  /** Nothing to tell. */
  Entry NONE = new None();

  /** Nothing to tell. */
  record None() implements Entry {}

  /** Words, a name, a mark. */
  record Text(String text) implements Entry {}

  /** Several names; a table for people shows the first and how many more. */
  record Names(List<String> names) implements Entry {
    public Names {
      names = List.copyOf(names);
    }
  }

  /** Several short phrases; a table for people shows all and breaks lines between them only. */
  record Phrases(List<String> phrases) implements Entry {
    public Phrases {
      phrases = List.copyOf(phrases);
    }
  }

  /** So many. */
  record Count(long count) implements Entry {}

  /** A length. */
  record Size(Length length) implements Entry {}

  /** Width by height. */
  record Rectangle(Length width, Length height) implements Entry {}

  /** An area or a mass. */
  record Amount(Quantity quantity) implements Entry {}

  /** That text. */
  static Entry text(String text) {
    return text.isEmpty() ? NONE : new Text(text);
  }
}
