package mullwright.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.layout.DrilledHole;
import mullwright.layout.HoleSide;
import mullwright.quantity.Length;

/**
 * Holes of a piece at one place: one, or one in each of its two walls.
 *
 * @param side of the wall: left, right, left and right, or through both in one line
 * @param along from the piece's lower or left end
 * @param back from the glass's outer face; empty if nobody states it
 * @param diameter empty if the part states no pattern
 * @param count how many holes; 0 if the part is there and states no pattern
 */
public record TicketHole(
    DrilledHole.Purpose purpose,
    String part,
    String side,
    Length along,
    Optional<Length> back,
    Optional<Length> diameter,
    Optional<String> fastener,
    int count) {
  private static final String BOTH = "left and right";

  /** Holes in their order along a piece, with what is alike left and right put together. */
  static List<TicketHole> of(List<DrilledHole> holes) {
    List<TicketHole> told = new ArrayList<>();
    for (DrilledHole hole : holes) {
      TicketHole one =
          new TicketHole(
              hole.purpose(),
              hole.part(),
              hole.purpose() == DrilledHole.Purpose.WEEP ? "upper" : hole.side().words(),
              hole.along(),
              hole.back(),
              hole.diameter(),
              hole.fastener(),
              hole.count());
      int left = hole.side() == HoleSide.RIGHT ? told.indexOf(one.on(HoleSide.LEFT.words())) : -1;
      if (left >= 0) {
        told.set(left, one.both());
      } else {
        told.add(one);
      }
    }
    return told;
  }

  private TicketHole on(String other) {
    return new TicketHole(purpose, part, other, along, back, diameter, fastener, count);
  }

  private TicketHole both() {
    return new TicketHole(purpose, part, BOTH, along, back, diameter, fastener, 2 * count);
  }
}
