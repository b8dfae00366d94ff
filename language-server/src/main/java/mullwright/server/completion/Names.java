package mullwright.server.completion;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import mullwright.model.Grid;
import mullwright.model.Model;
import mullwright.model.Part;
import mullwright.model.PartKind;
import mullwright.model.Reference;
import mullwright.model.Symbol;
import mullwright.model.Wall;
import mullwright.syntax.Argument;
import mullwright.syntax.Statement;
import mullwright.syntax.StatementKind;
import mullwright.workspace.Cursor;
import mullwright.workspace.Reading;
import org.eclipse.lsp4j.CompletionItemKind;

/** The names that exist where the cursor is: of lines, floors, rows, walls, values, parts. */
final class Names {
  private final Optional<Model> model;
  private final Optional<Wall> wall;

  Names(Cursor cursor) {
    this.model = cursor.snapshot().reading(cursor.path()).map(Reading::model);
    Optional<String> name =
        cursor.enclosing().stream()
            .filter(statement -> statement.kind() == StatementKind.WALL_BLOCK)
            .findFirst()
            .flatMap(Names::name);
    this.wall =
        model.flatMap(
            all ->
                all.walls().stream()
                    .filter(candidate -> name.filter(candidate.name()::equals).isPresent())
                    .findFirst());
  }

  private static Optional<String> name(Statement wall) {
    return wall.argument(Argument.Name.class).map(argument -> argument.word().text());
  }

  /** The lines of the wall. */
  List<Offer> lines() {
    return wall.map(in -> names(in.grid().lines(), Grid.Line::name, "line")).orElse(List.of());
  }

  /** The floors of the wall. */
  List<Offer> floors() {
    return wall.map(in -> names(in.grid().floors(), Grid.Floor::name, "floor")).orElse(List.of());
  }

  /** The rows of the wall, each base name once and each row by its full name. */
  List<Offer> rows() {
    return wall.map(
            in -> {
              List<Offer> offers = names(in.grid().rows(), Grid.Row::base, "row");
              offers.addAll(names(in.grid().rows(), Grid.Row::name, "row"));
              return List.copyOf(new LinkedHashSet<>(offers));
            })
        .orElse(List.of());
  }

  private static <T> List<Offer> names(
      List<T> things, java.util.function.Function<T, String> name, String what) {
    Set<String> once = new LinkedHashSet<>();
    things.forEach(thing -> once.add(name.apply(thing)));
    List<Offer> offers = new ArrayList<>();
    once.forEach(word -> offers.add(offer(word, CompletionItemKind.Variable, what)));
    return offers;
  }

  /** The values that {@code let} gave a name. */
  List<Offer> lets() {
    return definitions(Symbol.Kind.LET, CompletionItemKind.Constant, "let");
  }

  /** The walls of the file. */
  List<Offer> walls() {
    return definitions(Symbol.Kind.WALL, CompletionItemKind.Class, "wall");
  }

  private List<Offer> definitions(Symbol.Kind kind, CompletionItemKind as, String what) {
    Set<Offer> offers = new LinkedHashSet<>();
    for (Reference reference : model.map(Model::references).orElse(List.of())) {
      if (reference.definition() && reference.symbol().kind() == kind) {
        offers.add(offer(reference.symbol().name(), as, what));
      }
    }
    return List.copyOf(offers);
  }

  /** The parts of those kinds, of the file and of what it uses. */
  List<Offer> parts(Collection<PartKind> kinds) {
    List<Offer> offers = new ArrayList<>();
    for (PartKind kind : kinds) {
      for (Part part : model.map(all -> all.catalog().all(kind)).orElse(List.of())) {
        offers.add(offer(part.name(), CompletionItemKind.Struct, detail(part)));
      }
    }
    return offers;
  }

  private static String detail(Part part) {
    String kind = part.kind().spelling();
    return part instanceof Part.Profile profile
        ? kind + ", " + profile.role().value().spelling()
        : part instanceof Part.Anchor anchor && anchor.use().isPresent()
            ? kind + ", " + anchor.use().get().value()
            : kind;
  }

  private static Offer offer(String name, CompletionItemKind kind, String what) {
    String written = isPlain(name) ? name : '"' + name + '"';
    return Offer.of(written, kind, what.toLowerCase(Locale.ROOT));
  }

  /** Whether a name may stand without quotes. */
  static boolean isPlain(String name) {
    return name.matches("[\\p{L}\\p{Nd}_]+([.-]?[\\p{L}\\p{Nd}_]+)*");
  }
}
