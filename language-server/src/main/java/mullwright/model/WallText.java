package mullwright.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.syntax.Clause;
import mullwright.syntax.ClauseWord;
import mullwright.syntax.Statement;
import mullwright.syntax.StatementKind;
import mullwright.syntax.Word;

/**
 * All that is said about one wall: the statements of the wall it is {@code like}, if any, and its
 * own over them, layer by layer.
 */
final class WallText {
  private final FileReading.Block block;
  private final List<Layer> layers;
  private final LetTable lets;

  private WallText(FileReading.Block block, List<Layer> layers, LetTable lets) {
    this.block = block;
    this.layers = layers;
    this.lets = lets;
  }

  /** One wall of a {@code like} chain, from the bottom. */
  static final class Layer {
    private final Library.Found found;
    private final boolean mirroredNext;
    private final List<Said> statements = new ArrayList<>();
    private Scope scope;

    private Layer(Library.Found found, boolean mirroredNext) {
      this.found = found;
      this.mirroredNext = mirroredNext;
    }

    /** True if the wall above takes this one mirrored. */
    boolean mirroredNext() {
      return mirroredNext;
    }

    /** An empty block of its property lines, to be filled. */
    Properties properties(PartSchema schema, Collector collector, Origin origin) {
      Properties.Reading reading =
          new Properties.Reading(found.wall().spot(), scope, collector, new ArrayList<>());
      return new Properties(schema, reading, origin);
    }

    /** Its statements of those kinds, in the order of the text. */
    List<Said> all(StatementKind... kinds) {
      List<StatementKind> asked = Arrays.asList(kinds);
      List<Said> of = new ArrayList<>();
      for (Said said : statements) {
        if (asked.contains(said.statement().kind())) {
          of.add(said);
        }
      }
      return of;
    }
  }

  /** Gathers the text of a wall; what is wrong with {@code like} is reported. */
  static WallText of(Library library, FileReading file, FileReading.Block wall, Collector c) {
    List<Layer> layers = layers(library, new Library.Found(file, wall), c);
    Map<String, Let> shared = new LinkedHashMap<>();
    Scope top = new Scope(shared, file.scope(), file.unit());
    LetTable lets = new LetTable(wall.name().text(), top, c);
    for (int i = 0; i < layers.size(); i++) {
      Layer layer = layers.get(i);
      FileReading home = layer.found.file();
      layer.scope = new Scope(shared, home.scope(), home.unit());
      boolean mirrored = false;
      for (int above = i; above < layers.size(); above++) {
        mirrored ^= layers.get(above).mirroredNext;
      }
      gather(layer, layer.found.wall().statement(), i, mirrored, lets);
    }
    lets.compute();
    return new WallText(wall, layers, lets);
  }

  private static void gather(
      Layer layer, Statement parent, int index, boolean mirrored, LetTable lets) {
    FileReading.Block wall = layer.found.wall();
    String name = wall.name().text();
    for (Statement statement : FileReader.inside(parent)) {
      switch (statement.kind()) {
        case LET -> lets.add(statement, wall.spot(), layer.scope, name);
        case GRID_BLOCK, MEMBERS_BLOCK, ANCHORS_BLOCK, LITES_BLOCK, INSTALLATION_BLOCK -> {
          layer.statements.add(
              new Said(statement, wall.spot(), layer.scope, name, index, mirrored));
          gather(layer, statement, index, mirrored, lets);
        }
        default ->
            layer.statements.add(
                new Said(statement, wall.spot(), layer.scope, name, index, mirrored));
      }
    }
  }

  private static List<Layer> layers(Library library, Library.Found top, Collector collector) {
    List<Layer> layers = new ArrayList<>();
    Map<Statement, Boolean> seen = new IdentityHashMap<>();
    List<String> names = new ArrayList<>();
    Library.Found at = top;
    boolean mirrored = false;
    while (at != null) {
      layers.add(0, new Layer(at, mirrored));
      seen.put(at.wall().statement(), true);
      names.add(at.wall().name().text());
      Statement statement = at.wall().statement();
      Spot spot = at.wall().spot();
      Optional<Word> like =
          statement
              .clause(ClauseWord.LIKE)
              .filter(Clause.Named.class::isInstance)
              .map(clause -> ((Clause.Named) clause).name());
      mirrored = statement.clause(ClauseWord.MIRRORED).isPresent();
      if (like.isEmpty()) {
        if (mirrored) {
          collector.misplaced(
              "the wall " + at.wall().name().text() + " is mirrored from nothing",
              "mirrored stands after like and a wall's name",
              at.wall().origin());
        }
        break;
      }
      Origin origin = spot.at(like.get());
      Optional<Library.Found> next = library.wall(like.get().text(), at.file());
      if (next.isEmpty()) {
        if (library.isComplete()) {
          collector.unknown("wall", like.get().text(), library.wallNames(), origin);
        }
        break;
      }
      collector.names(FileReader.wallSymbol(next.get().wall()), origin);
      if (seen.containsKey(next.get().wall().statement())) {
        names.subList(0, names.indexOf(like.get().text())).clear();
        collector.circular(names, origin);
        break;
      }
      if (layers.size() >= Limits.LIKE_DEPTH) {
        collector.problem(
            new ModelProblem.TooMany(
                "walls like one another", Limits.LIKE_DEPTH, layers.size(), origin));
        break;
      }
      at = next.get();
    }
    return layers;
  }

  String name() {
    return block.name().text();
  }

  Origin origin() {
    return block.origin();
  }

  /** True if it says that it is like another wall, whether there is one or not. */
  boolean isLike() {
    return block.statement().clause(ClauseWord.LIKE).isPresent();
  }

  /** True if all its words mean is told by its own statements and by what surrounds its file. */
  boolean standsAlone() {
    return !isLike() && scope().own().isEmpty();
  }

  /** True if something in the wall, or in one it is like, is no statement. */
  boolean strays() {
    return layers.stream()
        .map(layer -> layer.found.wall())
        .anyMatch(wall -> wall.spot().strays(wall.statement()));
  }

  /** From the bottom. */
  List<Layer> layers() {
    return layers;
  }

  /** What names mean in the wall's own statements. */
  Scope scope() {
    return layers.get(layers.size() - 1).scope;
  }

  /** The lets of the wall and of those it is like. */
  List<Symbol> lets() {
    return lets.symbols();
  }

  /** All statements of those kinds: lower layers first, in the order of the text. */
  List<Said> all(StatementKind... kinds) {
    List<Said> of = new ArrayList<>();
    for (Layer layer : layers) {
      of.addAll(layer.all(kinds));
    }
    return of;
  }
}
