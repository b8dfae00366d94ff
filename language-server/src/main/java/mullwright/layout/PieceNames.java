package mullwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import mullwright.model.AnchorUse;
import mullwright.model.Grid;
import mullwright.model.Height;
import mullwright.model.Members;
import mullwright.model.Wall;
import mullwright.quantity.Ascending;
import mullwright.quantity.Length;
import mullwright.quantity.LengthPrinter;
import mullwright.quantity.UnitSystem;

/** Calls each piece what the shop calls it: {@code vertical C, upper length, L2 to Roof}. */
final class PieceNames {
  private final Grid grid;
  private final List<String> bays = new ArrayList<>();

  PieceNames(Wall wall) {
    grid = wall.grid();
    for (Grid.Bay bay : grid.bays()) {
      bays.add("bay " + line(bay.left()) + "-" + line(bay.right()));
    }
  }

  private String line(int line) {
    return grid.lines().get(line).name();
  }

  private String row(int row) {
    return grid.rows().get(row).name();
  }

  /** {@code bay C-D}, {@code bays C-E}. */
  String bays(int first, int last) {
    if (first == last) {
      return bays.get(first);
    }
    return "bays "
        + line(grid.bays().get(first).left())
        + "-"
        + line(grid.bays().get(last).right());
  }

  /** {@code vertical A}, {@code vertical C, upper length, L2 to Roof}. */
  String vertical(int line, int ordinal, int count, Length bottom, Length top) {
    String name = "vertical " + line(line);
    return count == 1 ? name : name + ", " + ordinal(ordinal, count) + reach(bottom, top);
  }

  private static String ordinal(int ordinal, int count) {
    if (ordinal == 0 && count <= 3) {
      return "lower length";
    }
    if (ordinal == count - 1 && count <= 3) {
      return "upper length";
    }
    return count == 3 ? "middle length" : "length " + (ordinal + 1) + " of " + count;
  }

  private String reach(Length bottom, Length top) {
    if (grid.floors().isEmpty()) {
      return "";
    }
    int from = nearestFloor(bottom);
    int to = nearestFloor(top);
    return from == to ? ", at " + floor(from) : ", " + floor(from) + " to " + floor(to);
  }

  private String floor(int floor) {
    return grid.floors().get(floor).name();
  }

  // the lower of two at the same distance
  private int nearestFloor(Length y) {
    return Ascending.leading(
        grid.floors().size() - 1,
        floor -> y.isLongerThan(elevation(floor).plus(elevation(floor + 1)).half()));
  }

  private Length elevation(int floor) {
    return grid.floors().get(floor).elevation().value();
  }

  /** {@code horizontal R2, bay C-D}. */
  String horizontal(int row, int first, int last) {
    return "horizontal " + row(row) + ", " + bays(first, last);
  }

  /** {@code lite in bay C-D, R1 to R2}; {@code opening in …} where the wall puts nothing. */
  String cell(boolean filled, int first, int last, int below, int above) {
    return (filled ? "lite in " : "opening in ")
        + bays(first, last)
        + ", "
        + row(below)
        + " to "
        + row(above);
  }

  /** {@code door D1, bays 10-12}. */
  String opening(Grid.Opening opening, int first, int last) {
    return opening(opening) + ", " + bays(first, last);
  }

  /** {@code door D1}. */
  String opening(Grid.Opening opening) {
    return opening.kind().name().toLowerCase(Locale.ROOT) + " " + opening.name();
  }

  /** {@code splice of vertical C above L2}. */
  String splice(Members.Splice splice) {
    return "splice of vertical " + line(splice.line()) + " " + place(splice.at());
  }

  private String place(Height at) {
    int direction = at.offset().signum();
    if (at.base().isPresent()) {
      return direction == 0
          ? "at " + at.base().get()
          : (direction > 0 ? "above " : "below ") + at.base().get();
    }
    return "at " + LengthPrinter.both(at.elevation(), UnitSystem.US);
  }

  /** {@code dead-load anchor of vertical C at L2}, {@code clip of vertical C at sill}. */
  String anchor(AnchorUse use) {
    String kind = use.kind() == AnchorUse.Kind.CLIP ? "clip" : use.kind().spelling() + " anchor";
    Optional<String> floor = use.floor().map(this::floor);
    boolean atFloor = floor.isPresent() && floor.equals(use.place().base());
    return kind
        + " of vertical "
        + line(use.line())
        + " "
        + (atFloor ? "at " + floor.get() : place(use.place()));
  }
}
