package mullwright.server.hover;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import mullwright.layout.PieceRef;
import mullwright.model.Origin;
import mullwright.model.Reference;
import mullwright.model.Role;
import mullwright.model.Symbol;
import mullwright.model.Wall;
import mullwright.quantity.Kind;
import mullwright.quantity.Unit;
import mullwright.server.Document;
import mullwright.syntax.Argument;
import mullwright.syntax.ClauseWord;
import mullwright.syntax.Expression;
import mullwright.syntax.Statement;
import mullwright.syntax.StatementKind;
import mullwright.syntax.TextRange;
import mullwright.workspace.Cursor;
import mullwright.workspace.Leaf;
import mullwright.workspace.Reading;
import mullwright.workspace.UsedFile;
import mullwright.workspace.WallDetails;

/** Finds the page of whatever is under an offset. */
public final class Pages {
  private final Document document;
  private final Cursor cursor;
  private final Numbers numbers;

  private Pages(Document document, Cursor cursor) {
    this.document = document;
    this.cursor = cursor;
    this.numbers = Numbers.of(document.file());
  }

  /**
   * A page and what it is of.
   *
   * @param range the word or value, counted from the start of the file
   */
  public record Shown(TextRange range, Page page) {}

  /** The page of what is under the offset, empty if nothing there has one. */
  public static Optional<Shown> at(Document document, int offset) {
    Cursor cursor = document.cursor(offset);
    Pages pages = new Pages(document, cursor);
    return cursor
        .leaf()
        .flatMap(
            leaf ->
                pages
                    .page(leaf)
                    .map(
                        page ->
                            new Shown(
                                document.file().absolute(cursor.segment(), leaf.range()), page)))
        .or(() -> TokenPages.at(cursor, pages::around));
  }

  /** The page of a named thing, as a file sees it. */
  public static Optional<Page> ofSymbol(Document document, Symbol symbol) {
    return top(document).symbol(symbol);
  }

  /** The page of a role: which profile plays it in each wall of a file. */
  public static Page role(Document document, String role) {
    return top(document).rolePage(role);
  }

  /** The page of a unit: one of it in both systems; empty if there is no such unit of that kind. */
  public static Optional<Page> unit(Document document, String spelling, String kind) {
    for (Kind known : Kind.values()) {
      if (known.name().equals(kind)) {
        return TokenPages.unit(Numbers.of(document.file()), Unit.named(spelling, known));
      }
    }
    return Optional.empty();
  }

  private static Pages top(Document document) {
    return new Pages(document, document.cursor(0));
  }

  private Optional<Page> page(Leaf leaf) {
    if (leaf instanceof Leaf.Keyword keyword) {
      return named().or(() -> statement(keyword.statement()));
    }
    if (leaf instanceof Leaf.ClauseHead head) {
      return Optional.of(clause(head.clause().word()));
    }
    if (leaf instanceof Leaf.Name name) {
      return named().or(() -> role(name)).or(this::around);
    }
    if (leaf instanceof Leaf.Value value) {
      return literal(value.literal());
    }
    if (leaf instanceof Leaf.Count count) {
      return Optional.of(new Page(count.literal().number()).line("A count."));
    }
    if (leaf instanceof Leaf.Text text) {
      return text(text);
    }
    Leaf.Remarked remarked = (Leaf.Remarked) leaf;
    return Optional.of(
        new Page(remarked.remark().kind().name().toLowerCase(Locale.ROOT))
            .line(
                switch (remarked.remark().kind()) {
                  case NOTE -> "Drawn on the sheet.";
                  case VERIFY -> "A dimension to be taken in the field; blocks a release.";
                  case HOLD -> "Not to be released.";
                }));
  }

  /** A role names the profile that plays it in the wall's system. */
  private Optional<Page> role(Leaf.Name name) {
    boolean as = cursor.clause().filter(clause -> clause.word() == ClauseWord.AS).isPresent();
    for (Role role : Role.values()) {
      if (as && role.spelling().equals(name.word().text())) {
        return Optional.of(rolePage(role.spelling()));
      }
    }
    return Optional.empty();
  }

  private Page rolePage(String word) {
    Page page = new Page("role " + word);
    for (Role role : Role.values()) {
      for (Wall wall : reading().map(it -> it.model().walls()).orElse(List.of())) {
        wall.system()
            .map(system -> system.profiles().get(role))
            .filter(profile -> role.spelling().equals(word))
            .ifPresent(profile -> page.fact("in wall " + wall.name(), profile.value()));
      }
    }
    return page;
  }

  /** A word that stands for nothing by itself: what it is a part of. */
  private Optional<Page> around() {
    return cursor
        .clause()
        .filter(clause -> clause.word() != ClauseWord.LOADS)
        .map(clause -> clause(clause.word()))
        .or(() -> cursor.statement().flatMap(this::statement));
  }

  /** What the names under the cursor stand for. */
  private Optional<Page> named() {
    Page all = null;
    for (Reference reference : cursor.references()) {
      Optional<Page> page = symbol(reference.symbol());
      if (page.isPresent()) {
        all = all == null ? page.get() : all.and(page.get());
      }
    }
    return Optional.ofNullable(all);
  }

