package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import mullwright.analysis.wall.FloorCrossing;
import mullwright.analysis.wall.LengthHold;
import mullwright.analysis.wall.MovingLengths;
import mullwright.analysis.wall.WeightLanding;
import mullwright.derivation.Derivation;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.VerticalPiece;
import mullwright.model.AnchorUse;
import mullwright.quantity.Kind;
import mullwright.quantity.Quantity;
import mullwright.quantity.Rational;

/**
 * A length of vertical that hangs from no dead-load anchor, or that can move in and out because too
 * little holds it.
 *
 * <p>Its weight goes through the sleeve into the next length, or its glass moves with it. Statics;
 * one dead-load anchor a length is common practice.
 */
@AutoService(Rule.class)
public final class SpliceUnsupported implements MemberRule {
  @Override
  public About about() {
    return About.of(Group.SPLICE, Severity.ERROR).guardingPeople();
  }

  @Override
  public void check(VerticalPiece it, WallFacts facts, Findings found) {
    LengthHold hold = facts.analysis().holdOf(it);
    if (hold.unsupported()) {
      if (facts.readWhole()) {
        hangsFromNothing(it, facts, found);
      }
      return;
    }
    for (MovingLengths moving : MovingLengths.of(facts.analysis().runOf(it))) {
      boolean told = moving.pieces().stream().anyMatch(p -> hangsFromNothing(p, facts));
      if (!told && moving.pieces().indexOf(it) == 0 && facts.readWhole()) {
        moves(moving, facts, found);
      }
    }
  }

  private static boolean hangsFromNothing(VerticalPiece piece, WallFacts facts) {
    return facts.analysis().holdOf(piece).unsupported();
  }

  private static void hangsFromNothing(VerticalPiece it, WallFacts facts, Findings found) {
    Optional<FloorCrossing> floor = floorToHangFrom(it, facts);
    String mend =
        floor
            .map(f -> "Add a dead-load anchor at " + f.floor().name() + ".")
            .orElseGet(
                () ->
                    facts.analysis().runOf(it).pieces().size() > 1
                        ? "It passes no floor: join it to the next length, or move the splice."
                        : "It passes no floor: let it reach one, or give it a dead-load anchor at"
                            + " a row or height.");
    Findings.Draft draft =
        found
            .at(it.origin())
            .piece(it.name())
            .what(
                "No dead-load anchor holds it: 0 found, 1 needed, and it stands on nothing"
                    + slides(it, facts)
                    + ".")
            .mend(mend)
            .measured(count("dead-load anchors on the length", 0, "anchors of the wall"))
            .limit(count("dead-load anchors needed", 1, "statics; common practice"));
    floor.flatMap(f -> hangFrom(f, facts)).ifPresent(draft::fix);
  }

  private static String slides(VerticalPiece it, WallFacts facts) {
    WeightLanding landing = facts.analysis().holdOf(it).landing();
    String until =
        landing instanceof WeightLanding.OnClosedJoint
            ? " slide down until the joint under it closes"
            : landing instanceof WeightLanding.OnSlotEnd end
                ? " slide down until the slot at " + Words.place(end.anchor(), facts) + " ends"
                : "";
    return until.isEmpty()
        ? until
        : ": " + Measures.of(facts).force(facts.analysis().weightOf(it)) + until;
  }

  private static Optional<Fix> hangFrom(FloorCrossing crossing, WallFacts facts) {
    AnchorEdits edits = new AnchorEdits(facts);
    List<PlacedAnchor> windLoads =
        crossing.anchors().stream()
            .filter(anchor -> anchor.use().kind() == AnchorUse.Kind.WIND_LOAD)
            .limit(1)
            .toList();
    return windLoads.isEmpty()
        ? edits.add(AnchorUse.Kind.DEAD_LOAD, crossing.piece(), crossing.floor())
        : edits.turn(crossing.piece(), windLoads, AnchorUse.Kind.DEAD_LOAD);
  }

  // rather where it has a wind-load anchor to turn, or where its neighbours hang
  private static Optional<FloorCrossing> floorToHangFrom(VerticalPiece it, WallFacts facts) {
    return FloorCrossing.of(facts.analysis(), it).stream()
        .min(
            Comparator.comparing((FloorCrossing crossing) -> crossing.anchors().isEmpty())
                .thenComparing(crossing -> !neighboursHangAt(crossing, facts)));
  }

  private static boolean neighboursHangAt(FloorCrossing crossing, WallFacts facts) {
    return facts.analysis().anchorsInUse().hangsAt(crossing.floor().index());
  }

  private static void moves(MovingLengths moving, WallFacts facts, Findings found) {
    int line = moving.pieces().get(0).line();
    String name = facts.wall().grid().lines().get(line).name();
    List<String> held =
        moving.heldBy().stream().map(support -> "the " + Words.onLine(support, name)).toList();
    String by =
        held.isEmpty()
            ? "nothing holds"
            : "only " + Words.list(held) + (held.size() == 1 ? " holds" : " hold");
    String way =
        switch (moving.motion()) {
          case DRIFTS -> "It can drift in and out: ";
          case SWINGS -> "It can swing in and out: ";
          case FOLDS ->
              "It can fold at the "
                  + Words.list(
                      moving.looseJoints().stream()
                          .map(joint -> Words.onLine(joint.name(), name))
                          .toList())
                  + ": ";
        };
    found
        .at(moving.pieces().get(0).origin())
        .piece(Words.list(moving.pieces().stream().map(VerticalPiece::name).toList()))
        .what(way + by + " it sideways.")
        .mend("Hold it at one more place: a clip at its free end, or an anchor at a floor.")
        .measured(
            count("lateral supports", moving.heldBy().size(), "supports of the moving lengths"))
        .limit(
            count(
                "lateral supports needed",
                moving.looseJoints().size() + 2L,
                "statics: one for each joint, and two"));
  }

  private static Derivation count(String name, long count, String source) {
    return Derivation.computed(
        name, Quantity.of(Rational.of(count)), Kind.RATIO, "counted", source);
  }
}
