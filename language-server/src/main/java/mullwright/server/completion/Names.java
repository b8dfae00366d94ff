package mullwright.server.completion;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import mullwright.model.Grid;
import mullwright.model.Model;
import mullwright.model.Part;
import mullwright.model.PartKind;
import mullwright.model.Reference;
import mullwright.model.Role;
import mullwright.model.Symbol;
import mullwright.model.Wall;
import mullwright.quantity.Length;
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

  /** The wall the cursor is in, as far as it could be read. */
  Optional<Wall> wall() {
    return wall;
  }

  /** The lines of the wall. */
  List<Offer> lines() {
    return wall.map(in -> names(in, in.grid().lines(), Grid.Line::name, "line")).orElse(List.of());
  }

  /** The lines of the wall with a bay on either side. */
  List<Offer> linesBetween() {
    return wall.map(
            in ->
                names(
                    in,
                    in.grid().lines().stream().filter(line -> !line.end()).toList(),
                    Grid.Line::name,
                    "line"))
        .orElse(List.of());
  }

  /** The next free name of an opening. */
  String nextOpening() {
    List<String> openings =
        wall.map(in -> in.grid().openings().stream().map(Grid.Opening::name).toList())
            .orElse(List.of());
    return NextName.after(openings).orElse("D1");
  }

  /** Two of each fastener. */
  List<Offer> bolts() {
    return parts(List.of(PartKind.FASTENER)).stream()
        .map(bolt -> Offer.of("2 x " + bolt.text(), bolt.kind(), bolt.detail(), bolt.topic()))
        .toList();
  }

  /** The floors of the wall; outside of walls, those of all walls of the file. */
  List<Offer> floors() {
    List<Wall> all = wall.map(List::of).orElseGet(() -> model.map(Model::walls).orElse(List.of()));
    Map<String, Offer> floors = new LinkedHashMap<>();
    for (Wall in : all) {
      names(in, in.grid().floors(), Grid.Floor::name, "floor")
          .forEach(offer -> floors.putIfAbsent(offer.text(), offer));
    }
    return List.copyOf(floors.values());
  }

  /** The rows of the wall, each base name once and each row by its full name. */
  List<Offer> rows() {
    return wall.map(
            in -> {
              List<Offer> offers = names(in, in.grid().rows(), Grid.Row::base, "row");
              offers.addAll(names(in, in.grid().rows(), Grid.Row::name, "row"));
              return List.copyOf(new LinkedHashSet<>(offers));
            })
        .orElse(List.of());
  }

  /** The floors and rows that stand higher than the place of that name; all, if none has it. */
  List<Offer> above(String place) {
    List<Offer> all = new ArrayList<>(floors());
    all.addAll(rows());
    Optional<Length> from = elevation(place);
    if (from.isEmpty()) {
      return all;
    }
    all.removeIf(
        offer -> elevation(offer.text()).filter(y -> !y.isLongerThan(from.get())).isPresent());
    return all;
  }

  private Optional<Length> elevation(String name) {
    if (wall.isEmpty()) {
      return Optional.empty();
    }
    Grid grid = wall.get().grid();
    return grid.floors().stream()
        .filter(floor -> floor.name().equals(name))
        .map(floor -> floor.elevation().value())
        .findFirst()
        .or(
            () ->
                grid.rows().stream()
                    .filter(row -> row.name().equals(name) || row.base().equals(name))
                    .map(row -> row.left().elevation())
                    // of a name that stands for many rows the highest is within reach
                    .reduce((one, other) -> other));
  }

  private static <T> List<Offer> names(
      Wall in, List<T> things, Function<T, String> name, String what) {
    Set<String> once = new LinkedHashSet<>();
    things.forEach(thing -> once.add(name.apply(thing)));
    List<Offer> offers = new ArrayList<>();
    once.forEach(
        word ->
            offers.add(
                offer(word, CompletionItemKind.Variable, what, new Topic(what, in.name(), word))));
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
        String name = reference.symbol().name();
        offers.add(offer(name, as, what, new Topic(what, reference.symbol().scope(), name)));
      }
    }
    return List.copyOf(offers);
  }

  /** The parts of those kinds, of the file and of what it uses. */
  List<Offer> parts(Collection<PartKind> kinds) {
    return parts(kinds, part -> true);
  }

  /** Those of them that suit. */
  List<Offer> parts(Collection<PartKind> kinds, Predicate<Part> suits) {
    List<Offer> offers = new ArrayList<>();
    for (PartKind kind : kinds) {
      for (Part part : model.map(all -> all.catalog().all(kind)).orElse(List.of())) {
        if (suits.test(part)) {
          offers.add(
              offer(
                  part.name(),
                  CompletionItemKind.Struct,
                  detail(part),
                  new Topic("part", kind.spelling(), part.name())));
        }
      }
    }
    return offers;
  }

  /** The anchors that may hold what the statement says: dead load or wind load. */
  List<Offer> anchors(StatementKind statement) {
    return parts(
        List.of(PartKind.ANCHOR),
        part ->
            !(part instanceof Part.Anchor anchor)
                || anchor.use().filter(use -> !use.value().equals(statement.spelling())).isEmpty());
  }

  /** The glass that can be seen through, or cannot, first; then the other. */
  List<Offer> glass(boolean vision) {
    Predicate<Part> opaque = part -> part instanceof Part.Glass glass && glass.opacified().value();
    List<Offer> offers =
        new ArrayList<>(parts(List.of(PartKind.GLASS), vision ? opaque.negate() : opaque));
    offers.addAll(parts(List.of(PartKind.GLASS), vision ? opaque : opaque.negate()));
    return offers;
  }

  /** The profiles that stand, or those that lie. */
  List<Offer> profiles(boolean standing) {
    return parts(
        List.of(PartKind.PROFILE),
        part ->
            part instanceof Part.Profile profile && profile.role().value().vertical() == standing);
  }

  /** The profiles made for that role first, then the others. */
  List<Offer> profilesFor(Role role) {
    Predicate<Part> made =
        part -> part instanceof Part.Profile profile && profile.role().value() == role;
    List<Offer> offers = new ArrayList<>(parts(List.of(PartKind.PROFILE), made));
    offers.addAll(parts(List.of(PartKind.PROFILE), made.negate()));
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

  private static Offer offer(String name, CompletionItemKind kind, String what, Topic topic) {
    String written = isPlain(name) ? name : '"' + name + '"';
    return Offer.of(written, kind, what.toLowerCase(Locale.ROOT), topic);
  }

  /** Whether a name may stand without quotes. */
  static boolean isPlain(String name) {
    return name.matches("[\\p{L}\\p{Nd}_]+([.-]?[\\p{L}\\p{Nd}_]+)*");
  }
}
