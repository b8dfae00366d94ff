package mullwright.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import mullwright.model.AnchorUse;
import mullwright.model.Grid.OpeningKind;
import mullwright.model.Height;
import mullwright.model.Role;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;

/**
 * Makes walls from a number: lines, rows, openings, stops, splices of any sort, sensible or not.
 *
 * <p>One plan can be built at any scale and from either hand, so that walls can be compared with
 * their mirror image or with one twice as large. All lengths are multiples of 1/16" times scale.
 */
public final class RandomWalls {
  private record Row(String name, int left, int right, boolean edge, int from, int to) {}

  private record Place(String row, int height) {}

  private record Stop(int line, Place from, Place to) {}

  private record Splice(int line, int height, int gap) {}

  private record Opening(
      OpeningKind kind, String name, int from, int to, Place bottom, Place top, int clear) {}

  private record Anchor(AnchorUse.Kind kind, int line, int floor) {}

  private final Random random;
  private final List<String> names = new ArrayList<>();
  private final List<Integer> spacings = new ArrayList<>();
  private final List<Row> rows = new ArrayList<>();
  private final List<Stop> stops = new ArrayList<>();
  private final List<Splice> splices = new ArrayList<>();
  private final List<Opening> openings = new ArrayList<>();
  private final List<Anchor> anchors = new ArrayList<>();
  private final List<Integer> floors = new ArrayList<>();
  private final List<String> unknown = new ArrayList<>();
  private int joint = -1;
  private int corner = -1;
  private boolean edges;
  private final boolean plain;

  /**
   * Plans a wall.
   *
   * @param plain full-height verticals, level rows in all bays, no openings, all profiles known
   */
  public RandomWalls(long seed, boolean plain) {
    this.random = new Random(seed);
    this.plain = plain;
    lines();
    rows();
    members();
    if (!plain) {
      openings();
    }
  }

  private boolean chance(int percent) {
    return !plain && random.nextInt(100) < percent;
  }

  private int between(int least, int most) {
    return least + random.nextInt(most - least + 1);
  }

  private void lines() {
    int count = between(2, 7);
    for (int i = 0; i < count; i++) {
      names.add(String.valueOf((char) ('A' + i)));
      if (i > 0) {
        spacings.add(chance(4) ? between(4, 80) : between(20 * 16, 90 * 16));
      }
    }
    edges = random.nextInt(4) == 0;
    if (count > 3 && chance(15)) {
      joint = between(1, count - 3);
    } else if (count > 2 && chance(25)) {
      corner = between(1, count - 2);
    }
  }

  private void rows() {
    int y = between(-20, 60);
    int count = between(2, 8);
    for (int i = 0; i < count; i++) {
      int step = chance(4) ? between(2, 60) : between(10 * 16, 90 * 16);
      boolean outer = i == 0 || i == count - 1;
      int rise = chance(15) ? between(-40, 40) : 0;
      int from = 0;
      int to = names.size() - 1;
      if (!outer && chance(20)) {
        from = between(0, names.size() - 2);
        to = between(from + 1, names.size() - 1);
      }
      String name = i == 0 ? "sill" : i == count - 1 ? "head" : "R" + i;
      rows.add(new Row(name, y, y + rise, outer && rise == 0 && edges, from, to));
      y += step;
    }
    int top = y;
    for (int floor = 0; floor < top; floor += 150 * 16) {
      floors.add(floor);
    }
  }

  private int height() {
    int low = rows.get(0).left();
    int high = rows.get(rows.size() - 1).left();
    return between(low - 20, Math.max(low, high) + 20);
  }

  // a sloped row has no one height to name
  private Place place() {
    Row row = rows.get(random.nextInt(rows.size()));
    return row.left() != row.right() || random.nextInt(3) == 0
        ? new Place("", height())
        : new Place(row.name(), 0);
  }

  private void members() {
    for (int line = 0; line < names.size(); line++) {
      if (chance(15)) {
        stops.add(new Stop(line, chance(50) ? place() : null, chance(50) ? place() : null));
      }
      int joints = random.nextInt(3);
      for (int i = 0; i < joints; i++) {
        splices.add(new Splice(line, height(), between(2, 16)));
      }
      for (int floor = 0; floor < floors.size(); floor++) {
        anchors.add(
            new Anchor(
                random.nextBoolean() ? AnchorUse.Kind.DEAD_LOAD : AnchorUse.Kind.WIND_LOAD,
                line,
                floor));
      }
      if (chance(3)) {
        unknown.add(names.get(line));
      }
    }
    rows.stream().filter(row -> chance(3)).forEach(row -> unknown.add(row.name()));
  }

  private void openings() {
    int count = random.nextInt(3);
    for (int i = 0; i < count; i++) {
      int from = between(0, names.size() - 2);
      int to = between(from + 1, names.size() - 1);
      OpeningKind kind = OpeningKind.values()[random.nextInt(4)];
      openings.add(new Opening(kind, "O" + i, from, to, place(), place(), between(0, 8)));
    }
  }

