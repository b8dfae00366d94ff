package mullwright.review;

import java.util.List;
import java.util.Optional;
import mullwright.layout.PieceRef;
import mullwright.quantity.Length;

/**
 * A piece as the shop makes it: two pieces with equal {@link #make} are the same piece twice.
 *
 * @param ref which piece of its layout
 * @param mark its mark in its layout
 * @param name as the shop names it
 * @param make what it is
 */
public record PieceState(PieceRef ref, String mark, String name, Make make) {
  /**
   * What a piece is.
   *
   * @param part profile, glass, plate or cap
   * @param length cut length, or the width of glass
   * @param height of glass
   * @param fixed what is fixed to it and how high above its lower end, in order
   */
  public record Make(String part, Length length, Optional<Length> height, List<Station> fixed) {
    public Make {
      fixed = List.copyOf(fixed);
    }
  }

  /** Something fixed to a piece: how far from its datum, and what. */
  public record Station(Length at, String what) {}
}
