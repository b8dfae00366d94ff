package mullwright.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import mullwright.quantity.Length;

/**
 * Places the weeps of a wall: two for each lite, on the plate of its bottom horizontal, upper side,
 * 4" in from each end of the daylight opening, clear of the setting blocks (common practice).
 *
 * <p>A weep that would lie over a block moves to the nearer side of it; in an opening too narrow
 * for both, they stand at the quarter points. A vent or louvre keeps its pocket, which has to drain
 * as well; a door or void has none.
 */
final class Weeps {
  static final Length FROM_END = Length.ofInches(4);
  private static final Length CLEAR_OF_BLOCK = Length.ofInches(1, 2);
  private static final Length LEAST_FROM_END = Length.ofInches(1);

  private final WallLayout layout;
  private final int[] plateOfHorizontal;

  private Weeps(WallLayout layout) {
    this.layout = layout;
    this.plateOfHorizontal = new int[layout.horizontals().size()];
    Arrays.fill(plateOfHorizontal, -1);
    for (int at = 0; at < layout.covers().size(); at++) {
      CoverPiece cover = layout.covers().get(at);
      if (!cover.vertical() && cover.what() == CoverPiece.What.PRESSURE_PLATE) {
        plateOfHorizontal[cover.carrier()] = at;
      }
    }
  }

  static List<Weep> of(WallLayout layout) {
    Weeps weeps = new Weeps(layout);
    RowPieces rows = RowPieces.of(layout);
    List<Weep> all = new ArrayList<>();
    for (Cell cell : layout.cells()) {
      if (Glazed.pocket(cell) && cell.below() >= 0) {
        rows.under(cell).ifPresent(piece -> weeps.add(cell, piece, all));
      }
    }
    return all;
  }

  private void add(Cell cell, HorizontalPiece piece, List<Weep> all) {
    int plate = plateOfHorizontal[piece.index()];
    Optional<SettingBlockPlaces> blocks = SettingBlockPlaces.of(cell);
    Length width = cell.daylightWidth();
    if (!width.isLongerThan(FROM_END.times(2))) {
      Length quarter = width.scaled(1, 4);
      all.add(weep(cell, plate, cell.left().plus(quarter), quarter));
      all.add(weep(cell, plate, cell.right().minus(quarter), quarter));
      return;
    }
    Length left =
        blocks.map(block -> clear(block, cell.biteLeft(), block.first(), width)).orElse(FROM_END);
    Length right =
        blocks
            .map(
                block ->
                    clear(block, cell.biteRight(), cell.glassWidth().minus(block.second()), width))
            .orElse(FROM_END);
    all.add(weep(cell, plate, cell.left().plus(left), left));
    all.add(weep(cell, plate, cell.right().minus(right), right));
  }

  private static Weep weep(Cell cell, int plate, Length x, Length fromEnd) {
    return new Weep(cell.index(), plate, x, fromEnd, !fromEnd.equals(FROM_END));
  }

  // distance from the end of the daylight opening, clear of the block nearer to that end
  private static Length clear(SettingBlockPlaces block, Length bite, Length centre, Length width) {
    Length reach = block.length().half().plus(CLEAR_OF_BLOCK);
    Length from = centre.minus(bite).minus(reach);
    Length to = centre.minus(bite).plus(reach);
    if (!FROM_END.isLongerThan(from) || !FROM_END.isShorterThan(to)) {
      return FROM_END;
    }
    boolean outside =
        !from.isShorterThan(LEAST_FROM_END)
            && !FROM_END.minus(from).isLongerThan(to.minus(FROM_END));
    if (outside) {
      return from;
    }
    return to.isShorterThan(width.half()) ? to : Length.max(from, LEAST_FROM_END);
  }
}
