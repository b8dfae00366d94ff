package mullwright.derivation;

/**
 * On whose word a formula or a default stands: a publication with its clause, or "common practice".
 *
 * @param words as shown to the reader, never blank
 */
public record Source(String words) {
  public static final Source COMMON_PRACTICE = new Source("common practice");

  /**
   * Checks that there are words.
   *
   * @throws IllegalArgumentException if there are none
   */
  public Source {
    if (words.isBlank()) {
      throw new IllegalArgumentException("a source without words");
    }
  }
}
