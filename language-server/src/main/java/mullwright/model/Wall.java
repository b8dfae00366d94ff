package mullwright.model;

import java.util.List;
import java.util.Optional;

/**
 * One wall, all names found and all patterns laid out.
 *
 * @param origin where its name stands
 * @param system the system it is made of; empty if it names none that exists
 * @param finish by side: {@code outside}, {@code inside}, or "" for all
 * @param criteria the project's, with the wall's own put over them
 * @param anchors by line, then from below
 * @param lites by bay, then from below; a cell nothing fills has none
 */
public record Wall(
    String name,
    Origin origin,
    Optional<Part.WallSystem> system,
    java.util.Map<String, Given<String>> finish,
    Criteria criteria,
    Fabrication fabrication,
    Grid grid,
    Members members,
    List<AnchorUse> anchors,
    List<LiteUse> lites,
    Installation installation) {
  public Wall {
    finish = java.util.Map.copyOf(finish);
    anchors = Repeated.unchanging(anchors);
    lites = Repeated.unchanging(lites);
  }
}
