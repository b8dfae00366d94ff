package mullwright.check;

import mullwright.analysis.wall.WallAnalysis;
import mullwright.layout.WallLayout;
import mullwright.model.Catalog;
import mullwright.model.Wall;

/**
 * What a rule about a wall may look at.
 *
 * @param text the text it was read from
 * @param layout where everything is
 * @param analysis what wind, weight, heat and movement do to it; computed when first asked
 */
public record WallFacts(TextFacts text, WallLayout layout, WallAnalysis analysis) {
  /** The wall as the text says it. */
  public Wall wall() {
    return layout.wall();
  }

  /** The parts it may name. */
  public Catalog catalog() {
    return layout.catalog();
  }
}
