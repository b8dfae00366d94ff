package mullwright.syntax;

/**
 * A remark that ends a statement: {@code note "…"}, {@code verify "…"}, {@code hold "…"}.
 *
 * @param text what it says, without quotes
 */
public record Remark(Kind kind, Word text, TextRange range) {
  /** What the remark asks. */
  public enum Kind {
    /** Drawn on the sheet. */
    NOTE,
    /** A dimension to be taken in the field. */
    VERIFY,
    /** Not to be released. */
    HOLD
  }
}
