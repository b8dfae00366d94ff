package mullwright.syntax;

import java.util.List;
import java.util.Optional;

/**
 * Which of the named things are meant: {@code B..F}, {@code A, G}, {@code all except C}, {@code
 * 1..19 every 2}.
 *
 * @param all true for the word {@code all} (then {@code items} is empty)
 * @param items the names and ranges, in the order written
 * @param except what is taken out again, empty if nothing
 * @param every keep each n-th of what {@code items} (or {@code all}) names, counted from the first
 * @param range the whole
 */
public record Selection(
    boolean all,
    List<Item> items,
    List<Item> except,
    Optional<Expression.Literal> every,
    TextRange range) {
  public Selection {
    items = List.copyOf(items);
    except = List.copyOf(except);
  }

  /**
   * One name, or a range from a name to a name.
   *
   * @param first the name, or the range's first
   * @param last the range's last, or null for a single name
   */
  public record Item(Word first, Word last) {
    /** Where it stands. */
    public TextRange range() {
      return last == null ? first.range() : first.range().to(last.range());
    }

    /** True for {@code first..last}. */
    public boolean isRange() {
      return last != null;
    }
  }
}
