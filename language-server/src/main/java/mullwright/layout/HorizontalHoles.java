package mullwright.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.model.Origin;
import mullwright.model.Part;
import mullwright.quantity.Length;

/**
 * Finds the holes of the horizontals: at each end as the shear block's pattern says, or the shop's
 * own template for the profile.
 *
 * <p>Where a horizontal slopes its end is cut upright. The holes lie on its centre line, which the
 * cut reaches half the slant away from the long point the length is measured to.
 */
final class HorizontalHoles {
  // equality written out: the generated one costs a cold start some twenty milliseconds
  private record Key(Origin statement, Part.Profile profile, Length length, Length slant) {
    @Override
    public boolean equals(Object other) {
      return other instanceof Key same
          && length.equals(same.length)
          && slant.equals(same.slant)
          && statement.equals(same.statement)
          && profile.equals(same.profile);
    }

    @Override
    public int hashCode() {
      return (statement.hashCode() * 31 + length.hashCode()) * 31 + slant.hashCode();
    }
  }

  private final Optional<Part.ShearBlock> block;
  private final Map<Key, List<DrilledHole>> known = new HashMap<>();

  private HorizontalHoles(WallLayout layout) {
    this.block = SystemPart.shearBlock(layout);
  }

  /** By horizontal, each from its left end. */
  static List<List<DrilledHole>> of(WallLayout layout) {
    HorizontalHoles all = new HorizontalHoles(layout);
    List<List<DrilledHole>> holes = new ArrayList<>(layout.horizontals().size());
    layout.horizontals().forEach(piece -> holes.add(all.of(piece)));
    return holes;
  }

  // equal pieces have equal holes
  private List<DrilledHole> of(HorizontalPiece piece) {
    Length slant = Slants.of(piece).abs();
    return known.computeIfAbsent(
        new Key(piece.origin(), piece.profile(), piece.length(), slant),
        key -> make(piece, slant.half()));
  }

  private List<DrilledHole> make(HorizontalPiece piece, Length toCentre) {
    List<Part.Hole> template = piece.profile().holes();
    List<Part.Hole> pattern =
        template.isEmpty() ? block.map(Part.ShearBlock::holes).orElse(List.of()) : template;
    String name = block.map(Part.ShearBlock::name).orElse("");
    List<DrilledHole> holes = new ArrayList<>(2 * Math.max(1, pattern.size()));
    if (pattern.isEmpty()) {
      holes.add(unplaced(name, Length.ZERO, piece.origin()));
      holes.add(unplaced(name, piece.length(), piece.origin()));
    }
    for (Part.Hole hole : pattern) {
      Length along = toCentre.plus(hole.along());
      holes.add(placed(name, along, hole, piece.origin()));
      holes.add(placed(name, piece.length().minus(along), hole, piece.origin()));
    }
    holes.sort(DrilledHole.ORDER);
    return List.copyOf(holes);
  }

  private static DrilledHole placed(String block, Length along, Part.Hole hole, Origin statement) {
    return new DrilledHole(
        DrilledHole.Purpose.SHEAR_BLOCK,
        block,
        HoleSide.WEB,
        along,
        Optional.of(hole.back()),
        Optional.of(hole.diameter()),
        hole.fastener(),
        1,
        "shear block",
        statement,
        hole.origin());
  }

  private static DrilledHole unplaced(String block, Length along, Origin origin) {
    return new DrilledHole(
        DrilledHole.Purpose.SHEAR_BLOCK,
        block,
        HoleSide.WEB,
        along,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        0,
        "shear block",
        origin,
        origin);
  }
}
