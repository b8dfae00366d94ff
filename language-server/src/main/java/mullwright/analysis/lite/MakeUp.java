package mullwright.analysis.lite;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import mullwright.analysis.glass.HeatTreatment;
import mullwright.model.Given;
import mullwright.model.GlassWords;
import mullwright.model.Part;
import mullwright.quantity.Length;

/**
 * A glass of the catalog as the methods see it: panes from outdoors, each of one ply or of plies
 * joined by interlayers.
 *
 * @param spaces thicknesses of the cavities between the panes
 * @param outside why no method here covers it, if none does: a clause
 */
public record MakeUp(
    Part.Glass glass, List<Pane> panes, List<Length> spaces, Optional<String> outside) {
  /** Taken where no heat treatment is stated: the weakest. */
  private static final String WEAKEST = "the weakest heat treatment, taken as none is stated";

  public MakeUp {
    panes = List.copyOf(panes);
    spaces = List.copyOf(spaces);
  }

  /**
   * A ply.
   *
   * @param nominal nominal thickness
   */
  public record Ply(Length nominal, Given<HeatTreatment> treatment) {}

  /**
   * A pane: its plies from outdoors, and the interlayers between them.
   *
   * @param interlayers thicknesses, one fewer than the plies
   */
  public record Pane(List<Ply> plies, List<Length> interlayers) {
    public Pane {
      plies = List.copyOf(plies);
      interlayers = List.copyOf(interlayers);
    }

    /** True if it has an interlayer. */
    public boolean laminated() {
      return plies.size() > 1;
    }
  }

  /** The panes of a glass. */
  public static MakeUp of(Part.Glass glass) {
    List<Pane> panes = new ArrayList<>();
    List<Length> spaces = new ArrayList<>();
    List<Ply> plies = new ArrayList<>();
    List<Length> interlayers = new ArrayList<>();
    Optional<String> outside = Optional.empty();
    String last = "";
    for (Part.Layer layer : glass.layers()) {
      String what = layer.what();
      if (what.equals("ply")) {
        if (last.equals("ply")) {
          outside = outside.or(() -> Optional.of("two of its plies have nothing between them"));
        }
        outside = outside.or(() -> uncovered(layer));
        plies.add(new Ply(layer.thickness(), treatment(layer)));
      } else if (last.equals("ply") && what.equals("interlayer")) {
        interlayers.add(layer.thickness());
      } else if (last.equals("ply")) {
        panes.add(new Pane(plies, interlayers));
        spaces.add(layer.thickness());
        plies.clear();
        interlayers.clear();
      } else {
        outside = outside.or(() -> Optional.of("a " + what + " of it lies between no two plies"));
      }
      last = what;
    }
    if (last.equals("ply")) {
      panes.add(new Pane(plies, interlayers));
    } else {
      outside = outside.or(() -> Optional.of("it does not end with a ply"));
    }
    if (panes.size() > 2) {
      int count = panes.size();
      outside =
          outside.or(
              () ->
                  Optional.of(
                      "it has "
                          + count
                          + " panes, and load shares and type factors of such units are not in"
                          + " this program"));
    }
    if (panes.stream().anyMatch(pane -> pane.plies().size() > 2)) {
      outside = outside.or(() -> Optional.of("a pane of it is laminated of more than two plies"));
    }
    return new MakeUp(glass, panes, spaces, outside);
  }

  /** True if a pane of it is laminated. */
  public boolean laminated() {
    return panes.stream().anyMatch(Pane::laminated);
  }

  private static Optional<String> uncovered(Part.Layer layer) {
    return words(layer).stream()
        .filter(GlassWords::isOtherGlass)
        .findFirst()
        .map(word -> "ASTM E1300 as computed here covers clear float glass, and a ply is " + word);
  }

  private static Given<HeatTreatment> treatment(Part.Layer layer) {
    String words =
        " " + String.join(" ", layer.words()).toLowerCase(Locale.ROOT).replace('-', ' ') + " ";
    HeatTreatment found = null;
    if (words.contains(" heat strengthened ") || has(layer, "HS")) {
      found = HeatTreatment.HEAT_STRENGTHENED;
    } else if (words.contains(" tempered ") || words.contains(" toughened ") || has(layer, "FT")) {
      found = HeatTreatment.FULLY_TEMPERED;
    } else if (words.contains(" annealed ") || has(layer, "AN")) {
      found = HeatTreatment.ANNEALED;
    }
    return found == null
        ? Given.assumed(HeatTreatment.ANNEALED, layer.origin(), WEAKEST)
        : Given.stated(found, layer.origin());
  }

  // a phrase is kept as it was written, several words in one
  private static List<String> words(Part.Layer layer) {
    return List.of(String.join(" ", layer.words()).split(" "));
  }

  private static boolean has(Part.Layer layer, String word) {
    return words(layer).contains(word);
  }
}
