package mullwright.report;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import mullwright.installation.Precedence;
import mullwright.installation.WorkGraph;
import mullwright.installation.WorkOrder;
import mullwright.installation.WorkStep;
import mullwright.layout.WallLayout;

/**
 * An order in which the wall can be put up, step by step, with the reason of each precedence.
 *
 * <p>Tables in this order: steps in the order done, steps no order reaches. Steps of one round are
 * done at once, one by each crew. With every piece by itself, also a table of all precedences. In
 * short, the steps of one kind at one place along the wall share a row.
 */
@AutoService(Report.class)
public final class SequenceReport implements Report {
  private final int crews;
  private final boolean brief;

  /** For one crew. */
  public SequenceReport() {
    this(1, false);
  }

  /**
   * For so many crews.
   *
   * @param crews from 1 to {@link WorkOrder#MOST_CREWS}
   * @param brief true to tell equal steps at one place together
   */
  public SequenceReport(int crews, boolean brief) {
    this.crews = crews;
    this.brief = brief;
  }

  @Override
  public String name() {
    return "sequence";
  }

  @Override
  public Document make(List<WallAtHand> walls, Options options) {
    return new Document(
        name(),
        "Order of work",
        walls.stream().map(wall -> section(wall, options)).toList(),
        List.of(Caution.WORDS));
  }

  private Document.Section section(WallAtHand wall, Options options) {
    WallLayout layout = wall.facts().layout();
    String name = layout.wall().name();
    WorkGraph graph = WorkGraph.of(layout);
    WorkOrder order = WorkOrder.of(graph, crews);
    Map<Integer, Integer> numbers = new HashMap<>();
    order.turns().forEach(turn -> numbers.put(turn.step().index(), numbers.size() + 1));
    List<Table> tables = new ArrayList<>();
    tables.add(brief ? together(order, numbers) : steps(order, numbers));
    tables.add(stuck(order, graph));
    if (options.each()) {
      tables.add(precedences(graph, numbers));
    }
    tables.removeIf(table -> table.rows().isEmpty());
    return new Document.Section(
        "Wall " + name, wall.file(), name, Warnings.of(wall, "put up", tables.isEmpty()), tables);
  }

  private static Table steps(WorkOrder order, Map<Integer, Integer> numbers) {
    List<Column> columns =
        List.of(
            Column.count("step", "Step"),
            Column.count("round", "Round"),
            Column.count("crew", "Crew"),
            Column.text("work", "Work"),
            Column.text("piece", "Piece"),
            Column.text("after", "After"),
            Column.text("reason", "Since"));
    List<List<Entry>> rows = new ArrayList<>();
    for (WorkOrder.Turn turn : order.turns()) {
      rows.add(
          List.of(
              new Entry.Count(numbers.get(turn.step().index())),
              new Entry.Count(turn.round()),
              new Entry.Count(turn.crew()),
              Entry.text(turn.step().kind().words()),
              Entry.text(turn.step().what()),
              Entry.text(after(turn, numbers)),
              Entry.text(
                  turn.after().stream()
                      .map(Precedence::reason)
                      .distinct()
                      .collect(Collectors.joining("; ")))));
    }
    return new Table("steps", "Steps", columns, rows, List.of());
  }

  /** Steps of one kind at one place along the wall, in the order in which the first is done. */
  private static Table together(WorkOrder order, Map<Integer, Integer> numbers) {
    Map<List<Integer>, List<WorkStep>> groups = new LinkedHashMap<>();
    for (WorkOrder.Turn turn : order.turns()) {
      WorkStep step = turn.step();
      groups
          .computeIfAbsent(List.of(step.kind().ordinal(), step.place()), any -> new ArrayList<>())
          .add(step);
    }
    List<List<Entry>> rows = new ArrayList<>();
    for (List<WorkStep> group : groups.values()) {
      rows.add(
          List.of(
              Entry.text(group.get(0).kind().words()),
              new Entry.Names(group.stream().map(WorkStep::what).toList()),
              new Entry.Count(group.size()),
              new Entry.Count(numbers.get(group.get(0).index())),
              new Entry.Count(numbers.get(group.get(group.size() - 1).index()))));
    }
    return new Table(
        "work",
        "Steps, those of one kind at one place together",
        List.of(
            Column.text("work", "Work"),
            Column.names("pieces", "Pieces"),
            Column.count("quantity", "Qty"),
            Column.count("first-step", "First step"),
            Column.count("last-step", "Last step")),
        rows,
        List.of());
  }

  private static String after(WorkOrder.Turn turn, Map<Integer, Integer> numbers) {
    return turn.after().stream()
        .map(each -> numbers.get(each.before()))
        .sorted()
        .distinct()
        .map(String::valueOf)
        .collect(Collectors.joining(", "));
  }

  private static Table stuck(WorkOrder order, WorkGraph graph) {
    List<List<Precedence>> waiting = new ArrayList<>();
    graph.steps().forEach(step -> waiting.add(new ArrayList<>()));
    graph.precedences().forEach(each -> waiting.get(each.after()).add(each));
    List<Column> columns =
        List.of(
            Column.text("work", "Work"),
            Column.text("piece", "Piece"),
            Column.names("waits-for", "Waits for"));
    List<List<Entry>> rows = new ArrayList<>();
    for (WorkStep step : order.stuck()) {
      rows.add(
          List.of(
              Entry.text(step.kind().words()),
              Entry.text(step.what()),
              new Entry.Names(
                  waiting.get(step.index()).stream()
                      .filter(each -> order.stuck().contains(graph.steps().get(each.before())))
                      .map(each -> graph.steps().get(each.before()).what())
                      .toList())));
    }
    return new Table("stuck", "Steps no order reaches", columns, rows, List.of());
  }

  private static Table precedences(WorkGraph graph, Map<Integer, Integer> numbers) {
    List<Column> columns =
        List.of(
            Column.count("before", "Before"),
            Column.count("after", "After"),
            Column.text("reason", "Since"));
    List<List<Entry>> rows =
        graph.precedences().stream()
            .filter(each -> numbers.containsKey(each.before()))
            .filter(each -> numbers.containsKey(each.after()))
            .<List<Entry>>map(
                each ->
                    List.of(
                        new Entry.Count(numbers.get(each.before())),
                        new Entry.Count(numbers.get(each.after())),
                        Entry.text(each.reason())))
            .toList();
    return new Table("precedences", "What comes before what", columns, rows, List.of());
  }
}
