package mullwright.drawing.elevation;

import java.util.List;
import mullwright.drawing.Keynote;
import mullwright.drawing.Labels;
import mullwright.drawing.Scale;
import mullwright.quantity.UnitSystem;

/**
 * How an elevation is wanted.
 *
 * @param scale on paper
 * @param units of its figures
 * @param labels marks and places in the text
 * @param keynotes of findings; each stands at its pieces
 * @param marked false to leave out the words in lites and the marks beside members
 */
public record ElevationOptions(
    Scale scale, UnitSystem units, Labels labels, List<Keynote> keynotes, boolean marked) {
  public ElevationOptions {
    keynotes = List.copyOf(keynotes);
  }

  /** At 1/4" = 1'-0" or 1:50, without keynotes. */
  public static ElevationOptions of(UnitSystem units, Labels labels) {
    Scale scale = units == UnitSystem.US ? Scale.read("1/4\"").orElseThrow() : Scale.of(50);
    return new ElevationOptions(scale, units, labels, List.of(), true);
  }

  /** The same at another scale. */
  public ElevationOptions at(Scale other) {
    return new ElevationOptions(other, units, labels, keynotes, marked);
  }

  /** The same with keynotes. */
  public ElevationOptions with(List<Keynote> others) {
    return new ElevationOptions(scale, units, labels, others, marked);
  }

  /** The same without words in lites and marks beside members, for who sees it from afar. */
  public ElevationOptions unmarked() {
    return new ElevationOptions(scale, units, labels, keynotes, false);
  }
}
