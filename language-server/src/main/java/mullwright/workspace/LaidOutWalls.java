package mullwright.workspace;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import mullwright.analysis.wall.WallAnalysis;
import mullwright.check.TextFacts;
import mullwright.check.WallFacts;
import mullwright.layout.LayoutBuilder;
import mullwright.layout.WallLayout;
import mullwright.model.Model;
import mullwright.model.Wall;

/**
 * The walls of one reading, each laid out and analysed when first asked for; what an earlier
 * reading made of the very same wall is taken over.
 *
 * <p>Not safe for several threads: its reading asks one at a time.
 */
final class LaidOutWalls {
  private final Model model;
  private final Memory memory;
  private final Map<Wall, WallFacts> sought = new IdentityHashMap<>();
  private final Map<Wall, WallLayout> layouts = new IdentityHashMap<>();
  private final Map<Wall, WallFacts> facts = new IdentityHashMap<>();
  private List<WallFacts> before;

  /**
   * @param before what the last reading made of its walls
   */
  LaidOutWalls(Model model, Memory memory, List<WallFacts> before) {
    this.model = model;
    this.memory = memory;
    this.before = before;
  }

  /** What there is for the next reading to take over. */
  List<WallFacts> known() {
    List<WallFacts> known = new ArrayList<>(facts.values());
    known.addAll(before);
    return known;
  }

  WallLayout layout(Wall wall) {
    WallLayout layout = layouts.get(wall);
    if (layout == null) {
      letGo();
      WallFacts same = same(wall);
      layout = same != null ? same.layout() : LayoutBuilder.layOut(wall, model.catalog());
      layouts.put(wall, layout);
    }
    return layout;
  }

  /**
   * A wall with what nature does to it.
   *
   * @param text it was read from, now
   */
  WallFacts facts(Wall wall, TextFacts text) {
    WallFacts known = facts.get(wall);
    if (known == null) {
      WallLayout layout = layout(wall);
      WallFacts same = same(wall);
      WallAnalysis analysis =
          same != null ? same.analysis() : WallAnalysis.of(layout, memory.beams(), memory.glass());
      known = new WallFacts(text, layout, analysis);
      facts.put(wall, known);
      // what it was taken over from would keep an older text alive
      sought.put(wall, known);
      before = before.stream().filter(other -> other != same).toList();
    }
    return known;
  }

  /** Lets go of what no wall takes over: it would be kept alive while its successor is computed. */
  void letGo() {
    Set<WallFacts> taken = Collections.newSetFromMap(new IdentityHashMap<>());
    for (Wall wall : model.walls()) {
      taken.add(same(wall));
    }
    before = before.stream().filter(taken::contains).toList();
  }

  /** Lets go of all. */
  void forget() {
    before = List.of();
    sought.clear();
    layouts.clear();
    facts.clear();
  }

  /** What an earlier reading made of the very same wall, or null; two walls are compared once. */
  private WallFacts same(Wall wall) {
    if (!sought.containsKey(wall)) {
      WallFacts same = null;
      for (WallFacts known : before) {
        if (known.catalog() == model.catalog() && memory.isSame(known.wall(), wall)) {
          same = known;
          break;
        }
      }
      sought.put(wall, same);
    }
    return sought.get(wall);
  }
}
