package mullwright.analysis.glass;

import java.util.List;
import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Mass of a lite: plies at nominal thickness × 2500 kg/m³ × area, plus interlayers × 1100 kg/m³.
 *
 * <p>Spacer, sealant and desiccant of a sealed unit are not in it; they add some 3 to 5 % (common
 * practice) where they are known. Source: density of soda-lime glass, EN 572-1.
 */
public final class GlassMass {
  /** Density of soda-lime glass [kg/m³]. */
  public static final double GLASS_DENSITY = 2500;

  /** Density of common plastic interlayers [kg/m³]. */
  public static final double INTERLAYER_DENSITY = 1100;

  private GlassMass() {}

  /**
   * A lite of any make-up.
   *
   * @param area area [m²]
   * @param plies nominal thicknesses of all glass plies [m]
   * @param interlayers thicknesses of all interlayers [m]; empty where there are none
   */
  public record Lite(double area, List<Double> plies, List<Double> interlayers) {
    /** Keeps its own copies. */
    public Lite {
      plies = List.copyOf(plies);
      interlayers = List.copyOf(interlayers);
    }
  }

  /**
   * Mass of the lite.
   *
   * @param perArea mass per area [kg/m²]
   * @param mass mass [kg]
   */
  public record Mass(double perArea, double mass) {}

  /** Mass per area and in all. */
  public static Outcome<Mass> solve(Lite lite) {
    Guard guard =
        Guard.range()
            .positive("area", lite.area(), "m²")
            .that(
                !lite.plies().isEmpty(), "number of plies", lite.plies().size(), "", "at least 1");
    lite.plies().forEach(ply -> guard.positive("ply thickness", ply, "m"));
    lite.interlayers().forEach(layer -> guard.positive("interlayer thickness", layer, "m"));
    double perArea =
        GLASS_DENSITY * sum(lite.plies()) + INTERLAYER_DENSITY * sum(lite.interlayers());
    return guard.then(() -> new Mass(perArea, perArea * lite.area()));
  }

  private static double sum(List<Double> thicknesses) {
    return thicknesses.stream().mapToDouble(Double::doubleValue).sum();
  }
}
