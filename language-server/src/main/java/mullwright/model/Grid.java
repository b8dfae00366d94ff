package mullwright.model;

import java.util.List;
import java.util.Optional;
import mullwright.quantity.Ascending;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;

/**
 * What exists: lines, floors, rows and openings, in order.
 *
 * @param faces left to right; a wall that names none has one unnamed face
 * @param lines left to right along all faces; a corner line stands once
 * @param bays left to right: each space between neighbouring lines that is glazed (none across a
 *     joint)
 * @param floors from below
 * @param rows from below (by their elevation at their left end), each floor's row by itself
 */
public record Grid(
    List<Face> faces,
    List<Line> lines,
    List<Bay> bays,
    List<Corner> corners,
    List<Joint> joints,
    List<Floor> floors,
    List<Row> rows,
    List<Opening> openings) {
  public Grid {
    faces = List.copyOf(faces);
    lines = List.copyOf(lines);
    bays = List.copyOf(bays);
    corners = List.copyOf(corners);
    joints = List.copyOf(joints);
    floors = List.copyOf(floors);
    rows = List.copyOf(rows);
    openings = List.copyOf(openings);
  }

  /** How many floors, from below, are no higher than that. */
  public int floorsUpTo(Length height) {
    return Ascending.leading(
        floors.size(), floor -> !floors.get(floor).elevation().value().isLongerThan(height));
  }

  /** A face: lines {@code firstLine} to {@code lastLine}, both included, by index. */
  public record Face(String name, int firstLine, int lastLine, Origin origin) {}

  /**
   * A vertical grid line: the centre of its vertical.
   *
   * @param index in {@link Grid#lines}
   * @param x along the developed wall, from its first line
   * @param edge true if {@code x} is the outer edge of the member's face instead of its centre
   * @param end true if it has a bay on one side only (ends, joints)
   */
  public record Line(int index, String name, Length x, boolean edge, boolean end, Origin origin) {}

  /**
   * The space between two neighbouring lines.
   *
   * @param index in {@link Grid#bays}
   * @param left index of its left line, {@code right} of its right line
   * @param width line to line
   */
  public record Bay(int index, int left, int right, Length width) {}

  /** A turn at a line; {@code angle} is the included angle on the room side. */
  public record Corner(int line, Given<Quantity> angle) {}

  /** Two jambs side by side: lines {@code left} and {@code right} by index. */
  public record Joint(int left, int right, Origin origin) {}

  /**
   * A floor.
   *
   * @param elevation top of slab
   * @param slab its depth, if stated
   * @param edge slab edge behind the glass face (negative: before it), if stated
   */
  public record Floor(
      int index,
      String name,
      Given<Length> elevation,
      Optional<Given<Length>> slab,
      Optional<Given<Length>> edge,
      Origin origin) {}

  /**
   * A row of horizontals: the centre of its horizontal.
   *
   * @param name full name, {@code L2.rail}; for a row at one floor or at the datum, its bare name
   * @param base the name without its floor, {@code rail}
   * @param floor the floor it is measured from, by index, if any
   * @param left its elevation at the left end of its reach, {@code right} at the right end; equal
   *     unless it slopes
   * @param edge true if the elevations are the outer edge of the member's face
   * @param bays the bays it runs through, by index, ascending (openings not yet taken out)
   */
  public record Row(
      int index,
      String name,
      String base,
      Optional<Integer> floor,
      Height left,
      Height right,
      boolean edge,
      List<Integer> bays,
      Origin origin) {
    public Row {
      bays = List.copyOf(bays);
    }

    /** True if its ends differ in height. */
    public boolean slopes() {
      return !left.elevation().equals(right.elevation());
    }
  }

  /** What an opening is. */
  public enum OpeningKind {
    DOOR,
    VOID,
    LOUVRE,
    VENT
  }

  /**
   * An opening: members strictly inside drop out, members on the edge stay.
   *
   * @param bays the bays it takes, by index, ascending
   * @param bottom its lower edge: the centre of the row there, or the place stated
   * @param top its upper edge
   * @param clear stated clearance (doors and voids)
   * @param mass by area, of what fills it
   */
  public record Opening(
      OpeningKind kind,
      String name,
      List<Integer> bays,
      Height bottom,
      Height top,
      boolean byOthers,
      Optional<Given<Length>> clear,
      Optional<Given<Quantity>> mass,
      Origin origin) {
    public Opening {
      bays = List.copyOf(bays);
    }
  }
}
