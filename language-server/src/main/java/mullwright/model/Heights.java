package mullwright.model;

import java.util.ArrayList;
import java.util.List;

/**
 * What heights can be measured from: the floors, then the rows known so far, by name.
 *
 * <p>A bare row name stands for that row over all floors.
 */
final class Heights {
  private final NameIndex names = new NameIndex("floor or row");
  private final List<Base> bases = new ArrayList<>();

  /**
   * A floor or a row.
   *
   * @param at its elevation, which differs from end to end if it slopes
   * @param floor index of the floor, or of the one the row is measured from, or -1
   * @param row index of the row, -1 for a floor
   */
  record Base(String name, Slope at, int floor, int row) {}

  NameIndex names() {
    return names;
  }

  Base get(int index) {
    return bases.get(index);
  }

  void addFloor(Grid.Floor floor, Symbol symbol) {
    bases.add(new Base(floor.name(), Slope.level(floor.elevation().value()), floor.index(), -1));
    names.add(symbol, floor.name());
    names.groupEnds();
  }

  /**
   * @param name its full name
   * @param symbol its bare name
   * @param floorName of the floor it is measured from, or null
   * @param floorSymbol that floor's symbol, or null
   */
  void addRow(
      String name,
      Symbol symbol,
      String floorName,
      Slope at,
      int floor,
      int row,
      Symbol floorSymbol) {
    bases.add(new Base(name, at, floor, row));
    if (floorName == null) {
      names.add(symbol, symbol.name());
    } else {
      String dotted = floorName + "." + symbol.name();
      names.add(symbol, symbol.name(), dotted);
      names.front(dotted, floorSymbol);
    }
  }
}
