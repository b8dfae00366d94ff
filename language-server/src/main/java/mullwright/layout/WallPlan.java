package mullwright.layout;

import java.util.Comparator;
import java.util.List;
import mullwright.model.Grid;
import mullwright.quantity.Length;
import mullwright.quantity.Unit;

/**
 * Where a wall's faces stand in plan, so that what lies along the developed wall finds its place in
 * space.
 *
 * <p>The first face runs from (0, 0) along X, seen from outdoors to the right, with the room
 * towards positive Y. Faces meet at their corner's line in the outer face of the glass (z = 0):
 * there the wall turns by what the included angle lacks to a straight one, to the left where the
 * angle is less than 180°.
 */
public final class WallPlan {
  private static final double STRAIGHT = 180;

  private final Grid grid;
  private final List<Grid.Corner> corners;
  private final Stretch[] stretches;

  /** Begins {@code from} along the wall at a point, and runs in a direction [mm, radians]. */
  private record Stretch(double from, double x, double y, double heading) {
    Spot at(double along, double turned) {
      double way = along - from;
      return new Spot(
          x + way * StrictMath.cos(heading), y + way * StrictMath.sin(heading), heading + turned);
    }
  }

  /**
   * A point of the glass's outer face in plan.
   *
   * @param x [mm], {@code y} [mm]
   * @param heading direction in which the wall runs there, to the right seen from outdoors, anti-
   *     clockwise from X [radians]; at a corner halfway between those of both faces. The room lies
   *     a quarter turn anti-clockwise from it
   */
  public record Spot(double x, double y, double heading) {
    /** X part of a unit vector along the wall; its Y part is {@link #alongY}. */
    public double alongX() {
      return StrictMath.cos(heading);
    }

    public double alongY() {
      return StrictMath.sin(heading);
    }

    /** The point so many millimetres into the room from here. */
    public Spot inward(double by) {
      return new Spot(x - by * alongY(), y + by * alongX(), heading);
    }
  }

  /** The plan of a wall. */
  public WallPlan(Grid grid) {
    this.grid = grid;
    this.corners =
        grid.corners().stream().sorted(Comparator.comparingInt(Grid.Corner::line)).toList();
    this.stretches = new Stretch[corners.size() + 1];
    stretches[0] = new Stretch(0, 0, 0, 0);
    for (int at = 0; at < corners.size(); at++) {
      double from = lineX(corners.get(at).line());
      Spot spot = stretches[at].at(from, turn(corners.get(at)));
      stretches[at + 1] = new Stretch(from, spot.x(), spot.y(), spot.heading());
    }
  }

  private double lineX(int line) {
    return grid.lines().get(line).x().toMillimetres();
  }

  private static double turn(Grid.Corner corner) {
    return StrictMath.toRadians(STRAIGHT - corner.angle().value().in(Unit.DEGREE).toDouble());
  }

  /** How far the wall turns to the left at a line, 0 where it does not [radians]. */
  public double turn(int line) {
    return corners.stream()
        .filter(corner -> corner.line() == line)
        .mapToDouble(WallPlan::turn)
        .sum();
  }

  /** A place along the developed wall, on the face of a bay. */
  public Spot inBay(int bay, Length along) {
    int left = grid.bays().get(bay).left();
    int face = (int) corners.stream().filter(corner -> corner.line() <= left).count();
    return stretches[face].at(along.toMillimetres(), 0);
  }

  /**
   * A place along the developed wall, on the face of a line; at a corner, between both its faces.
   */
  public Spot onLine(int line, Length along) {
    int face = (int) corners.stream().filter(corner -> corner.line() < line).count();
    return stretches[face].at(along.toMillimetres(), turn(line) / 2);
  }
}
