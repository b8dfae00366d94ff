package mullwright.analysis.metal;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import mullwright.analysis.Formula;

/**
 * Differences of potential between metals by the anodic index, and the reading of metals' names.
 *
 * <p>difference = |index₁ − index₂| [V]; the more negative metal corrodes. The index is a practice
 * of finish standards, not a measurement in the wall's own climate. Source: anodic-index practice,
 * widely reprinted table.
 */
public final class GalvanicSeries {
  /** |index₁ − index₂|. */
  public static final Formula DIFFERENCE =
      new Formula("|first anodic index − second anodic index|", "anodic-index practice");

  private static final Pattern SEPARATORS = Pattern.compile("[\\s_-]+");
  private static final Pattern ALUMINUM_2000 = Pattern.compile("2\\d{3}a?( .*)?");
  private static final Pattern ALUMINUM = Pattern.compile("[1-8]\\d{3}a?( .*)?");
  private static final Pattern AUSTENITIC = Pattern.compile("(stainless )?(steel )?3\\d\\d[ln]?");
  private static final Map<String, Material> NAMES = names();

  private GalvanicSeries() {}

  /** Difference of potential [V]; empty when one of the two is no metal. */
  public static OptionalDouble difference(Material one, Material other) {
    if (!one.isMetal() || !other.isMetal()) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(Math.abs(one.index() - other.index()));
  }

  /**
   * Greatest difference of potential [V] over the copies of the table, which differ for austenitic
   * stainless steel; empty when one of the two is no metal.
   */
  public static OptionalDouble greatestDifference(Material one, Material other) {
    if (!one.isMetal() || !other.isMetal()) {
      return OptionalDouble.empty();
    }
    if (one == other) {
      return OptionalDouble.of(0);
    }
    double greatest = 0;
    for (double first : new double[] {one.index(), one.otherIndex()}) {
      for (double second : new double[] {other.index(), other.otherIndex()}) {
        greatest = Math.max(greatest, Math.abs(first - second));
      }
    }
    return OptionalDouble.of(greatest);
  }

  /**
   * Reads a metal as a catalog names it: {@code galvanized steel}, {@code stainless-316}, {@code
   * 6063-T6}. Case, hyphens and underscores do not matter; both spellings of aluminum are read.
   *
   * @return the material, or empty for a name that is not known; never a guess
   */
  public static Optional<Material> find(String name) {
    String key = SEPARATORS.matcher(name.strip().toLowerCase(Locale.ROOT)).replaceAll(" ");
    String plain = key.replace("aluminium", "aluminum").replace("galvanised", "galvanized");
    Material known = NAMES.get(plain);
    if (known != null) {
      return Optional.of(known);
    }
    String alloy = plain.startsWith("aluminum ") ? plain.substring(9) : plain;
    if (ALUMINUM_2000.matcher(alloy).matches()) {
      return Optional.of(Material.ALUMINUM_2000);
    }
    if (ALUMINUM.matcher(alloy).matches()) {
      return Optional.of(Material.ALUMINUM);
    }
    return AUSTENITIC.matcher(plain).matches()
        ? Optional.of(Material.STAINLESS_300)
        : Optional.empty();
  }

  /** The names that are read, as a text writes them: {@code galvanized-steel}; in their order. */
  public static List<String> known() {
    return NAMES.keySet().stream()
        .filter(name -> name.indexOf('%') < 0)
        .map(name -> name.replace(' ', '-'))
        .sorted()
        .toList();
  }

  private static Map<String, Material> names() {
    Map<String, Material> names = new HashMap<>();
    for (Material material : Material.values()) {
      names.put(SEPARATORS.matcher(material.words()).replaceAll(" "), material);
    }
    names.put("stainless", Material.STAINLESS_300);
    names.put("stainless steel", Material.STAINLESS_300);
    names.put("stainless 430", Material.STAINLESS_18_CR);
    names.put("stainless 410", Material.STAINLESS_12_CR);
    names.put("steel", Material.CARBON_STEEL);
    names.put("bare steel", Material.CARBON_STEEL);
    names.put("mild steel", Material.CARBON_STEEL);
    names.put("weathering steel", Material.CARBON_STEEL);
    names.put("galvanized", Material.GALVANIZED_STEEL);
    names.put("hot dip galvanized", Material.GALVANIZED_STEEL);
    names.put("hot dip galvanized steel", Material.GALVANIZED_STEEL);
    names.put("zinc plated", Material.ZINC_PLATED_STEEL);
    names.put("electrogalvanized steel", Material.ZINC_PLATED_STEEL);
    names.put("timber", Material.WOOD);
    return Map.copyOf(names);
  }
}
