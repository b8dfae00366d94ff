package mullwright.server.completion;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import mullwright.model.Grid;
import mullwright.model.Model;
import mullwright.model.PartKind;
import mullwright.model.PartSchema;
import mullwright.model.Reference;
import mullwright.model.Symbol;
import mullwright.model.Wall;
import mullwright.server.Document;
import mullwright.server.hover.Page;
import mullwright.server.hover.Pages;
import mullwright.server.hover.Words;
import mullwright.syntax.ClauseWord;
import mullwright.syntax.StatementKind;
import mullwright.workspace.Reading;

/** The page of what an offer is about, as the text stands when somebody looks at it. */
public final class TopicPages {
  private final Document document;

  public TopicPages(Document document) {
    this.document = document;
  }

  /** The page; empty where there is nothing to tell, or no such thing any more. */
  public Optional<Page> of(Topic topic) {
    return switch (topic.kind()) {
      case "statement" -> statement(topic);
      case "clause" -> clause(topic);
      case "part-kind" -> PartKind.of(topic.name()).map(TopicPages::partKind);
      case "property" -> property(topic);
      case "unit" -> Pages.unit(document, topic.name(), topic.of());
      case "role" -> Optional.of(Pages.role(document, topic.name()));
      case "part" -> part(topic);
      default -> symbol(topic);
    };
  }

  private static Optional<Page> statement(Topic topic) {
    for (StatementKind kind : StatementKind.values()) {
      if (kind.spelling().equals(topic.name())) {
        return Optional.of(Words.page(kind));
      }
    }
    return Optional.empty();
  }

  private static Optional<Page> clause(Topic topic) {
    for (ClauseWord word : ClauseWord.values()) {
      if (word.spelling().equals(topic.name())) {
        return Optional.of(Words.page(word));
      }
    }
    return Optional.empty();
  }

  private static Page partKind(PartKind kind) {
    Page page = new Page(kind.spelling()).line("A part of the catalog. Its properties:");
    PartSchema.of(kind)
        .properties()
        .forEach(property -> page.fact(property.word(), property.meaning()));
    return page;
  }

  private static Optional<Page> property(Topic topic) {
    return schema(topic.of()).flatMap(schema -> schema.find(topic.name())).map(Words::page);
  }

  private static Optional<PartSchema> schema(String kind) {
    for (PartSchema schema :
        new PartSchema[] {
          PartSchema.criteria(), PartSchema.fabrication(), PartSchema.project(), PartSchema.wall()
        }) {
      if (schema.kind().equals(kind)) {
        return Optional.of(schema);
      }
    }
    return PartKind.of(kind).map(PartSchema::of);
  }

  private Optional<Model> model() {
    return document.snapshot().reading(document.path()).map(Reading::model);
  }

  private Optional<Page> part(Topic topic) {
    return PartKind.of(topic.of())
        .flatMap(kind -> model().flatMap(model -> model.catalog().find(kind, topic.name())))
        .flatMap(
            part ->
                Pages.ofSymbol(
                    document, new Symbol(Symbol.Kind.PART, "", part.name(), part.origin())));
  }

  private Optional<Page> symbol(Topic topic) {
    return ofGrid(topic).or(() -> named(topic)).flatMap(symbol -> Pages.ofSymbol(document, symbol));
  }

  /** What a pattern of the grid made has no place of its own that gives its name. */
  private Optional<Symbol> ofGrid(Topic topic) {
    Optional<Grid> grid =
        model()
            .flatMap(
                model ->
                    model.walls().stream()
                        .filter(wall -> wall.name().equals(topic.of()))
                        .findFirst())
            .map(Wall::grid);
    if (grid.isEmpty()) {
      return Optional.empty();
    }
    String name = topic.name();
    return switch (topic.kind()) {
      case "line" ->
          first(grid.get().lines(), it -> it.name().equals(name))
              .map(it -> new Symbol(Symbol.Kind.LINE, topic.of(), name, it.origin()));
      case "floor" ->
          first(grid.get().floors(), it -> it.name().equals(name))
              .map(it -> new Symbol(Symbol.Kind.FLOOR, topic.of(), name, it.origin()));
      case "row" ->
          first(grid.get().rows(), it -> it.name().equals(name) || it.base().equals(name))
              .map(it -> new Symbol(Symbol.Kind.ROW, topic.of(), name, it.origin()));
      default -> Optional.empty();
    };
  }

  private static <T> Optional<T> first(List<T> all, Predicate<T> wanted) {
    return all.stream().filter(wanted).findFirst();
  }

  private Optional<Symbol> named(Topic topic) {
    return model().map(Model::references).orElse(List.of()).stream()
        .filter(Reference::definition)
        .map(Reference::symbol)
        .filter(it -> it.kind().name().toLowerCase(Locale.ROOT).equals(topic.kind()))
        .filter(it -> it.name().equals(topic.name()) && it.scope().equals(topic.of()))
        .findFirst();
  }
}
