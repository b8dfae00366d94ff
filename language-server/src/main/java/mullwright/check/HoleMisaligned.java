package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.analysis.wall.HoleMatch;
import mullwright.layout.HorizontalPiece;
import mullwright.model.Part;
import mullwright.quantity.Length;

/**
 * A hole of a horizontal that does not meet its hole in the shear block.
 *
 * <p>The screw cannot be put in, and the hole is drilled anew on the site. As drawn it is an error;
 * where only the stated tolerances can bring it about, a warning. Geometry.
 */
@AutoService(Rule.class)
public final class HoleMisaligned implements WallRule {
  @Override
  public About about() {
    return About.of(Group.FABRICATION, Severity.ERROR);
  }

  @Override
  public void check(WallFacts facts, Findings found) {
    Map<Part.Profile, Optional<HoleMatch>> worst = new HashMap<>();
    for (HorizontalPiece it : facts.layout().horizontals()) {
      worst
          .computeIfAbsent(it.profile(), profile -> worst(HoleMatch.of(facts.layout(), profile)))
          .ifPresent(match -> tell(it, match, facts, found));
    }
  }

  private static Optional<HoleMatch> worst(List<HoleMatch> matches) {
    HoleMatch worst = null;
    for (HoleMatch match : matches) {
      boolean fails = !match.meets() || slack(match).signum() < 0;
      if (fails && (worst == null || match.left().isShorterThan(worst.left()))) {
        worst = match;
      }
    }
    return Optional.ofNullable(worst);
  }

  // what is likely where that can be said, else the worst
  private static Length slack(HoleMatch match) {
    return match.leftLikely().or(match::leftAtWorst).orElse(match.left());
  }

  private static void tell(HorizontalPiece it, HoleMatch match, WallFacts facts, Findings found) {
    Measures say = Measures.of(facts);
    String fastener = "the fastener, " + say.length(match.fastener().value()) + " thick,";
    String what;
    String mend;
    if (match.meets()) {
      what =
          "Its hole meets the block's with "
              + say.length(match.left())
              + " of play, and cut and holes may be off by "
              + say.length(match.statistical().or(match::worst).orElse(Length.ZERO))
              + match.statistical().map(any -> " as a rule").orElse("")
              + match
                  .worst()
                  .map(worst -> ", " + say.length(worst) + " at worst")
                  .filter(any -> match.statistical().isPresent())
                  .orElse("")
              + ".";
      mend = "Drill larger, or hold tighter tolerances.";
    } else if (match.play().signum() < 0) {
      what = "Through its hole or the block's " + fastener + " does not pass.";
      mend = "Drill larger, or take a thinner fastener.";
    } else {
      what =
          "Its hole is "
              + say.length(match.offset())
              + " off the block's, and "
              + fastener
              + " has "
              + say.length(match.play())
              + " of play.";
      mend = "Drill the profile by the block's pattern.";
    }
    Findings.Draft draft =
        found
            .at(it.origin())
            .piece(it.name())
            .what(what)
            .mend(mend)
            .related(match.block().origin(), "the block's hole");
    if (!match.horizontal().origin().equals(match.block().origin())) {
      draft.related(match.horizontal().origin(), "the horizontal's hole");
    }
    draft.limit(match.explainPlay());
    if (match.meets()) {
      draft.severity(Severity.WARNING);
      match.explainWorst().ifPresent(draft::measured);
    } else {
      draft.measured(match.explainOffset());
    }
  }
}
