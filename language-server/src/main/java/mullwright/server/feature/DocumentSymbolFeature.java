package mullwright.server.feature;

import com.google.auto.service.AutoService;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.server.Client;
import mullwright.server.Desk;
import mullwright.server.Document;
import mullwright.server.Feature;
import mullwright.server.Route;
import mullwright.syntax.Argument;
import mullwright.syntax.Segment;
import mullwright.syntax.Statement;
import mullwright.syntax.StatementKind;
import mullwright.syntax.TextRange;
import mullwright.workspace.Cancel;
import org.eclipse.lsp4j.DocumentSymbol;
import org.eclipse.lsp4j.DocumentSymbolParams;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.SymbolInformation;
import org.eclipse.lsp4j.SymbolKind;

/**
 * The outline of a file: projects, catalogs with their parts, walls with their blocks and
 * statements.
 *
 * <p>Answers {@code textDocument/documentSymbol} (LSP 3.17). Heeds {@code
 * textDocument.documentSymbol.hierarchicalDocumentSymbolSupport}: without it the outline is flat;
 * and {@code textDocument.documentSymbol.symbolKind}. Read from the tree alone, so broken text has
 * an outline too.
 */
@AutoService(Feature.class)
public final class DocumentSymbolFeature implements Feature {
  @Override
  public List<Route<?>> routes() {
    return List.of(
        Route.ofDocument(
            "textDocument/documentSymbol",
            DocumentSymbolParams.class,
            DocumentSymbolParams::getTextDocument,
            (parameters, document, desk) ->
                desk.client().can("textDocument.documentSymbol.hierarchicalDocumentSymbolSupport")
                    ? outline(document, kinds(desk), desk.cancel())
                    : flat(document, kinds(desk), desk.cancel())));
  }

  @Override
  public void advertise(Client client, JsonObject server) {
    server.addProperty("documentSymbolProvider", true);
  }

  private static KnownKinds kinds(Desk desk) {
    return KnownKinds.of(desk.client(), "textDocument.documentSymbol.symbolKind.valueSet");
  }

  static List<DocumentSymbol> outline(Document document, KnownKinds kinds, Cancel cancel) {
    List<DocumentSymbol> symbols = new ArrayList<>();
    List<Segment> segments = document.file().segments();
    for (int i = 0; i < segments.size(); i++) {
      cancel.check();
      symbols.addAll(symbols(document, i, segments.get(i).statements(), kinds));
    }
    return symbols;
  }

  private static List<DocumentSymbol> symbols(
      Document document, int segment, List<Statement> statements, KnownKinds kinds) {
    List<DocumentSymbol> symbols = new ArrayList<>();
    for (Statement statement : statements) {
      if (statement.kind() == StatementKind.UNKNOWN) {
        continue;
      }
      Range whole = document.range(segment, statement.range());
      Range shown = document.range(segment, shown(statement));
      DocumentSymbol symbol =
          new DocumentSymbol(
              name(document, segment, statement),
              kinds.symbol(kind(statement)),
              whole,
              shown,
              detail(statement));
      statement
          .block()
          .ifPresent(
              block -> symbol.setChildren(symbols(document, segment, block.statements(), kinds)));
      symbols.add(symbol);
    }
    return symbols;
  }

  private static List<SymbolInformation> flat(Document document, KnownKinds kinds, Cancel cancel) {
    List<SymbolInformation> flat = new ArrayList<>();
    flatten(document, outline(document, kinds, cancel), null, flat);
    return flat;
  }

  @SuppressWarnings("deprecation") // the only form a client without a tree can take
  private static void flatten(
      Document document,
      List<DocumentSymbol> symbols,
      String container,
      List<SymbolInformation> flat) {
    for (DocumentSymbol symbol : symbols) {
      flat.add(
          new SymbolInformation(
              symbol.getName(),
              symbol.getKind(),
              new Location(document.address(), symbol.getRange()),
              container));
      if (symbol.getChildren() != null) {
        flatten(document, symbol.getChildren(), symbol.getName(), flat);
      }
    }
  }

  /** The first argument, which names most things; else the keyword. */
  private static TextRange shown(Statement statement) {
    return statement.arguments().isEmpty()
        ? statement.keyword().range()
        : statement.arguments().get(0).range();
  }

  private static String name(Document document, int segment, Statement statement) {
    String keyword = statement.keyword().text();
    Optional<Argument> first = statement.arguments().stream().findFirst();
    if (first.isEmpty()) {
      return keyword;
    }
    Argument last = statement.arguments().get(statement.arguments().size() - 1);
    TextRange range = first.get().range().to(last.range());
    String text = document.file().segments().get(segment).text();
    String arguments =
        text.substring(range.start(), Math.min(range.end(), text.length()))
            .replaceAll("\\s+", " ")
            .strip();
    boolean namesItself =
        statement.kind().opens().isPresent()
            && first.get() instanceof Argument.Name
            && statement.arguments().size() == 1;
    return namesItself ? arguments : (keyword + " " + arguments).strip();
  }

  private static String detail(Statement statement) {
    return statement.kind() == StatementKind.CATALOG_PART
        ? statement.keyword().text()
        : statement.kind().meaning();
  }

  private static SymbolKind kind(Statement statement) {
    return switch (statement.kind()) {
      case PROJECT_BLOCK -> SymbolKind.Module;
      case CATALOG_BLOCK -> SymbolKind.Package;
      case WALL_BLOCK -> SymbolKind.Class;
      case CATALOG_PART -> SymbolKind.Struct;
      case USE -> SymbolKind.File;
      case LET -> SymbolKind.Constant;
      case UNITS, PROPERTY -> SymbolKind.Property;
      case GRID_BLOCK,
          MEMBERS_BLOCK,
          ANCHORS_BLOCK,
          LITES_BLOCK,
          CRITERIA_BLOCK,
          FABRICATION_BLOCK,
          INSTALLATION_BLOCK ->
          SymbolKind.Namespace;
      default -> SymbolKind.Field;
    };
  }
}
