package mullwright.model;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.quantity.Unit;
import mullwright.syntax.Argument;
import mullwright.syntax.Block;
import mullwright.syntax.ParsedFile;
import mullwright.syntax.Remark;
import mullwright.syntax.Segment;
import mullwright.syntax.Statement;
import mullwright.syntax.StatementKind;
import mullwright.syntax.Word;

/**
 * Reads what one file says by itself: units, lets, catalogs, project, and which walls there are.
 */
final class FileReader {
  private static final Map<String, Unit> UNITS = units();

  private final String path;
  private final ParsedFile file;
  private final Collector collector = new Collector();
  private final List<FileReading.Use> uses = new ArrayList<>();
  private final List<Symbol> letSymbols = new ArrayList<>();
  private final List<Mention> mentions = new ArrayList<>();
  private final List<FileReading.Block> projects = new ArrayList<>();
  private final Map<String, FileReading.Block> walls = new LinkedHashMap<>();
  private final List<Remarked> remarks = new ArrayList<>();
  private final List<FileReading.Block> catalogs = new ArrayList<>();
  private final List<Located> lets = new ArrayList<>();
  private Unit unit;
  private Origin unitOrigin;

  private FileReader(String path, ParsedFile file) {
    this.path = path;
    this.file = file;
  }

  /** A statement with its segment. */
  private record Located(Statement statement, Spot spot) {}

  static FileReading read(String path, ParsedFile file) {
    return new FileReader(path, file).read();
  }

  private FileReading read() {
    List<Segment> segments = file.segments();
    for (int i = 0; i < segments.size(); i++) {
      Spot spot = new Spot(path, i, segments.get(i));
      for (Statement statement : segments.get(i).statements()) {
        survey(statement, spot);
        top(statement, spot);
      }
    }
    Scope scope = Scope.of(unit);
    LetTable table = new LetTable("", scope, collector);
    lets.forEach(let -> table.add(let.statement(), let.spot()));
    table.compute();
    letSymbols.addAll(table.symbols());
    CatalogReader catalog = readCatalogs(scope);
    return new FileReading(
        path,
        file,
        uses,
        unit,
        scope,
        letSymbols,
        catalog.parts(),
        mentions,
        projects,
        walls,
        remarks,
        collector);
  }

  private void top(Statement statement, Spot spot) {
    switch (statement.kind()) {
      case USE ->
          uses.add(
              statement
                  .argument(Argument.Text.class)
                  .map(Argument.Text::string)
                  .map(text -> new FileReading.Use(text.text(), spot.at(text)))
                  .orElseGet(() -> new FileReading.Use("", spot.at(statement.range()))));
      case LET -> lets.add(new Located(statement, spot));
      case PROJECT_BLOCK -> project(statement, spot);
      case CATALOG_BLOCK -> catalogs.add(new FileReading.Block(statement, null, spot));
      case WALL_BLOCK -> wall(statement, spot);
      default -> {
        // units were surveyed, what is unknown was reported by the tree
      }
    }
  }

  private void project(Statement statement, Spot spot) {
    Optional<Word> name = statement.argument(Argument.Text.class).map(Argument.Text::string);
    if (name.isEmpty()) {
      return;
    }
    Origin origin = spot.at(name.get());
    if (!projects.isEmpty()) {
      collector.duplicate("project", name.get().text(), projects.get(0).origin(), origin);
    }
    collector.defines(new Symbol(Symbol.Kind.PROJECT, "", name.get().text(), origin), origin);
    projects.add(new FileReading.Block(statement, name.get(), spot));
    for (Statement inside : inside(statement)) {
      if (inside.kind() == StatementKind.LET) {
        lets.add(new Located(inside, spot));
      }
    }
  }

  private void wall(Statement statement, Spot spot) {
    Optional<Word> name = statement.argument(Argument.Name.class).map(Argument.Name::word);
    if (name.isEmpty()) {
      return;
    }
    FileReading.Block block = new FileReading.Block(statement, name.get(), spot);
    FileReading.Block before = walls.putIfAbsent(name.get().text(), block);
    if (before == null) {
      collector.defines(wallSymbol(block), block.origin());
    } else {
      collector.duplicate("wall", name.get().text(), before.origin(), block.origin());
    }
  }

  static Symbol wallSymbol(FileReading.Block wall) {
    return new Symbol(Symbol.Kind.WALL, "", wall.name().text(), wall.origin());
  }

  static List<Statement> inside(Statement statement) {
    return statement.block().map(Block::statements).orElse(List.of());
  }

  private CatalogReader readCatalogs(Scope file) {
    List<Scope> scopes = new ArrayList<>();
    for (FileReading.Block block : catalogs) {
      Scope scope = new Scope(new LinkedHashMap<>(), file, unit);
      LetTable table = new LetTable("", scope, collector);
      for (Statement statement : inside(block.statement())) {
        if (statement.kind() == StatementKind.LET) {
          table.add(statement, block.spot());
        }
      }
      table.compute();
      letSymbols.addAll(table.symbols());
      scopes.add(scope);
    }
    CatalogReader reader = new CatalogReader(collector, mentions);
    for (int i = 0; i < catalogs.size(); i++) {
      for (Statement statement : inside(catalogs.get(i).statement())) {
        if (statement.kind() == StatementKind.CATALOG_PART) {
          reader.read(statement, catalogs.get(i).spot(), scopes.get(i));
        }
      }
    }
    return reader;
  }

  /** Takes units and remarks from a statement and all inside it. */
  private void survey(Statement statement, Spot spot) {
    for (Remark remark : statement.remarks()) {
      remarks.add(
          new Remarked(
              remark.kind(),
              remark.text().text(),
              spot.at(remark.range()),
              spot.at(statement.range())));
    }
    if (statement.kind() == StatementKind.UNITS) {
      units(statement, spot);
    }
    for (Statement inside : inside(statement)) {
      survey(inside, spot);
    }
  }

  private void units(Statement statement, Spot spot) {
    Optional<Word> word = statement.argument(Argument.Name.class).map(Argument.Name::word);
    if (word.isEmpty()) {
      return;
    }
    Origin origin = spot.at(statement.range());
    if (unitOrigin != null) {
      collector.duplicate("units", word.get().text(), unitOrigin, origin);
      return;
    }
    unitOrigin = origin;
    unit = UNITS.get(word.get().text());
    if (unit == null) {
      collector.unknown("unit", word.get().text(), UNITS.keySet(), spot.at(word.get()));
    }
  }

  private static Map<String, Unit> units() {
    Map<String, Unit> units = new LinkedHashMap<>();
    units.put("inches", Unit.INCH);
    units.put("feet", Unit.FOOT);
    units.put("millimetres", Unit.MILLIMETRE);
    units.put("metres", Unit.METRE);
    units.put("mm", Unit.MILLIMETRE);
    units.put("m", Unit.METRE);
    return java.util.Collections.unmodifiableMap(units);
  }
}
