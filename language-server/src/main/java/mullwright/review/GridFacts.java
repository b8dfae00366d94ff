package mullwright.review;

import java.util.Locale;
import java.util.Optional;
import mullwright.model.Grid;
import mullwright.model.Wall;
import mullwright.quantity.Kind;

/** Takes down what the grid says. */
final class GridFacts {
  private final Wall wall;
  private final Grid grid;
  private final WallNames names;
  private final SheetWriter to;

  GridFacts(Wall wall, SheetWriter to) {
    this.wall = wall;
    this.grid = wall.grid();
    this.names = to.names();
    this.to = to;
  }

  void write() {
    faces();
    lines();
    floors();
    rows();
    openings();
    for (Grid.Corner corner : grid.corners()) {
      Subject subject = to.begin(Topic.CORNER, line(corner.line()));
      to.amount(subject, "angle", Kind.ANGLE, Optional.of(corner.angle()));
    }
    for (Grid.Joint joint : grid.joints()) {
      to.begin(Topic.JOINT, line(joint.left()), line(joint.right()));
    }
  }

  private Name line(int index) {
    return Name.line(names.lines().get(index));
  }

  private void faces() {
    for (Grid.Face face : grid.faces()) {
      if (!face.name().isEmpty()) {
        Subject subject = to.begin(Topic.FACE, Name.other(face.name()));
        to.words(
            subject,
            "lines",
            names.lines().get(face.firstLine()) + ".." + names.lines().get(face.lastLine()));
      }
    }
  }

  private void lines() {
    for (Grid.Line line : grid.lines()) {
      Subject subject = to.begin(Topic.LINE, line(line.index()));
      to.words(subject, "name", line.name());
      to.size(subject, "at", line.x());
      if (line.edge()) {
        to.words(subject, "measured to", "outer edge");
      }
    }
  }

  private void floors() {
    for (Grid.Floor floor : grid.floors()) {
      Subject subject = to.begin(Topic.FLOOR, Name.floor(names.floors().get(floor.index())));
      to.words(subject, "name", floor.name());
      to.size(subject, "at", floor.elevation().value());
      to.length(subject, "slab", floor.slab());
      to.length(subject, "edge behind glass", floor.edge());
    }
  }

  private void rows() {
    for (Grid.Row row : grid.rows()) {
      Subject subject = to.begin(Topic.ROW, Name.row(names.rows().get(row.index())));
      to.words(subject, "name", row.base());
      to.place(subject, row.slopes() ? "at left" : "at", row.left());
      if (row.slopes()) {
        to.place(subject, "at right", row.right());
      }
      if (row.edge()) {
        to.words(subject, "measured to", "outer edge");
      }
    }
  }

  private void openings() {
    for (Grid.Opening opening : grid.openings()) {
      Subject subject = to.begin(Topic.OPENING, Name.other(opening.name()));
      to.words(subject, "kind", opening.kind().name().toLowerCase(Locale.ROOT));
      if (!opening.bays().isEmpty()) {
        int last = opening.bays().get(opening.bays().size() - 1);
        to.words(
            subject,
            "bays",
            names.left(wall, opening.bays().get(0)) + ".." + names.right(wall, last));
      }
      to.place(subject, "from", opening.bottom());
      to.place(subject, "to", opening.top());
      to.length(subject, "clear", opening.clear());
      to.amount(subject, "mass", Kind.MASS_PER_AREA, opening.mass());
      if (opening.byOthers()) {
        to.words(subject, "by", "others");
      }
    }
  }
}
