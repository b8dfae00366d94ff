package mullwright.drawing.elevation;

import mullwright.drawing.Surface;

/** One kind of thing an elevation shows. */
interface ElevationPart {
  /** Paints it, in layers of its own. */
  void paint(Surface surface);
}
