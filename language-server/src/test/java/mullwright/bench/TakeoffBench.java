package mullwright.bench;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.Supplier;
import mullwright.check.Checker;
import mullwright.check.Rules;
import mullwright.check.WallFacts;
import mullwright.installation.WorkGraph;
import mullwright.installation.WorkOrder;
import mullwright.layout.HolePlaces;
import mullwright.layout.PieceMarks;
import mullwright.layout.WallLayout;
import mullwright.takeoff.Takeoff;
import mullwright.takeoff.Tickets;
import mullwright.workspace.DiskFiles;
import mullwright.workspace.Workspace;

/**
 * Measures what shop and site ask of a wall, warm: holes, marks, tickets, takeoff, order of work,
 * and all of it together.
 *
 * <p>From the folder of the whole project, after {@code mvn -o -q test-compile}:
 *
 * <pre>{@code
 * java -cp language-server/target/classes:language-server/target/test-classes:LIBRARIES \
 *     mullwright.bench.TakeoffBench [FOLDER FILE]
 * }</pre>
 *
 * <p>Without a file it takes the tower among the examples. Told are the median and the slowest of
 * fifty rounds, in milliseconds, after fifty that warm up.
 */
public final class TakeoffBench {
  private static final int ROUNDS = 50;

  private TakeoffBench() {}

  public static void main(String[] args) {
    Path folder = Path.of(args.length > 0 ? args[0] : "examples");
    String file = args.length > 1 ? args[1] : "tower/north.wall";
    WallFacts facts =
        new Workspace(new DiskFiles(folder.toAbsolutePath()), Rules.find())
            .snapshot()
            .reading(file)
            .orElseThrow()
            .walls()
            .get(0);
    WallLayout layout = facts.layout();
    HolePlaces holes = HolePlaces.of(layout);
    PieceMarks marks = PieceMarks.of(layout, holes);
    tell("holes", () -> HolePlaces.of(layout));
    tell("marks", () -> PieceMarks.of(layout, holes));
    tell("tickets", () -> Tickets.of(layout, holes, marks));
    tell("takeoff", () -> Takeoff.of(layout, holes));
    tell("order of work", () -> WorkOrder.of(WorkGraph.of(layout), 4));
    tell("frame's order", () -> WorkOrder.circle(WorkGraph.standing(layout)));
    tell("full takeoff", () -> full(layout));
    for (String rule :
        new String[] {
          "hole-edge",
          "hole-clash",
          "hole-misaligned",
          "zone-open",
          "weep-below",
          "order-impossible"
        }) {
      rule(rule, facts);
    }
  }

  // holes, marks, tickets and counts, from the layout on
  private static Object full(WallLayout layout) {
    HolePlaces holes = HolePlaces.of(layout);
    Object tickets = Tickets.of(layout, holes, PieceMarks.of(layout, holes));
    return Takeoff.of(layout, holes).size() + tickets.hashCode();
  }

  // holes are found once a wall: the rule that asks first pays for them
  private static void rule(String name, WallFacts facts) {
    Checker checker =
        new Checker(
            new Rules(
                Rules.find().all().stream().filter(rule -> rule.name().equals(name)).toList()));
    tell(
        "rule " + name,
        () ->
            checker.checkWall(
                new WallFacts(facts.text(), facts.layout(), facts.analysis()), () -> false));
  }

  private static void tell(String what, Supplier<Object> work) {
    double[] times = new double[ROUNDS];
    int seen = 0;
    for (int round = -ROUNDS; round < ROUNDS; round++) {
      long start = System.nanoTime();
      seen += work.get().hashCode() & 1;
      if (round >= 0) {
        times[round] = (System.nanoTime() - start) / 1e6;
      }
    }
    Arrays.sort(times);
    System.out.printf(
        Locale.ROOT,
        "%-24s median %7.2f ms, slowest %7.2f ms (%d)%n",
        what,
        times[ROUNDS / 2],
        times[ROUNDS - 1],
        seen);
  }
}
