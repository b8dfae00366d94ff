package mullwright.installation;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import mullwright.check.Rules;
import mullwright.layout.RandomWalls;
import mullwright.layout.WallLayout;
import mullwright.takeoff.Examples;
import mullwright.workspace.DiskFiles;
import mullwright.workspace.Workspace;
import org.junit.jupiter.api.Test;

/** Orders of work: no circle, nothing before its time, everything done. */
class WorkOrderTest {
  private static final WallLayout EAST = Examples.layout("ferry-terminal/east.wall");

  private static int find(WorkGraph graph, WorkKind kind, String what) {
    return graph.steps().stream()
        .filter(step -> step.kind() == kind && step.what().equals(what))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no step " + kind + " " + what))
        .index();
  }

  private static Map<Integer, Integer> rounds(WorkOrder order) {
    Map<Integer, Integer> rounds = new HashMap<>();
    order.turns().forEach(turn -> rounds.put(turn.step().index(), turn.round()));
    return rounds;
  }

  private static void holds(WorkGraph graph, int crews) {
    WorkOrder order = WorkOrder.of(graph, crews);
    assertThat(order.stuck()).isEmpty();
    assertThat(order.turns()).hasSize(graph.steps().size());
    Map<Integer, Integer> rounds = rounds(order);
    for (Precedence each : graph.precedences()) {
      assertThat(rounds.get(each.before())).as(each.reason()).isLessThan(rounds.get(each.after()));
    }
    Set<String> taken = new HashSet<>();
    for (WorkOrder.Turn turn : order.turns()) {
      assertThat(taken.add(turn.round() + "/" + turn.crew())).isTrue();
      assertThat(turn.crew()).isBetween(1, crews);
    }
  }

  @Test
  void anyWallCanBePutUpStickByStick() {
    for (int seed = 0; seed < 150; seed++) {
      WorkGraph graph = WorkGraph.of(new RandomWalls(seed, false).wall(1).layOut());
      assertThat(WorkOrder.circle(graph)).as("wall %s", seed).isEmpty();
      holds(graph, 1 + seed % 4);
    }
  }

  @Test
  void theExamplesCanBePutUp() {
    for (String path :
        List.of(
            "ferry-terminal/east.wall", "library-corner/reading-room.wall", "tower/north.wall")) {
      holds(WorkGraph.of(Examples.layout(path)), 3);
    }
  }

  @Test
  void aLadderIsOneStepAndTheBayBetweenIsFilledInAfterwards() {
    WorkGraph graph = WorkGraph.of(EAST);
    // ladder A..C: A-B is a ladder (A is whole, B spliced: the lower length goes with it), B-C is
    // filled in
    int ladder =
        find(graph, WorkKind.LADDER, "ladder of vertical A and vertical B, lower length, L1 to L2");
    int infill = find(graph, WorkKind.HORIZONTAL, "horizontal R1, bay B-C");
    assertThat(graph.precedences())
        .anyMatch(each -> each.before() == ladder && each.after() == infill);
    assertThat(graph.steps())
        .noneMatch(
            step ->
                step.what().equals("horizontal R1, bay A-B") && step.kind() == WorkKind.HORIZONTAL);
  }

  @Test
  void theBayBetweenTwoLaddersWaitsForBoth() {
    // CHECK 15, trade handbook (common practice): ladders at bays 1 and 3, the horizontals of bay 2
    // after
    // both
    WorkGraph graph = WorkGraph.of(fixture("order-impossible/passes.wall"));
    Map<Integer, Integer> rounds = rounds(WorkOrder.of(graph, 4));
    int first = find(graph, WorkKind.LADDER, "ladder of vertical A and vertical B");
    int last = find(graph, WorkKind.LADDER, "ladder of vertical C and vertical D");
    for (String row : List.of("sill", "low", "head")) {
      int infill = find(graph, WorkKind.HORIZONTAL, "horizontal " + row + ", bay B-C");
      assertThat(rounds.get(infill)).isGreaterThan(rounds.get(first));
      assertThat(rounds.get(infill)).isGreaterThan(rounds.get(last));
    }
  }

  private static WallLayout fixture(String path) {
    return new Workspace(new DiskFiles(Path.of("src/test/resources/rules")), Rules.find())
        .snapshot()
        .reading(path)
        .orElseThrow()
        .walls()
        .get(0)
        .layout();
  }

  @Test
  void physicsOfOneBay() {
    WorkGraph graph = WorkGraph.of(EAST);
    Map<Integer, Integer> rounds = rounds(WorkOrder.of(graph, 1));
    String lower = "vertical E, lower length, L1 to L2";
    String upper = "vertical E, upper length, L2 to Roof";
    int[] inOrder = {
      find(graph, WorkKind.CLIP, "clip of vertical E at sill"),
      find(graph, WorkKind.VERTICAL, lower),
      find(graph, WorkKind.SLEEVE, "splice of vertical E above L2"),
      find(graph, WorkKind.VERTICAL, upper),
      find(graph, WorkKind.HORIZONTAL, "horizontal R5, bay D-E"),
      find(graph, WorkKind.SQUARE, "bay D-E"),
      find(graph, WorkKind.ZONE, "lite in bay D-E, sill to R1"),
      find(graph, WorkKind.BLOCKS, "lite in bay D-E, sill to R1"),
      find(graph, WorkKind.GLASS, "lite in bay D-E, sill to R1"),
      find(graph, WorkKind.GLASS, "lite in bay D-E, R1 to R2"),
      find(graph, WorkKind.PLATE, lower),
      find(graph, WorkKind.PLATE, "horizontal R1, bay D-E"),
      find(graph, WorkKind.CAP, "horizontal R1, bay D-E"),
    };
    for (int i = 1; i < inOrder.length; i++) {
      assertThat(rounds.get(inOrder[i - 1])).isLessThan(rounds.get(inOrder[i]));
    }
    // isolation comes before the steel of the anchor meets the vertical
    assertThat(rounds.get(find(graph, WorkKind.ISOLATION, "dead-load anchor of vertical E at L2")))
        .isLessThan(rounds.get(find(graph, WorkKind.VERTICAL, lower)));
  }

  @Test
  void aCircleIsToldWithBothItsSteps() {
    // CHECK 15, trade handbook (closed form): “glass → horizontal of same lite” added to a valid
    // graph
    WorkGraph graph = WorkGraph.of(EAST);
    int glass = find(graph, WorkKind.GLASS, "lite in bay D-E, R1 to R2");
    int horizontal = find(graph, WorkKind.HORIZONTAL, "horizontal R1, bay D-E");
    WorkGraph wrong = graph.with(new Precedence(glass, horizontal, "somebody says so"));
    List<Precedence> circle = WorkOrder.circle(wrong);
    assertThat(circle).isNotEmpty();
    for (int i = 0; i < circle.size(); i++) {
      assertThat(circle.get(i).after()).isEqualTo(circle.get((i + 1) % circle.size()).before());
    }
    assertThat(circle).anyMatch(each -> each.before() == glass);
    assertThat(circle).anyMatch(each -> each.after() == horizontal);
  }

  @Test
  void moreCrewsAreNoSlower() {
    WorkGraph graph = WorkGraph.of(EAST);
    int before = Integer.MAX_VALUE;
    for (int crews = 1; crews <= 8; crews *= 2) {
      List<WorkOrder.Turn> turns = WorkOrder.of(graph, crews).turns();
      int rounds = turns.get(turns.size() - 1).round();
      assertThat(rounds).isLessThanOrEqualTo(before);
      before = rounds;
    }
  }
}
