package mullwright.model;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.syntax.StatementKind;

/** Resolves one wall: grid first, then what it is made of. */
final class WallReader {
  private final WallText wall;
  private final CatalogMerge catalog;
  private final ProjectCriteria project;
  private final Collector collector;
  private final ReadSteps steps;
  private final List<ModelProblem> unfound = new ArrayList<>();

  /**
   * @param steps what is remembered of the last time it was read
   */
  WallReader(
      WallText wall,
      CatalogMerge catalog,
      ProjectCriteria project,
      Collector collector,
      ReadSteps steps) {
    this.wall = wall;
    this.catalog = catalog;
    this.project = project;
    this.collector = collector;
    this.steps = steps;
  }

  Wall read() {
    List<Properties> lines = properties();
    Optional<Part.WallSystem> system = system(lines);
    WallSteps read = new WallSteps(wall, system, catalog, collector, steps);
    GridNames names = read.grid();
    Cells cells = read.cells(names);
    List<Members.Vertical> verticals = read.verticals(names);
    List<Members.Horizontal> horizontals = read.horizontals(names, cells);
    LineSpans spans = read.spans(names, verticals);
    List<Members.Splice> splices = read.splices(names, spans, verticals);
    Members members =
        new Members(
            verticals,
            horizontals,
            splices,
            read.reinforcements(names),
            read.brackets(names, spans));
    checkCovered(names, members, read.covered(horizontals));
    List<AnchorUse> anchors = read.anchors(names, spans, splices);
    List<LiteUse> lites = read.lites(names, cells);
    return new Wall(
        wall.name(),
        wall.origin(),
        system,
        finish(lines),
        project.criteria(wall, names, collector, unfound),
        project.fabrication(wall, collector),
        names.grid(),
        members,
        anchors,
        lites,
        new InstallationReader(names, collector).read(wall));
  }

  /** What is wrong, for this wall, with places the projects name. */
  List<ModelProblem> unfound() {
    return unfound;
  }

  /** The wall's own property lines, a block a layer. */
  private List<Properties> properties() {
    List<Properties> lines = new ArrayList<>();
    for (WallText.Layer layer : wall.layers()) {
      Properties of = layer.properties(PartSchema.wall(), collector, wall.origin());
      layer.all(StatementKind.PROPERTY).forEach(said -> of.read(said.statement(), of.reading()));
      lines.add(of);
    }
    return lines;
  }

  private Optional<Part.WallSystem> system(List<Properties> lines) {
    for (int i = lines.size() - 1; i >= 0; i--) {
      Optional<Given<String>> name = lines.get(i).word("system");
      if (name.isPresent()) {
        Mention mention =
            new Mention(List.of(PartKind.SYSTEM), name.get().value(), name.get().origin());
        return catalog.find(mention, collector).map(Part.WallSystem.class::cast);
      }
      if (lines.get(i).has("system")) {
        return Optional.empty();
      }
    }
    boolean made = !wall.all(StatementKind.VERTICAL, StatementKind.HORIZONTAL).isEmpty();
    if (made && lines.stream().noneMatch(of -> of.has("system"))) {
      collector.missing("wall " + wall.name(), "its system", "system some-system", wall.origin());
    }
    return Optional.empty();
  }

  private Map<String, Given<String>> finish(List<Properties> lines) {
    Map<String, Given<String>> finish = new LinkedHashMap<>();
    for (Properties of : lines) {
      List<Phrase> phrases = of.phrases("finish");
      if (phrases.stream().anyMatch(phrase -> phrase.word(1).isEmpty())) {
        // of all sides: what another wall says of one of them holds no more
        finish.clear();
      }
      for (Phrase phrase : phrases) {
        Given<String> name = phrase.word(0).orElseThrow();
        finish.put(phrase.word(1).map(Given::value).orElse(""), name);
        catalog
            .catalog()
            .find(PartKind.FINISH, name.value())
            .ifPresent(
                part ->
                    collector.names(
                        CatalogReader.symbol(part.name(), part.origin()), name.origin()));
      }
    }
    return finish;
  }

  /** Reports lines and rows that no statement of the members says anything of. */
  private void checkCovered(GridNames names, Members members, BitSet rows) {
    List<Said> blocks = wall.all(StatementKind.MEMBERS_BLOCK);
    if (blocks.isEmpty()
        || blocks.stream().anyMatch(Said::broken)
        || blocks.stream().anyMatch(this::namesWhatIsNotThere)) {
      return;
    }
    Said block = blocks.get(blocks.size() - 1);
    Origin origin = block.spot().at(block.statement().keyword());
    BitSet lines = new BitSet();
    members.verticals().forEach(vertical -> lines.set(vertical.line()));
    List<String> bare = new ArrayList<>();
    for (Grid.Line line : names.grid().lines()) {
      if (!lines.get(line.index())) {
        bare.add(line.name());
      }
    }
    if (names.lines().isComplete()) {
      report("line", bare, "vertical", "mullion", origin);
    }
    bare.clear();
    for (Grid.Row row : names.grid().rows()) {
      if (!rows.get(row.index()) && stands(names, row)) {
        bare.add(row.name());
      }
    }
    if (names.rows().isComplete()) {
      report("row", bare, "horizontal", "", origin);
    }
  }

  /** True if a line of a block names something that nothing has: it may be what lacks. */
  private boolean namesWhatIsNotThere(Said block) {
    Origin whole = block.spot().at(block.statement().range());
    return collector.problems().stream()
        .filter(ModelProblem.UnknownName.class::isInstance)
        .map(ModelProblem::origin)
        .anyMatch(
            at ->
                at.file().equals(whole.file())
                    && at.segment() == whole.segment()
                    && whole.range().start() <= at.range().start()
                    && at.range().end() <= whole.range().end());
  }

  /** False for a row whose every bay lies inside an opening there. */
  private static boolean stands(GridNames names, Grid.Row row) {
    for (int bay : row.bays()) {
      boolean inside = false;
      for (Grid.Opening opening : names.grid().openings()) {
        inside |=
            opening.bays().contains(bay)
                && row.left().elevation().isLongerThan(opening.bottom().elevation())
                && row.left().elevation().isShorterThan(opening.top().elevation());
      }
      if (!inside) {
        return true;
      }
    }
    return false;
  }

  private void report(String what, List<String> bare, String keyword, String role, Origin origin) {
    if (bare.isEmpty()) {
      return;
    }
    List<String> shown = bare.subList(0, Math.min(8, bare.size()));
    String more =
        bare.size() > shown.size() ? " and " + (bare.size() - shown.size()) + " more" : "";
    String where = (bare.size() == 1 ? what + " " : what + "s ") + String.join(", ", shown) + more;
    String one = keyword + " " + bare.get(0) + (role.isEmpty() ? "" : " as " + role);
    // of several each takes the role of its place; what is said of some already is narrower
    String several = keyword + " " + (more.isEmpty() ? String.join(", ", shown) : "all");
    String offer = bare.size() == 1 ? one : several;
    collector.missing("members, for " + where + ",", "what is there", offer, origin);
  }
}
