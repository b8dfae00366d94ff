package mullwright.analysis.lite;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import mullwright.analysis.glass.HeatTreatment;
import mullwright.derivation.Derivation;
import mullwright.layout.Cell;
import mullwright.model.Given;
import mullwright.model.Part;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;

/** Tells how the load resistance of a lite came about: its weakest ply, factor by factor. */
public final class StrengthTrace {
  private static final String MODEL =
      "failure prediction model of ASTM E1300, computed, not read from a chart";
  private static final String FACTORS = "ASTM E1300, tables 1 to 3, from memory";
  private static final String SHARES = "ASTM E1300 load share, equal deflection";
  private static final String THICKNESS = "ASTM E1300 table of minimum thicknesses, from memory";
  private static final String LAMINATE =
      "ASTM E1300, appendix on effective thickness of laminated glass";

  private final LiteBearing bearing;
  private final UnitStrength strength;

  private StrengthTrace(LiteBearing bearing, UnitStrength strength) {
    this.bearing = bearing;
    this.strength = strength;
  }

  /**
   * The load resistance of a lite that is checked, on the safe side.
   *
   * @throws java.util.NoSuchElementException if it is not checked
   */
  public static Derivation resistance(LiteBearing bearing) {
    return new StrengthTrace(bearing, bearing.least().orElseThrow()).resistance();
  }

  private Derivation resistance() {
    UnitStrength.Ply ply = strength.governing();
    List<Derivation> inputs = new ArrayList<>();
    inputs.add(nonFactoredLoad(ply));
    inputs.add(
        Derivation.computed(
            "type factor",
            ply.typeFactor(),
            Kind.RATIO,
            words(ply.treatment()) + other(ply) + ", 3 s",
            FACTORS,
            treatment(ply)));
    String formula = "non-factored load × type factor";
    if (strength.panes().size() > 1) {
      inputs.add(shareFactor(ply));
      formula += " × share factor";
    }
    return Derivation.computed(
        "load resistance",
        ply.resistance(),
        Kind.PRESSURE,
        formula,
        "ASTM E1300 procedure, " + plyName(ply) + " governs",
        inputs.toArray(Derivation[]::new));
  }

  private Derivation[] treatment(UnitStrength.Ply ply) {
    // only what is assumed is worth a line of its own
    Given<HeatTreatment> given = made(ply).treatment();
    return given.assumed()
        ? new Derivation[] {
          Derivation.assumed("type factor of annealed glass", ratio(1), Kind.RATIO, given.source())
        }
        : new Derivation[0];
  }

  private static mullwright.quantity.Quantity ratio(double value) {
    return mullwright.quantity.Quantity.ofSi(value, Kind.RATIO);
  }

  private Derivation nonFactoredLoad(UnitStrength.Ply ply) {
    Cell cell = bearing.cell();
    return Derivation.computed(
        "non-factored load",
        ply.nonFactoredLoad(),
        Kind.PRESSURE,
        "load at which 8 of 1000 annealed lites of glass width × glass height × thickness break"
            + " within 3 s",
        MODEL,
        size("glass width", cell.glassWidth()),
        size("glass height", cell.glassHeight()),
        thickness(ply));
  }

  private static Derivation size(String name, Length value) {
    return Derivation.computed(name, value, "daylight opening + bites", "conventions of measure");
  }

  private Derivation thickness(UnitStrength.Ply ply) {
    MakeUp.Pane pane = bearing.makeUp().panes().get(ply.pane());
    Derivation nominal = Derivation.stated("nominal thickness", made(ply).nominal(), layer(ply));
    if (!pane.laminated()) {
      return Derivation.computed(
          "thickness",
          Length.nearest(ply.thickness()),
          "minimum of the nominal one",
          THICKNESS,
          nominal);
    }
    List<Derivation> inputs = new ArrayList<>();
    inputs.add(nominal);
    Part.Glass glass = bearing.makeUp().glass();
    glass
        .shearModulus()
        .ifPresentOrElse(
            g -> inputs.add(Derivation.stated("shear modulus", g.value(), Kind.STRESS, g.origin())),
            () ->
                inputs.add(
                    Derivation.assumed(
                        "shear modulus",
                        mullwright.quantity.Quantity.ofSi(0, Kind.STRESS),
                        Kind.STRESS,
                        "plies slip freely, the safe side, as no shear modulus is stated")));
    return Derivation.computed(
        "thickness",
        Length.nearest(ply.thickness()),
        "effective for stress, of minimum ply thicknesses and shear modulus",
        LAMINATE,
        inputs.toArray(Derivation[]::new));
  }

  private MakeUp.Ply made(UnitStrength.Ply ply) {
    return bearing.makeUp().panes().get(ply.pane()).plies().get(ply.ply());
  }

  private mullwright.derivation.Locus layer(UnitStrength.Ply ply) {
    return made(ply).treatment().origin();
  }

  private Derivation shareFactor(UnitStrength.Ply ply) {
    List<Derivation> inputs = new ArrayList<>();
    List<String> cubes = new ArrayList<>();
    for (int pane = 0; pane < strength.panes().size(); pane++) {
      String name = paneName(pane) + " thickness";
      cubes.add(name + "³");
      inputs.add(
          Derivation.computed(
              name,
              Length.nearest(strength.panes().get(pane).thickness()),
              bearing.makeUp().panes().get(pane).laminated()
                  ? "effective for deflection"
                  : "minimum of the nominal one",
              bearing.makeUp().panes().get(pane).laminated() ? LAMINATE : THICKNESS));
    }
    return Derivation.computed(
        "share factor",
        ply.shareFactor(),
        Kind.RATIO,
        "(" + String.join(" + ", cubes) + ") ÷ " + cubes.get(ply.pane()),
        SHARES,
        inputs.toArray(Derivation[]::new));
  }

  private String other(UnitStrength.Ply ply) {
    if (strength.panes().size() == 1) {
      return "";
    }
    return " beside "
        + strength.plies().stream()
            .filter(one -> one.pane() != ply.pane())
            .map(UnitStrength.Ply::treatment)
            .min(java.util.Comparator.naturalOrder())
            .map(StrengthTrace::words)
            .orElseThrow();
  }

  /** {@code the outer pane}, {@code the inner ply of the outer pane}; {@code the lite}. */
  String plyName(UnitStrength.Ply ply) {
    boolean single = strength.panes().size() == 1;
    String pane = single ? "the lite" : "the " + paneName(ply.pane());
    if (!bearing.makeUp().panes().get(ply.pane()).laminated()) {
      return pane;
    }
    return (ply.ply() == 0 ? "the outer ply" : "the inner ply") + (single ? "" : " of " + pane);
  }

  private static String paneName(int pane) {
    return pane == 0 ? "outer pane" : "inner pane";
  }

  private static String words(HeatTreatment treatment) {
    return treatment.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
