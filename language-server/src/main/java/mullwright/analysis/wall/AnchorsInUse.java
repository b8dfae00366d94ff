package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.WallLayout;
import mullwright.model.AnchorUse;
import mullwright.model.Origin;
import mullwright.model.Wall;

/** The anchors and clips of a wall by what mends ask of them. */
public final class AnchorsInUse {
  private final Map<Origin, List<PlacedAnchor>> byStatement = new HashMap<>();
  private final Map<Origin, Integer> counts = new HashMap<>();
  private final Map<Kind, TreeMap<Integer, AnchorUse>> byKind = new HashMap<>();
  private final Set<String> spreadPlates = new HashSet<>();
  private final Set<String> isolations = new HashSet<>();

  /** A kind of anchor at a floor, by index; -1 for wherever it is. */
  private record Kind(AnchorUse.Kind kind, int floor) {}

  /**
   * Of a wall, or of a portion of it.
   *
   * @param whole the whole wall: that of the layout, if it is of no portion
   */
  AnchorsInUse(WallLayout layout, Wall whole) {
    for (PlacedAnchor anchor : layout.anchors()) {
      byStatement.computeIfAbsent(anchor.use().origin(), origin -> new ArrayList<>()).add(anchor);
    }
    boolean portion = whole != layout.wall();
    byStatement.forEach((statement, placed) -> counts.put(statement, portion ? 0 : placed.size()));
    for (AnchorUse use : whole.anchors()) {
      if (portion) {
        counts.merge(use.origin(), 1, Integer::sum);
      }
      first(new Kind(use.kind(), -1), use);
      use.floor().ifPresent(floor -> first(new Kind(use.kind(), floor), use));
      use.spread().ifPresent(given -> spreadPlates.add(given.value()));
      use.isolation().ifPresent(given -> isolations.add(given.value()));
    }
  }

  private void first(Kind kind, AnchorUse use) {
    byKind.computeIfAbsent(kind, key -> new TreeMap<>()).putIfAbsent(use.line(), use);
  }

  /**
   * Those a statement makes, by line, then from below.
   *
   * @throws OnlyOfWhole if some of them stand outside the portion this is of
   */
  public List<PlacedAnchor> of(Origin statement) {
    List<PlacedAnchor> placed = byStatement.getOrDefault(statement, List.of());
    if (placed.size() < count(statement)) {
      throw new OnlyOfWhole("the anchors of a statement");
    }
    return placed;
  }

  /** How many a statement makes in the whole wall. */
  public int count(Origin statement) {
    return counts.getOrDefault(statement, 0);
  }

  /** The one of a kind nearest to a line, the left and lowest of two. */
  public Optional<AnchorUse> nearest(AnchorUse.Kind kind, int line) {
    return nearest(new Kind(kind, -1), line);
  }

  /** The one of a kind nearest to a line at a floor; elsewhere if there is none at that floor. */
  public Optional<AnchorUse> nearest(AnchorUse.Kind kind, int line, int floor) {
    return nearest(new Kind(kind, floor), line).or(() -> nearest(kind, line));
  }

  private Optional<AnchorUse> nearest(Kind kind, int line) {
    TreeMap<Integer, AnchorUse> uses = byKind.getOrDefault(kind, new TreeMap<>());
    Integer left = uses.floorKey(line);
    Integer right = uses.ceilingKey(line);
    if (left == null || right == null) {
      return Optional.ofNullable(left == null ? right : left).map(uses::get);
    }
    return Optional.of(uses.get(line - left <= right - line ? left : right));
  }

  /** Whether a line hangs from that floor. */
  public boolean hangsAt(int floor) {
    return byKind.containsKey(new Kind(AnchorUse.Kind.DEAD_LOAD, floor));
  }

  /** Whether a spread plate of that name is put under bolts somewhere. */
  public boolean spreads(String plate) {
    return spreadPlates.contains(plate);
  }

  /** Whether an isolation of that name lies between metals somewhere. */
  public boolean isolates(String isolation) {
    return isolations.contains(isolation);
  }
}
