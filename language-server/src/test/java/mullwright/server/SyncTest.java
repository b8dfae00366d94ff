package mullwright.server;

import static mullwright.server.Conversation.await;
import static mullwright.server.TextPlaces.at;
import static mullwright.server.TextPlaces.boundary;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.GeneralClientCapabilities;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.SemanticTokensParams;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Texts on both sides of the wire stay the same, and diagnostics belong to the latest. */
class SyncTest {
  private static final String WALL =
      """
      units inches
      wall East {
        grid {
          lines A..C  spaced 2 @ 5'-0"   // “höher” 🙂 als nötig
          floor L1  at 0"
          floor L2  at 13'-0"
          row sill  at 2" above L1
        }
        members {
          vertical all as mullion
        }
      }
      """;

  @TempDir Path folder;

  @Test
  void tellsASlipWhereItStandsAndTakesItBackWhenItIsMended() {
    try (Conversation talk = Conversation.greeted("sync", folder)) {
      String address = Conversation.address(folder.resolve("east.wall"));
      talk.open(address, WALL.replace("row sill", "roww sill"));
      PublishDiagnosticsParams first = talk.heard.next(address);
      assertThat(first.getVersion()).isEqualTo(1);
      assertThat(unreadable(first)).hasSize(1);
      Diagnostic slip = unreadable(first).get(0);
      assertThat(slip.getRange()).isEqualTo(range(6, 4, 6, 8));
      assertThat(slip.getSource()).isEqualTo("mullwright");
      int version = talk.change(address, range(6, 4, 6, 8), "row");
      assertThat(unreadable(talk.heard.of(address, version))).isEmpty();
      version = talk.change(address, range(6, 4, 6, 7), "roww");
      assertThat(unreadable(talk.heard.of(address, version))).isNotEmpty();
      talk.closeDocument(address);
      assertThat(talk.heard.next(address).getDiagnostics()).isEmpty();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"utf-8", "utf-16", "utf-32"})
  void keepsStepThroughTwoThousandEditsInEveryEncoding(String encoding) {
    ClientCapabilities capabilities = new ClientCapabilities();
    GeneralClientCapabilities general = new GeneralClientCapabilities();
    general.setPositionEncodings(List.of(encoding));
    capabilities.setGeneral(general);
    SplittableRandom random = new SplittableRandom(encoding.hashCode());
    PositionEncoding columns = PositionEncoding.chosen(List.of(encoding));
    String address = Conversation.address(folder.resolve("east.wall"));
    try (Conversation talk = Conversation.greeted("edits-" + encoding, folder, capabilities)) {
      StringBuilder mirror = new StringBuilder(WALL);
      talk.open(address, WALL);
      int version = 0;
      for (int i = 0; i < 1000; i++) {
        List<TextDocumentContentChangeEvent> changes = new ArrayList<>();
        for (int j = 0; j < 2; j++) {
          changes.add(edit(mirror, random, columns));
        }
        version = talk.change(address, changes);
        if (mirror.length() > 4 * WALL.length()) {
          mirror = new StringBuilder(WALL);
          version = talk.replace(address, WALL);
        }
      }
      List<Diagnostic> kept = talk.heard.of(address, version).getDiagnostics();
      List<Integer> keptTokens = tokens(talk, address);
      try (Conversation fresh = Conversation.greeted("edits-" + encoding, folder, capabilities)) {
        fresh.open(address, mirror.toString());
        assertThat(kept).isEqualTo(fresh.heard.next(address).getDiagnostics());
        assertThat(keptTokens).isEqualTo(tokens(fresh, address));
      }
    }
  }

  @Test
  void publishesNothingOldAfterSomethingNew() {
    try (Conversation talk = Conversation.greeted("sync", folder)) {
      String address = Conversation.address(folder.resolve("east.wall"));
      talk.open(address, WALL);
      int last = 0;
      for (int i = 0; i < 300; i++) {
        last = talk.change(address, range(6, 4, 6, 4), "r");
      }
      int seen = 0;
      while (seen < last) {
        int version = talk.heard.next(address).getVersion();
        assertThat(version).isGreaterThan(seen);
        seen = version;
      }
      assertThat(talk.heard.diagnostics).isEmpty();
    }
  }

  /** As an editor does that reaches a file by two ways, such as a link in the file system. */
  @Test
  void aFileOpenUnderTwoSpellingsStaysOpenUntilBothAreClosed() {
    try (Conversation talk = Conversation.greeted("sync", folder)) {
      String address = Conversation.address(folder.resolve("east.wall"));
      String other = address.replace("east.wall", "%65ast.wall");
      talk.open(address, WALL);
      talk.open(other, WALL);
      talk.closeDocument(other);
      int version = talk.change(address, range(6, 4, 6, 7), "roww");
      assertThat(unreadable(talk.heard.of(address, version))).hasSize(1);
      assertThat(talk.heard.logged).isEmpty();
      talk.closeDocument(address);
      assertThat(talk.heard.next(address).getDiagnostics()).isEmpty();
    }
  }

  @Test
  void appliesAnEditOfADocumentThatIsNotOpenToNothing() {
    try (Conversation talk = Conversation.greeted("sync", folder)) {
      String address = Conversation.address(folder.resolve("east.wall"));
      talk.change(address, range(0, 0, 0, 0), "wall");
      talk.closeDocument(address);
      assertThat(
              await(
                  talk.server
                      .getTextDocumentService()
                      .semanticTokensFull(
                          new SemanticTokensParams(new TextDocumentIdentifier(address)))))
          .isNull();
      assertThat(talk.heard.logged).isEmpty();
    }
  }

  /** Mends or spoils the mirror and says how. */
  private static TextDocumentContentChangeEvent edit(
      StringBuilder mirror, SplittableRandom random, PositionEncoding encoding) {
    String[] pieces = {
      "{", "}\n", "\"", "row x at 1\"\n", " ", "ö", "🙂", "\r\n", "/*", "*/", "3'-6"
    };
    String text = mirror.toString();
    int start = boundary(text, random.nextInt(text.length() + 1));
    int end = boundary(text, Math.min(text.length(), start + random.nextInt(12)));
    String piece = random.nextInt(3) == 0 ? "" : pieces[random.nextInt(pieces.length)];
    Range range = new Range(at(text, start, encoding), at(text, end, encoding));
    mirror.replace(start, end, piece);
    return new TextDocumentContentChangeEvent(range, piece);
  }

  private static List<Integer> tokens(Conversation talk, String address) {
    return await(
            talk.server
                .getTextDocumentService()
                .semanticTokensFull(new SemanticTokensParams(new TextDocumentIdentifier(address))))
        .getData();
  }

  private static List<Diagnostic> unreadable(PublishDiagnosticsParams published) {
    return published.getDiagnostics().stream()
        .filter(diagnostic -> diagnostic.getCode().getLeft().equals("unreadable"))
        .toList();
  }

  private static Range range(int line, int column, int toLine, int toColumn) {
    return new Range(new Position(line, column), new Position(toLine, toColumn));
  }
}
