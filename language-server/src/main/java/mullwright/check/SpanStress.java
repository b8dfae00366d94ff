package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.List;
import mullwright.analysis.wall.BendingCheck;
import mullwright.analysis.wall.BendingTrace;
import mullwright.analysis.wall.HorizontalBending;
import mullwright.analysis.wall.HorizontalSpan;
import mullwright.analysis.wall.VerticalBending;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.VerticalPiece;
import mullwright.model.Origin;
import mullwright.quantity.Kind;

/**
 * A vertical or horizontal, or the steel in it, that is bent beyond its allowable stress or moment.
 *
 * <p>It yields, breaks or buckles sideways in the storm it was drawn for. Aluminum Design Manual,
 * chapters B, D, F and H, from memory. An aid to drafting: a licensed engineer and the local code
 * govern.
 */
@AutoService(Rule.class)
public final class SpanStress implements WallRule {
  @Override
  public About about() {
    return About.of(Group.SPAN, Severity.ERROR).guardingPeople();
  }

  @Override
  public void check(WallFacts facts, Findings found) {
    for (VerticalPiece piece : facts.verticals()) {
      found.near(piece.line(), piece.line());
      BendingCheck worst = worst(VerticalBending.of(facts.analysis(), piece));
      if (worst != null && worst.passed()) {
        BendingTrace trace = VerticalBending.trace(facts.analysis().runOf(piece), worst);
        tell(worst, piece.origin(), piece.name(), "at height ", trace, facts, found);
      }
    }
    for (HorizontalPiece piece : facts.horizontals()) {
      found.near(piece.leftLine(), piece.rightLine());
      HorizontalSpan span = facts.analysis().spanOf(piece);
      BendingCheck worst = worst(HorizontalBending.of(span));
      if (worst != null && worst.passed()) {
        BendingTrace trace = HorizontalBending.trace(span, worst);
        String place = "from its left vertical by ";
        tell(worst, piece.origin(), piece.name(), place, trace, facts, found);
      }
    }
  }

  private static BendingCheck worst(List<BendingCheck> checks) {
    BendingCheck worst = null;
    for (BendingCheck check : checks) {
      worst = worst == null || check.utilisation() > worst.utilisation() ? check : worst;
    }
    return worst;
  }

  private static void tell(
      BendingCheck worst,
      Origin origin,
      String name,
      String place,
      BendingTrace trace,
      WallFacts facts,
      Findings found) {
    Measures say = Measures.of(facts);
    Findings.Draft draft =
        found
            .at(origin)
            .piece(name)
            .what(sentence(worst, place + say.length(worst.peak().at()), say))
            .mend(mend(worst.limit()))
            .limit(worst.allowed().get());
    if (Double.isFinite(worst.demand())) {
      draft.measured(worst.measured().apply(trace));
    }
  }

  private static String sentence(BendingCheck worst, String place, Measures say) {
    String share = " (" + Measures.share(worst.utilisation()) + " of it).";
    String where = " under " + worst.peak().response().name() + ", " + place;
    // a section property of next to nothing, a slip of the pen in the catalog
    String demand =
        Double.isFinite(worst.demand())
            ? say.of(worst.demand(), worst.kind())
            : "beyond all measure";
    String capacity = say.of(worst.capacity(), worst.kind());
    return switch (worst.limit()) {
      case FIBRE ->
          "Bending stress is " + demand + where + "; " + worst.of() + " allows " + capacity + share;
      case REINFORCEMENT ->
          "Bending stress in the reinforcement is "
              + demand
              + where
              + "; "
              + worst.of()
              + " allows "
              + capacity
              + share;
      case BUCKLING ->
          (worst.kind() == Kind.RATIO ? "Wind and weight together use " : "The moment is ")
              + demand
              + where
              + "; its "
              + (worst.outside() ? "outer" : "inner")
              + " flange, unbraced over "
              + say.length(worst.unbraced())
              + ", buckles sideways beyond "
              + capacity
              + share;
    };
  }

  private static String mend(BendingCheck.Limit limit) {
    return switch (limit) {
      case FIBRE ->
          "Take a heavier profile or a stronger alloy, reinforce it, or shorten its span.";
      case REINFORCEMENT -> "Take a stronger bar, or shorten the span.";
      case BUCKLING ->
          "Take a profile that resists twisting, brace the flange, or shorten the span.";
    };
  }
}
