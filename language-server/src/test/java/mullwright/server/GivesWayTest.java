package mullwright.server;

import static mullwright.server.Conversation.address;
import static mullwright.server.Conversation.await;
import static mullwright.server.Conversation.write;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import mullwright.check.About;
import mullwright.check.Findings;
import mullwright.check.Group;
import mullwright.check.Rules;
import mullwright.check.Severity;
import mullwright.check.TextFacts;
import mullwright.check.TextRule;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.Hover;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * An edit of a catalog makes all walls that use it stale; a question does not wait for them all.
 */
class GivesWayTest {
  @TempDir Path folder;

  /** Checks a file, once it is told to be slow, only after it is let go. */
  static final class Slow implements TextRule {
    final Map<String, CompletableFuture<Void>> begun = new ConcurrentHashMap<>();
    final Map<String, CompletableFuture<Void>> let = new ConcurrentHashMap<>();

    void hold(String wall) {
      begun.put(wall, new CompletableFuture<>());
      let.put(wall, new CompletableFuture<>());
    }

    @Override
    public About about() {
      return About.of(Group.TEXT, Severity.ERROR);
    }

    @Override
    public void check(TextFacts facts, Findings found) {
      facts
          .model()
          .walls()
          .forEach(
              wall -> {
                if (let.containsKey(wall.name())) {
                  begun.get(wall.name()).complete(null);
                  await(let.get(wall.name()));
                }
              });
    }
  }

  @Test
  void toAQuestionBetweenTwoFiles() {
    Slow slow = new Slow();
    String catalog = "catalog {\n}\n";
    write(folder, "parts.wall", catalog);
    Conversation talk =
        new Conversation("gives-way", Optional.empty(), () -> new Rules(List.of(slow)));
    talk.greet(folder, new ClientCapabilities());
    String parts = address(folder.resolve("parts.wall"));
    String west = address(folder.resolve("west.wall"));
    String east = address(folder.resolve("east.wall"));
    talk.open(west, "use \"parts.wall\"\nwall West {\n}\n");
    talk.open(east, "use \"parts.wall\"\nwall East {\n}\n");
    talk.open(parts, catalog);
    EarlierTalks.settle(talk);
    slow.hold("West");
    slow.hold("East");
    int edited = talk.replace(parts, catalog + "// another word\n");
    await(slow.begun.get("West"));
    CompletableFuture<Hover> asked =
        talk.server
            .getTextDocumentService()
            .hover(new HoverParams(new TextDocumentIdentifier(west), new Position(1, 1)));
    // refused by the reader itself: the question before it waits by now
    assertThat(talk.endpoint.request("mullwright/nothing", null).handle((it, fault) -> fault))
        .succeedsWithin(java.time.Duration.ofSeconds(Conversation.PATIENCE_SECONDS));
    slow.let.get("West").complete(null);
    // answered while the other wall is still held
    assertThat(await(asked)).isNotNull();
    assertThat(slow.let.get("East")).isNotDone();
    slow.let.get("East").complete(null);
    EarlierTalks.settle(talk);
    assertThat(EarlierTalks.said(talk, parts))
        .last()
        .satisfies(it -> assertThat(it.getVersion()).isEqualTo(edited));
    talk.close();
  }
}
