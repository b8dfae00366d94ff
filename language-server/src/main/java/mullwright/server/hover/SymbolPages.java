package mullwright.server.hover;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import mullwright.check.Waiting;
import mullwright.layout.Cell;
import mullwright.layout.GlassSizes;
import mullwright.layout.PieceRef;
import mullwright.layout.WallLayout;
import mullwright.model.Grid;
import mullwright.model.Height;
import mullwright.model.Origin;
import mullwright.model.Symbol;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;
import mullwright.quantity.Rational;
import mullwright.workspace.Reading;
import mullwright.workspace.WallDetails;

/** The pages of named things of the grid and of walls. */
final class SymbolPages {
  private static final int ROWS = 16;

  private final Reading reading;
  private final Numbers numbers;

  SymbolPages(Reading reading, Numbers numbers) {
    this.reading = reading;
    this.numbers = numbers;
  }

  /**
   * The page of a line, floor, row, opening, face or wall; empty for other kinds.
   *
   * @param at the wall it is named in, which may have it from one it is like, elsewhere
   */
  Optional<Page> page(Symbol symbol, Optional<String> at) {
    if (symbol.kind() == Symbol.Kind.WALL) {
      return wall(symbol.name()).map(this::ofWall);
    }
    return at.flatMap(this::wall)
        .flatMap(wall -> page(symbol, wall))
        .or(() -> wall(symbol.scope()).flatMap(wall -> page(symbol, wall)));
  }

  private Optional<Page> page(Symbol symbol, WallDetails wall) {
    return switch (symbol.kind()) {
      case LINE -> line(symbol, wall);
      case FLOOR -> floor(symbol, wall);
      case ROW -> rows(symbol, wall);
      case OPENING -> opening(symbol, wall);
      case FACE -> face(symbol, wall);
      default -> Optional.empty();
    };
  }

  /** Adds what lines and floors a statement of the grid made, each with its place. */
  void made(Origin statement, Page page) {
    for (WallDetails wall : reading.details()) {
      Grid grid = wall.layout().wall().grid();
      Length last = null;
      for (Grid.Line line : grid.lines()) {
        if (isMadeBy(statement, line.origin())) {
          String step = last == null ? "" : ", " + numbers.of(line.x().minus(last)) + " on";
          page.fact("line " + line.name(), numbers.of(line.x()) + step);
          last = line.x();
        }
      }
      for (Grid.Floor floor : grid.floors()) {
        if (isMadeBy(statement, floor.origin())) {
          page.fact("floor " + floor.name(), numbers.of(floor.elevation()));
        }
      }
      for (Grid.Row row : grid.rows()) {
        if (isMadeBy(statement, row.origin())) {
          page.fact("row " + row.name(), height(row));
        }
      }
    }
  }

  private Optional<WallDetails> wall(String name) {
    return reading.details().stream()
        .filter(wall -> wall.layout().wall().name().equals(name))
        .findFirst();
  }

  private Page ofWall(WallDetails wall) {
    WallLayout layout = wall.layout();
    Grid grid = layout.wall().grid();
    Page page = new Page("wall " + layout.wall().name());
    layout.wall().system().ifPresent(system -> page.fact("system", system.name()));
    if (!grid.lines().isEmpty()) {
      Length width = grid.lines().get(grid.lines().size() - 1).x().minus(grid.lines().get(0).x());
      page.fact("lines", grid.lines().size() + ", " + numbers.of(width) + " from first to last");
    }
    page.fact("floors", String.valueOf(grid.floors().size()));
    page.fact("lengths of vertical", String.valueOf(layout.verticals().size()));
    page.fact("horizontals", String.valueOf(layout.horizontals().size()));
    lites(layout, page);
    page.fact("anchors and clips", String.valueOf(layout.anchors().size()));
    Waiting.of(reading.path(), reading.walls()).stream()
        .filter(waiting -> waiting.wall().equals(layout.wall().name()))
        .forEach(waiting -> page.line(waiting.words()));
    return page;
  }

  private void lites(WallLayout layout, Page page) {
    int lites = 0;
    Rational area = Rational.ZERO;
    Rational mass = Rational.ZERO;
    for (Cell cell : layout.cells()) {
      if (cell.use().isPresent() && cell.opening().isEmpty()) {
        GlassSizes sizes = GlassSizes.of(cell, numbers.first());
        lites++;
        area = area.plus(sizes.area().si());
        mass = mass.plus(sizes.mass().map(Quantity::si).orElse(Rational.ZERO));
      }
    }
    page.fact(
        "lites",
        lites
            + ", "
            + numbers.of(new Quantity(area, Kind.AREA.dimension()), Kind.AREA)
            + ", "
            + numbers.of(new Quantity(mass, Kind.MASS.dimension()), Kind.MASS));
  }

  private Optional<Page> line(Symbol symbol, WallDetails wall) {
    return wall.layout().wall().grid().lines().stream()
        .filter(line -> line.name().equals(symbol.name()))
        .findFirst()
        .map(
            line -> {
              Page page = new Page("line " + line.name());
              page.fact(
                  line.edge() ? "outer edge of its member" : "centre of its vertical",
                  numbers.of(line.x()) + " from the first line");
              if (line.end()) {
                page.line("An end: glass on one side only.");
              }
              new Pieces(wall, numbers).tell(wall.index().onLine(line.index()), page);
              return page;
            });
  }

