package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
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
public final class SpanUnchecked implements WallRule {
  @Override
  public About about() {
    return About.of(Group.SPAN, Severity.WARNING).guardingPeople();
  }

  @Override
  public void check(WallFacts facts, Findings found) {
    Map<Part.Profile, String> standing = new IdentityHashMap<>();
    for (VerticalPiece piece : facts.layout().verticals()) {
      tell(
          piece.profile(),
          standing.computeIfAbsent(piece.profile(), profile -> lacks(profile, false)),
          piece.origin(),
          piece.name(),
          found);
    }
    Map<Part.Profile, String> lying = new IdentityHashMap<>();
    for (HorizontalPiece piece : facts.layout().horizontals()) {
      tell(
          piece.profile(),
          lying.computeIfAbsent(piece.profile(), profile -> lacks(profile, true)),
          piece.origin(),
          piece.name(),
          found);
    }
  }

  private static void tell(
      Part.Profile profile, String lacks, Origin origin, String name, Findings found) {
    if (!lacks.isEmpty()) {
      found
          .at(origin)
          .piece(name)
          .what(
              "Its bending is not checked in full: " + profile.name() + " does not state " + lacks)
          .mend("State what is missing in the catalog, or have the piece checked by an engineer.")
          .related(profile.origin(), "the profile");
    }
  }

  /** What is missing, as the end of a sentence; empty if nothing is. */
  private static String lacks(Part.Profile profile, boolean lies) {
    List<String> lacks = Unstated.ofBending(profile, lies);
    return lacks.isEmpty() ? "" : Words.list(lacks) + ".";
  }
}
