package mullwright.model;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.quantity.Length;

/** All rows of one bare name: the statements that make them and what comes of them. */
final class RowGroup {
  private final Symbol symbol;
  private final List<Said> statements = new ArrayList<>();
  private final Map<String, Integer> slots = new HashMap<>();
  private final List<Placed> slotPlaces = new ArrayList<>();
  private final Map<Claim, Spread> spreads = new IdentityHashMap<>();
  private final Map<Claim, BitSet> reaches = new IdentityHashMap<>();
  private final List<Instance> instances = new ArrayList<>();

  RowGroup(Symbol symbol) {
    this.symbol = symbol;
  }

  /** The height a statement gives at one floor. */
  record Spread(int slot, Placed left, Placed right) {
    Slope at() {
      return new Slope(left.at().left(), right.at().right());
    }
  }

  /**
   * A row.
   *
   * @param floor the floor its name is of, or null for a row of its bare name alone
   */
  record Instance(
      Symbol symbol,
      Heights.Base floor,
      boolean dotted,
      Slope at,
      Height left,
      Height right,
      boolean edge,
      BitSet bays,
      Origin origin) {
    String name() {
      return dotted ? floorName() + "." + symbol.name() : symbol.name();
    }

    private String floorName() {
      return floor == null ? null : floor.name();
    }

    Optional<Integer> floorIndex() {
      return floor == null ? Optional.empty() : Optional.of(floor.floor());
    }

    /** Makes its names known; {@code row} is its index once there is one. */
    void addTo(Heights heights, int row) {
      int index = floor == null ? -1 : floor.floor();
      Symbol floorSymbol = floor == null ? null : heights.names().symbol(floor.name());
      heights.addRow(name(), symbol, floorName(), at, index, row, floorSymbol);
    }

    /** Makes its names known among the rows alone. */
    void addTo(NameIndex rows, Heights heights) {
      if (floor == null) {
        rows.add(symbol, symbol.name());
      } else {
        String spelling = floorName() + "." + symbol.name();
        rows.add(symbol, symbol.name(), spelling);
        rows.front(spelling, heights.names().symbol(floor.name()));
      }
    }
  }

  Symbol symbol() {
    return symbol;
  }

  List<Said> statements() {
    return statements;
  }

  List<Instance> instances() {
    return instances;
  }

  void add(Said said) {
    statements.add(said);
  }

  /** One number for each floor, row without a floor, or the datum, that these rows stand at. */
  int slot(Placed place) {
    String key =
        place.floor() >= 0
            ? "floor " + place.floor()
            : place.base() == null ? "" : "row " + place.base().name();
    Integer slot = slots.get(key);
    if (slot == null) {
      slot = slots.size();
      slots.put(key, slot);
      slotPlaces.add(place);
    }
    return slot;
  }

  void remember(Claim claim, Spread spread, BitSet bays) {
    spreads.put(claim, spread);
    reaches.put(claim, bays);
  }

  String where(int key, Heights heights, BayReach reach) {
    int floor = slotPlaces.get(reach.slot(key)).floor();
    String at = floor < 0 ? "" : heights.get(floor).name() + ".";
    return at + symbol.name() + " in " + reach.name(reach.bay(key));
  }

  /** Makes the rows that come of the statements, each with the bays it runs through. */
  void settle(Narrower narrower, Heights heights, BayReach reach) {
    Map<Claim, BitSet> held = new LinkedHashMap<>();
    for (int key = 0; key < narrower.keys(); key++) {
      Narrower.Resolved resolved = narrower.at(key);
      if (resolved != null) {
        Claim claim = resolved.setter(Facet.ROW_PLACE);
        held.computeIfAbsent(claim, k -> new BitSet()).set(reach.bay(key));
      }
    }
    held.forEach(
        (claim, bays) -> {
          Spread spread = spreads.get(claim);
          boolean level = spread.at().left().equals(spread.at().right());
          if (level || bays.equals(reaches.get(claim)) && isOneRun(bays, reach)) {
            instances.add(instance(claim, bays, spread.at(), heights));
          } else {
            slopedRuns(claim, bays, heights, reach);
          }
        });
  }

  private static boolean isOneRun(BitSet bays, BayReach reach) {
    int end = bays.nextSetBit(0);
    while (end >= 0 && bays.get(end + 1) && reach.adjoin(end, end + 1)) {
      end++;
    }
    return end + 1 >= bays.length();
  }

  /** What exceptions left of a sloped row, each stretch with the heights of its own ends. */
  private void slopedRuns(Claim claim, BitSet bays, Heights heights, BayReach reach) {
    BitSet whole = reaches.get(claim);
    Bays all = reach.bays();
    Length start = all.leftX(whole.nextSetBit(0));
    Length run = all.rightX(whole.length() - 1).minus(start);
    Slope slope = spreads.get(claim).at();
    Length rise = slope.right().minus(slope.left());
    int first = bays.nextSetBit(0);
    while (first >= 0) {
      int last = first;
      while (bays.get(last + 1) && reach.adjoin(last, last + 1)) {
        last++;
      }
      BitSet stretch = new BitSet();
      stretch.set(first, last + 1);
      Length from = all.leftX(first).minus(start);
      Length to = all.rightX(last).minus(start);
      Slope part =
          new Slope(
              slope.left().plus(rise.scaled(from.ticks(), run.ticks())),
              slope.left().plus(rise.scaled(to.ticks(), run.ticks())));
      instances.add(instance(claim, stretch, part, heights));
      first = bays.nextSetBit(last + 1);
    }
  }

  private Instance instance(Claim claim, BitSet bays, Slope at, Heights heights) {
    Spread spread = spreads.get(claim);
    Placed left = spread.left();
    Placed right = spread.right();
    Heights.Base floor = left.floor() < 0 ? null : heights.get(left.floor());
    boolean edge = claim.get(Facet.ROW_PLACE).value().edge();
    return new Instance(
        symbol,
        floor,
        floor != null && slots.size() > 1,
        at,
        left.height(at.left()),
        right.height(at.right()),
        edge,
        bays,
        claim.said.nameOrigin());
  }
}
