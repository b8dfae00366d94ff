package mullwright.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import mullwright.syntax.LineTable;
import org.eclipse.lsp4j.CallHierarchyPrepareParams;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.CodeActionCapabilities;
import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CodeActionKindCapabilities;
import org.eclipse.lsp4j.CodeActionLiteralSupportCapabilities;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.CodeLens;
import org.eclipse.lsp4j.CodeLensParams;
import org.eclipse.lsp4j.Color;
import org.eclipse.lsp4j.ColorPresentationParams;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.DefinitionParams;
import org.eclipse.lsp4j.DocumentColorParams;
import org.eclipse.lsp4j.DocumentDiagnosticParams;
import org.eclipse.lsp4j.DocumentFormattingParams;
import org.eclipse.lsp4j.DocumentHighlightParams;
import org.eclipse.lsp4j.DocumentLinkParams;
import org.eclipse.lsp4j.DocumentRangeFormattingParams;
import org.eclipse.lsp4j.DocumentSymbolParams;
import org.eclipse.lsp4j.FoldingRangeRequestParams;
import org.eclipse.lsp4j.FormattingOptions;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.ImplementationParams;
import org.eclipse.lsp4j.InlayHintParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.PrepareRenameParams;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.ReferenceContext;
import org.eclipse.lsp4j.ReferenceParams;
import org.eclipse.lsp4j.RenameParams;
import org.eclipse.lsp4j.SelectionRangeParams;
import org.eclipse.lsp4j.SemanticTokensDeltaParams;
import org.eclipse.lsp4j.SemanticTokensParams;
import org.eclipse.lsp4j.SemanticTokensRangeParams;
import org.eclipse.lsp4j.SignatureHelpParams;
import org.eclipse.lsp4j.TextDocumentClientCapabilities;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TypeDefinitionParams;
import org.eclipse.lsp4j.TypeHierarchyPrepareParams;
import org.eclipse.lsp4j.WorkspaceSymbolParams;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;
import org.eclipse.lsp4j.services.TextDocumentService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What all features promise: asked anywhere, at any time, of any text, a request is answered, with
 * null, or with a refusal in words, and never with a fault of the server.
 */
class AnywhereTest {
  private static final Path EXAMPLES = Path.of("..", "examples");

  @TempDir Path folder;

