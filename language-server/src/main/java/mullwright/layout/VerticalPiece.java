package mullwright.layout;

import mullwright.model.Origin;
import mullwright.model.Part;
import mullwright.quantity.Length;

/**
 * One length of a vertical, between splices.
 *
 * @param index in {@link WallLayout#verticals()}
 * @param line grid line, by index
 * @param run index in the model's verticals of the run it is cut from
 * @param ordinal which length of the run, 0 lowest
 * @param lengths how many lengths the run has
 * @param x centre line
 * @param bottom lower end, {@code top} upper end (cut ends, half a gap away from a splice's place)
 * @param spliceBelow index in {@link WallLayout#splices()} of the joint at its lower end, or -1
 * @param spliceAbove the same at its upper end
 * @param bayLeft true if there is a bay on its left over some of its height, {@code bayRight} on
 *     its right; one alone makes it an end member
 * @param name as the shop names it: {@code vertical C, upper length, L2 to Roof}
 * @param origin the statement that made it
 */
public record VerticalPiece(
    int index,
    int line,
    int run,
    int ordinal,
    int lengths,
    Part.Profile profile,
    Length x,
    Length bottom,
    Length top,
    int spliceBelow,
    int spliceAbove,
    boolean bayLeft,
    boolean bayRight,
    String name,
    Origin origin) {
  /** Cut length. */
  public Length length() {
    return top.minus(bottom);
  }

  /** True if glass stands on one side only. */
  public boolean endMember() {
    return bayLeft != bayRight;
  }
}
