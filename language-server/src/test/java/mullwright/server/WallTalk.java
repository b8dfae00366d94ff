package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import mullwright.syntax.LineTable;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.CodeActionCapabilities;
import org.eclipse.lsp4j.CodeActionKindCapabilities;
import org.eclipse.lsp4j.CodeActionLiteralSupportCapabilities;
import org.eclipse.lsp4j.DocumentSymbolCapabilities;
import org.eclipse.lsp4j.HoverCapabilities;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.PublishDiagnosticsCapabilities;
import org.eclipse.lsp4j.TextDocumentClientCapabilities;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.services.TextDocumentService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A talk about one small wall, for the tests of features. */
abstract class WallTalk {
  static final Marked WALL =
      Marked.of(
          """
          use «path:"../catalog/small.wall"»

          project "Larkhaven Annexe" {
            units inches
            criteria {
              wind service
              wind field  32 psf in, ‹psf›36 psf out
              metal temperature -10 F to 150 F, set at 60 F
            }
          }

          /// Seen from the quay.
          wall «wall:East» {
            system «system:small»
            grid {
              lines «lines:A..C»  spaced 2 @ 5'-0"
              floor L1    at 0"     slab 6"
              floor «floor:L2»    at 13'-0" slab 10"
              row   sill  at 2" above L1
              row   «row:rail»  at 3'-0" above L1
              row   head  at 4" below L2
            }
            members {
              ‹vertical›vertical   «reach:all»  as «role:mullion»‹verticalEnd›
              horizontal all‹horizontalEnd›
            }
            anchors {
              clip      all   at sill
              dead-load all   at «useL2:L2»  part «part:angle-s» bolted 2 x bolt-s  isolated by paint
            }
            lites {
              ‹vision›vision V1 all‹visionEnd›
              vision V1 rows sill..«useRail:rail» bays A..«useB:B»‹narrowEnd›
            }
          }
          """);

  @TempDir static Path folder;

  Conversation talk;
  TextDocumentService text;
  String address;
  TextDocumentIdentifier which;

  @BeforeEach
  void open() {
    Conversation.write(folder, SmallCatalog.PATH, SmallCatalog.TEXT);
    talk = Conversation.greeted("features", folder, client());
    text = talk.server.getTextDocumentService();
    address = Conversation.address(folder.resolve("walls/east.wall"));
    which = new TextDocumentIdentifier(address);
    talk.open(address, WALL.text());
  }

  /** What the client can take; a modest one unless a test wants another. */
  ClientCapabilities client() {
    ClientCapabilities client = new ClientCapabilities();
    client.setTextDocument(textCapabilities());
    return client;
  }

  private static TextDocumentClientCapabilities textCapabilities() {
    TextDocumentClientCapabilities capabilities = new TextDocumentClientCapabilities();
    DocumentSymbolCapabilities outline = new DocumentSymbolCapabilities();
    outline.setHierarchicalDocumentSymbolSupport(true);
    capabilities.setDocumentSymbol(outline);
    HoverCapabilities hover = new HoverCapabilities();
    hover.setContentFormat(List.of("plaintext"));
    capabilities.setHover(hover);
    CodeActionCapabilities actions =
        new CodeActionCapabilities(
            new CodeActionLiteralSupportCapabilities(
                new CodeActionKindCapabilities(List.of("quickfix"))),
            false);
    actions.setIsPreferredSupport(true);
    capabilities.setCodeAction(actions);
    PublishDiagnosticsCapabilities diagnostics = new PublishDiagnosticsCapabilities();
    diagnostics.setRelatedInformation(true);
    capabilities.setPublishDiagnostics(diagnostics);
    return capabilities;
  }

  @AfterEach
  void close() {
    assertThat(talk.heard.logged).isEmpty();
    talk.close();
  }

  static String apply(String text, List<? extends TextEdit> edits) {
    StringBuilder edited = new StringBuilder(text);
    LineTable lines = LineTable.of(text);
    Function<Position, Integer> offset = at -> lines.offset(at.getLine(), at.getCharacter());
    edits.stream()
        .sorted(
            (a, b) -> offset.apply(b.getRange().getStart()) - offset.apply(a.getRange().getStart()))
        .forEach(
            edit ->
                edited.replace(
                    offset.apply(edit.getRange().getStart()),
                    offset.apply(edit.getRange().getEnd()),
                    edit.getNewText()));
    return edited.toString();
  }

  static String refusal(java.util.concurrent.CompletableFuture<?> answer) {
    return catchThrowable(() -> await(answer)).getMessage();
  }

  static int lineOf(String text, String words) {
    return LineTable.of(text).line(text.indexOf(words));
  }
}
