package mullwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.model.AnchorUse;
import mullwright.model.Catalog;
import mullwright.model.Criteria;
import mullwright.model.Fabrication;
import mullwright.model.Given;
import mullwright.model.Grid;
import mullwright.model.Height;
import mullwright.model.Installation;
import mullwright.model.LiteUse;
import mullwright.model.Members;
import mullwright.model.Origin;
import mullwright.model.Wall;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;
import mullwright.quantity.Rational;
import mullwright.quantity.Unit;
import mullwright.syntax.TextRange;

/**
 * Builds walls by hand the way a drafter says them: lines, floors, rows, then what is made of what.
 *
 * <p>What nobody says otherwise: the end lines are jambs, the others mullions; rows named sill and
 * head take those profiles, the rest intermediate; every cell has lite V1.
 */
public final class TestWalls {
  private final TestParts parts;
  private final List<Grid.Line> lines = new ArrayList<>();
  private final List<Grid.Floor> floors = new ArrayList<>();
  private final List<Row> rows = new ArrayList<>();
  private final List<Grid.Corner> corners = new ArrayList<>();
  private final List<Grid.Joint> joints = new ArrayList<>();
  private final List<Opening> openings = new ArrayList<>();
  private final Map<String, List<Stretch>> verticals = new HashMap<>();
  private final List<Members.Splice> splices = new ArrayList<>();
  private final List<AnchorUse> anchors = new ArrayList<>();
  private final Map<String, String> profiles = new HashMap<>();
  private final Map<String, String> lites = new HashMap<>();
  private int next;

  private record Row(
      String name,
      Height left,
      Height right,
      boolean edge,
      String from,
      String to,
      Origin origin) {}

  private record Stretch(
      String profile, Optional<Height> from, Optional<Height> to, Origin origin) {}

  private record Opening(
      Grid.OpeningKind kind,
      String name,
      String from,
      String to,
      Height bottom,
      Height top,
      Optional<Length> clear,
      Origin origin) {}

  private TestWalls(TestParts parts) {
    this.parts = parts;
  }

  static TestWalls of(TestParts parts) {
    return new TestWalls(parts);
  }

  private Origin origin() {
    next += 2;
    return new Origin("test.wall", 0, new TextRange(next, next + 1));
  }

  /** Lines of these names (apart by blanks), the first at 0, each so far from the one before. */
  TestWalls lines(String names, Length... spacings) {
    String[] all = names.split(" ");
    Length x = Length.ZERO;
    for (int i = 0; i < all.length; i++) {
      if (i > 0) {
        x = x.plus(spacings[Math.min(i - 1, spacings.length - 1)]);
      }
      lines.add(new Grid.Line(i, all[i], x, false, false, origin()));
    }
    return this;
  }

  /** That line is given by the outer edge of its member. */
  TestWalls lineByEdge(String name) {
    Grid.Line line = lines.get(line(name));
    lines.set(
        line.index(), new Grid.Line(line.index(), name, line.x(), true, line.end(), line.origin()));
    return this;
  }

  TestWalls corner(String line) {
    Quantity angle = Quantity.of(Rational.of(90), Unit.DEGREE);
    corners.add(new Grid.Corner(line(line), Given.stated(angle, origin())));
    return this;
  }

  TestWalls joint(String left, String right) {
    joints.add(new Grid.Joint(line(left), line(right), origin()));
    return this;
  }

  TestWalls floor(String name, Length elevation, Length slab) {
    Optional<Given<Length>> depth = Optional.ofNullable(slab).map(d -> Given.stated(d, origin()));
    Given<Length> top = Given.stated(elevation, origin());
    floors.add(new Grid.Floor(floors.size(), name, top, depth, Optional.empty(), origin()));
    return this;
  }

  TestWalls row(String name, Length y) {
    return slope(name, y, y, "", "");
  }

  /** A row that runs from one line to another only. */
  TestWalls row(String name, Length y, String from, String to) {
    return slope(name, y, y, from, to);
  }

  /** A sloped row. */
  TestWalls slope(String name, Length left, Length right, String from, String to) {
    rows.add(new Row(name, at(left), at(right), false, from, to, origin()));
    return this;
  }

  /** A row given by the outer edge of its face. */
  TestWalls rowByEdge(String name, Length y) {
    rows.add(new Row(name, at(y), at(y), true, "", "", origin()));
    return this;
  }

