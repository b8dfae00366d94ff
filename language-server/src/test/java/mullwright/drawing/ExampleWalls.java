package mullwright.drawing;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import mullwright.check.Rules;
import mullwright.drawing.elevation.ElevationOptions;
import mullwright.layout.PieceMarks;
import mullwright.layout.PieceRef;
import mullwright.layout.WallLayout;
import mullwright.model.Origin;
import mullwright.quantity.UnitSystem;
import mullwright.workspace.DiskFiles;
import mullwright.workspace.Snapshot;
import mullwright.workspace.Workspace;

/** The walls of the examples, laid out and marked. */
public final class ExampleWalls {
  public static final List<String> PATHS =
      List.of(
          "first-wall/lobby.wall",
          "ferry-terminal/east.wall",
          "library-corner/reading-room.wall",
          "tower/north.wall");

  private ExampleWalls() {}

  /**
   * One of them.
   *
   * @param text of its file
   */
  public record Example(String path, String text, WallLayout layout, ElevationOptions options) {}

  public static Example of(String path) {
    UnitSystem units = path.startsWith("library") ? UnitSystem.SI : UnitSystem.US;
    return in(Path.of("..", "examples").toAbsolutePath().normalize(), path, units);
  }

  /** A wall in another folder. */
  public static Example in(Path folder, String path, UnitSystem units) {
    Snapshot snapshot = new Workspace(new DiskFiles(folder), Rules.find()).snapshot();
    WallLayout layout = snapshot.reading(path).orElseThrow().layouts().get(0);
    PieceMarks marks = PieceMarks.of(layout);
    Labels labels =
        new Labels() {
          @Override
          public String mark(PieceRef piece) {
            return switch (piece.kind()) {
              case VERTICAL -> marks.vertical(piece.index());
              case HORIZONTAL -> marks.horizontal(piece.index());
              case CELL -> marks.lite(piece.index()).orElse("");
              default -> "";
            };
          }

          @Override
          public Optional<TextPlace> place(Origin statement) {
            return snapshot
                .place(statement)
                .map(place -> new TextPlace(place.path(), place.start(), place.end()));
          }
        };
    String text = snapshot.file(path).orElseThrow().text();
    return new Example(path, text, layout, ElevationOptions.of(units, labels));
  }
}
