package mullwright.analysis.wall;

import java.util.function.Function;
import java.util.function.Supplier;
import mullwright.derivation.Derivation;
import mullwright.quantity.Kind;

/**
 * Bending of a member at one place held against what it may take there.
 *
 * @param limit what is held against
 * @param peak the moment about the strong axis, where it is and in which case
 * @param demand stress [Pa], moment [N·m] or share, as {@code kind} says
 * @param capacity the same, allowed
 * @param unbraced unbraced length of the compressed flange [m]; 0 where it does not matter
 * @param outside true if the outer flange is the compressed one
 * @param of what bends: the profile's name, or that of the reinforcement
 * @param measured the demand with how it came about, written when asked for, the moments told by
 *     the member's own trace
 * @param allowed the capacity with how it came about, written when asked for
 */
public record BendingCheck(
    Limit limit,
    SolvedBeam.Peak peak,
    Kind kind,
    double demand,
    double capacity,
    double unbraced,
    boolean outside,
    String of,
    Function<BendingTrace, Derivation> measured,
    Supplier<Derivation> allowed) {

  /** What bending is held against. */
  public enum Limit {
    /** Stress at the outermost fibre, against yield and rupture. */
    FIBRE,
    /** Moment, against buckling sideways between braces. */
    BUCKLING,
    /** Stress in the reinforcement, against its yield. */
    REINFORCEMENT
  }

  /** Demand over capacity; more than 1 is too much. */
  public double utilisation() {
    return demand / capacity;
  }

  /** True if it is too much; equal to the last digit is not. */
  public boolean passed() {
    return utilisation() > 1 + 1e-9;
  }
}
