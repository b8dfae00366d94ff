package mullwright.takeoff;

import java.util.List;
import mullwright.layout.HolePlaces;
import mullwright.layout.WallLayout;

/**
 * Everything that is bought for a wall: bars, blocks, anchors, gaskets, glass, plates, caps and
 * what fixes them; by phase, then by face, in the order first met in the layout.
 *
 * <p>Net, and with the waste and the attic stock the project states. How many bars the cut lengths
 * take is nesting's business.
 */
public final class Takeoff {
  private Takeoff() {}

  /** The lines of a wall. */
  public static List<TakeoffLine> of(WallLayout layout, HolePlaces holes) {
    Tally tally = new Tally(layout.wall().fabrication());
    Faces faces = new Faces(layout);
    new FrameTakeoff(layout, holes, faces, tally).count();
    new AnchorTakeoff(layout, faces, tally).count();
    new WeatherTakeoff(layout, faces, tally).count();
    new GlassTakeoff(layout, faces, tally).count();
    return tally.lines(faces);
  }
}
