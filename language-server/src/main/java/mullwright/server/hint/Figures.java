package mullwright.server.hint;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntFunction;
import mullwright.layout.Cell;
import mullwright.layout.HorizontalPiece;
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
  private final Map<Origin, Figure> byStatement = new LinkedHashMap<>();
  private final Numbers numbers;
  private final Settings settings;
  private final ToIntFunction<Origin> lineOf;

  private Figures(Numbers numbers, Settings settings, ToIntFunction<Origin> lineOf) {
    this.numbers = numbers;
    this.settings = settings;
    this.lineOf = lineOf;
  }

  /**
   * Those of all walls that the settings have on.
   *
   * @param lineOf the line of the text an origin stands on, below 0 if it is of another file
   */
  public static Figures of(
      List<WallDetails> walls,
      Numbers numbers,
      Settings settings,
      ToIntFunction<Origin> lineOf,
      Cancel cancel) {
    Figures figures = new Figures(numbers, settings, lineOf);
    for (WallDetails wall : walls) {
      cancel.check();
      figures.collect(wall);
    }
    return figures;
  }

  /** By statement, in the order of the layout. */
  public Map<Origin, Figure> byStatement() {
    return byStatement;
  }

  private void collect(WallDetails wall) {
    WallLayout layout = wall.layout();
    if (settings.on(Settings.HINTS_LENGTHS)) {
      for (VerticalPiece piece : layout.verticals()) {
        of(piece.origin(), wall, Figure.Kind.VERTICAL, piece.index()).add(cut(piece.length()));
      }
      for (HorizontalPiece piece : layout.horizontals()) {
        of(piece.origin(), wall, Figure.Kind.HORIZONTAL, piece.index()).add(cut(piece.length()));
      }
    }
    if (settings.on(Settings.HINTS_GLASS)) {
      for (Cell cell : layout.cells()) {
        if (cell.use().isPresent() && cell.opening().isEmpty()) {
          of(cell.use().get().origin(), wall, Figure.Kind.GLASS, cell.index())
              .add(
                  new Figure.Size(
                      cell.glassWidth(),
                      cell.glassHeight(),
                      numbers.order(cell.glassWidth())
                          + " × "
                          + numbers.order(cell.glassHeight())));
        }
      }
    }
    if (settings.on(Settings.HINTS_GRID)) {
      grid(wall);
    }
  }

  /** What the spacings of a statement come to: its last line or floor from its first. */
  private void grid(WallDetails wall) {
    Grid grid = wall.layout().wall().grid();
    Map<Integer, Origin> first = new LinkedHashMap<>();
    Map<Integer, List<Length>> reach = new LinkedHashMap<>();
    for (Grid.Line line : grid.lines()) {
      reach(line.origin(), line.x(), first, reach);
    }
    for (Grid.Floor floor : grid.floors()) {
      reach(floor.origin(), floor.elevation().value(), first, reach);
    }
    reach.forEach(
        (at, places) -> {
          if (at >= 0 && places.size() > 1) {
            Length over = places.get(places.size() - 1).minus(places.get(0));
            of(first.get(at), wall, Figure.Kind.GRID, 0)
                .add(new Figure.Size(over, Length.ZERO, numbers.cutShort(over) + " over all"));
          }
        });
  }

  /** Lines and floors that one line of the text names together. */
  private void reach(
      Origin origin, Length place, Map<Integer, Origin> first, Map<Integer, List<Length>> reach) {
    int at = lineOf.applyAsInt(origin);
    first.putIfAbsent(at, origin);
    reach.computeIfAbsent(at, line -> new ArrayList<>()).add(place);
  }

  private Figure.Size cut(Length length) {
    return new Figure.Size(length, Length.ZERO, numbers.cutShort(length));
  }

  private Figure of(Origin origin, WallDetails wall, Figure.Kind kind, int first) {
    return byStatement.computeIfAbsent(origin, statement -> new Figure(wall, kind, first));
  }
}
