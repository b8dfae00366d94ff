package mullwright.installation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * An order of the steps that keeps every precedence, for so many crews at once.
 *
 * <p>Of the steps that may be done, a crew takes the one that comes first by trade (anchors, frame,
 * glass, plates, caps), then along the wall in the direction of the work, then from below. The same
 * wall gives the same order.
 *
 * @param turns in the order done
 * @param stuck steps that can never be done, since they wait for each other or for such; empty for
 *     a sound graph
 */
public record WorkOrder(List<Turn> turns, List<WorkStep> stuck) {
  /** Most crews at once. */
  public static final int MOST_CREWS = 100;

  /**
   * A step in its turn.
   *
   * @param round counted from 1; steps of one round are done at once
   * @param crew counted from 1
   * @param after what it waited for
   */
  public record Turn(int round, int crew, WorkStep step, List<Precedence> after) {
    public Turn {
      after = List.copyOf(after);
    }
  }

  public WorkOrder {
    turns = List.copyOf(turns);
    stuck = List.copyOf(stuck);
  }

  private static final Comparator<WorkStep> BY_TRADE =
      Comparator.comparing((WorkStep step) -> step.kind().trade())
          .thenComparing(WorkStep::place)
          .thenComparing(WorkStep::height)
          .thenComparing(WorkStep::kind)
          .thenComparing(WorkStep::index);

  /**
   * An order for so many crews.
   *
   * @param crews from 1 to {@link #MOST_CREWS}
   */
  public static WorkOrder of(WorkGraph graph, int crews) {
    if (crews < 1 || crews > MOST_CREWS) {
      throw new IllegalArgumentException(crews + " crews");
    }
    List<List<Precedence>> waiting = graph.waiting();
    List<List<Precedence>> following = graph.following();
    int[] open = new int[graph.steps().size()];
    PriorityQueue<WorkStep> ready = new PriorityQueue<>(BY_TRADE);
    for (WorkStep step : graph.steps()) {
      open[step.index()] = waiting.get(step.index()).size();
      if (open[step.index()] == 0) {
        ready.add(step);
      }
    }
    List<Turn> turns = new ArrayList<>(graph.steps().size());
    for (int round = 1; !ready.isEmpty(); round++) {
      List<WorkStep> done = new ArrayList<>(crews);
      for (int crew = 1; crew <= crews && !ready.isEmpty(); crew++) {
        WorkStep step = ready.poll();
        turns.add(new Turn(round, crew, step, waiting.get(step.index())));
        done.add(step);
      }
      for (WorkStep step : done) {
        for (Precedence next : following.get(step.index())) {
          if (--open[next.after()] == 0) {
            ready.add(graph.steps().get(next.after()));
          }
        }
      }
    }
    return new WorkOrder(
        turns, graph.steps().stream().filter(step -> open[step.index()] > 0).toList());
  }

  /**
   * Steps that wait for each other in a circle, each for the one before it, the first for the last;
   * empty if there is none.
   */
  public static List<Precedence> circle(WorkGraph graph) {
    // every stuck step waits for a stuck one: going back from any must come round
    boolean[] isStuck = stuck(graph);
    int at = 0;
    while (at < isStuck.length && !isStuck[at]) {
      at++;
    }
    if (at == isStuck.length) {
      return List.of();
    }
    List<List<Precedence>> waiting = graph.waiting();
    List<Precedence> way = new ArrayList<>();
    int[] seenAt = new int[graph.steps().size()];
    Arrays.fill(seenAt, -1);
    while (seenAt[at] < 0) {
      seenAt[at] = way.size();
      Precedence back =
          waiting.get(at).stream().filter(each -> isStuck[each.before()]).findFirst().orElseThrow();
      way.add(back);
      at = back.before();
    }
    List<Precedence> circle = new ArrayList<>(way.subList(seenAt[at], way.size()));
    Collections.reverse(circle);
    return circle;
  }

  /**
   * By index, the steps that can never be done: found without an order, at every edit of a wall.
   */
  private static boolean[] stuck(WorkGraph graph) {
    int count = graph.steps().size();
    int[] open = new int[count];
    int[] start = new int[count + 1];
    for (Precedence each : graph.precedences()) {
      open[each.after()]++;
      start[each.before() + 1]++;
    }
    for (int step = 0; step < count; step++) {
      start[step + 1] += start[step];
    }
    int[] following = new int[graph.precedences().size()];
    int[] next = start.clone();
    for (Precedence each : graph.precedences()) {
      following[next[each.before()]++] = each.after();
    }
    int[] done = new int[count];
    int found = 0;
    for (int step = 0; step < count; step++) {
      if (open[step] == 0) {
        done[found++] = step;
      }
    }
    for (int i = 0; i < found; i++) {
      for (int at = start[done[i]]; at < start[done[i] + 1]; at++) {
        if (--open[following[at]] == 0) {
          done[found++] = following[at];
        }
      }
    }
    boolean[] stuck = new boolean[count];
    for (int step = 0; step < count; step++) {
      stuck[step] = open[step] > 0;
    }
    return stuck;
  }
}
