package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.List;
import mullwright.derivation.Derivation;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.VerticalPiece;
import mullwright.model.Part;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;

/** Tells how weights came about and where they go. Made when asked for. */
final class WeightTrace {
  private WeightTrace() {}

  /** The weight of a length, by what it comes from, and where it goes. */
  static Derivation of(WallAnalysis analysis, VerticalPiece piece) {
    LengthWeight weight = analysis.weightPartsOf(piece);
    List<Derivation> parts = new ArrayList<>();
    own(parts, "vertical", piece.profile(), piece.length());
    add(
        parts,
        "reinforcement",
        weight.reinforcement(),
        "mass per length × reach × 9.80665 m/s²",
        "the catalog");
    horizontals(parts, analysis, piece, weight.horizontals());
    add(
        parts,
        "fillings beside it",
        weight.fillings(),
        "half of each that stands on no horizontal",
        "common practice");
    add(
        parts,
        "lengths over it",
        weight.above(),
        "nothing else holds them: they slide down until the joint closes",
        "statics");
    add(parts, "brackets", weight.brackets(), "what the wall states, down less up", "the wall");
    StringBuilder formula = new StringBuilder();
    parts.forEach(p -> formula.append(formula.isEmpty() ? "" : " + ").append(p.name()));
    return Derivation.computed(
        "weight of the length",
        weight.total(),
        Kind.FORCE,
        formula.isEmpty() ? "no mass is stated" : formula.toString(),
        "statics; it " + analysis.holdOf(piece).landing().words(),
        parts.toArray(Derivation[]::new));
  }

  private static void own(
      List<Derivation> parts, String name, Part.Profile profile, Length length) {
    double newtons = WeightPath.perLength(profile) * length.toMetres();
    if (newtons != 0) {
      parts.add(
          Derivation.computed(
              name,
              newtons,
              Kind.FORCE,
              "mass per length × length × 9.80665 m/s²",
              "definition of weight",
              Inputs.quantity(
                  "mass per length", profile.massPerLength().orElseThrow(), Kind.MASS_PER_LENGTH),
              Derivation.computed("length", length, "cut length", "conventions of measure")));
    }
  }

  private static void horizontals(
      List<Derivation> parts, WallAnalysis analysis, VerticalPiece piece, double sum) {
    List<Derivation> each = new ArrayList<>();
    for (WeightPath.Brought brought : analysis.broughtTo(piece)) {
      add(
          each,
          brought.horizontal().name(),
          brought.newtons(),
          "its end, with the lites and verticals on it",
          "statics; glass 2500 kg/m³ (EN 572-1)");
    }
    if (sum != 0) {
      parts.add(
          Derivation.computed(
              "horizontals",
              sum,
              Kind.FORCE,
              "sum of what each brings to it",
              "statics",
              each.toArray(Derivation[]::new)));
    }
  }

  private static void add(
      List<Derivation> parts, String name, double newtons, String formula, String source) {
    if (newtons != 0) {
      parts.add(Derivation.computed(name, newtons, Kind.FORCE, formula, source));
    }
  }

  /** The weight on an anchor. */
  static Derivation on(WallAnalysis analysis, PlacedAnchor anchor, String name, double newtons) {
    VerticalPiece piece = analysis.layout().verticals().get(anchor.vertical());
    WeightLanding landing = analysis.holdOf(piece).landing();
    if (!(landing instanceof WeightLanding.HangsFromAnchors from)) {
      return Derivation.computed(
          name,
          newtons,
          Kind.FORCE,
          "weight of the length",
          "statics: nothing else holds it up",
          of(analysis, piece));
    }
    return Derivation.computed(
        name,
        newtons,
        Kind.FORCE,
        "weight of the length ÷ number of dead-load anchors on it",
        "statics",
        of(analysis, piece),
        Derivation.computed(
            "number of dead-load anchors on it",
            from.anchors().size(),
            Kind.RATIO,
            "those of this length",
            "the wall's anchors"));
  }

  /** The greater of what a horizontal brings to its two ends. */
  static Derivation end(WallAnalysis analysis, HorizontalPiece piece, double newtons) {
    HorizontalSpan span = analysis.spanOf(piece);
    List<Derivation> parts = new ArrayList<>();
    own(parts, "horizontal", piece.profile(), piece.length());
    add(
        parts,
        "lites on it",
        span.glassWeight(),
        "plies at nominal thickness",
        "EN 572-1, 2500 kg/m³");
    add(
        parts,
        "verticals it bears",
        span.borneWeight(),
        "their own weight and what hangs on them",
        "statics");
    String shared =
        analysis.under(piece).isEmpty()
            ? "reaction of a simple span"
            : "reaction of a beam over the verticals under it too";
    return Derivation.computed(
        "weight at an end",
        newtons,
        Kind.FORCE,
        shared,
        "statics",
        parts.toArray(Derivation[]::new));
  }
}
