package mullwright.syntax;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/**
 * The closed table of unit words; a word is a unit only right after a number, so {@code F} and
 * {@code C} may be grid lines.
 *
 * <p>{@code in} is not among them: it is only ever a direction, the unit is {@code "}.
 */
public final class UnitWords {
  private static final Set<String> ALL =
      Set.of(
          "mm",
          "cm",
          "m", // lengths
          "in2",
          "ft2",
          "mm2",
          "cm2",
          "m2", // areas
          "in3",
          "mm3",
          "cm3", // section moduli
          "in4",
          "mm4",
          "cm4", // second moments of area
          "psf",
          "Pa",
          "kPa",
          "psi",
          "ksi",
          "MPa",
          "N/mm2",
          "GPa", // pressures and stresses
          "lb",
          "lbf",
          "kip",
          "N",
          "kN",
          "kg", // forces and masses
          "lb·in",
          "kip·in",
          "N·m",
          "kN·m", // moments
          "lb/ft",
          "kg/m",
          "plf",
          "lb/in",
          "N/m",
          "kN/m",
          "N/mm", // by length
          "kg/m2",
          "pcf",
          "kg/m3", // by area and volume
          "F",
          "C",
          "K",
          "°F",
          "°C",
          "/F",
          "/C",
          "/K",
          "/°F",
          "/°C", // temperature
          "Btu/hft2F",
          "W/m2K",
          "Btu/hftF",
          "W/mK", // heat
          "deg",
          "°",
          "mph",
          "m/s",
          "%",
          "s",
          "min",
          "h");

  /** Read as units in any case, so that the model can say which spelling is meant. */
  private static final Set<String> MEANT = meant();

  private UnitWords() {}

  /** All unit words as they are spelt. */
  public static Set<String> all() {
    return ALL;
  }

  /** True for a unit word. */
  public static boolean isUnit(String word) {
    return ALL.contains(word);
  }

  /**
   * True for a unit word and for what was evidently meant as one: {@code ft}, {@code KPA}. Words of
   * one letter must be spelt right, since they may well be names.
   */
  static boolean readsAsUnit(String word) {
    return ALL.contains(word) || MEANT.contains(word.toLowerCase(Locale.ROOT));
  }

  private static Set<String> meant() {
    Set<String> words = new HashSet<>(Set.of("ft", "foot", "feet", "inch", "inches", "lbs"));
    for (String word : ALL) {
      if (word.length() > 1) {
        words.add(word.toLowerCase(Locale.ROOT));
      }
    }
    return Set.copyOf(words);
  }
}
