package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import mullwright.server.kept.KeptFolder;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.WorkspaceDiagnosticParams;

/** Talks of servers that come one after the other to one folder of walls. */
final class EarlierTalks {
  private static final String BUILD = "this build";

  private final Path walls;
  private final Path kept;

  /**
   * @param walls the folder the client has open
   * @param kept where servers keep what they found
   */
  EarlierTalks(Path walls, Path kept) {
    this.walls = walls;
    this.kept = kept;
  }

  /** A server that keeps nothing and so has nothing to show early. */
  Conversation cold(ClientCapabilities client) {
    return greeted(new Conversation("earlier-cold"), client);
  }

  /** A server that shows what the last one kept. */
  Conversation begin(ClientCapabilities client) {
    return greeted(
        new Conversation("earlier", Optional.of(new KeptFolder(kept, BUILD)), new RulesAhead()),
        client);
  }

  /** The same, which can check nothing before the rules are let go. */
  Conversation held(ClientCapabilities client, HeldRules rules) {
    return held(client, rules, BUILD);
  }

  Conversation held(ClientCapabilities client, HeldRules rules, String build) {
    return greeted(
        new Conversation("earlier-held", Optional.of(new KeptFolder(kept, build)), rules), client);
  }

  private Conversation greeted(Conversation talk, ClientCapabilities client) {
    talk.greet(walls, client);
    return talk;
  }

  /** All that was said before the worker came to want the rules has been heard after this. */
  static void hearAll(Conversation talk, HeldRules rules) {
    rules.awaitWorker();
    // refused by the reader itself, after whatever the worker has said
    assertThatThrownBy(() -> await(talk.endpoint.request("mullwright/nothing", null)))
        .hasMessageContaining("not offered");
  }

  /** Waits until nothing is left to check. */
  static void settle(Conversation talk) {
    await(
        talk.server
            .getWorkspaceService()
            .diagnostic(new WorkspaceDiagnosticParams(new ArrayList<>())));
  }

  /** What was said of an address, in order; no longer there afterwards. */
  static List<PublishDiagnosticsParams> said(Conversation talk, String address) {
    List<PublishDiagnosticsParams> all = new ArrayList<>();
    talk.heard.diagnostics.removeIf(it -> it.getUri().equals(address) && all.add(it));
    return all;
  }

  /** What the client shows in the end, by address; nothing where nothing is found. */
  static Map<String, List<Diagnostic>> shown(Conversation talk) {
    settle(talk);
    Map<String, List<Diagnostic>> shown = new TreeMap<>();
    talk.heard.diagnostics.forEach(it -> shown.put(it.getUri(), it.getDiagnostics()));
    shown.values().removeIf(List::isEmpty);
    return shown;
  }
}
