package mullwright.model;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;
import mullwright.quantity.Rational;
import mullwright.syntax.Argument;
import mullwright.syntax.Selection;
import mullwright.syntax.StatementKind;
import mullwright.syntax.Word;

/** Reads the {@code grid} block: lines, faces, corners, joints, floors, rows and openings. */
final class GridReader {
  private static final Rational FULL_TURN = Rational.of(360);

  private final WallText wall;
  private final Collector collector;
  private final NameIndex lineNames = new NameIndex("line");
  private final List<LinePlan.Entry> lines = new ArrayList<>();
  private final List<Grid.Face> faces = new ArrayList<>();
  private final List<Grid.Joint> joints = new ArrayList<>();
  private Bays bays;

  GridReader(WallText wall, Collector collector) {
    this.wall = wall;
    this.collector = collector;
  }

  GridNames read() {
    readLines();
    readJoints();
    bays = bays();
    BayReach reach = new BayReach(lineNames, bays);
    FloorReader floorReader = new FloorReader(collector);
    List<Grid.Floor> floors =
        floorReader.read(
            wall.all(StatementKind.FLOOR, StatementKind.FLOORS),
            wall.all(StatementKind.SLAB_STATEMENT));
    Heights floorHeights = heightsOf(floors, floorReader);
    RowReader rowReader = new RowReader(heightsOf(floors, floorReader), reach, collector);
    List<RowGroup.Instance> instances = rowReader.read(wall.all(StatementKind.ROW));
    NameIndex rowNames = new NameIndex("row");
    List<Grid.Row> rows = new ArrayList<>(instances.size());
    for (RowGroup.Instance row : instances) {
      rows.add(row(row, rows.size()));
      row.addTo(floorHeights, rows.size() - 1);
      row.addTo(rowNames, floorHeights);
    }
    boolean whole = isWhole();
    if (!whole) {
      lineNames.incomplete();
    }
    if (!rowReader.isComplete() || !whole) {
      rowNames.incomplete();
      floorHeights.names().incomplete();
    }
    checkNames(floors, floorReader, rowReader);
    Rows order = new Rows(rows, bays);
    order.checkOrder(collector);
    Grid grid = grid(floors, rows, List.of());
    GridNames names = new GridNames(grid, lineNames, bays, rowNames, order, floorHeights);
    List<Grid.Opening> openings =
        new OpeningReader(names, collector).read(wall.all(StatementKind.OPENING));
    return new GridNames(
        grid(floors, rows, openings), lineNames, bays, rowNames, order, floorHeights);
  }

  /** False if something in the grid is no statement, so that names may be missing. */
  private boolean isWhole() {
    List<Said> blocks = wall.all(StatementKind.GRID_BLOCK);
    return blocks.isEmpty() ? !wall.strays() : blocks.stream().noneMatch(Said::strays);
  }

  private void readLines() {
    LinePlan plan = new LinePlan();
    LineReader reader = new LineReader(plan, collector);
    for (WallText.Layer layer : wall.layers()) {
      reader.read(layer.all(StatementKind.LINES_STATEMENT, StatementKind.LINE, StatementKind.FACE));
      if (layer.mirroredNext()) {
        plan.mirror();
      }
    }
    lines.addAll(plan.sorted());
    lines.forEach(line -> lineNames.add(line.symbol(), line.name()));
    if (!plan.isComplete() || lines.isEmpty()) {
      lineNames.incomplete();
    }
    for (LinePlan.Face face : plan.faces()) {
      int first = lineNames.find(face.first())[0];
      int last = lineNames.find(face.last())[0];
      faces.add(
          new Grid.Face(
              face.symbol().name(),
              Math.min(first, last),
              Math.max(first, last),
              face.symbol().definition()));
    }
    checkLines();
  }

  private void checkLines() {
    for (int i = 1; i < lines.size(); i++) {
      LinePlan.Entry left = lines.get(i - 1);
      LinePlan.Entry right = lines.get(i);
      if (left.x().equals(right.x()) && inOneFace(i - 1)) {
        collector.problem(
            new ModelProblem.OutOfOrder(
                "line",
                right.name(),
                left.name(),
                left.symbol().definition(),
                right.symbol().definition()));
      }
    }
    for (int i = 1; i < lines.size() - 1; i++) {
      if (lines.get(i).edge()) {
        collector.misplaced(
            "the line " + lines.get(i).name() + " cannot be given by its edge",
            "only the first and the last line have an outer edge",
            lines.get(i).symbol().definition());
      }
    }
  }

  /** True if a line and the next stand in one face. */
  private boolean inOneFace(int line) {
    if (faces.isEmpty()) {
      return true;
    }
    return faces.stream().anyMatch(face -> face.firstLine() <= line && line < face.lastLine());
  }

  private void readJoints() {
    for (Said said : wall.all(StatementKind.JOINT)) {
      Optional<Selection> selection =
          said.argument(Argument.Select.class).map(Argument.Select::selection);
      for (Selection.Item item : selection.map(Selection::items).orElse(List.of())) {
        int[] first = lineNames.named(item.first(), said, collector);
        int[] last = item.isRange() ? lineNames.named(item.last(), said, collector) : first;
        if (first.length == 0 || last.length == 0) {
          continue;
        }
        int left = Math.min(first[0], last[0]);
        if (Math.abs(first[0] - last[0]) == 1) {
          joints.add(new Grid.Joint(left, left + 1, said.origin()));
        } else {
          collector.misplaced(
              '"' + said.spot().text(item.range()) + "\" is no joint",
              "a joint lies between two lines side by side, as F..G",
              said.spot().at(item.range()));
        }
      }
    }
  }