  static Stream<Path> examples() throws IOException {
    try (Stream<Path> files = Files.walk(EXAMPLES)) {
      return files.filter(file -> file.toString().endsWith(".wall")).sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("examples")
  void answersAtOffsetsOfEveryExample(Path example) throws IOException {
    String text = Files.readString(example);
    try (Conversation talk = Conversation.greeted("anywhere", EXAMPLES, capable())) {
      String address = Conversation.address(example);
      talk.open(address, text);
      askEverywhere(talk, address, text, 29);
    }
  }

  @Test
  void answersOnBrokenText() {
    String text =
        """
        use "gone.wall"
        wall East {
          grid {
            lines A..G spaced 6 @ 5'-0
            row sill at above L1
            floor L1 at 0"
            floor floor at at
          members {
            vertical B.. as
            splice all at 2' abov L2 gap gap
            horizontal ( 3 + ) through
          }
        wall East {
          lites { vision V1 rows .. bays
        /* open
        """;
    try (Conversation talk = Conversation.greeted("anywhere", folder, capable())) {
      String address = Conversation.address(folder.resolve("broken.wall"));
      talk.open(address, text);
      askEverywhere(talk, address, text, 1);
    }
  }

  @Test
  void answersBeforeOpenAfterCloseAndOutsideTheText() {
    try (Conversation talk = Conversation.greeted("anywhere", folder, capable())) {
      String address = Conversation.address(folder.resolve("east.wall"));
      List<CompletableFuture<?>> answers = new ArrayList<>(ask(talk, address, new Position(3, 9)));
      talk.open(address, "wall East {\n}\n");
      answers.addAll(ask(talk, address, new Position(99, 0)));
      answers.addAll(ask(talk, address, new Position(0, 9999)));
      talk.closeDocument(address);
      answers.addAll(ask(talk, address, new Position(0, 0)));
      answers.addAll(ask(talk, "untitled:Untitled-1", new Position(0, 0)));
      answers.addAll(ask(talk, "no address at all \\ %%", new Position(0, 0)));
      answers.addAll(ask(talk, "file://server/share/a.wall?x#y", new Position(0, 0)));
      check(talk, answers);
    }
  }

  @Test
  void servesABufferThatNobodySaved() {
    try (Conversation talk = Conversation.greeted("anywhere", null, capable())) {
      String text = "wall East {\n  gridd {\n  }\n}\n";
      talk.open("untitled:Untitled-1", text);
      assertThat(talk.heard.next("untitled:Untitled-1").getDiagnostics()).isNotEmpty();
      askEverywhere(talk, "untitled:Untitled-1", text, 1);
    }
  }

  @Test
  void answersOrIsCancelledWhenTheQuestionIsTakenBackAtOnce() throws IOException {
    Path example = EXAMPLES.resolve("tower/north.wall");
    String text = Files.readString(example);
    try (Conversation talk = Conversation.greeted("anywhere", EXAMPLES, capable())) {
      String address = Conversation.address(example);
      talk.open(address, text);
      List<CompletableFuture<?>> answers = new ArrayList<>();
      for (int i = 0; i < 20; i++) {
        talk.change(address, new Range(new Position(i, 0), new Position(i, 0)), " ");
        List<CompletableFuture<?>> asked = ask(talk, address, new Position(i, 6));
        asked.forEach(answer -> answer.cancel(true));
        answers.addAll(asked);
      }
      answers.addAll(ask(talk, address, new Position(9, 9)));
      check(talk, answers);
    }
  }

  private static void askEverywhere(Conversation talk, String address, String text, int step) {
    LineTable lines = LineTable.of(text);
    List<CompletableFuture<?>> answers = new ArrayList<>();
    for (int offset = 0; offset <= text.length(); offset += step) {
      answers.addAll(askAt(talk, address, new Position(lines.line(offset), lines.column(offset))));
    }
    answers.addAll(ask(talk, address, new Position(0, 0)));
    check(talk, answers);
  }

  private static void check(Conversation talk, List<CompletableFuture<?>> answers) {
    for (CompletableFuture<?> answer : answers) {
      try {
        answer.orTimeout(Conversation.PATIENCE_SECONDS, TimeUnit.SECONDS).join();
      } catch (CancellationException takenBack) {
        // as asked
      } catch (CompletionException failed) {
        assertThat(failed.getCause()).isInstanceOf(ResponseErrorException.class);
        int code = ((ResponseErrorException) failed.getCause()).getResponseError().getCode();
        assertThat(code)
            .as(failed.getMessage())
            .isIn(
                ResponseErrorCode.RequestCancelled.getValue(),
                ResponseErrorCode.RequestFailed.getValue(),
                ResponseErrorCode.ContentModified.getValue(),
                ResponseErrorCode.ServerCancelled.getValue());
      }
    }
    assertThat(talk.heard.logged).isEmpty();
  }

  /** Every request that asks about a place. */
  private static List<CompletableFuture<?>> askAt(Conversation talk, String address, Position at) {
    TextDocumentService text = talk.server.getTextDocumentService();
    TextDocumentIdentifier which = new TextDocumentIdentifier(address);
    return List.of(
        text.hover(new HoverParams(which, at)),
        text.completion(new CompletionParams(which, at)),
        text.definition(new DefinitionParams(which, at)),
        text.references(new ReferenceParams(which, at, new ReferenceContext(true))),
        text.documentHighlight(new DocumentHighlightParams(which, at)),
        text.prepareRename(new PrepareRenameParams(which, at)),
        text.signatureHelp(new SignatureHelpParams(which, at)),
        text.typeDefinition(new TypeDefinitionParams(which, at)),
        text.implementation(new ImplementationParams(which, at)),
        text.prepareCallHierarchy(new CallHierarchyPrepareParams(which, at)),
        text.prepareTypeHierarchy(new TypeHierarchyPrepareParams(which, at)),
        text.resolveCodeLens(new CodeLens(new Range(at, at), null, Map.of("file", address))),
        text.selectionRange(new SelectionRangeParams(which, List.of(at))),
        text.codeAction(
            new CodeActionParams(which, new Range(at, at), new CodeActionContext(List.of()))));
  }

  /** Every request there is. */
  private static List<CompletableFuture<?>> ask(Conversation talk, String address, Position at) {
    TextDocumentService text = talk.server.getTextDocumentService();
    TextDocumentIdentifier which = new TextDocumentIdentifier(address);
    Range range = new Range(new Position(0, 0), at);
    List<CompletableFuture<?>> answers = new ArrayList<>(askAt(talk, address, at));
    answers.add(text.rename(new RenameParams(which, at, "other")));
    answers.add(text.documentSymbol(new DocumentSymbolParams(which)));
    answers.add(text.codeLens(new CodeLensParams(which)));
    answers.add(text.documentColor(new DocumentColorParams(which)));
    answers.add(
        text.colorPresentation(
            new ColorPresentationParams(which, new Color(1, 1, 1, 1), new Range(at, at))));
    answers.add(text.foldingRange(new FoldingRangeRequestParams(which)));
    answers.add(text.documentLink(new DocumentLinkParams(which)));
    answers.add(text.inlayHint(new InlayHintParams(which, range)));
    answers.add(text.semanticTokensFull(new SemanticTokensParams(which)));
    answers.add(text.semanticTokensFullDelta(new SemanticTokensDeltaParams(which, "1")));
    answers.add(text.semanticTokensRange(new SemanticTokensRangeParams(which, range)));
    answers.add(text.diagnostic(new DocumentDiagnosticParams(which)));
    answers.add(
        text.formatting(new DocumentFormattingParams(which, new FormattingOptions(2, true))));
    answers.add(
        text.rangeFormatting(
            new DocumentRangeFormattingParams(which, new FormattingOptions(2, true), range)));
    answers.add(talk.server.getWorkspaceService().symbol(new WorkspaceSymbolParams("l")));
    return answers;
  }

  private static ClientCapabilities capable() {
    ClientCapabilities capabilities = new ClientCapabilities();
    TextDocumentClientCapabilities text = new TextDocumentClientCapabilities();
    text.setCodeAction(
        new CodeActionCapabilities(
            new CodeActionLiteralSupportCapabilities(
                new CodeActionKindCapabilities(List.of("quickfix"))),
            false));
    capabilities.setTextDocument(text);
    return capabilities;
  }
}