  private Optional<Page> symbol(Symbol symbol) {
    Optional<Page> page =
        switch (symbol.kind()) {
          case PART, LET, PROJECT -> definition(symbol);
          default ->
              reading()
                  .flatMap(reading -> new SymbolPages(reading, numbers).page(symbol, wallAround()));
        };
    return page.or(() -> Optional.of(bare(symbol)));
  }

  /** The name of the wall the cursor is in. */
  private Optional<String> wallAround() {
    return cursor.enclosing().stream()
        .filter(statement -> statement.kind() == StatementKind.WALL_BLOCK)
        .findFirst()
        .flatMap(wall -> wall.argument(Argument.Name.class))
        .map(name -> name.word().text());
  }

  private Optional<Reading> reading() {
    return document.snapshot().reading(document.path());
  }

  private static Page bare(Symbol symbol) {
    return new Page(symbol.kind().name().toLowerCase(Locale.ROOT) + " " + symbol.name());
  }

  /** The page of something told in one statement, which may stand in another file. */
  private Optional<Page> definition(Symbol symbol) {
    Origin at = symbol.definition();
    Optional<Document> home = document.view().document(at.file());
    if (home.isEmpty() || at.segment() >= home.get().file().segments().size()) {
      return Optional.empty();
    }
    int offset = home.get().file().segmentStart(at.segment()) + at.range().start();
    PartPages parts = new PartPages(home.get(), at.segment());
    return document
        .snapshot()
        .cursor(at.file(), offset)
        .flatMap(Cursor::statement)
        .map(
            statement -> {
              if (symbol.kind() == Symbol.Kind.PART) {
                Page page = parts.page(statement, reading().orElseThrow().model().catalog());
                return at.file().equals(document.path())
                    ? page
                    : page.line("In " + at.file() + ".");
              }
              Page page = bare(symbol);
              statement.documentation().ifPresent(page::line);
              if (symbol.kind() == Symbol.Kind.LET) {
                page.fact("value", parts.value(statement));
              }
              return page;
            });
  }

  private Optional<Page> statement(Statement statement) {
    Page page = new Page(statement.keyword().text());
    if (statement.kind() == StatementKind.UNKNOWN) {
      return Optional.empty();
    }
    if (statement.kind() == StatementKind.PROPERTY) {
      return Words.property(cursor, statement).or(() -> Optional.of(page.line("A property.")));
    }
    if (statement.kind() == StatementKind.CATALOG_PART) {
      return Optional.of(
          new PartPages(document, cursor.segment())
              .page(statement, reading().orElseThrow().model().catalog()));
    }
    page.line(Words.sentence(statement.kind().meaning()));
    page.fact("written", Forms.line(statement.kind()));
    statement.documentation().ifPresent(page::line);
    if (statement.block().isEmpty()) {
      pieces(statement, page);
    }
    return Optional.of(page);
  }

  private void pieces(Statement statement, Page page) {
    Origin origin = new Origin(document.path(), cursor.segment(), statement.range());
    for (WallDetails wall : reading().map(Reading::details).orElse(List.of())) {
      List<PieceRef> pieces = new ArrayList<>(wall.index().madeBy(origin));
      if (!pieces.isEmpty()) {
        new Pieces(wall, numbers).tell(pieces, page);
        FrameFacts.tell(pieces, reading().orElseThrow(), wall.layout(), numbers, page);
        Glazing.tell(pieces, reading().orElseThrow(), wall.layout(), numbers, page);
      }
    }
    reading().ifPresent(reading -> new SymbolPages(reading, numbers).made(origin, page));
  }

  private Page clause(ClauseWord word) {
    Page page = Words.page(word);
    cursor
        .statement()
        .filter(statement -> statement.kind().clauses().contains(word))
        .ifPresent(statement -> page.fact("written", Forms.of(statement.kind(), word)));
    return page;
  }

  private Optional<Page> literal(Expression.Literal literal) {
    String unit = literal.unit() == null ? "" : literal.unit().text();
    return numbers
        .literal(literal.number(), unit)
        .or(() -> Optional.of("A number."))
        .map(value -> new Page(literal.number() + (unit.isEmpty() ? "" : " " + unit)).line(value));
  }

  private Optional<Page> text(Leaf.Text text) {
    boolean use = cursor.statement().filter(s -> s.kind() == StatementKind.USE).isPresent();
    if (!use) {
      return named().or(this::around);
    }
    Optional<String> path = UsedFile.resolve(document.path(), text.string().text());
    return path.flatMap(used -> document.snapshot().reading(used))
        .map(
            reading -> {
              Page page = new Page(reading.path());
              int parts = 0;
              for (var kind : mullwright.model.PartKind.values()) {
                parts += reading.model().catalog().all(kind).size();
              }
              page.fact("parts", String.valueOf(parts));
              reading.model().walls().forEach(wall -> page.fact("wall", wall.name()));
              return page;
            })
        .or(
            () ->
                Optional.of(
                    new Page(text.string().text())
                        .line("There is no such file below the root of the workspace.")));
  }
}
