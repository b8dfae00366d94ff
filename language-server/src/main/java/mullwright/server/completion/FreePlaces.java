package mullwright.server.completion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.model.Grid;
import mullwright.model.Installation;
import mullwright.model.Wall;
import mullwright.quantity.Length;

/** Where the grid of a wall has room for something more. */
final class FreePlaces {
  /** Nearer than that to another row a row is not offered. */
  private static final Length ROOM = Length.ofInches(6);

  /** A head of a door is looked for from there to twice that above the lowest floor. */
  private static final Length DOOR = Length.ofInches(72);

  private static final List<String> ROWS = List.of("rail", "top", "band", "curb");
  private static final List<String> FACES = List.of("South", "East", "North", "West");

  /** A height above a floor. */
  record Row(String height, String floor) {}

  private final Optional<Grid> grid;
  private final List<Installation.Stretch> set;
  private final Snippets write;

  FreePlaces(Optional<Wall> wall, Snippets write) {
    this.grid = wall.map(Wall::grid);
    this.set = wall.map(Wall::installation).map(Installation::stretches).orElse(List.of());
    this.write = write;
  }

  /** A height above a floor where no row is near; the usual one if there is none. */
  Row row() {
    List<Row> heights = List.of(at("3'-0\"", "900"), at("9'-6\"", "3000"), at("6'-0\"", "1800"));
    if (grid.isPresent()) {
      List<Grid.Floor> floors = grid.get().floors();
      for (int floor = 0; floor < floors.size(); floor++) {
        for (Row height : heights) {
          Length above = Length.ofInches(inches(heights.indexOf(height)));
          Length place = floors.get(floor).elevation().value().plus(above);
          boolean below =
              floor + 1 == floors.size()
                  ? floors.size() == 1
                  : floors.get(floor + 1).elevation().value().isLongerThan(place);
          if (below && isFree(place)) {
            return new Row(height.height(), floors.get(floor).name());
          }
        }
      }
    }
    return heights.get(0);
  }

  /** A name that no row has. */
  String rowName() {
    List<String> given =
        grid.map(it -> it.rows().stream().map(Grid.Row::base).toList()).orElse(List.of());
    return ROWS.stream().filter(name -> !given.contains(name)).findFirst().orElse("row-1");
  }

  private Row at(String us, String millimetres) {
    return new Row(write.length(us, millimetres), "");
  }

  private static int inches(int height) {
    return height == 0 ? 36 : height == 1 ? 114 : 72;
  }

  private boolean isFree(Length place) {
    for (Grid.Row row : grid.orElseThrow().rows()) {
      Length apart = row.left().elevation().minus(place);
      if (ROOM.isLongerThan(apart.signum() < 0 ? apart.negated() : apart)) {
        return false;
      }
    }
    return true;
  }

  /** As far right of the last line as that is of the one before. */
  String nextLine() {
    List<Grid.Line> lines = grid.map(Grid::lines).orElse(List.of());
    if (lines.size() < 2) {
      return write.length("5'-0\"", "1500");
    }
    Length last = lines.get(lines.size() - 1).x();
    return write.exact(last.plus(last.minus(lines.get(lines.size() - 2).x())));
  }

  /** A name that no face has. */
  String face() {
    List<String> given =
        grid.map(it -> it.faces().stream().map(Grid.Face::name).toList()).orElse(List.of());
    return FACES.stream().filter(name -> !given.contains(name)).findFirst().orElse("Face");
  }

  /** Two lines side by side with no opening between, not at an end if there is a choice. */
  Optional<String> openBay() {
    List<Grid.Bay> bays = new ArrayList<>(grid.map(Grid::bays).orElse(List.of()));
    grid.ifPresent(
        it ->
            it.openings()
                .forEach(taken -> bays.removeIf(bay -> taken.bays().contains(bay.index()))));
    return bays.stream()
        .skip(bays.size() > 2 ? 1 : 0)
        .findFirst()
        .map(bay -> line(bay.left()) + ".." + line(bay.right()));
  }

  private String line(int index) {
    return grid.orElseThrow().lines().get(index).name();
  }

  /** The first bays side by side that no method of installation is told for; empty if none are. */
  Optional<String> unsetBays() {
    int lines = grid.map(it -> it.lines().size()).orElse(0);
    int first = 0;
    while (first + 1 < lines && isSet(first)) {
      first++;
    }
    int last = first;
    while (last + 1 < lines && !isSet(last)) {
      last++;
    }
    return last == first ? Optional.empty() : Optional.of(line(first) + ".." + line(last));
  }

  /** True if the space right of a line lies in a stretch. */
  private boolean isSet(int line) {
    return set.stream().anyMatch(it -> it.firstLine() <= line && line < it.lastLine());
  }

  /** The rows a door may end at; all rows if there is none at the height of a door. */
  List<String> heads() {
    List<Grid.Row> rows = grid.map(Grid::rows).orElse(List.of());
    List<Grid.Floor> floors = grid.map(Grid::floors).orElse(List.of());
    Length floor = floors.isEmpty() ? Length.ZERO : floors.get(0).elevation().value();
    List<String> heads = new ArrayList<>();
    for (Grid.Row row : rows) {
      Length above = row.left().elevation().minus(floor);
      if (above.isLongerThan(DOOR) && DOOR.plus(DOOR).isLongerThan(above)) {
        heads.add(row.name());
      }
    }
    return heads.isEmpty() ? rows.stream().map(Grid.Row::name).toList() : heads;
  }
}
