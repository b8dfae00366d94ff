package mullwright.server.hint;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToIntFunction;
import mullwright.layout.Cell;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.PieceRef;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.model.Grid;
import mullwright.model.Origin;
import mullwright.quantity.Length;
import mullwright.server.Settings;
import mullwright.server.hover.Numbers;
import mullwright.workspace.Cancel;
import mullwright.workspace.WallDetails;

/** The figures of a file's walls by the statement they follow from. */
public final class Figures {
  private final List<WallDetails> walls;
  private final Numbers numbers;
  private final Settings settings;
  private final ToIntFunction<Origin> lineOf;

  /**
   * Those that the settings have on; none is worked out yet.
   *
   * @param lineOf the line of the text an origin stands on, below 0 if it is of another file
   */
  public Figures(
      List<WallDetails> walls, Numbers numbers, Settings settings, ToIntFunction<Origin> lineOf) {
    this.walls = List.copyOf(walls);
    this.numbers = numbers;
    this.settings = settings;
    this.lineOf = lineOf;
  }

  /** All of them, in the order of the layout. */
  public Map<Origin, Figure> byStatement(Cancel cancel) {
    Map<Origin, Figure> figures = new LinkedHashMap<>();
    for (WallDetails wall : walls) {
      cancel.check();
      WallLayout layout = wall.layout();
      layout.verticals().forEach(piece -> add(piece, wall, figures));
      layout.horizontals().forEach(piece -> add(piece, wall, figures));
      layout.cells().forEach(cell -> add(cell, wall, figures));
      grid(wall, figures);
    }
    return figures;
  }

  /** That of one statement, worked out from its own pieces alone. */
  public Optional<Figure> of(Origin statement) {
    Map<Origin, Figure> figures = new LinkedHashMap<>();
    for (WallDetails wall : walls) {
      for (PieceRef piece : wall.index().madeBy(statement)) {
        switch (piece.kind()) {
          case VERTICAL -> add(wall.layout().verticals().get(piece.index()), wall, figures);
          case HORIZONTAL -> add(wall.layout().horizontals().get(piece.index()), wall, figures);
          case CELL -> add(wall.layout().cells().get(piece.index()), wall, figures);
          default -> {
            // others have no figure
          }
        }
      }
      grid(wall, figures);
    }
    return Optional.ofNullable(figures.get(statement));
  }

  private void add(VerticalPiece piece, WallDetails wall, Map<Origin, Figure> figures) {
    if (settings.on(Settings.HINTS_LENGTHS)) {
      of(piece.origin(), wall, Figure.Kind.VERTICAL, piece.index(), figures)
          .add(new Figure.Size(piece.length(), Length.ZERO));
    }
  }

  private void add(HorizontalPiece piece, WallDetails wall, Map<Origin, Figure> figures) {
    if (settings.on(Settings.HINTS_LENGTHS)) {
      of(piece.origin(), wall, Figure.Kind.HORIZONTAL, piece.index(), figures)
          .add(new Figure.Size(piece.length(), Length.ZERO));
    }
  }

  private void add(Cell cell, WallDetails wall, Map<Origin, Figure> figures) {
    if (settings.on(Settings.HINTS_GLASS) && cell.use().isPresent() && cell.opening().isEmpty()) {
      of(cell.use().get().origin(), wall, Figure.Kind.GLASS, cell.index(), figures)
          .add(new Figure.Size(cell.glassWidth(), cell.glassHeight()));
    }
  }

  /** What the spacings of a statement come to: its last line or floor from its first. */
  private void grid(WallDetails wall, Map<Origin, Figure> figures) {
    if (!settings.on(Settings.HINTS_GRID)) {
      return;
    }
    Grid grid = wall.layout().wall().grid();
    Map<Integer, Origin> first = new LinkedHashMap<>();
    Map<Integer, List<Length>> reach = new LinkedHashMap<>();
    for (Grid.Line line : grid.lines()) {
      begun(line, grid).ifPresent(corner -> reach(line.origin(), corner.x(), first, reach));
      reach(line.origin(), line.x(), first, reach);
    }
    for (Grid.Floor floor : grid.floors()) {
      reach(floor.origin(), floor.elevation().value(), first, reach);
    }
    reach.forEach(
        (at, places) -> {
          if (at >= 0 && places.size() > 1) {
            Length over = places.get(places.size() - 1).minus(places.get(0));
            Figure figure = of(first.get(at), wall, Figure.Kind.GRID, 0, figures);
            figure.add(new Figure.Size(over, Length.ZERO));
            for (int i = 1; i < places.size(); i++) {
              figure.space(numbers.cutShort(places.get(i).minus(places.get(i - 1))));
            }
          }
        });
  }

  /** Of the first line that a face names itself: the corner it begins at, which another names. */
  private Optional<Grid.Line> begun(Grid.Line line, Grid grid) {
    return grid.faces().stream()
        .filter(face -> face.firstLine() > 0 && face.firstLine() == line.index() - 1)
        .map(face -> grid.lines().get(face.firstLine()))
        .filter(corner -> lineOf.applyAsInt(corner.origin()) != lineOf.applyAsInt(line.origin()))
        .findFirst();
  }

  /** Lines and floors that one line of the text names together. */
  private void reach(
      Origin origin, Length place, Map<Integer, Origin> first, Map<Integer, List<Length>> reach) {
    int at = lineOf.applyAsInt(origin);
    first.putIfAbsent(at, origin);
    reach.computeIfAbsent(at, line -> new ArrayList<>()).add(place);
  }

  private String words(Figure.Kind kind, Figure.Size size) {
    return switch (kind) {
      case VERTICAL, HORIZONTAL -> numbers.cutShort(size.width());
      case GLASS -> numbers.order(size.width()) + " × " + numbers.order(size.height());
      case GRID -> numbers.cutShort(size.width()) + " over all";
    };
  }

  private Figure of(
      Origin origin, WallDetails wall, Figure.Kind kind, int first, Map<Origin, Figure> figures) {
    return figures.computeIfAbsent(
        origin, statement -> new Figure(wall, kind, first, size -> words(kind, size)));
  }
}
