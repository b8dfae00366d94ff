package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.List;
import mullwright.analysis.wall.Unstated;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.VerticalPiece;
import mullwright.model.Origin;
import mullwright.model.Part;

/**
 * A vertical or horizontal whose bending is not checked, because its profile does not state what
 * the check needs.
 *
 * <p>That nothing was found would else look as if it had been looked at. An aid to drafting: a
 * licensed engineer and the local code govern.
 */
@AutoService(Rule.class)
public final class SpanUnchecked implements MemberRule, HorizontalRule {
  @Override
  public About about() {
    return About.of(Group.SPAN, Severity.WARNING).guardingPeople();
  }

  @Override
  public void check(VerticalPiece it, WallFacts facts, Findings found) {
    tell(it.profile(), Unstated.ofBending(it.profile(), false), it.origin(), it.name(), found);
  }

  @Override
  public void check(HorizontalPiece it, WallFacts facts, Findings found) {
    tell(it.profile(), Unstated.ofBending(it.profile(), true), it.origin(), it.name(), found);
  }

  private static void tell(
      Part.Profile profile, List<String> lacks, Origin origin, String name, Findings found) {
    if (!lacks.isEmpty()) {
      found
          .at(origin)
          .piece(name)
          .what(
              "Its bending is not checked in full: "
                  + profile.name()
                  + " does not state "
                  + Words.list(lacks)
                  + ".")
          .mend("State what is missing in the catalog, or have the piece checked by an engineer.")
          .related(profile.origin(), "the profile");
    }
  }
}
