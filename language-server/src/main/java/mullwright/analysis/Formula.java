package mullwright.analysis;

import mullwright.derivation.Derivation;
import mullwright.quantity.Kind;

/**
 * A formula as a reader sees it, with its source, ready to carry the numbers of one result.
 *
 * @param words right side of the formula; it names its inputs in the words their derivations bear
 * @param source publication with its clause, "closed form" or "common practice"
 */
public record Formula(String words, String source) {

  /** Rejects a formula that says nothing or stands on nobody's word. */
  public Formula {
    if (words.isBlank() || source.isBlank()) {
      throw new IllegalArgumentException("a formula needs words and a source");
    }
  }

  /**
   * The computed number together with how it came about.
   *
   * @param name what the number is, in the trade's words
   * @param si the number in SI base units
   * @param kind its kind, so its units
   * @param inputs the numbers put in, under the names the formula uses
   */
  public Derivation explain(String name, double si, Kind kind, Derivation... inputs) {
    return Derivation.computed(name, si, kind, words, source, inputs);
  }
}
