package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import mullwright.analysis.wall.HoleMeeting;
import mullwright.derivation.Derivation;
import mullwright.layout.DrilledHole;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.VerticalPiece;
import mullwright.model.Origin;
import mullwright.quantity.Length;

/**
 * A hole that runs into another hole, or lies where another part covers it.
 *
 * <p>Two holes that meet are one that holds nothing; a screw behind another part cannot be driven,
 * and one into a splice sleeve pins what should slide. Geometry.
 */
@AutoService(Rule.class)
public final class HoleClash implements WallRule {
  @Override
  public About about() {
    return About.of(Group.FABRICATION, Severity.ERROR);
  }

  @Override
  public void check(WallFacts facts, Findings found) {
    for (VerticalPiece it : facts.verticals()) {
      found.near(it.line(), it.line());
      tell(it.name(), HoleMeeting.of(facts.analysis(), it), facts, found);
    }
    Map<List<DrilledHole>, List<HoleMeeting>> known = new IdentityHashMap<>();
    for (HorizontalPiece it : facts.horizontals()) {
      found.near(it.leftLine(), it.rightLine());
      List<DrilledHole> holes = facts.analysis().holes().horizontal(it.index());
      tell(it.name(), known.computeIfAbsent(holes, HoleMeeting::pairs), facts, found);
    }
  }

  // of one statement in one piece the first
  private static void tell(
      String piece, List<HoleMeeting> meetings, WallFacts facts, Findings found) {
    Map<Origin, HoleMeeting> first = new LinkedHashMap<>();
    meetings.forEach(each -> first.putIfAbsent(each.hole().statement(), each));
    Measures say = Measures.of(facts);
    first.forEach(
        (statement, it) -> {
          Findings.Draft draft =
              found
                  .at(statement)
                  .piece(piece)
                  .what(
                      "Its hole for the "
                          + it.hole().purpose().words()
                          + ", "
                          + say.length(it.hole().along())
                          + " along, runs into the "
                          + it.with()
                          + " by "
                          + say.length(it.by())
                          + ".")
                  .mend("Move one of the two, or change a hole pattern in the catalog.")
                  .measured(
                      Derivation.computed(
                          "overlap", it.by(), "what both take of the piece", "geometry"))
                  .limit(Derivation.assumed("most overlap", Length.ZERO, "geometry"));
          it.other().ifPresent(other -> draft.related(other.statement(), "the other hole"));
          if (!it.hole().origin().equals(statement)) {
            draft.related(it.hole().origin(), "the hole");
          }
        });
  }
}
