package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import mullwright.check.Rule;
import mullwright.check.RulePage;
import mullwright.check.Rules;
import mullwright.syntax.ParsedFile;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/**
 * Every mend that is offered for a wall that trips a rule does away with what it is offered for.
 */
class MendEverythingTest extends ProtocolTalk {
  @Test
  @Timeout(300)
  void everyMendMendsAndBreaksNothing() throws IOException {
    Conversation.write(folder, "fixture.wall", RulePage.fixture("fixture.wall"));
    List<String> wrong = new ArrayList<>();
    int mends = 0;
    for (Rule rule : Rules.find().all()) {
      String path = rule.name() + "/trips.wall";
      String text = RulePage.fixture(path);
      String address = open(path, text);
      List<Diagnostic> before = talk.heard.next(address).getDiagnostics();
      for (Diagnostic found : before) {
        int offered = mends(address, found).size();
        for (int i = 0; i < offered; i++) {
          // asked for anew: the text has been another since
          CodeAction mend = mends(address, found).get(i);
          mends++;
          String after = after(picked(mend), address, text);
          String what = rule.name() + ": “" + mend.getTitle() + "” for " + told(found);
          if (after.equals(text)) {
            wrong.add(what + " changes nothing");
            continue;
          }
          int version = talk.replace(address, after);
          Map<String, Integer> now = counts(talk.heard.of(address, version).getDiagnostics());
          Map<String, Integer> were = counts(before);
          if (now.getOrDefault(told(found), 0) >= were.get(told(found))) {
            wrong.add(what + " leaves it");
          }
          now.forEach(
              (each, count) -> {
                // a comment that allows a rule that exists may allow nothing all the same
                boolean same =
                    each.startsWith("allowance") && found.getCode().getLeft().equals("allowance");
                if (count > were.getOrDefault(each, 0) && !same) {
                  wrong.add(what + " makes " + each);
                }
              });
          if (syntax(after) > syntax(text)) {
            wrong.add(what + " does not read");
          }
          talk.heard.of(address, talk.replace(address, text));
        }
      }
      talk.closeDocument(address);
    }
    assertThat(wrong).isEmpty();
    assertThat(mends).isGreaterThan(20);
  }

  private List<CodeAction> mends(String address, Diagnostic found) {
    CodeActionContext context = new CodeActionContext(List.of(found));
    context.setOnly(List.of("quickfix"));
    return await(
            talk.server
                .getTextDocumentService()
                .codeAction(
                    new CodeActionParams(
                        new TextDocumentIdentifier(address), found.getRange(), context)))
        .stream()
        .map(Either::getRight)
        .filter(it -> it.getDiagnostics() != null && it.getDiagnostics().contains(found))
        .toList();
  }

  private static String told(Diagnostic found) {
    return found.getCode().getLeft() + " “" + found.getMessage().getLeft() + "”";
  }

  private static Map<String, Integer> counts(List<Diagnostic> diagnostics) {
    Map<String, Integer> counts = new TreeMap<>();
    diagnostics.forEach(it -> counts.merge(told(it), 1, Integer::sum));
    return counts;
  }

  private static int syntax(String text) {
    return ParsedFile.parse(text).problems().size();
  }
}
