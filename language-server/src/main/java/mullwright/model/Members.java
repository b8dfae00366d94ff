package mullwright.model;

import java.util.List;
import java.util.Optional;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;

/**
 * What stands on lines and rows, patterns and exceptions resolved: one entry a thing.
 *
 * <p>{@code origin} of each is the statement that won.
 */
public record Members(
    List<Vertical> verticals,
    List<Horizontal> horizontals,
    List<Splice> splices,
    List<Reinforce> reinforcements,
    List<Bracket> brackets) {
  public Members {
    verticals = List.copyOf(verticals);
    horizontals = Repeated.unchanging(horizontals);
    splices = Repeated.unchanging(splices);
    reinforcements = List.copyOf(reinforcements);
    brackets = List.copyOf(brackets);
  }

  /** How many splices each line has. */
  public int[] splicesByLine(int lines) {
    int[] counts = new int[lines];
    if (splices instanceof Repeated<Splice> repeated) {
      repeated.eachNumber(0, line -> counts[line]++);
    } else {
      splices.forEach(splice -> counts[splice.line()]++);
    }
    return counts;
  }

  /**
   * A run of vertical on a line.
   *
   * @param line by index; ascending in the list, then from below
   * @param from stated lower place, empty for full height; {@code to} stated upper place
   */
  public record Vertical(
      int line, Given<String> profile, Optional<Height> from, Optional<Height> to, Origin origin) {}

  /**
   * A horizontal in one bay.
   *
   * @param row by index
   * @param bay by index
   */
  public record Horizontal(int row, int bay, Given<String> profile, Origin origin) {
    /** Which of the numbers of a repeated one are these. */
    static final int ROW = 0;

    static final int BAY = 1;
  }

  /** A splice of a line: the centre of the open joint. */
  public record Splice(
      int line, Height at, Given<Length> gap, Optional<Given<String>> sleeve, Origin origin) {}

  /** Reinforcement in a line's vertical. */
  public record Reinforce(
      int line,
      Given<String> part,
      Optional<Height> from,
      Optional<Height> to,
      Optional<Given<String>> isolation,
      Origin origin) {}

  /** A bracket on a line with its forces. */
  public record Bracket(
      int line, Height at, List<Load> loads, Optional<Fixing> bolted, Origin origin) {
    public Bracket {
      loads = List.copyOf(loads);
    }
  }

  /** A force of a bracket: its direction word and its arm out from the face. */
  public record Load(Given<Quantity> force, String direction, Optional<Given<Length>> arm) {}

  /** So many of a fastener. */
  public record Fixing(int count, Given<String> fastener) {}
}
