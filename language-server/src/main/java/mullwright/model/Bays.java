package mullwright.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import mullwright.quantity.Length;

/** The bays of a wall by the lines beside them. */
final class Bays {
  private final List<Grid.Bay> bays = new ArrayList<>();
  private final List<String> names;
  private final List<Length> places;
  private final int[] rightOf;
  private final int[] leftOf;

  /**
   * @param names of the lines, {@code places} where they stand
   * @param open the lines with a bay to their right
   */
  Bays(List<String> names, List<Length> places, BitSet open) {
    this.names = names;
    this.places = places;
    this.rightOf = new int[places.size()];
    this.leftOf = new int[places.size()];
    Arrays.fill(rightOf, -1);
    Arrays.fill(leftOf, -1);
    for (int line = open.nextSetBit(0); line >= 0; line = open.nextSetBit(line + 1)) {
      Length width = places.get(line + 1).minus(places.get(line));
      rightOf[line] = bays.size();
      leftOf[line + 1] = bays.size();
      bays.add(new Grid.Bay(bays.size(), line, line + 1, width));
    }
  }

  List<Grid.Bay> all() {
    return bays;
  }

  int count() {
    return bays.size();
  }

  Grid.Bay get(int bay) {
    return bays.get(bay);
  }

  /** The bay right of a line, or -1. */
  int rightOf(int line) {
    return rightOf[line];
  }

  /** The bay left of a line, or -1. */
  int leftOf(int line) {
    return leftOf[line];
  }

  /** True if there is a bay on one side only. */
  boolean isEnd(int line) {
    return rightOf[line] >= 0 != leftOf[line] >= 0;
  }

  Length leftX(int bay) {
    return places.get(bays.get(bay).left());
  }

  Length rightX(int bay) {
    return places.get(bays.get(bay).right());
  }

  /** {@code bay C-D}. */
  String name(int bay) {
    Grid.Bay at = bays.get(bay);
    return "bay " + names.get(at.left()) + "-" + names.get(at.right());
  }
}
