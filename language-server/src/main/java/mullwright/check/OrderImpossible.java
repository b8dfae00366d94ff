package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.List;
import mullwright.installation.Precedence;
import mullwright.installation.WorkGraph;
import mullwright.installation.WorkOrder;
import mullwright.installation.WorkStep;
import mullwright.layout.SystemPart;
import mullwright.model.Installation;

/**
 * A method of installation that leaves a piece that cannot be put in.
 *
 * <p>Steps wait for each other in a circle: the crew finds out on the scaffold. Common practice.
 */
@AutoService(Rule.class)
public final class OrderImpossible implements WallRule {
  @Override
  public About about() {
    return About.of(Group.INSTALLATION, Severity.ERROR);
  }

  @Override
  public void check(WallFacts facts, Findings found) {
    if (!mayFail(facts)) {
      return;
    }
    WorkGraph graph = WorkGraph.standing(facts.layout());
    List<Precedence> circle = WorkOrder.circle(graph);
    if (circle.isEmpty()) {
      return;
    }
    WorkStep first = graph.steps().get(circle.get(0).after());
    StringBuilder words = new StringBuilder("It cannot be put in: ");
    for (int i = 0; i < circle.size(); i++) {
      Precedence each = circle.get(i);
      words
          .append(i == 0 ? "" : "; ")
          .append(graph.steps().get(each.after()).what())
          .append(" waits for ")
          .append(graph.steps().get(each.before()).what())
          .append(" (")
          .append(each.reason())
          .append(")");
    }
    Findings.Draft draft =
        found
            .at(first.origin())
            .piece(first.what())
            .what(words.append(".").toString())
            .mend("Put these bays up stick by stick, or begin the ladders at another bay.");
    for (Installation.Stretch stretch : facts.wall().installation().stretches()) {
      draft.related(stretch.origin(), "the method");
    }
  }

  /**
   * True if the method may stand in its own way, which takes two of three: ladders, horizontals
   * that must be slid on endwise, horizontals that run past verticals. With one of them alone each
   * step waits only for steps of lines that are set before, or lower down on its own line.
   */
  private static boolean mayFail(WallFacts facts) {
    boolean ladders =
        facts.wall().installation().stretches().stream()
            .anyMatch(stretch -> stretch.method() == Installation.Method.LADDER);
    boolean endwise =
        SystemPart.shearBlock(facts.layout())
            .filter(block -> block.entry().value().equals("end"))
            .isPresent();
    return (ladders && endwise) || ((ladders || endwise) && butts(facts));
  }

  private static boolean butts(WallFacts facts) {
    return facts.layout().horizontals().stream()
        .anyMatch(piece -> piece.firstBay() != piece.lastBay());
  }
}
