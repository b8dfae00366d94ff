package mullwright.analysis.wall;

import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import mullwright.layout.Cell;
import mullwright.layout.WallLayout;
import mullwright.model.Grid;
import mullwright.model.Part;
import mullwright.quantity.Kind;
import mullwright.quantity.Quantity;

/**
 * The weight of what fills each cell [N]: plies at nominal thickness and interlayers, or the stated
 * mass of an opening by others; 0 where nobody says.
 */
final class CellWeight {
  /** Standard acceleration of free fall [m/s²], exact by definition. */
  static final double G = 9.80665;

  /** Soda-lime glass [kg/m³] (EN 572-1, from memory). */
  private static final double GLASS = 2500;

  /** Interlayers [kg/m³]: 1.1 kg/m² per millimetre (glazing handbooks, from memory). */
  private static final double INTERLAYER = 1100;

  private final double[] newtons;

  CellWeight(WallLayout layout) {
    Map<Part.Glass, Double> perArea = new IdentityHashMap<>();
    newtons = new double[layout.cells().size()];
    for (Cell cell : layout.cells()) {
      double area = cell.glassWidth().toMetres() * cell.glassHeight().toMetres();
      newtons[cell.index()] = perArea(cell, perArea) * area * G;
    }
  }

  /** Weight of what fills the cell of that index [N]. */
  double of(int cell) {
    return newtons[cell];
  }

  private static double perArea(Cell cell, Map<Part.Glass, Double> known) {
    Optional<Grid.Opening> opening = cell.opening();
    if (opening.isPresent()) {
      return opening.get().mass().map(mass -> massPerArea(mass.value())).orElse(0.0);
    }
    return cell.glass().map(glass -> known.computeIfAbsent(glass, CellWeight::layers)).orElse(0.0);
  }

  private static double layers(Part.Glass glass) {
    double sum = 0;
    for (Part.Layer layer : glass.layers()) {
      double density =
          layer.what().equals("ply") ? GLASS : layer.what().equals("interlayer") ? INTERLAYER : 0;
      sum += layer.thickness().toMetres() * density;
    }
    return sum;
  }

  // psf is read as a mass per area where one is asked for; a pressure is brought back by g
  private static double massPerArea(Quantity mass) {
    return mass.is(Kind.PRESSURE) ? mass.toSi() / G : mass.toSi();
  }
}