  /** The wall as planned. */
  public TestWalls wall(int scale) {
    return wall(scale, false);
  }

  /** The wall seen from indoors: left is right. */
  public TestWalls mirrored(int scale) {
    return wall(scale, true);
  }

  private static Length length(int sixteenths, int scale) {
    return Length.ofInches((long) sixteenths * scale, 16);
  }

  private TestWalls wall(int scale, boolean mirrored) {
    List<String> order = new ArrayList<>(names);
    List<Integer> steps = new ArrayList<>(spacings);
    if (mirrored) {
      Collections.reverse(order);
      Collections.reverse(steps);
    }
    TestWalls wall =
        TestWalls.of(parts(scale, mirrored))
            .lines(
                String.join(" ", order),
                steps.stream().map(step -> length(step, scale)).toArray(Length[]::new));
    for (int i = 0; i < floors.size(); i++) {
      wall.floor("L" + i, length(floors.get(i), scale), length(10 * 16, scale));
    }
    for (Row row : rows) {
      Length left = length(mirrored ? row.right() : row.left(), scale);
      Length right = length(mirrored ? row.left() : row.right(), scale);
      String from = names.get(mirrored ? row.to() : row.from());
      String to = names.get(mirrored ? row.from() : row.to());
      if (row.edge()) {
        wall.rowByEdge(row.name(), left);
      } else {
        wall.slope(row.name(), left, right, from, to);
      }
    }
    if (edges) {
      wall.lineByEdge(names.get(0)).lineByEdge(names.get(names.size() - 1));
    }
    if (joint >= 0) {
      String left = names.get(mirrored ? joint + 1 : joint);
      wall.joint(left, names.get(mirrored ? joint : joint + 1));
    }
    if (corner >= 0) {
      wall.corner(names.get(corner));
    }
    unknown.forEach(name -> wall.profile(name, "nobody-knows"));
    members(wall, scale);
    for (Opening opening : openings) {
      wall.opening(
          opening.kind(),
          opening.name(),
          names.get(mirrored ? opening.to() : opening.from()),
          names.get(mirrored ? opening.from() : opening.to()),
          height(wall, opening.bottom(), scale),
          height(wall, opening.top(), scale),
          length(opening.clear(), scale));
    }
    return wall;
  }

  private void members(TestWalls wall, int scale) {
    for (Stop stop : stops) {
      wall.vertical(
          names.get(stop.line()),
          stop.from() == null ? null : height(wall, stop.from(), scale),
          stop.to() == null ? null : height(wall, stop.to(), scale));
    }
    for (Splice splice : splices) {
      wall.splice(
          names.get(splice.line()),
          wall.at(length(splice.height(), scale)),
          length(splice.gap(), scale));
    }
    for (Anchor anchor : anchors) {
      wall.anchor(anchor.kind(), names.get(anchor.line()), wall.at("L" + anchor.floor()), "angle");
    }
  }

  private static Height height(TestWalls wall, Place place, int scale) {
    return place.row().isEmpty() ? wall.at(length(place.height(), scale)) : wall.at(place.row());
  }

  private static TestParts.ProfileSheet sheet(Role role, int face, int sightline, int scale) {
    return TestParts.profile(role, length(face, scale))
        .sightline(length(sightline, scale))
        .endAllowance(length(1, scale))
        .massPerLength(Quantity.ofSi(2.5 + face / 40.0, Kind.MASS_PER_LENGTH));
  }

  private static TestParts parts(int scale, boolean mirrored) {
    Length five = length(5, scale);
    Length nine = length(9, scale);
    Length leg = length(44, scale);
    Length other = length(57, scale);
    return new TestParts()
        .with(
            "mullion",
            sheet(Role.MULLION, 40, 44, scale).bite(mirrored ? nine : five, mirrored ? five : nine))
        .with("jamb", sheet(Role.JAMB, 36, 36, scale).bite(five, five))
        .with(
            "corner",
            sheet(Role.CORNER, 80, 84, scale)
                .bite(mirrored ? nine : five, mirrored ? five : nine)
                .legs(mirrored ? other : leg, mirrored ? leg : other))
        .with("sill", sheet(Role.SILL, 32, 34, scale).bite(five, nine))
        .with("head", sheet(Role.HEAD, 48, 50, scale).bite(nine, five))
        .with("intermediate", sheet(Role.INTERMEDIATE, 40, 42, scale).bite(nine, five))
        .plateWithGap("plate", length(38, scale), length(2, scale), length(288 * 16, scale))
        .capWithGap("cap", length(40, scale), length(1, scale), length(200 * 16, scale))
        .anchor("angle", length(128, scale), true, true)
        .block("block", length(4, scale), length(10, scale), length(32, scale), length(64, scale))
        .glass("V1", Optional.empty(), "ply", TestParts.mm(6), "ply", TestParts.mm(6));
  }
}
