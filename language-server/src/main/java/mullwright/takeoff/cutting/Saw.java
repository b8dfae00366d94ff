package mullwright.takeoff.cutting;

import mullwright.model.Fabrication;
import mullwright.quantity.Length;

/**
 * What cutting takes away.
 *
 * @param kerf lost at each cut
 * @param endTrim cut off each end of every bar, remnants too
 * @param leastDrop shortest rest worth keeping
 * @param piecesPerBar most pieces on a bar, 0 for any number
 */
public record Saw(Length kerf, Length endTrim, Length leastDrop, int piecesPerBar) {
  static Saw of(Fabrication fabrication) {
    return new Saw(
        fabrication.kerf().value(),
        fabrication.endTrim().value(),
        fabrication.leastDrop().value(),
        fabrication.piecesPerBar().map(most -> most.value()).orElse(0));
  }
}