  private Optional<Page> floor(Symbol symbol, WallDetails wall) {
    List<Grid.Floor> floors = wall.layout().wall().grid().floors();
    return floors.stream()
        .filter(floor -> floor.name().equals(symbol.name()))
        .findFirst()
        .map(
            floor -> {
              Page page = new Page("floor " + floor.name());
              page.fact("top of slab", numbers.of(floor.elevation()));
              if (floor.index() + 1 < floors.size()) {
                Grid.Floor next = floors.get(floor.index() + 1);
                page.fact(
                    "to " + next.name(),
                    numbers.of(next.elevation().value().minus(floor.elevation().value())));
              }
              floor.slab().ifPresent(slab -> page.fact("slab", numbers.of(slab)));
              floor
                  .edge()
                  .ifPresent(edge -> page.fact("slab edge behind the glass", numbers.of(edge)));
              List<PieceRef> anchors = new ArrayList<>();
              wall.layout()
                  .anchors()
                  .forEach(
                      anchor -> {
                        if (anchor.use().floor().filter(at -> at == floor.index()).isPresent()) {
                          anchors.add(new PieceRef(PieceRef.Kind.ANCHOR, anchor.index()));
                        }
                      });
              new Pieces(wall, numbers).tell(anchors, page);
              return page;
            });
  }

  /** All rows the one statement made, so that a name that stands for many tells of each. */
  private Optional<Page> rows(Symbol symbol, WallDetails wall) {
    Grid grid = wall.layout().wall().grid();
    String base = symbol.name().substring(symbol.name().lastIndexOf('.') + 1);
    List<Grid.Row> rows = new ArrayList<>();
    for (Grid.Row row : grid.rows()) {
      boolean same = row.base().equals(base) || row.name().equals(symbol.name());
      if (same
          && (isMadeBy(row.origin(), symbol.definition())
              || isMadeBy(symbol.definition(), row.origin()))) {
        rows.add(row);
      }
    }
    if (rows.isEmpty()) {
      return Optional.empty();
    }
    Page page = new Page("row " + (rows.size() == 1 ? rows.get(0).name() : base));
    List<PieceRef> pieces = new ArrayList<>();
    rows.stream().limit(ROWS).forEach(row -> page.fact(row.name(), height(row)));
    if (rows.size() > ROWS) {
      page.line("… and " + (rows.size() - ROWS) + " more floors.");
    }
    rows.forEach(row -> pieces.addAll(wall.index().onRow(row.index())));
    new Pieces(wall, numbers).tell(pieces, page);
    return Optional.of(page);
  }

  /** Whether a place is, or lies within, a statement. */
  private static boolean isMadeBy(Origin statement, Origin place) {
    return statement.file().equals(place.file())
        && statement.segment() == place.segment()
        && statement.range().start() <= place.range().start()
        && place.range().end() <= statement.range().end();
  }

  private String height(Grid.Row row) {
    String at = place(row.left());
    return row.slopes() ? "from " + at + " to " + place(row.right()) : at;
  }

  private String place(Height height) {
    String base =
        height
            .base()
            .map(
                name ->
                    height.offset().signum() == 0
                        ? ", at " + name
                        : ", "
                            + numbers.of(height.offset().abs())
                            + (height.offset().signum() > 0 ? " above " : " below ")
                            + name)
            .orElse("");
    return numbers.of(height.elevation()) + base;
  }

  private Optional<Page> opening(Symbol symbol, WallDetails wall) {
    return wall.layout().wall().grid().openings().stream()
        .filter(opening -> opening.name().equals(symbol.name()))
        .findFirst()
        .map(
            opening -> {
              Page page =
                  new Page(
                      opening.kind().name().toLowerCase(java.util.Locale.ROOT)
                          + " "
                          + opening.name());
              page.fact("lower edge", place(opening.bottom()));
              page.fact("upper edge", place(opening.top()));
              page.fact("bays", String.valueOf(opening.bays().size()));
              opening.clear().ifPresent(clear -> page.fact("clearance", numbers.of(clear)));
              opening
                  .mass()
                  .ifPresent(
                      mass ->
                          page.fact("mass by area", numbers.of(mass.value(), kind(mass.value()))));
              if (opening.byOthers()) {
                page.line("Supplied and set by others.");
              }
              List<PieceRef> cells = new ArrayList<>();
              wall.layout()
                  .cells()
                  .forEach(
                      cell -> {
                        if (cell.opening().filter(opening::equals).isPresent()) {
                          cells.add(new PieceRef(PieceRef.Kind.CELL, cell.index()));
                        }
                      });
              new Pieces(wall, numbers).tell(cells, page);
              return page;
            });
  }

  private static Kind kind(Quantity quantity) {
    return Kind.of(quantity.dimension()).orElse(Kind.RATIO);
  }

  private Optional<Page> face(Symbol symbol, WallDetails wall) {
    Grid grid = wall.layout().wall().grid();
    return grid.faces().stream()
        .filter(face -> face.name().equals(symbol.name()))
        .findFirst()
        .map(
            face -> {
              Grid.Line first = grid.lines().get(face.firstLine());
              Grid.Line last = grid.lines().get(face.lastLine());
              Page page = new Page("face " + face.name());
              page.fact("lines", first.name() + " to " + last.name());
              page.fact("width", numbers.of(last.x().minus(first.x())));
              Set<String> corners = new TreeSet<>();
              grid.corners()
                  .forEach(
                      corner -> {
                        if (corner.line() == face.firstLine() || corner.line() == face.lastLine()) {
                          corners.add(
                              grid.lines().get(corner.line()).name()
                                  + ", "
                                  + numbers.of(corner.angle().value(), Kind.ANGLE));
                        }
                      });
              corners.forEach(corner -> page.fact("corner", corner));
              return page;
            });
  }
}
