package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.analysis.thermal.ComponentTransmittance;
import mullwright.layout.Cell;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.model.Given;
import mullwright.model.Grid;
import mullwright.model.Part;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;

/**
 * Thermal transmittance of each face of a wall by the component assessment method of ISO 12631:
 * glass, panels and frame by visible area, edges of glass and panels by visible length.
 *
 * <p>A vertical on a corner gives each face its own side. Doors, voids, louvres and vents are by
 * others and not in it. Nothing is assumed: where a U-factor or an edge transmittance is not stated
 * the face has no result, and what is lacking is named.
 *
 * @param name of the face; empty for a wall that names none
 * @param areas every kind of area of the face, in the order met
 * @param edges every kind of edge
 * @param notRectangular how many lites are counted by their bounding size
 * @param leftOut how many openings by others are not in it
 * @param result the method's result; empty if something is not stated
 */
public record FaceTransmittance(
    String name,
    List<Area> areas,
    List<Edge> edges,
    int notRectangular,
    int leftOut,
    Optional<ComponentTransmittance.Transmittance> result) {
  public FaceTransmittance {
    areas = List.copyOf(areas);
    edges = List.copyOf(edges);
  }

  /**
   * Areas of one part.
   *
   * @param kind {@code vision}, {@code spandrel}, {@code vertical} or {@code horizontal}
   * @param part its name in the catalog
   * @param area visible area [m²]
   * @param transmittance as stated
   */
  public record Area(
      String kind, String part, double area, Optional<Given<Quantity>> transmittance) {}

  /**
   * Edges of one glass.
   *
   * @param length visible perimeter [m]
   * @param transmittance as stated
   */
  public record Edge(String part, double length, Optional<Given<Quantity>> transmittance) {}

  /** True if everything it needs is stated. */
  public boolean complete() {
    return areas.stream().allMatch(area -> area.transmittance().isPresent())
        && edges.stream().allMatch(edge -> edge.transmittance().isPresent());
  }

  /** Whole area [m²]. */
  public double area() {
    double sum = 0;
    for (Area area : areas) {
      sum += area.area();
    }
    return sum;
  }

  /** The faces of a wall, left to right. */
  public static List<FaceTransmittance> of(WallLayout layout) {
    return layout.wall().grid().faces().stream()
        .map(face -> new Sums(layout, face).face())
        .toList();
  }

  /** Adds up one face. */
  private static final class Sums {
    private final WallLayout layout;
    private final Grid grid;
    private final Grid.Face face;
    private final Map<String, Area> areas = new LinkedHashMap<>();
    private final Map<String, Edge> edges = new LinkedHashMap<>();
    private int notRectangular;
    private int leftOut;

    Sums(WallLayout layout, Grid.Face face) {
      this.layout = layout;
      this.grid = layout.wall().grid();
      this.face = face;
    }

    FaceTransmittance face() {
      layout.cells().forEach(this::cell);
      layout.verticals().forEach(this::vertical);
      layout.horizontals().forEach(this::horizontal);
      List<Area> all = new ArrayList<>(areas.values());
      List<Edge> joints = new ArrayList<>(edges.values());
      FaceTransmittance open =
          new FaceTransmittance(
              face.name(), all, joints, notRectangular, leftOut, Optional.empty());
      if (!open.complete() || all.isEmpty()) {
        return open;
      }
      return new FaceTransmittance(
          face.name(), all, joints, notRectangular, leftOut, solved(all, joints));
    }

    private static Optional<ComponentTransmittance.Transmittance> solved(
        List<Area> areas, List<Edge> edges) {
      return ComponentTransmittance.solve(
              new ComponentTransmittance.Module(
                  areas.stream()
                      .map(
                          area ->
                              new ComponentTransmittance.Area(
                                  area.part(), area.area(), si(area.transmittance())))
                      .toList(),
                  edges.stream()
                      .map(
                          edge ->
                              new ComponentTransmittance.Joint(
                                  edge.part(), edge.length(), si(edge.transmittance())))
                      .toList()))
          .solved();
    }

    private static double si(Optional<Given<Quantity>> stated) {
      return stated.orElseThrow().value().toSi();
    }

    private boolean inFace(int left, int right) {
      return face.firstLine() <= left && right <= face.lastLine();
    }

    private void cell(Cell cell) {
      int left = grid.bays().get(cell.firstBay()).left();
      int right = grid.bays().get(cell.lastBay()).right();
      if (!inFace(left, right)) {
        return;
      }
      if (cell.opening().isPresent()) {
        leftOut++;
        return;
      }
      if (cell.use().isEmpty() || cell.glass().isEmpty()) {
        return;
      }
      notRectangular += cell.rectangular() ? 0 : 1;
      Part.Glass glass = cell.glass().get();
      double width = cell.daylightWidth().toMetres();
      double height = cell.daylightHeight().toMetres();
      String kind = cell.use().get().vision() ? "vision" : "spandrel";
      add(kind, glass.name(), width * height, glass.uFactor());
      edges.merge(
          glass.name(),
          new Edge(glass.name(), 2 * (width + height), glass.edgePsi()),
          (one, more) -> new Edge(one.part(), one.length() + more.length(), one.transmittance()));
    }

    private void add(String kind, String part, double area, Optional<Given<Quantity>> stated) {
      areas.merge(
          kind + " " + part,
          new Area(kind, part, area, stated),
          (one, more) -> new Area(kind, part, one.area() + more.area(), one.transmittance()));
    }

    private void vertical(VerticalPiece piece) {
      int line = piece.line();
      if (line < face.firstLine() || line > face.lastLine()) {
        return;
      }
      double width = piece.profile().sightline().value().toMetres();
      if (isCorner(line)) {
        boolean left = line == face.lastLine();
        Length half = piece.profile().sightline().value().half();
        width =
            (left ? piece.profile().legLeft() : piece.profile().legRight())
                .map(Given::value)
                .orElse(half)
                .toMetres();
      }
      add(
          "vertical",
          piece.profile().name(),
          width * piece.length().toMetres(),
          piece.profile().uFactor());
    }

    private boolean isCorner(int line) {
      return grid.corners().stream().anyMatch(corner -> corner.line() == line);
    }

    private void horizontal(HorizontalPiece piece) {
      if (inFace(piece.leftLine(), piece.rightLine())) {
        // the hairline joints at its ends are frame too
        Length joint = piece.profile().endAllowance().value();
        double length = piece.right().minus(piece.left()).plus(joint).plus(joint).toMetres();
        add(
            "horizontal",
            piece.profile().name(),
            length * piece.profile().sightline().value().toMetres(),
            piece.profile().uFactor());
      }
    }
  }
}
