package mullwright.model;

import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Words of a ply that its strength hangs on. Tints and names of products are the drafter's own and
 * stand among them, so not every other word is a mistake; one that is nearly such a word is.
 */
public final class GlassWords {
  /** How a ply was treated; one that says none counts as the weakest. */
  private static final List<String> TREATMENTS =
      List.of("annealed", "heat-strengthened", "tempered", "toughened");

  /** Of which ASTM E1300 as computed here says nothing. */
  private static final List<String> OTHER_GLASS =
      List.of("patterned", "wired", "sandblasted", "etched", "borosilicate");

  /** Words of which a treatment is a part. */
  private static final Set<String> LONGER =
      Set.of("strengthened", "fully-tempered", "heat-tempered", "fully-toughened", "acid-etched");

  /** The word that runs into a treatment most easily. */
  private static final String TINT = "clear";

  private static final int LONG = 12;

  /** What one of them is called where it is not known. */
  public static final String KIND = "treatment of glass";

  private GlassWords() {}

  /** True of glass that is no plain float glass. */
  public static boolean isOtherGlass(String word) {
    return OTHER_GLASS.contains(word.toLowerCase(Locale.ROOT));
  }

  /** What is known beside a word that is nearly one of them; empty if it is none such. */
  static List<String> meant(String word) {
    String plain = word.toLowerCase(Locale.ROOT);
    if (TREATMENTS.contains(plain) || OTHER_GLASS.contains(plain) || LONGER.contains(plain)) {
      return List.of();
    }
    for (List<String> words : List.of(TREATMENTS, OTHER_GLASS)) {
      for (String known : words) {
        int slips = known.length() < LONG ? 1 : 2;
        if (plain.contains(known) || NearNames.distance(plain, known, slips) <= slips) {
          return plain.endsWith(TINT) && words == TREATMENTS ? List.of(known + " " + TINT) : words;
        }
      }
    }
    return List.of();
  }
}
