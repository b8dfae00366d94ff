package mullwright.analysis.lite;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import mullwright.analysis.Outcome;
import mullwright.analysis.glass.HazardousLocation;
import mullwright.analysis.glass.SafetyCategory;
import mullwright.analysis.glass.SafetyGlazing;
import mullwright.analysis.glass.SafetyGlazing.Condition;
import mullwright.layout.ByHeight;
import mullwright.layout.Cell;
import mullwright.layout.WallLayout;
import mullwright.model.Grid;
import mullwright.model.Height;
import mullwright.quantity.Length;

/**
 * Whether a lite of a wall needs safety glazing, seen from every floor and every door of the wall.
 *
 * <p>A floor is taken to reach the wall unless its slab edge is stated; then the nearest walking
 * surface is that far from the glass. Walking surfaces outdoors are known only where a safety floor
 * line states them. Sizes and heights are those of the daylight opening, the exposed edges.
 *
 * @param seen the verdicts, those that require it first, then by how many conditions are met
 */
public record LiteSafety(Cell cell, List<Seen> seen) {
  public LiteSafety {
    seen = List.copyOf(seen);
  }

  /**
   * A verdict.
   *
   * @param from the floor or door it is seen from
   * @param reaches for a floor, true if its distance to the glass is not stated and taken as 0
   * @param notExamined exceptions that the numbers cannot show
   */
  public record Seen(
      String from,
      boolean required,
      boolean reaches,
      SafetyCategory category,
      String clause,
      List<Condition> conditions,
      List<String> notExamined) {
    public Seen {
      conditions = List.copyOf(conditions);
      notExamined = List.copyOf(notExamined);
    }

    /** How many of its conditions are met. */
    public long met() {
      return conditions.stream().filter(Condition::met).count();
    }
  }

  /** A walking surface: its name, its height, and how far from the glass it begins if stated. */
  private record Surface(String name, Length height, double distance, boolean assumed) {}

  /** What a wall's lites are seen from: its walking surfaces and its doors, found once. */
  public static final class Places {
    /** A lite whose lower edge is higher over a floor than that needs nothing seen from it. */
    private static final Length NEAR = Length.ofMillimetres(500);

    private final List<Surface> surfaces;
    private final ByHeight<Surface> byHeight;
    private final ByHeight<Cell> doors;

    private Places(WallLayout layout) {
      surfaces = surfaces(layout);
      long[] heights = new long[surfaces.size()];
      for (int i = 0; i < heights.length; i++) {
        heights[i] = surfaces.get(i).height().ticks();
      }
      byHeight = new ByHeight<>(surfaces, heights, heights);
      doors = byHeight(layout.cells().stream().filter(LiteSafety::isDoor).toList());
    }

    private static ByHeight<Cell> byHeight(List<Cell> doors) {
      long[] bottoms = new long[doors.size()];
      long[] tops = new long[doors.size()];
      for (int i = 0; i < tops.length; i++) {
        bottoms[i] = floorOf(doors.get(i)).ticks();
        tops[i] = doors.get(i).top().ticks();
      }
      return new ByHeight<>(doors, bottoms, tops);
    }

    /** The lite in a cell, whatever glass it has. */
    public LiteSafety of(Cell cell) {
      return LiteSafety.of(this, cell);
    }

    /** True if any place asks for safety glazing in a cell. */
    public boolean require(Cell cell) {
      // most lites of a tower are near one floor of many, and near no door
      double area = cell.daylightWidth().toMetres() * cell.daylightHeight().toMetres();
      for (Surface surface : byHeight.touching(cell.bottom().minus(NEAR), cell.top())) {
        if (cell.top().isLongerThan(surface.height())
            && cell.bottom().minus(surface.height()).isShorterThan(NEAR)
            && window(cell, area, surface).solved().filter(it -> it.required()).isPresent()) {
          return true;
        }
      }
      for (Cell door : doors.touching(cell.bottom(), cell.top())) {
        if (besideIt(cell, door)
            && beside(cell, area, door).solved().filter(it -> it.required()).isPresent()) {
          return true;
        }
      }
      return false;
    }
  }