  /** Another profile than the usual for a line or a row. */
  TestWalls profile(String lineOrRow, String profile) {
    profiles.put(lineOrRow, profile);
    return this;
  }

  /** A stretch of vertical; an end is a height made here, or null for full height. */
  TestWalls vertical(String line, Height from, Height to) {
    verticals
        .computeIfAbsent(line, name -> new ArrayList<>())
        .add(new Stretch("", Optional.ofNullable(from), Optional.ofNullable(to), origin()));
    return this;
  }

  TestWalls splice(String names, Height at, Length gap) {
    Origin statement = origin();
    for (String name : names.split(" ")) {
      splices.add(
          new Members.Splice(
              line(name), at, Given.stated(gap, statement), Optional.empty(), statement));
    }
    return this;
  }

  TestWalls anchor(AnchorUse.Kind kind, String names, Height at, String part) {
    Origin statement = origin();
    Optional<Integer> floor =
        at.base()
            .flatMap(b -> floors.stream().filter(f -> f.name().equals(b)).findFirst())
            .map(Grid.Floor::index);
    boolean stated = at.base().isEmpty() || at.offset().signum() != 0;
    for (String name : names.split(" ")) {
      anchors.add(
          new AnchorUse(
              kind,
              line(name),
              at,
              floor,
              stated,
              Optional.ofNullable(part).map(p -> Given.stated(p, statement)),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              statement));
    }
    return this;
  }

  TestWalls opening(
      Grid.OpeningKind kind, String name, String from, String to, Height bottom, Height top) {
    return opening(kind, name, from, to, bottom, top, null);
  }

  TestWalls opening(
      Grid.OpeningKind kind,
      String name,
      String from,
      String to,
      Height bottom,
      Height top,
      Length clear) {
    openings.add(
        new Opening(kind, name, from, to, bottom, top, Optional.ofNullable(clear), origin()));
    return this;
  }

  /** Another glass for the cells that stand on a row; "" for none. */
  TestWalls lite(String row, String glass) {
    lites.put(row, glass);
    return this;
  }

  /** A bare height. */
  Height at(Length elevation) {
    return new Height(elevation, Optional.empty(), elevation, origin());
  }

  /** Right at a floor or a row, or so far above it. */
  Height at(String name, Length offset) {
    Length base =
        floors.stream()
            .filter(floor -> floor.name().equals(name))
            .map(floor -> floor.elevation().value())
            .findFirst()
            .orElseGet(
                () ->
                    rows.stream()
                        .filter(row -> row.name().equals(name))
                        .map(row -> row.left().elevation())
                        .findFirst()
                        .orElseThrow());
    return new Height(base.plus(offset), Optional.of(name), offset, origin());
  }

  Height at(String name) {
    return at(name, Length.ZERO);
  }

  private int line(String name) {
    return lines.stream()
        .filter(line -> line.name().equals(name))
        .map(Grid.Line::index)
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no line " + name));
  }

  Catalog catalog() {
    return parts.catalog();
  }

  public WallLayout layOut() {
    return LayoutBuilder.layOut(wall(), parts.catalog());
  }

  Wall wall() {
    List<Grid.Bay> bays = bays();
    List<Grid.Line> placed = new ArrayList<>();
    for (Grid.Line line : lines) {
      long beside =
          bays.stream()
              .filter(bay -> bay.left() == line.index() || bay.right() == line.index())
              .count();
      placed.add(
          new Grid.Line(
              line.index(), line.name(), line.x(), line.edge(), beside == 1, line.origin()));
    }
    List<Grid.Row> placedRows = rows(bays);
    List<Grid.Opening> placedOpenings = new ArrayList<>();
    for (Opening opening : openings) {
      placedOpenings.add(
          new Grid.Opening(
              opening.kind(),
              opening.name(),
              bays(bays, opening.from(), opening.to()),
              opening.bottom(),
              opening.top(),
              true,
              opening.clear().map(clear -> Given.stated(clear, opening.origin())),
              Optional.empty(),
              opening.origin()));
    }
    Grid grid =
        new Grid(
            List.of(new Grid.Face("", 0, lines.size() - 1, origin())),
            placed,
            bays,
            corners,
            joints,
            floors,
            placedRows,
            placedOpenings);
    Given<Length> eighth = Given.assumed(Length.ofInches(1, 8), origin(), "common practice");
    return new Wall(
        "Test",
        origin(),
        Optional.of(parts.system("system")),
        Map.of(),
        criteria(),
        new Fabrication(eighth, eighth, eighth, Optional.empty(), List.of(), Map.of()),
        grid,
        new Members(verticals(placed), horizontals(placedRows), splices, List.of(), List.of()),
        anchors.stream().sorted(Comparator.comparingInt(AnchorUse::line)).toList(),
        lites(bays, placedRows),
        new Installation(List.of()));
  }

