package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.eclipse.lsp4j.CompletionItemKind;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DiagnosticTag;
import org.eclipse.lsp4j.DocumentSymbol;
import org.eclipse.lsp4j.DocumentSymbolParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.SymbolKind;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.WorkspaceSymbolParams;
import org.eclipse.lsp4j.services.TextDocumentService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A client is told nothing of a kind it has not said it knows (LSP 3.17, "If this property is not
 * present the client only supports the symbol kinds from `File` to `Array`"; the same of completion
 * items, `Text` to `Reference`, and of the tags of diagnostics).
 */
class KnownKindsTest {
  private static final String TEXT =
      """
      use "../catalog/small.wall"
      let gap = 5'-0"
      catalog {
        glass own {
          ply 1/4"
        }
      }
      wall East {
        system small
        grid {
          lines A..C spaced 2 @ 5'-0"
        }
      }
      """;

  @TempDir Path folder;

  @Test
  void kindsOfTheFirstProtocolWhereAClientNamesNone() {
    Told told = told("{}", "{}", "{}", "{}");
    assertThat(told.outline)
        .contains(SymbolKind.Class)
        .allMatch(kind -> kind.getValue() <= SymbolKind.Array.getValue());
    assertThat(told.names)
        .contains(SymbolKind.Class)
        .allMatch(kind -> kind.getValue() <= SymbolKind.Array.getValue());
    assertThat(told.offers)
        .contains(CompletionItemKind.Class)
        .allMatch(kind -> kind.getValue() <= CompletionItemKind.Reference.getValue());
    assertThat(told.tags).isEmpty();
  }

  @Test
  void kindsThatAClientNames() {
    String all = "{'valueSet':[1,2,3,4,5,6,7,8,9,10,11,12,13,14,15,16,17,18,19,20,21,22,23]}";
    Told told = told(all, all, all, "{'valueSet':[1,2]}");
    assertThat(told.outline).contains(SymbolKind.Struct);
    assertThat(told.names).contains(SymbolKind.Struct);
    assertThat(told.offers).contains(CompletionItemKind.Struct);
    assertThat(told.tags).containsOnly(DiagnosticTag.Unnecessary);
  }

  @Test
  void anOfferHasNoKindWhereAClientKnowsNoneNear() {
    Told told = told("{}", "{}", "{'valueSet':[1]}", "{'valueSet':[2]}");
    assertThat(told.offers).isEmpty();
    assertThat(told.tags).isEmpty();
  }

  private record Told(
      Set<SymbolKind> outline,
      Set<SymbolKind> names,
      Set<CompletionItemKind> offers,
      List<DiagnosticTag> tags) {}

  private Told told(String outline, String names, String offers, String tags) {
    JsonObject client =
        JsonParser.parseString(
                ("{'textDocument':{'documentSymbol':{'hierarchicalDocumentSymbolSupport':true,"
                        + "'symbolKind':%s},'completion':{'completionItemKind':%s},"
                        + "'publishDiagnostics':{'tagSupport':%s}},"
                        + "'workspace':{'symbol':{'symbolKind':%s}}}")
                    .formatted(outline, offers, tags, names))
            .getAsJsonObject();
    Conversation.write(folder, SmallCatalog.PATH, SmallCatalog.TEXT);
    String address = Conversation.address(folder.resolve("walls/east.wall"));
    TextDocumentIdentifier which = new TextDocumentIdentifier(address);
    try (Conversation talk =
        Conversation.greeted("kinds", folder, AbleClient.capabilities(client))) {
      talk.open(address, TEXT);
      TextDocumentService text = talk.server.getTextDocumentService();
      Set<SymbolKind> outlined = new TreeSet<>();
      await(text.documentSymbol(new DocumentSymbolParams(which)))
          .forEach(symbol -> gather(symbol.getRight(), outlined));
      Set<SymbolKind> named = new TreeSet<>();
      await(talk.server.getWorkspaceService().symbol(new WorkspaceSymbolParams("")))
          .getRight()
          .forEach(symbol -> named.add(symbol.getKind()));
      Set<CompletionItemKind> offered = new TreeSet<>();
      int line = WallTalk.lineOf(TEXT, "  system small");
      Position value = new Position(line, "  system ".length());
      await(text.completion(new CompletionParams(which, value)))
          .getRight()
          .getItems()
          .forEach(
              item -> {
                if (item.getKind() != null) {
                  offered.add(item.getKind());
                }
              });
      List<DiagnosticTag> tagged = new ArrayList<>();
      List<Diagnostic> found = talk.heard.next(address).getDiagnostics();
      assertThat(found).anyMatch(it -> it.getCode().getLeft().equals("unused"));
      found.stream().filter(it -> it.getTags() != null).forEach(it -> tagged.addAll(it.getTags()));
      return new Told(outlined, named, offered, tagged);
    }
  }

  private static void gather(DocumentSymbol symbol, Set<SymbolKind> kinds) {
    kinds.add(symbol.getKind());
    if (symbol.getChildren() != null) {
      symbol.getChildren().forEach(child -> gather(child, kinds));
    }
  }
}
