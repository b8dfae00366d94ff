package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.analysis.beam.TributaryLoad;
import mullwright.analysis.fastener.PlateScrewLoad;
import mullwright.derivation.Derivation;
import mullwright.layout.CoverPiece;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.PlateHoles;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;

/**
 * The greatest pull of suction on a screw of the plates of a member, where its lites press outward
 * most.
 */
final class PlateScrews {
  private final WallLayout layout;

  PlateScrews(WallLayout layout) {
    this.layout = layout;
  }

  /** That of a length of vertical; empty without wind or without plates. */
  Optional<FrameNumber> vertical(VerticalRun run, VerticalPiece piece) {
    double bottom = piece.bottom().toMetres();
    double top = piece.top().toMetres();
    List<Derivation> worst = List.of();
    double most = 0;
    for (Tributary first : run.tributaries()) {
      double y = Math.max(bottom, first.from());
      if (y >= Math.min(top, first.to())) {
        continue;
      }
      List<Derivation> sides = new ArrayList<>();
      double sum = 0;
      for (Tributary side : run.tributaries()) {
        if (side.from() <= y && y < side.to()) {
          int which = sides.size() / 2 + 1;
          sides.add(side.wind().explain(false, "pressure " + which));
          sides.add(
              Derivation.computed(
                  "half bay " + which,
                  side.width(),
                  Kind.LENGTH,
                  "½ of the bay beside it",
                  "conventions of measure"));
          sum += side.out();
        }
      }
      if (sum > most) {
        most = sum;
        worst = sides;
      }
    }
    return number(piece.name(), true, piece.index(), most, worst);
  }

  /** That of a horizontal; empty without wind or without plates. */
  Optional<FrameNumber> horizontal(HorizontalSpan span) {
    HorizontalPiece piece = span.piece();
    List<Derivation> sides = new ArrayList<>();
    double sum = 0;
    for (HorizontalLoads.Edge edge : span.loads().edges()) {
      double half = Math.min(edge.to() - edge.from(), edge.other()) / 2;
      sides.add(edge.wind().explain(false, "pressure " + (edge.above() ? "over it" : "under it")));
      sides.add(
          Derivation.computed(
              "width " + (edge.above() ? "over it" : "under it"),
              half,
              Kind.LENGTH,
              "half of the lite's smaller side",
              TributaryLoad.PEAK.source()));
      sum += edge.pressure().out() * half;
    }
    return span.oneLiteASide()
        ? number(piece.name(), false, piece.index(), sum, sides)
        : Optional.empty();
  }

  private Optional<FrameNumber> number(
      String name, boolean vertical, int carrier, double lineLoad, List<Derivation> sides) {
    Length spacing = spacing(vertical, carrier);
    return PlateScrewLoad.solve(new PlateScrewLoad.Input(lineLoad, spacing.toMetres()))
        .solved()
        .filter(pull -> pull > 0)
        .map(
            pull ->
                FrameNumber.free(
                    "pull on a plate screw",
                    name,
                    pull,
                    Kind.FORCE,
                    "wind out",
                    () -> explain(pull, lineLoad, spacing, sides)));
  }

  private static Derivation explain(
      double pull, double lineLoad, Length spacing, List<Derivation> sides) {
    StringBuilder formula = new StringBuilder();
    for (int i = 0; i < sides.size(); i += 2) {
      formula.append(i > 0 ? " + " : "");
      formula.append(sides.get(i).name()).append(" × ").append(sides.get(i + 1).name());
    }
    return PlateScrewLoad.PULL.explain(
        "pull on a plate screw",
        pull,
        Kind.FORCE,
        Derivation.computed(
            "line load",
            lineLoad,
            Kind.FORCE_PER_LENGTH,
            formula.toString(),
            "statics",
            sides.toArray(Derivation[]::new)),
        Derivation.computed(
            "spacing of the screws",
            spacing,
            "evenly between the end distances",
            "conventions of measure"));
  }

  /** The widest spacing of the screws of a member's plates; 0 without any. */
  private Length spacing(boolean vertical, int carrier) {
    Length widest = Length.ZERO;
    for (CoverPiece cover : layout.covers()) {
      if (cover.vertical() == vertical && cover.carrier() == carrier) {
        Length spacing = PlateHoles.spacing(layout, cover);
        widest = spacing.isLongerThan(widest) ? spacing : widest;
      }
    }
    return widest;
  }
}