  private List<Grid.Bay> bays() {
    List<Grid.Bay> bays = new ArrayList<>();
    for (int i = 1; i < lines.size(); i++) {
      int right = i;
      if (joints.stream().noneMatch(joint -> joint.right() == right)) {
        bays.add(new Grid.Bay(bays.size(), i - 1, i, lines.get(i).x().minus(lines.get(i - 1).x())));
      }
    }
    return bays;
  }

  private List<Integer> bays(List<Grid.Bay> bays, String from, String to) {
    int first = from.isEmpty() ? 0 : line(from);
    int last = to.isEmpty() ? lines.size() - 1 : line(to);
    return bays.stream()
        .filter(bay -> bay.left() >= first && bay.right() <= last)
        .map(Grid.Bay::index)
        .toList();
  }

  private List<Grid.Row> rows(List<Grid.Bay> bays) {
    List<Row> sorted = new ArrayList<>(rows);
    sorted.sort(Comparator.comparing(row -> row.left().elevation()));
    List<Grid.Row> placed = new ArrayList<>();
    for (Row row : sorted) {
      placed.add(
          new Grid.Row(
              placed.size(),
              row.name(),
              row.name(),
              Optional.empty(),
              row.left(),
              row.right(),
              row.edge(),
              bays(bays, row.from(), row.to()),
              row.origin()));
    }
    return placed;
  }

  private List<Members.Vertical> verticals(List<Grid.Line> placed) {
    List<Members.Vertical> made = new ArrayList<>();
    for (Grid.Line line : placed) {
      boolean turns = corners.stream().anyMatch(corner -> corner.line() == line.index());
      String usual = turns ? "corner" : line.end() ? "jamb" : "mullion";
      String profile = profiles.getOrDefault(line.name(), usual);
      List<Stretch> stretches =
          verticals.getOrDefault(
              line.name(), List.of(new Stretch("", Optional.empty(), Optional.empty(), origin())));
      for (Stretch stretch : stretches) {
        made.add(
            new Members.Vertical(
                line.index(),
                Given.stated(profile, stretch.origin()),
                stretch.from(),
                stretch.to(),
                stretch.origin()));
      }
    }
    return made;
  }

  private List<Members.Horizontal> horizontals(List<Grid.Row> placed) {
    List<Members.Horizontal> made = new ArrayList<>();
    for (Grid.Row row : placed) {
      String usual =
          row.name().startsWith("sill")
              ? "sill"
              : row.name().startsWith("head") ? "head" : "intermediate";
      Given<String> profile = Given.stated(profiles.getOrDefault(row.name(), usual), row.origin());
      for (int bay : row.bays()) {
        made.add(new Members.Horizontal(row.index(), bay, profile, row.origin()));
      }
    }
    return made;
  }

  private List<LiteUse> lites(List<Grid.Bay> bays, List<Grid.Row> placed) {
    List<LiteUse> made = new ArrayList<>();
    for (Grid.Bay bay : bays) {
      Grid.Row below = null;
      for (Grid.Row row : placed) {
        if (!row.bays().contains(bay.index())) {
          continue;
        }
        String glass = below == null ? "" : lites.getOrDefault(below.name(), "V1");
        if (!glass.isEmpty()) {
          made.add(
              new LiteUse(
                  bay.index(),
                  below.index(),
                  row.index(),
                  true,
                  Given.stated(glass, origin()),
                  false,
                  Optional.empty(),
                  origin()));
        }
        below = row;
      }
    }
    return made;
  }

  private Criteria criteria() {
    return new Criteria(
        Optional.empty(),
        List.of(),
        Optional.empty(),
        Map.of(),
        Optional.empty(),
        Optional.empty(),
        Given.assumed("outdoor", origin(), "common practice"),
        Optional.empty(),
        mullwright.model.GlassCriteria.assumed(origin()),
        Optional.empty());
  }
}
