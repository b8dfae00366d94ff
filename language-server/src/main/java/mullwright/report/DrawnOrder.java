package mullwright.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import mullwright.drawing.order.Stage;
import mullwright.installation.WorkGraph;
import mullwright.installation.WorkKind;
import mullwright.installation.WorkKind.Trade;
import mullwright.installation.WorkOrder;
import mullwright.installation.WorkStep;

/**
 * The order of work of a wall in stages for pictures: steps one after the other of one kind, or, of
 * a wall that would need more pictures than anybody looks at, of one trade in one place, or of one
 * trade.
 *
 * @param notes what a reader of the pictures must know
 */
public record DrawnOrder(List<Stage> stages, List<String> notes) {
  /** More pictures than these are looked at by nobody. */
  static final int MOST = 60;

  private static final int NAMED = 3;

  public DrawnOrder {
    stages = List.copyOf(stages);
    notes = List.copyOf(notes);
  }

  /** A run of steps, and the number of its first in the table of the report. */
  private record Run(int first, List<WorkStep> steps) {}

  /** The stages of a wall, for one crew. */
  public static DrawnOrder of(Report.WallAtHand wall) {
    WorkOrder order = WorkOrder.of(WorkGraph.of(wall.facts().layout()), 1);
    List<WorkStep> steps = order.turns().stream().map(WorkOrder.Turn::step).toList();
    List<Function<WorkStep, Object>> ways =
        List.of(
            WorkStep::kind,
            step -> List.of(step.kind().trade(), moves(step.kind()) ? step.place() : 0),
            step -> step.kind().trade());
    List<String> words =
        List.of(
            "Each picture shows steps of one kind that follow each other.",
            "Each picture shows the steps of one trade; of frame and glass, at one place along the"
                + " wall.",
            "Each picture shows the steps of one trade that follow each other.");
    int way = 0;
    List<Run> runs = runs(steps, ways.get(way));
    while (runs.size() > MOST && way < ways.size() - 1) {
      way++;
      runs = runs(steps, ways.get(way));
    }
    List<Stage> stages = new ArrayList<>();
    for (Run run : runs) {
      stages.add(
          new Stage(
              stages.size() + 1,
              sentence(run),
              run.steps().stream().flatMap(step -> step.pieces().stream()).distinct().toList()));
    }
    List<String> notes = new ArrayList<>();
    notes.add(words.get(way));
    notes.add("The numbers of steps are those of “mullwright sequence”, for one crew.");
    if (!order.stuck().isEmpty()) {
      notes.add(
          order.stuck().size()
              + " steps are not shown: no order reaches them. Run “mullwright sequence”.");
    }
    return new DrawnOrder(stages, notes);
  }

  private static List<Run> runs(List<WorkStep> steps, Function<WorkStep, Object> by) {
    List<Run> runs = new ArrayList<>();
    for (int at = 0; at < steps.size(); at++) {
      if (at == 0 || !by.apply(steps.get(at)).equals(by.apply(steps.get(at - 1)))) {
        runs.add(new Run(at + 1, new ArrayList<>()));
      }
      runs.get(runs.size() - 1).steps().add(steps.get(at));
    }
    return runs;
  }

  // frame and glass are followed along the wall
  private static boolean moves(WorkKind kind) {
    return kind.trade() == Trade.FRAME || kind.trade() == Trade.GLASS;
  }

  private static String sentence(Run run) {
    Map<WorkKind, List<WorkStep>> kinds = new LinkedHashMap<>();
    run.steps()
        .forEach(step -> kinds.computeIfAbsent(step.kind(), any -> new ArrayList<>()).add(step));
    List<String> parts = new ArrayList<>();
    kinds.forEach((kind, steps) -> parts.add(part(kind, steps, kinds.size() == 1)));
    int last = run.first() + run.steps().size() - 1;
    String numbers = run.first() == last ? "Step " + last : "Steps " + run.first() + " to " + last;
    return numbers + ": " + String.join("; ", parts) + ".";
  }

  private static String part(WorkKind kind, List<WorkStep> steps, boolean alone) {
    List<String> names = steps.stream().map(step -> bare(kind, step.what())).toList();
    if (steps.size() == 1) {
      return kind.words() + " " + names.get(0);
    }
    String head = kind.words() + ", " + steps.size() + " times";
    if (!alone) {
      return head;
    }
    String named = String.join("; ", names.subList(0, Math.min(NAMED, names.size())));
    return head + ": " + named + (names.size() > NAMED ? "; …" : "");
  }

  // "set vertical" tells already what "vertical C" is
  private static String bare(WorkKind kind, String what) {
    String last = kind.words().substring(kind.words().lastIndexOf(' ') + 1);
    return what.startsWith(last + " ") ? what.substring(last.length() + 1) : what;
  }
}
