package mullwright.takeoff;

import mullwright.quantity.Length;

/** Cuts gaskets long, so that they are crowded in and do not shrink back from the corners. */
public final class Gaskets {
  /** Edges of an opening. */
  static final int EDGES = 4;

  private static final long EIGHTHS_CUT = 97;
  private static final long EIGHTHS_IN_A_FOOT = 96;

  private Gaskets() {}

  /** Cut length for an edge of a daylight opening: 1/8" a foot longer (common practice). */
  public static Length cut(Length edge) {
    return edge.scaled(EIGHTHS_CUT, EIGHTHS_IN_A_FOOT);
  }
}
