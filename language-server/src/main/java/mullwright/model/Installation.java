package mullwright.model;

import java.util.List;

/** How the wall is put up, by bay range, in the order written. */
public record Installation(List<Stretch> stretches) {
  public Installation {
    stretches = List.copyOf(stretches);
  }

  /** Pre-assembled frames, or piece by piece. */
  public enum Method {
    LADDER,
    STICK
  }

  /**
   * A stretch of bays.
   *
   * @param firstLine by index; {@code lastLine} by index
   * @param fromRight true if the work starts from the right
   */
  public record Stretch(
      Method method, int firstLine, int lastLine, boolean fromRight, Origin origin) {}
}
