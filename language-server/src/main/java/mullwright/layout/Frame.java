package mullwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.model.Catalog;
import mullwright.model.Grid;
import mullwright.model.Part;
import mullwright.model.PartKind;
import mullwright.model.Wall;

/**
 * The bones of a wall, from which all pieces are measured: lines, rows in their bays, openings, and
 * where verticals stand.
 */
final class Frame {
  final Wall wall;
  final Grid grid;
  final Profiles profiles;
  final Lines lines;
  final Bars bars;
  final OpeningsCut openings;
  final Runs runs;
  final PieceNames names;

  /** What could not be, in the order found. */
  final List<Impossible> impossible = new ArrayList<>();

  Frame(Wall wall, Catalog catalog) {
    this.wall = wall;
    this.grid = wall.grid();
    this.profiles = new Profiles(catalog);
    this.names = new PieceNames(wall);
    this.lines = new Lines(wall, profiles);
    this.bars = new Bars(wall, profiles, lines);
    this.openings = new OpeningsCut(grid, bars, names, impossible);
    this.runs = new Runs(wall, profiles, lines, bars, openings);
  }

  /** The system's part of that kind. */
  <P extends Part> Optional<P> systemPart(PartKind kind, Class<P> type) {
    return wall.system()
        .flatMap(system -> Optional.ofNullable(system.parts().get(kind)))
        .flatMap(name -> profiles.find(kind, type, name.value()));
  }
}
