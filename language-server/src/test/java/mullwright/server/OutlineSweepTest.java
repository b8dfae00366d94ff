package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.lsp4j.DocumentLink;
import org.eclipse.lsp4j.DocumentLinkParams;
import org.eclipse.lsp4j.DocumentSymbol;
import org.eclipse.lsp4j.DocumentSymbolParams;
import org.eclipse.lsp4j.FoldingRange;
import org.eclipse.lsp4j.FoldingRangeRequestParams;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is told of the files of the examples as a whole. */
class OutlineSweepTest extends Sweep {
  @ParameterizedTest
  @ValueSource(strings = {LIBRARY, TOWER, FERRY, "catalog/captured.wall"})
  void whatIsToldOfTheWholeFileIsInOrder(String wall) {
    String address = open(wall);
    String text = texts.get(address);
    TextDocumentIdentifier which = new TextDocumentIdentifier(address);
    List<DocumentLink> links =
        await(talk.server.getTextDocumentService().documentLink(new DocumentLinkParams(which)));
    for (DocumentLink link : links) {
      if (!Files.exists(Path.of(URI.create(link.getTarget())))) {
        wrong.add("a link to nowhere: " + link.getTarget());
      }
    }
    for (FoldingRange fold :
        await(
            talk.server
                .getTextDocumentService()
                .foldingRange(new FoldingRangeRequestParams(which)))) {
      if (fold.getEndLine() <= fold.getStartLine()) {
        wrong.add("nothing folds at line " + fold.getStartLine());
      }
    }
    for (var symbol :
        await(
            talk.server.getTextDocumentService().documentSymbol(new DocumentSymbolParams(which)))) {
      nested(symbol.getRight(), text);
    }
    assertThat(wrong).isEmpty();
  }

  private void nested(DocumentSymbol symbol, String text) {
    int start = offset(text, symbol.getRange().getStart());
    int end = offset(text, symbol.getRange().getEnd());
    int from = offset(text, symbol.getSelectionRange().getStart());
    int to = offset(text, symbol.getSelectionRange().getEnd());
    if (from < start || to > end || symbol.getName().isBlank()) {
      wrong.add("symbol " + symbol.getName() + " is not in its range");
    }
    if (symbol.getChildren() != null) {
      for (DocumentSymbol child : symbol.getChildren()) {
        if (offset(text, child.getRange().getStart()) < start
            || offset(text, child.getRange().getEnd()) > end) {
          wrong.add(child.getName() + " is not in " + symbol.getName());
        }
        nested(child, text);
      }
    }
  }
}
