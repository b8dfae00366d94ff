package mullwright.analysis.beam;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A part of a {@link Beam} that can move without bending, and how.
 *
 * @param from first end of the part [m]
 * @param to last end of the part [m]
 * @param firstSegment number of its first segment, counted from 1 at the start; a segment runs from
 *     hinge to hinge
 * @param lastSegment number of its last segment
 * @param looseHinges places of the hinges inside it that can move [m]
 * @param heldAt places in it that stay put [m]: its supports, and a hinge at its end that a stable
 *     neighbour holds
 * @param degrees number of independent motions, 1 or more
 */
public record MovingStretch(
    double from,
    double to,
    int firstSegment,
    int lastSegment,
    List<Double> looseHinges,
    List<Double> heldAt,
    int degrees) {

  /** Keeps its own copies of the lists. */
  public MovingStretch {
    looseHinges = List.copyOf(looseHinges);
    heldAt = List.copyOf(heldAt);
  }

  /** How the part moves. */
  public Motion motion() {
    if (!looseHinges.isEmpty()) {
      return Motion.FOLDS;
    }
    return heldAt.isEmpty() ? Motion.DRIFTS : Motion.SWINGS;
  }

  /** The motion in one sentence, places in metres. */
  public String sentence() {
    String part =
        (firstSegment == lastSegment
                ? "segment " + firstSegment
                : "segments " + firstSegment + " to " + lastSegment)
            + " (from "
            + metres(from)
            + " to "
            + metres(to)
            + " m)";
    String held = heldAt.isEmpty() ? "nothing holds it" : "it is held only at " + places(heldAt);
    if (motion() == Motion.FOLDS) {
      String hinges = (looseHinges.size() == 1 ? "the hinge at " : "the hinges at ");
      return part + " can fold at " + hinges + places(looseHinges) + ": " + held + ".";
    }
    return motion() == Motion.SWINGS
        ? part + " can swing: " + held + "."
        : part + " has no support: " + held + ".";
  }

  private static String places(List<Double> places) {
    return places.stream().map(MovingStretch::metres).collect(Collectors.joining(", ")) + " m";
  }

  private static String metres(double place) {
    return BigDecimal.valueOf(place).setScale(3, RoundingMode.HALF_EVEN).toPlainString();
  }

  /** Kinds of motion. */
  public enum Motion {
    /** Nothing holds the part: it can shift and turn. */
    DRIFTS,
    /** The part turns about the one place that holds it. */
    SWINGS,
    /** The part folds at hinges that nothing holds. */
    FOLDS
  }
}
