package mullwright.takeoff.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import mullwright.layout.CoverPiece;
import mullwright.layout.PieceMarks;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.model.Members;
import mullwright.model.Origin;
import mullwright.model.Part;
import mullwright.model.Wall;
import mullwright.quantity.Length;

/**
 * What is to be cut from bars for some walls, pool by pool: verticals, horizontals, reinforcement,
 * pressure plates, face caps. Gaskets come from the roll and are not in it.
 *
 * <p>Walls share bars where part, finish and saw are the same, so that one order is cut at once.
 * Pools stand in the order their first piece appears.
 *
 * @param rack the bars on hand, each lot once, whichever of the walls tell of it
 */
public record CutList(List<CutPool> pools, Rack rack) {
  private static final Comparator<String> OUTSIDE_FIRST =
      Comparator.comparing((String side) -> side.equals("inside"))
          .thenComparing(Comparator.naturalOrder());

  public CutList {
    pools = List.copyOf(pools);
  }

  /** What pieces must have in common to share a bar. */
  private record Key(Origin part, String finish, Saw saw) {}

  /** The cut list of some walls, their marks counted. */
  public static CutList of(List<WallLayout> layouts) {
    return of(layouts, layouts.stream().map(PieceMarks::of).toList());
  }

  /** The cut list of some walls with the marks of each. */
  public static CutList of(List<WallLayout> layouts, List<PieceMarks> marks) {
    Builder builder = new Builder();
    for (int wall = 0; wall < layouts.size(); wall++) {
      builder.add(layouts.get(wall), marks.get(wall));
    }
    return new CutList(
        builder.pools.entrySet().stream()
            .map(
                pool ->
                    new CutPool(
                        builder.parts.get(pool.getKey().part()),
                        pool.getKey().finish(),
                        pool.getKey().saw(),
                        pool.getValue()))
            .toList(),
        Rack.of(layouts));
  }

  /** The finish of a wall in words: {@code bronze outside, clear inside}. */
  public static String finish(Wall wall) {
    return wall.finish().entrySet().stream()
        .sorted(Map.Entry.comparingByKey(OUTSIDE_FIRST))
        .map(side -> (side.getValue().value() + " " + side.getKey()).strip())
        .collect(Collectors.joining(", "));
  }

  /** Sorts the pieces of one wall after the other into pools. */
  private static final class Builder {
    private final Map<Key, List<CutPiece>> pools = new LinkedHashMap<>();
    private final Map<Origin, Part> parts = new LinkedHashMap<>();

    void add(WallLayout layout, PieceMarks marks) {
      layout
          .verticals()
          .forEach(
              piece ->
                  add(
                      layout,
                      piece.profile(),
                      marks.vertical(piece.index()),
                      piece.name(),
                      piece.length()));
      layout
          .horizontals()
          .forEach(
              piece ->
                  add(
                      layout,
                      piece.profile(),
                      marks.horizontal(piece.index()),
                      piece.name(),
                      piece.length()));
      reinforcement(layout, marks);
      for (int at = 0; at < layout.covers().size(); at++) {
        CoverPiece cover = layout.covers().get(at);
        String mark = marks.cover(at);
        part(layout, cover)
            .ifPresent(part -> add(layout, part, mark, cover.name(), cover.length()));
      }
    }

    private static Optional<? extends Part> part(WallLayout layout, CoverPiece cover) {
      return cover.what() == CoverPiece.What.PRESSURE_PLATE
          ? layout.catalog().find(Part.PressurePlate.class, cover.part())
          : layout.catalog().find(Part.FaceCap.class, cover.part());
    }

    /** A bar reaches over what its statement says of each length of the vertical it goes into. */
    private void reinforcement(WallLayout layout, PieceMarks marks) {
      for (Members.Reinforce reinforce : layout.wall().members().reinforcements()) {
        Optional<Part.Reinforcement> part =
            layout.catalog().find(Part.Reinforcement.class, reinforce.part().value());
        if (part.isEmpty()) {
          continue;
        }
        for (VerticalPiece piece : layout.verticals()) {
          Length from =
              reinforce
                  .from()
                  .map(height -> Length.max(height.elevation(), piece.bottom()))
                  .orElse(piece.bottom());
          Length to =
              reinforce
                  .to()
                  .map(height -> Length.min(height.elevation(), piece.top()))
                  .orElse(piece.top());
          if (piece.line() == reinforce.line() && to.isLongerThan(from)) {
            add(
                layout,
                part.get(),
                "in " + marks.vertical(piece.index()),
                "reinforcement of " + piece.name(),
                to.minus(from));
          }
        }
      }
    }

    private void add(WallLayout layout, Part part, String mark, String name, Length length) {
      Wall wall = layout.wall();
      String finish = part instanceof Part.Reinforcement ? "" : finish(wall);
      parts.putIfAbsent(part.origin(), part);
      pools
          .computeIfAbsent(
              new Key(part.origin(), finish, Saw.of(wall.fabrication())), key -> new ArrayList<>())
          .add(new CutPiece(wall.name(), mark, name, length));
    }
  }
}
