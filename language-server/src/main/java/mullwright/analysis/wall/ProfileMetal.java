package mullwright.analysis.wall;

import java.util.List;
import java.util.Optional;
import mullwright.analysis.strength.AluminumAllowable;
import mullwright.analysis.strength.AluminumAlloy;
import mullwright.analysis.strength.LateralTorsionalBuckling;
import mullwright.derivation.Derivation;
import mullwright.model.Outline;
import mullwright.model.Part;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;

/** What the alloy of a profile allows in bending, and how that came about. */
final class ProfileMetal {
  /** How strong-axis and weak-axis bending act together. */
  static final String INTERACTION = "Aluminum Design Manual, chapter H, from memory";

  /** Strengths are looked up for a wall this thick where the catalog draws no outline [m]. */
  private static final double USUAL_WALL = 0.003;

  private ProfileMetal() {}

  /** The alloy, if it is stated and its strengths are tabulated; never the nearest. */
  static Optional<AluminumAlloy> alloy(Part.Profile profile) {
    if (Stiffness.modulus(profile.metal().value()) != Stiffness.ALUMINIUM) {
      return Optional.empty();
    }
    return profile
        .alloy()
        .flatMap(alloy -> AluminumAlloy.find(alloy.value().strip().replace(' ', '-')));
  }

  static Optional<AluminumAllowable.Result> allowable(Part.Profile profile) {
    return alloy(profile)
        .flatMap(
            alloy ->
                AluminumAllowable.solve(new AluminumAllowable.Input(alloy, thickness(profile)))
                    .solved());
  }

  /** The thickest wall of the outline [m]. */
  private static double thickness(Part.Profile profile) {
    List<Outline.Rectangle> all =
        profile.outline().map(given -> given.value().rectangles()).orElse(List.of());
    double thickest = 0;
    for (int i = 0; i < all.size(); i++) {
      Outline.Rectangle r = all.get(i);
      boolean hollow = !r.hole() && i + 1 < all.size() && all.get(i + 1).hole();
      if (r.hole() && i > 0) {
        thickest = Math.max(thickest, r.x().minus(all.get(i - 1).x()).toMetres());
      } else if (!hollow) {
        Length wall = r.width().isShorterThan(r.depth()) ? r.width() : r.depth();
        thickest = Math.max(thickest, wall.toMetres());
      }
    }
    return thickest > 0 ? thickest : USUAL_WALL;
  }

  static Derivation explain(Part.Profile profile, AluminumAllowable.Result limit) {
    boolean yields = limit.rule().equals(AluminumAllowable.YIELD);
    AluminumAlloy alloy = limit.input().alloy();
    return limit
        .rule()
        .explain(
            "allowable stress",
            limit.stress(),
            Kind.STRESS,
            strength(
                yields ? "tensile yield strength" : "tensile ultimate strength",
                yields ? alloy.yield() : alloy.ultimate(),
                alloy));
  }

  private static Derivation strength(String name, double pascals, AluminumAlloy alloy) {
    return Derivation.assumed(
        name,
        Quantity.ofSi(pascals, Kind.STRESS),
        Kind.STRESS,
        alloy.designation() + ", " + AluminumAlloy.SOURCE);
  }

  static Derivation bucklingMoment(
      Part.Profile profile,
      LateralTorsionalBuckling.Result buckling,
      double unbraced,
      String braces) {
    AluminumAlloy alloy = alloy(profile).orElseThrow();
    String source = LateralTorsionalBuckling.ALLOWABLE.source();
    Derivation length =
        Derivation.computed("unbraced length", unbraced, Kind.LENGTH, braces, "common practice");
    Derivation modulus =
        Derivation.computed(
            "section modulus",
            buckling.input().sectionModulus(),
            Kind.SECTION_MODULUS,
            "that of the compressed flange",
            "the catalog");
    Derivation slenderness =
        LateralTorsionalBuckling.SLENDERNESS.explain(
            "slenderness",
            buckling.slenderness(),
            Kind.RATIO,
            length,
            modulus,
            Derivation.assumed(
                "moment-shape factor",
                Quantity.ofSi(buckling.input().momentShape(), Kind.RATIO),
                Kind.RATIO,
                "on the safe side, " + source),
            Inputs.quantity(
                "weak-axis second moment", profile.iy().orElseThrow(), Kind.SECOND_MOMENT),
            Inputs.quantity("torsion constant", profile.j().orElseThrow(), Kind.SECOND_MOMENT));
    Derivation intersection =
        Derivation.computed(
            "slenderness where buckling turns elastic",
            buckling.intersection(),
            Kind.RATIO,
            "0.41 × intercept ÷ slope of the buckling line",
            source);
    return buckling.elastic()
        ? Derivation.computed(
            "buckling moment",
            buckling.nominal(),
            Kind.MOMENT,
            "π² × modulus × section modulus ÷ slenderness²",
            source,
            Derivation.assumed(
                "modulus",
                Quantity.ofSi(buckling.input().modulus(), Kind.STRESS),
                Kind.STRESS,
                AluminumAlloy.SOURCE),
            modulus,
            slenderness,
            intersection)
        : Derivation.computed(
            "buckling moment",
            buckling.nominal(),
            Kind.MOMENT,
            "yield moment × (1 − slenderness ÷ C) + π² × modulus × slenderness × section modulus"
                + " ÷ C³, C slenderness where buckling turns elastic",
            source,
            Derivation.computed(
                "yield moment",
                yieldMoment(buckling, alloy),
                Kind.MOMENT,
                "min(plastic modulus, 1.5 × section modulus) × compressive yield strength",
                source,
                plastic(profile, buckling),
                modulus,
                strength("compressive yield strength", alloy.compressiveYield(), alloy)),
            slenderness,
            intersection,
            Derivation.assumed(
                "modulus",
                Quantity.ofSi(buckling.input().modulus(), Kind.STRESS),
                Kind.STRESS,
                AluminumAlloy.SOURCE),
            modulus);
  }

  private static double yieldMoment(LateralTorsionalBuckling.Result buckling, AluminumAlloy alloy) {
    LateralTorsionalBuckling.Input in = buckling.input();
    return Math.min(in.plasticModulus(), 1.5 * in.sectionModulus()) * alloy.compressiveYield();
  }

  private static Derivation plastic(
      Part.Profile profile, LateralTorsionalBuckling.Result buckling) {
    return profile
        .zx()
        .map(z -> Inputs.quantity("plastic modulus", z, Kind.SECTION_MODULUS))
        .orElseGet(
            () ->
                Derivation.assumed(
                    "plastic modulus",
                    Quantity.ofSi(buckling.input().plasticModulus(), Kind.SECTION_MODULUS),
                    Kind.SECTION_MODULUS,
                    "not stated, so the elastic one, on the safe side"));
  }
}
