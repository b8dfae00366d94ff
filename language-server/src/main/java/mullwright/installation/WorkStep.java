package mullwright.installation;

import java.util.List;
import mullwright.layout.PieceRef;
import mullwright.model.Origin;
import mullwright.quantity.Length;

/**
 * A step of the work.
 *
 * @param index in {@link WorkGraph#steps()}
 * @param place its place along the wall in the direction of the work; steps of an earlier stretch
 *     have a lower one
 * @param height of its lower end, which decides between steps of one place
 * @param what what is set, as the shop names it
 * @param origin the statement that asks for it
 * @param pieces of the layout it is about; none if it is about the whole wall
 */
public record WorkStep(
    int index,
    WorkKind kind,
    int place,
    Length height,
    String what,
    Origin origin,
    List<PieceRef> pieces) {
  public WorkStep {
    pieces = List.copyOf(pieces);
  }
}
