package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import mullwright.syntax.TokenKind;
import org.eclipse.lsp4j.Hover;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.SelectionRange;
import org.eclipse.lsp4j.SelectionRangeParams;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every word of the walls of the examples, pointed at. */
class HoverSweepTest extends Sweep {
  @ParameterizedTest
  @ValueSource(strings = {LIBRARY, TOWER, FERRY, "first-wall/lobby.wall"})
  void everyTokenCanBePointedAt(String wall) {
    String address = open(wall);
    String text = texts.get(address);
    TextDocumentIdentifier which = new TextDocumentIdentifier(address);
    for (Place token : tokens(text)) {
      int middle = (token.start() + token.end()) / 2;
      Position at = position(text, middle);
      Hover hover = await(talk.server.getTextDocumentService().hover(new HoverParams(which, at)));
      if (hover == null) {
        if (token.kind() != TokenKind.COMMENT) {
          wrong.add("no hover at " + where(text, middle) + " " + token);
        }
      } else {
        int start = offset(text, hover.getRange().getStart());
        int end = offset(text, hover.getRange().getEnd());
        if (start > middle || end < middle) {
          wrong.add("hover elsewhere at " + where(text, middle));
        }
        if (hover.getContents().getRight().getValue().isBlank()) {
          wrong.add("empty hover at " + where(text, middle));
        }
      }
      SelectionRange range =
          await(
                  talk.server
                      .getTextDocumentService()
                      .selectionRange(new SelectionRangeParams(which, List.of(at))))
              .get(0);
      int from = offset(text, range.getRange().getStart());
      int to = offset(text, range.getRange().getEnd());
      if (from > middle || to < middle) {
        wrong.add("selection elsewhere at " + where(text, middle));
      }
      for (SelectionRange outer = range.getParent(); outer != null; outer = outer.getParent()) {
        int widerFrom = offset(text, outer.getRange().getStart());
        int widerTo = offset(text, outer.getRange().getEnd());
        if (widerFrom > from || widerTo < to || widerFrom == from && widerTo == to) {
          wrong.add("selection does not grow at " + where(text, middle));
        }
        from = widerFrom;
        to = widerTo;
      }
      if (from != 0 || to != text.length()) {
        wrong.add("selection does not end with the file at " + where(text, middle));
      }
    }
    assertThat(wrong).isEmpty();
  }
}
