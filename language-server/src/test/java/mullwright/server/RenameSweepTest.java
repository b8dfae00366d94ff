package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.PrepareRenameParams;
import org.eclipse.lsp4j.PrepareRenameResult;
import org.eclipse.lsp4j.RenameParams;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every name of the walls of the examples, renamed and back. */
class RenameSweepTest extends Sweep {
  private void take(Map<String, String> after) {
    after.forEach(
        (address, text) -> {
          if (texts.containsKey(address)) {
            talk.replace(address, text);
          } else {
            talk.open(address, text);
          }
          texts.put(address, text);
        });
  }

  @ParameterizedTest
  @ValueSource(strings = {LIBRARY, TOWER, FERRY})
  void everyNameCanBeRenamedAndBack(String wall) {
    String address = open(wall);
    Map<String, String> before = new TreeMap<>(texts);
    TextDocumentIdentifier which = new TextDocumentIdentifier(address);
    String text = texts.get(address);
    Set<String> done = new LinkedHashSet<>();
    for (Place token : tokens(text)) {
      Position at = position(text, token.start());
      try {
        var answer =
            await(
                talk.server
                    .getTextDocumentService()
                    .prepareRename(new PrepareRenameParams(which, at)));
        if (answer == null) {
          continue;
        }
        PrepareRenameResult name = answer.getSecond();
        if (!done.add(name.getPlaceholder() + "/" + token.kind())) {
          continue;
        }
        String old = name.getPlaceholder();
        int start = offset(text, name.getRange().getStart());
        if (!text.startsWith(old, start)) {
          wrong.add("prepare is elsewhere at " + where(text, token.start()));
        }
        Map<String, String> after =
            after(
                await(
                    talk.server
                        .getTextDocumentService()
                        .rename(new RenameParams(which, at, "Zz-9"))));
        for (String path : after.keySet()) {
          before.putIfAbsent(path, texts.containsKey(path) ? texts.get(path) : read(path));
        }
        take(after);
        String now = texts.get(address);
        int there = now.indexOf("Zz-9");
        Map<String, String> back =
            after(
                await(
                    talk.server
                        .getTextDocumentService()
                        .rename(new RenameParams(which, position(now, there), old))));
        take(back);
        before.forEach(
            (path, was) -> {
              if (!texts.getOrDefault(path, was).equals(was)) {
                wrong.add("not the same after “" + old + "” there and back: " + path);
              }
            });
        take(before);
      } catch (java.util.concurrent.CompletionException refusal) {
        // names made of a range have no place of their own
        if (!refusal.getMessage().matches(".*(is made by the pattern|is an end of a range).*")) {
          wrong.add(where(text, token.start()) + ": " + refusal.getMessage());
        }
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(done.size()).isGreaterThan(20);
  }
}
