package mullwright.analysis.strength;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Strengths of an extruded aluminum alloy and temper, away from welds.
 *
 * @param designation alloy and temper, such as {@code 6063-T6}
 * @param thickest greatest thickness the strengths hold for [m]; infinite where none is stated
 * @param yield tensile yield strength F_ty [Pa]
 * @param ultimate tensile ultimate strength F_tu [Pa]
 * @param compressiveYield compressive yield strength F_cy [Pa]
 */
public record AluminumAlloy(
    String designation, double thickest, double yield, double ultimate, double compressiveYield) {

  /** Where the strengths stand. */
  public static final String SOURCE =
      "Aluminum Design Manual, table A.3 (ASTM B221 extrusions), from memory";

  /** Modulus of elasticity in compression, used for buckling [Pa]: 10 100 ksi. */
  public static final double MODULUS = 10_100 * Ksi.PASCALS;

  /** Modulus of elasticity commonly used for deflection [Pa]: 10 000 ksi. */
  public static final double DEFLECTION_MODULUS = 10_000 * Ksi.PASCALS;

  private static final double HALF_INCH = 0.5 * 0.0254;

  private static final List<AluminumAlloy> ALL =
      List.of(
          ksi("6063-T5", HALF_INCH, 16, 22),
          ksi("6063-T6", Double.POSITIVE_INFINITY, 25, 30),
          ksi("6061-T6", Double.POSITIVE_INFINITY, 35, 38),
          ksi("6005A-T61", Double.POSITIVE_INFINITY, 35, 38));

  /** All tabulated alloys, the weakest first. */
  public static List<AluminumAlloy> all() {
    return ALL;
  }

  /**
   * Finds an alloy by its designation, in any case.
   *
   * @return the alloy, or empty if it is not tabulated; never the nearest
   */
  public static Optional<AluminumAlloy> find(String designation) {
    String wanted = designation.strip().toUpperCase(Locale.ROOT);
    return ALL.stream().filter(alloy -> alloy.designation.equals(wanted)).findFirst();
  }

  private static AluminumAlloy ksi(
      String designation, double thickest, double yield, double ultimate) {
    // For these tempers the compressive yield strength is tabulated equal to the tensile one.
    return new AluminumAlloy(
        designation, thickest, yield * Ksi.PASCALS, ultimate * Ksi.PASCALS, yield * Ksi.PASCALS);
  }
}
