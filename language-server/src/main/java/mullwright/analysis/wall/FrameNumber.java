package mullwright.analysis.wall;

import java.util.Optional;
import java.util.function.Supplier;
import mullwright.derivation.Derivation;
import mullwright.quantity.Kind;

/**
 * One number of a member, splice or anchor, with its limit if it has one.
 *
 * @param what what it is, {@code bending stress}
 * @param piece whose it is, as the shop names it
 * @param value in SI base units
 * @param kind its kind
 * @param limit what it may be at most, in the same unit
 * @param loads the case that governs, or "" where none does
 * @param measured the number with how it came about, written when asked for
 * @param allowed the limit with how it came about, written when asked for
 */
public record FrameNumber(
    String what,
    String piece,
    double value,
    Kind kind,
    Optional<Double> limit,
    String loads,
    Supplier<Derivation> measured,
    Optional<Supplier<Derivation>> allowed) {

  static FrameNumber free(
      String what,
      String piece,
      double value,
      Kind kind,
      String loads,
      Supplier<Derivation> measured) {
    return new FrameNumber(
        what, piece, value, kind, Optional.empty(), loads, measured, Optional.empty());
  }

  static FrameNumber held(
      String what,
      String piece,
      double value,
      double limit,
      Kind kind,
      String loads,
      Supplier<Derivation> measured,
      Supplier<Derivation> allowed) {
    return new FrameNumber(
        what, piece, value, kind, Optional.of(limit), loads, measured, Optional.of(allowed));
  }

  /** Share of the limit that is used; of a number without one its size. */
  public double severity() {
    return limit.map(most -> value / most).orElse(value);
  }
}
