package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import mullwright.analysis.wall.HoleRoom;
import mullwright.layout.DrilledHole;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.VerticalPiece;
import mullwright.model.Origin;

/**
 * A hole nearer to an edge, or to another hole, than its fastener needs.
 *
 * <p>The metal beside it tears out before the fastener bears its load. Aluminum Design Manual,
 * section J.3, from memory.
 */
@AutoService(Rule.class)
public final class HoleEdge implements WallRule {
  @Override
  public About about() {
    return About.of(Group.FABRICATION, Severity.ERROR);
  }

  @Override
  public void check(WallFacts facts, Findings found) {
    HoleRoom room = HoleRoom.of(facts.layout());
    for (VerticalPiece it : facts.verticals()) {
      found.near(it.line(), it.line());
      List<DrilledHole> holes = facts.analysis().holes().vertical(it.index());
      tell(it.name(), room.vertical(it, holes), facts, found);
    }
    Map<List<DrilledHole>, List<HoleRoom.Shortfall>> known = new IdentityHashMap<>();
    for (HorizontalPiece it : facts.horizontals()) {
      found.near(it.leftLine(), it.rightLine());
      List<DrilledHole> holes = facts.analysis().holes().horizontal(it.index());
      tell(
          it.name(), known.computeIfAbsent(holes, any -> room.horizontal(it, holes)), facts, found);
    }
  }

  // of one statement in one piece the worst
  private static void tell(
      String piece, List<HoleRoom.Shortfall> all, WallFacts facts, Findings found) {
    Map<Origin, HoleRoom.Shortfall> worst = new LinkedHashMap<>();
    for (HoleRoom.Shortfall each : all) {
      worst.merge(
          each.hole().statement(),
          each,
          (one, other) ->
              Comparator.comparing((HoleRoom.Shortfall s) -> s.least().minus(s.distance()))
                          .compare(one, other)
                      < 0
                  ? other
                  : one);
    }
    worst.forEach((statement, shortfall) -> tell(piece, statement, shortfall, facts, found));
  }

  private static void tell(
      String piece, Origin statement, HoleRoom.Shortfall it, WallFacts facts, Findings found) {
    Measures say = Measures.of(facts);
    String hole = "Its hole for the " + it.hole().purpose().words();
    String to =
        it.other().map(other -> "the hole for the " + other.purpose().words()).orElse(it.to());
    String there =
        it.distance().signum() < 0
            ? hole + " lies " + say.length(it.distance().abs()) + " outside " + to
            : hole + " is " + say.length(it.distance()) + " from " + to;
    found
        .at(statement)
        .piece(piece)
        .what(there + "; " + say.length(it.least()) + " is needed.")
        .mend(
            it.other().isPresent()
                ? "Move one of the two parts, or change its hole pattern in the catalog."
                : "Move the part away from the edge, or change its hole pattern in the catalog.")
        .measured(it.measured())
        .limit(it.limit())
        .related(it.hole().origin(), "the hole");
  }
}
