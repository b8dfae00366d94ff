package mullwright.installation;

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
 */
public record WorkStep(
    int index, WorkKind kind, int place, Length height, String what, Origin origin) {}
