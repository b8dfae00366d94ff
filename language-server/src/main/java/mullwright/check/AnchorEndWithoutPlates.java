package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.VerticalPiece;
import mullwright.model.AnchorUse;
import mullwright.model.Members;
import mullwright.syntax.ClauseWord;

/**
 * An end member bolted from one side without spread plates.
 *
 * <p>A bolt cannot pass through to a second angle there, so its load goes into one wall of the
 * extrusion and tears it. Common practice.
 */
@AutoService(Rule.class)
public final class AnchorEndWithoutPlates implements AnchorRule {
  @Override
  public About about() {
    return About.of(Group.ANCHOR, Severity.ERROR);
  }

  @Override
  public void check(PlacedAnchor it, WallFacts facts, Findings found) {
    Optional<Members.Fixing> bolted = it.use().bolted();
    if (!oneSided(it, facts)
        || bolted.isEmpty()
        || it.use().spread().isPresent()
        || !facts.readWhole()) {
      return;
    }
    VerticalPiece piece = facts.layout().verticals().get(it.vertical());
    Findings.Draft draft =
        found
            .at(it.use().origin())
            .piece(it.name())
            .what(
                bolted.get().count()
                    + " x "
                    + bolted.get().fastener().value()
                    + " bear on one wall of "
                    + piece.profile().name()
                    + ": glass stands on the "
                    + (piece.bayLeft() ? "left" : "right")
                    + " only, and no spread plates are there.")
            .mend("Put spread plates under the bolts: spread by a plate of the catalog.")
            .related(piece.origin(), "the end member");
    AnchorEdits anchors = new AnchorEdits(facts);
    for (String plate : anchors.spreadPlates()) {
      anchors
          .give(it, ClauseWord.SPREAD_BY, plate, other -> oneSided(other, facts))
          .map(edit -> new Fix("Spread by " + plate, List.of(edit)))
          .ifPresent(draft::fix);
    }
  }

  private static boolean oneSided(PlacedAnchor anchor, WallFacts facts) {
    return anchor.use().kind() != AnchorUse.Kind.CLIP
        && anchor.vertical() >= 0
        && facts.layout().verticals().get(anchor.vertical()).endMember();
  }
}
