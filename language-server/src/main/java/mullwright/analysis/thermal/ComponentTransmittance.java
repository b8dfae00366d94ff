package mullwright.analysis.thermal;

import java.util.List;
import java.util.stream.Stream;
import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Thermal transmittance of a curtain wall module by the component assessment method of ISO 12631:
 * U_cw = (ΣA·U + Σl·Ψ)/A_cw.
 *
 * <p>A visible areas of glazing, panels, opening frames, mullions and transoms [m²], U their
 * transmittances [W/(m²K)], screws included in those of mullions and transoms; l visible perimeters
 * of infills and joints [m], Ψ their linear transmittances [W/(mK)]; A_cw the sum of the areas. The
 * module ends at planes of symmetry, commonly the centre lines of mullions. Range: U between 0 and
 * 20, Ψ between −1 and 2. Source: ISO 12631:2017, from memory.
 */
public final class ComponentTransmittance {
  private ComponentTransmittance() {}

  /**
   * An area of the module.
   *
   * @param name what it is, as a message names it
   * @param area visible area [m²]
   * @param transmittance U [W/(m²K)]
   */
  public record Area(String name, double area, double transmittance) {
    /** Heat flow a kelvin [W/K]. */
    public double flow() {
      return area * transmittance;
    }
  }

  /**
   * A joint of the module.
   *
   * @param name what it is, as a message names it
   * @param length visible length [m]
   * @param transmittance Ψ [W/(mK)]
   */
  public record Joint(String name, double length, double transmittance) {
    /** Heat flow a kelvin [W/K]. */
    public double flow() {
      return length * transmittance;
    }
  }

  /**
   * A module.
   *
   * @param areas its areas, which add up to the module
   * @param joints its joints
   */
  public record Module(List<Area> areas, List<Joint> joints) {
    /** Keeps its own copies. */
    public Module {
      areas = List.copyOf(areas);
      joints = List.copyOf(joints);
    }
  }

  /**
   * The result and its sums.
   *
   * @param area A_cw [m²]
   * @param areaFlow ΣA·U [W/K]
   * @param jointFlow Σl·Ψ [W/K]
   * @param transmittance U_cw [W/(m²K)]
   */
  public record Transmittance(
      double area, double areaFlow, double jointFlow, double transmittance) {}

  /** Transmittance of the module. */
  public static Outcome<Transmittance> solve(Module module) {
    Guard guard =
        Guard.range().that(!module.areas().isEmpty(), "number of areas", 0, "", "at least 1");
    for (Area area : module.areas()) {
      guard
          .positive("area of " + area.name(), area.area(), "m²")
          .that(
              area.transmittance() > 0 && area.transmittance() <= 20,
              "thermal transmittance of " + area.name(),
              area.transmittance(),
              "W/(m²K)",
              "above 0 and at most 20 W/(m²K)");
    }
    for (Joint joint : module.joints()) {
      guard
          .notNegative("length of " + joint.name(), joint.length(), "m")
          .that(
              joint.transmittance() >= -1 && joint.transmittance() <= 2,
              "linear transmittance of " + joint.name(),
              joint.transmittance(),
              "W/(mK)",
              "between -1 and 2 W/(mK)");
    }
    return guard.then(() -> sum(module));
  }

  private static Transmittance sum(Module module) {
    double area = total(module.areas().stream().map(Area::area));
    double areaFlow = total(module.areas().stream().map(Area::flow));
    double jointFlow = total(module.joints().stream().map(Joint::flow));
    return new Transmittance(area, areaFlow, jointFlow, (areaFlow + jointFlow) / area);
  }

  /** Sums in the order given, so that the last bit does not depend on how a stream sums. */
  private static double total(Stream<Double> values) {
    return values.reduce(0.0, Double::sum);
  }
}
