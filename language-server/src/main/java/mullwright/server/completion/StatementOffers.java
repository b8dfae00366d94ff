package mullwright.server.completion;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import mullwright.model.PartKind;
import mullwright.model.PartSchema;
import mullwright.server.hover.Numbers;
import mullwright.server.hover.Words;
import mullwright.syntax.Block;
import mullwright.syntax.BlockKind;
import mullwright.syntax.Statement;
import mullwright.syntax.StatementKind;
import mullwright.workspace.Cursor;
import org.eclipse.lsp4j.CompletionItemKind;

/** What a line may begin with: statements, parts of a catalog, properties. */
record StatementOffers(Cursor cursor, Names names, Set<Offer> offers) {
  /** What a file says once. */
  private static final Set<StatementKind> ONCE =
      EnumSet.of(StatementKind.UNITS, StatementKind.PROJECT_BLOCK);

  void gather() {
    Numbers numbers = Numbers.of(cursor.file());
    Snippets snippets = new Snippets(names, numbers);
    for (StatementKind kind : StatementKind.values()) {
      boolean stands = kind.standsIn().contains(cursor.block()) && !kind.spelling().isEmpty();
      if (stands && !(ONCE.contains(kind) && isInFile(kind))) {
        offers.add(
            Offer.of(
                    kind.spelling(),
                    CompletionItemKind.Keyword,
                    kind.meaning(),
                    new Topic("statement", "", kind.spelling()))
                .as(kind == StatementKind.USE ? used() : snippets.of(kind)));
      }
    }
    if (cursor.block() == BlockKind.CATALOG) {
      for (PartKind kind : PartKind.values()) {
        offers.add(
            Offer.of(
                    kind.spelling(),
                    CompletionItemKind.Keyword,
                    "a part of the catalog",
                    new Topic("part-kind", "", kind.spelling()))
                .as(kind.spelling() + " ${1:name} {\n\t$0\n}"));
      }
    }
    List<Statement> beside = beside();
    PropertySnippet stops = new PropertySnippet(names, snippets, numbers.first(), beside);
    Words.schema(cursor)
        .ifPresent(
            schema ->
                schema.properties().stream()
                    .filter(property -> property.repeats() || !isGiven(property, beside))
                    .forEach(
                        property ->
                            offers.add(
                                Offer.of(
                                        property.word(),
                                        CompletionItemKind.Property,
                                        property.pattern(),
                                        new Topic("property", schema.kind(), property.word()))
                                    .as(stops.of(property)))));
  }

  private String used() {
    List<String> paths = Paths.at(cursor).stream().map(Offer::text).toList();
    return new Stops().text("use \"").choice(paths, "path").text("\"").end().toString();
  }

  /** True if the file has such a statement besides, in its blocks or beside them. */
  private boolean isInFile(StatementKind kind) {
    for (int i = 0; i < cursor.file().segments().size(); i++) {
      for (Statement statement : cursor.file().segments().get(i).statements()) {
        List<Statement> all = new ArrayList<>(List.of(statement));
        statement.block().ifPresent(block -> all.addAll(block.statements()));
        boolean here = i == cursor.segment();
        if (all.stream().anyMatch(it -> it.kind() == kind && !(here && isAtCursor(it)))) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean isAtCursor(Statement statement) {
    return statement.keyword().range().touches(cursor.offset());
  }

  /** The other statements of the block, the one at the cursor left out. */
  private List<Statement> beside() {
    for (int i = cursor.enclosing().size() - 1; i >= 0; i--) {
      Optional<Block> block = cursor.enclosing().get(i).block();
      if (block.isPresent() && block.get().range().touches(cursor.offset())) {
        return block.get().statements().stream()
            .filter(statement -> !isAtCursor(statement))
            .toList();
      }
    }
    return List.of();
  }

  private static boolean isGiven(PartSchema.Property property, List<Statement> beside) {
    return beside.stream().anyMatch(it -> it.keyword().text().equals(property.word()));
  }
}
