package mullwright.analysis.beam;

import java.util.List;

/**
 * A straight run of member with its rigidity, supports and hinges; the load stands apart.
 *
 * <p>Places are measured along the run from any origin, increasing from {@code start} to {@code
 * end}. Lists may be in any order.
 *
 * @param start first end [m]
 * @param end last end [m], greater than {@code start}
 * @param stretches flexural rigidity; where stretches overlap their rigidities add, as for a
 *     mullion and its reinforcement bent to the same curve
 * @param supports what holds the run sideways
 * @param hinges splices: shear passes, moment does not
 */
public record Beam(
    double start, double end, List<Stretch> stretches, List<Support> supports, List<Hinge> hinges) {

  /** Keeps its own copies of the lists. */
  public Beam {
    stretches = List.copyOf(stretches);
    supports = List.copyOf(supports);
    hinges = List.copyOf(hinges);
  }

  /** A run of one rigidity [N·m²] from end to end. */
  public static Beam uniform(
      double start, double end, double rigidity, List<Support> supports, List<Hinge> hinges) {
    return new Beam(start, end, List.of(new Stretch(start, end, rigidity)), supports, hinges);
  }

  /**
   * Part of the run over which something of constant rigidity bends along.
   *
   * @param from first end [m]
   * @param to last end [m]
   * @param rigidity EI about the axis of bending [N·m²], 0 or more
   */
  public record Stretch(double from, double to, double rigidity) {}

  /**
   * A place held sideways; it does not restrain rotation.
   *
   * @param at place [m]
   * @param stiffness lateral stiffness [N/m]; {@link Double#POSITIVE_INFINITY} for a pin
   */
  public record Support(double at, double stiffness) {

    /** A support that does not give. */
    public static Support pin(double at) {
      return new Support(at, Double.POSITIVE_INFINITY);
    }
  }

  /**
   * A joint that passes shear and no moment.
   *
   * @param at place [m]
   */
  public record Hinge(double at) {}
}
