package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every action that is offered in the walls of the examples, taken. */
class ActionSweepTest extends Sweep {
  @ParameterizedTest
  @ValueSource(strings = {LIBRARY, TOWER, FERRY})
  void everyActionLeavesATextThatReads(String wall) {
    String address = open(wall);
    String text = texts.get(address);
    TextDocumentIdentifier which = new TextDocumentIdentifier(address);
    Set<String> done = new LinkedHashSet<>();
    for (Place token : tokens(text)) {
      Position at = position(text, token.start());
      List<CodeAction> offers =
          await(
                  talk.server
                      .getTextDocumentService()
                      .codeAction(
                          new CodeActionParams(
                              which, new Range(at, at), new CodeActionContext(List.of()))))
              .stream()
              .map(Either::getRight)
              .toList();
      Set<String> titles = new HashSet<>();
      for (CodeAction offer : offers) {
        if (!titles.add(offer.getTitle())) {
          wrong.add("twice “" + offer.getTitle() + "” at " + where(text, token.start()));
        }
        if (offer.getDisabled() != null
            || offer.getCommand() != null
            || !done.add(offer.getTitle())) {
          continue;
        }
        try {
          CodeAction picked = await(talk.server.getTextDocumentService().resolveCodeAction(offer));
          if (picked.getEdit() == null) {
            wrong.add("no edit of “" + offer.getTitle() + "” at " + where(text, token.start()));
            continue;
          }
          after(picked.getEdit())
              .forEach(
                  (path, now) -> {
                    if (problems(now) > 0) {
                      wrong.add(
                          "“"
                              + offer.getTitle()
                              + "” at "
                              + where(text, token.start())
                              + " does not read");
                    }
                  });
        } catch (java.util.concurrent.CompletionException refusal) {
          wrong.add("“" + offer.getTitle() + "”: " + refusal.getMessage());
        }
      }
    }
    assertThat(wrong).isEmpty();
  }
}
