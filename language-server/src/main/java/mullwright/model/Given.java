package mullwright.model;

/**
 * A value with where it comes from: stated in the text, or taken as a default with its source.
 *
 * @param value never null
 * @param origin where it is stated; for a default, the statement it was taken for
 * @param assumed true for a default
 * @param source of a default: publication, or "common practice"; empty if stated
 */
public record Given<T>(T value, Origin origin, boolean assumed, String source) {
  /** A value the text states. */
  public static <T> Given<T> stated(T value, Origin origin) {
    return new Given<>(value, origin, false, "");
  }

  /** A default, with its source. */
  public static <T> Given<T> assumed(T value, Origin takenFor, String source) {
    return new Given<>(value, takenFor, true, source);
  }
}