  /** The places the lites of a wall are seen from. */
  public static Places places(WallLayout layout) {
    return new Places(layout);
  }

  /** The lite in a cell, whatever glass it has. */
  public static LiteSafety of(WallLayout layout, Cell cell) {
    return places(layout).of(cell);
  }

  private static LiteSafety of(Places places, Cell cell) {
    List<Seen> required = new ArrayList<>();
    List<Seen> others = new ArrayList<>();
    double area = cell.daylightWidth().toMetres() * cell.daylightHeight().toMetres();
    for (Surface surface : places.surfaces) {
      window(cell, area, surface)
          .solved()
          .ifPresent(
              verdict ->
                  (verdict.required() ? required : others)
                      .add(
                          new Seen(
                              surface.name(),
                              verdict.required(),
                              surface.assumed(),
                              verdict.category(),
                              verdict.clause(),
                              verdict.conditions(),
                              verdict.notExamined())));
    }
    for (Cell door : places.doors.touching(cell.bottom(), cell.top())) {
      if (besideIt(cell, door)) {
        beside(cell, area, door)
            .solved()
            .ifPresent(
                verdict ->
                    (verdict.required() ? required : others)
                        .add(
                            new Seen(
                                door.name(),
                                verdict.required(),
                                false,
                                verdict.category(),
                                verdict.clause(),
                                verdict.conditions(),
                                List.of(
                                    "decorative glazing",
                                    "a wall or barrier between door and glass",
                                    "a door to a closet no deeper than 3 ft"))));
      }
    }
    // what comes nearest to being required is what a reader wants to see
    others.sort(Comparator.comparing(one -> -one.met()));
    required.addAll(others);
    return new LiteSafety(cell, required);
  }

  private static Outcome<SafetyGlazing.Verdict> window(Cell cell, double area, Surface surface) {
    return SafetyGlazing.solve(
        new SafetyGlazing.Lite(
            area,
            cell.bottom().minus(surface.height()).toMetres(),
            cell.top().minus(surface.height()).toMetres(),
            surface.distance()));
  }

  private static Outcome<HazardousLocation.Verdict> beside(Cell cell, double area, Cell door) {
    return HazardousLocation.solve(
        new HazardousLocation.Lite(
            HazardousLocation.Place.BESIDE_DOOR,
            area,
            cell.bottom().minus(floorOf(door)).toMetres(),
            distance(cell, door)));
  }

  private static List<Surface> surfaces(WallLayout layout) {
    List<Surface> surfaces = new ArrayList<>();
    List<Height> stated = layout.wall().criteria().glass().floorLines();
    for (Height line : stated) {
      String name = line.base().map(base -> "floor line at " + base).orElse("floor line");
      surfaces.add(new Surface(name, line.elevation(), 0, true));
    }
    if (stated.isEmpty()) {
      for (Grid.Floor floor : layout.wall().grid().floors()) {
        double behind = floor.edge().map(edge -> edge.value().toMetres()).orElse(0.0);
        surfaces.add(
            new Surface(
                floor.name(),
                floor.elevation().value(),
                Math.max(0, behind),
                floor.edge().isEmpty()));
      }
    }
    return surfaces;
  }

  private static boolean isDoor(Cell cell) {
    return cell.opening().filter(o -> o.kind() == Grid.OpeningKind.DOOR).isPresent();
  }

  // a lite wholly under the threshold, or wholly over another storey's head, is not beside it
  private static boolean besideIt(Cell cell, Cell door) {
    return cell.top().isLongerThan(floorOf(door)) && cell.bottom().isShorterThan(door.top());
  }

  private static Length floorOf(Cell door) {
    return door.opening().orElseThrow().bottom().elevation();
  }

  private static double distance(Cell cell, Cell door) {
    double left = door.left().minus(cell.right()).toMetres();
    double right = cell.left().minus(door.right()).toMetres();
    return Math.max(0, Math.max(left, right));
  }

  /** True if any place asks for safety glazing. */
  public boolean required() {
    return !seen.isEmpty() && seen.get(0).required();
  }

  /** The verdict to show: one that requires it, else the one nearest to it. */
  public Optional<Seen> shown() {
    return seen.stream().findFirst();
  }
}