  private Bays bays() {
    BitSet open = new BitSet();
    for (int line = 0; line + 1 < lines.size(); line++) {
      boolean apart = lines.get(line).x().isShorterThan(lines.get(line + 1).x());
      open.set(line, apart && inOneFace(line));
    }
    joints.forEach(joint -> open.clear(joint.left()));
    return new Bays(
        lines.stream().map(LinePlan.Entry::name).toList(),
        lines.stream().map(LinePlan.Entry::x).toList(),
        open);
  }

  private Heights heightsOf(List<Grid.Floor> floors, FloorReader reader) {
    Heights heights = new Heights();
    for (Grid.Floor floor : floors) {
      heights.addFloor(floor, reader.symbol(floor.name()));
    }
    heights.names().groupEnds();
    if (!reader.isComplete() || !isWhole()) {
      heights.names().incomplete();
    }
    return heights;
  }

  private Grid.Row row(RowGroup.Instance row, int index) {
    List<Integer> runs = new ArrayList<>();
    for (int bay = row.bays().nextSetBit(0); bay >= 0 && bays.count() > 0; ) {
      runs.add(bay);
      bay = row.bays().nextSetBit(bay + 1);
    }
    return new Grid.Row(
        index,
        row.name(),
        row.symbol().name(),
        row.floorIndex(),
        row.left(),
        row.right(),
        row.edge(),
        runs,
        row.origin());
  }

  private Grid grid(List<Grid.Floor> floors, List<Grid.Row> rows, List<Grid.Opening> openings) {
    Length start = lines.isEmpty() ? Length.ZERO : lines.get(0).x();
    List<Grid.Line> made = new ArrayList<>(lines.size());
    for (LinePlan.Entry line : lines) {
      int index = made.size();
      boolean end = index == 0 || index == lines.size() - 1 || bays.isEnd(index);
      Origin origin = line.symbol().definition();
      made.add(new Grid.Line(index, line.name(), line.x().minus(start), line.edge(), end, origin));
    }
    List<Grid.Face> named = faces;
    if (faces.isEmpty() && !lines.isEmpty()) {
      named = List.of(new Grid.Face("", 0, lines.size() - 1, wall.origin()));
    }
    return new Grid(named, made, bays.all(), corners(), joints, floors, rows, openings);
  }

  private List<Grid.Corner> corners() {
    Map<Integer, Grid.Corner> corners = new LinkedHashMap<>();
    Map<Integer, Said> said = new LinkedHashMap<>();
    for (Said statement : wall.all(StatementKind.CORNER)) {
      corner(statement)
          .ifPresent(
              corner -> {
                Said before = said.put(corner.line(), statement);
                if (before != null && before.layer() == statement.layer()) {
                  collector.duplicate(
                      "corner",
                      lines.get(corner.line()).name(),
                      before.origin(),
                      statement.origin());
                }
                corners.put(corner.line(), corner);
              });
    }
    return corners.keySet().stream().sorted().map(corners::get).toList();
  }

  private Optional<Grid.Corner> corner(Said said) {
    Optional<Word> name = said.argument(Argument.Name.class).map(Argument.Name::word);
    Optional<Argument.Value> value = said.argument(Argument.Value.class);
    if (name.isEmpty() || value.isEmpty()) {
      return Optional.empty();
    }
    int[] line = lineNames.named(name.get(), said, collector);
    Origin origin = said.spot().at(value.get().range());
    Optional<Quantity> angle =
        said.values(collector).quantity(value.get().expression(), Kind.ANGLE, "angle");
    if (line.length == 0 || angle.isEmpty()) {
      return Optional.empty();
    }
    Rational degrees = angle.get().si();
    if (degrees.signum() <= 0 || degrees.compareTo(FULL_TURN) >= 0) {
      collector.bad(
          ModelProblem.BadValue.Reason.OUT_OF_RANGE, said.spot().text(value.get().range()), origin);
      return Optional.empty();
    }
    if (line[0] == 0 || line[0] == lines.size() - 1) {
      collector.misplaced(
          "the wall cannot turn at its end line " + name.get().text(),
          "a corner stands between two bays",
          said.spot().at(name.get()));
      return Optional.empty();
    }
    return Optional.of(new Grid.Corner(line[0], Given.stated(angle.get(), origin)));
  }

  /** Floors, rows and lets share one name space. */
  private void checkNames(List<Grid.Floor> floors, FloorReader floorReader, RowReader rows) {
    for (Grid.Floor floor : floors) {
      checkLet(floor.name(), floorReader.symbol(floor.name()).definition());
    }
    NameIndex floorNames = heightsOf(floors, floorReader).names();
    for (RowGroup group : rows.groups()) {
      String name = group.symbol().name();
      checkLet(name, group.symbol().definition());
      if (floorNames.has(name)) {
        Origin first = floorNames.symbol(name).definition();
        collector.duplicate("name", name, first, group.symbol().definition());
      }
    }
  }

  private void checkLet(String name, Origin origin) {
    Let let = wall.scope().find(name);
    if (let != null) {
      collector.duplicate("name", name, let.spot.at(let.name), origin);
    }
  }
}
