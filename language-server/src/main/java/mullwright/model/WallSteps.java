package mullwright.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import mullwright.syntax.StatementKind;

/**
 * Reads what a wall is made of step by step, each from its own statements and from what the steps
 * before came to. A step whose input has not changed since the last reading is not taken again.
 */
final class WallSteps {
  private static final StatementKind[] GRID = {
    StatementKind.LINES_STATEMENT,
    StatementKind.LINE,
    StatementKind.FACE,
    StatementKind.CORNER,
    StatementKind.JOINT,
    StatementKind.FLOOR,
    StatementKind.FLOORS,
    StatementKind.SLAB_STATEMENT,
    StatementKind.ROW,
    StatementKind.OPENING
  };

  private final WallText wall;
  private final Optional<Part.WallSystem> system;
  private final CatalogMerge catalog;
  private final Collector collector;
  private final ReadSteps steps;
  private Set<Role> lacking = Set.of();

  WallSteps(
      WallText wall,
      Optional<Part.WallSystem> system,
      CatalogMerge catalog,
      Collector collector,
      ReadSteps steps) {
    this.wall = wall;
    this.system = system;
    this.catalog = catalog;
    this.collector = collector;
    this.steps = steps;
  }

  /** What a step does, with the parts it may name and with where to tell what it meets. */
  private interface Reader<T> {
    T read(SystemParts parts, Collector collector);
  }

  GridNames grid() {
    List<Object> whole = new ArrayList<>();
    wall.all(StatementKind.GRID_BLOCK).forEach(block -> whole.add(block.strays()));
    whole.add(wall.strays());
    whole.add(wall.origin());
    return take(
        steps.grid,
        wall.all(GRID),
        List.of(),
        whole,
        (parts, problems) -> new GridReader(wall, problems).read());
  }

  Cells cells(GridNames names) {
    return take(steps.cells, List.of(), List.of(names), (parts, problems) -> new Cells(names));
  }

  List<Members.Vertical> verticals(GridNames names) {
    return take(
        steps.verticals,
        wall.all(StatementKind.VERTICAL),
        List.of(names),
        (parts, problems) ->
            List.copyOf(new VerticalReader(names, parts, problems).verticals(wall)));
  }

  List<Members.Horizontal> horizontals(GridNames names, Cells cells) {
    return take(
        steps.horizontals,
        wall.all(StatementKind.HORIZONTAL),
        List.of(names, cells),
        (parts, problems) -> new HorizontalReader(names, cells, parts, problems).read(wall));
  }

  /** On which rows something lies, by index. */
  BitSet covered(List<Members.Horizontal> horizontals) {
    return take(
        steps.covered,
        List.of(),
        List.of(horizontals),
        (parts, problems) -> {
          BitSet rows = new BitSet();
          if (horizontals instanceof Repeated<Members.Horizontal> repeated) {
            repeated.eachNumber(Members.Horizontal.ROW, rows::set);
          } else {
            horizontals.forEach(horizontal -> rows.set(horizontal.row()));
          }
          return rows;
        });
  }

  LineSpans spans(GridNames names, List<Members.Vertical> verticals) {
    return take(
        steps.spans,
        List.of(),
        List.of(names, verticals),
        (parts, problems) -> new LineSpans(names, verticals));
  }

  List<Members.Splice> splices(GridNames names, LineSpans spans, List<Members.Vertical> verticals) {
    return take(
        steps.splices,
        wall.all(StatementKind.SPLICE),
        List.of(names, spans, verticals),
        (parts, problems) -> new SpliceReader(names, parts, problems).read(wall, spans, verticals));
  }

  List<Members.Reinforce> reinforcements(GridNames names) {
    return take(
        steps.reinforcements,
        wall.all(StatementKind.REINFORCE),
        List.of(names),
        (parts, problems) ->
            List.copyOf(new VerticalReader(names, parts, problems).reinforcements(wall)));
  }

  List<Members.Bracket> brackets(GridNames names, LineSpans spans) {
    return take(
        steps.brackets,
        wall.all(StatementKind.BRACKET, StatementKind.END_DAM),
        List.of(names, spans),
        (parts, problems) -> {
          BracketReader reader = new BracketReader(names, parts, problems);
          List<Members.Bracket> brackets = List.copyOf(reader.read(wall, spans));
          reader.endDams(wall);
          return brackets;
        });
  }

  List<AnchorUse> anchors(GridNames names, LineSpans spans, List<Members.Splice> splices) {
    List<Said> statements =
        wall.all(StatementKind.DEAD_LOAD, StatementKind.WIND_LOAD, StatementKind.CLIP);
    boolean below = statements.stream().anyMatch(AnchorsReader::belowSplices);
    return take(
        steps.anchors,
        statements,
        below ? List.of(names, spans, splices) : List.of(names, spans),
        (parts, problems) -> new AnchorsReader(names, parts, spans, splices, problems).read(wall));
  }

  List<LiteUse> lites(GridNames names, Cells cells) {
    return take(
        steps.lites,
        wall.all(StatementKind.VISION, StatementKind.SPANDREL),
        List.of(names, cells),
        (parts, problems) -> new LitesReader(names, cells, parts, problems).read(wall));
  }

  private <T> T take(
      ReadStep<T> step, List<Said> statements, List<Object> earlier, Reader<T> reader) {
    return take(step, statements, earlier, List.of(), reader);
  }

  private <T> T take(
      ReadStep<T> step,
      List<Said> statements,
      List<Object> earlier,
      List<Object> values,
      Reader<T> reader) {
    List<Object> before = new ArrayList<>(Arrays.asList(catalog, system.orElse(null)));
    before.addAll(earlier);
    List<Object> all = new ArrayList<>(values);
    all.add(lacking);
    ReadStep.Input input = new ReadStep.Input(statements, before, all);
    ReadStep.Done<T> done = step.known(input);
    if (done == null) {
      Collector facts = new Collector();
      SystemParts parts = new SystemParts(system, catalog, facts, lacking);
      T result = reader.read(parts, facts);
      done = new ReadStep.Done<>(input, result, parts.missing(), facts);
      step.remember(done);
    }
    collector.addAll(done.facts());
    lacking = done.lacking();
    return done.result();
  }
}
