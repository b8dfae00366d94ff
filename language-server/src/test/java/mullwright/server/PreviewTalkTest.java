package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import mullwright.preview.PageTalk;
import mullwright.syntax.LineTable;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.DocumentHighlightParams;
import org.eclipse.lsp4j.ExecuteCommandParams;
import org.eclipse.lsp4j.MessageParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.ShowDocumentCapabilities;
import org.eclipse.lsp4j.ShowDocumentParams;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.WindowClientCapabilities;
import org.junit.jupiter.api.Test;

/** The live drawing beside a talk with an editor. */
class PreviewTalkTest {
  private static final Path EXAMPLES = Path.of("..", "examples");
  private static final Path EAST = EXAMPLES.resolve("ferry-terminal/east.wall");

  private final String address = Conversation.address(EAST);
  private final String text = read();

  private static String read() {
    try {
      return Files.readString(EAST);
    } catch (IOException failed) {
      throw new java.io.UncheckedIOException(failed);
    }
  }

  private static ClientCapabilities showing() {
    ClientCapabilities client = new ClientCapabilities();
    WindowClientCapabilities window = new WindowClientCapabilities();
    window.setShowDocument(new ShowDocumentCapabilities(true));
    client.setWindow(window);
    return client;
  }

  private static String preview(Conversation talk) {
    Object answer =
        await(
            talk.server
                .getWorkspaceService()
                .executeCommand(new ExecuteCommandParams("mullwright.preview", List.of())));
    return (String) ((Map<?, ?>) answer).get("uri");
  }

  private static <T> T heard(java.util.concurrent.BlockingQueue<T> queue) {
    try {
      T heard = queue.poll(Conversation.PATIENCE_SECONDS, TimeUnit.SECONDS);
      assertThat(heard).as("what the editor is told").isNotNull();
      return heard;
    } catch (InterruptedException stopped) {
      throw new AssertionError(stopped);
    }
  }

  @Test
  void theCommandIsAdvertisedAndOpensThePageInABrowser() {
    try (Conversation talk = new Conversation("preview")) {
      assertThat(
              talk.greet(EXAMPLES, showing())
                  .getCapabilities()
                  .getExecuteCommandProvider()
                  .getCommands())
          .contains("mullwright.preview");
      talk.open(address, text);
      String page = preview(talk);
      ShowDocumentParams shown = heard(talk.heard.shown);
      assertThat(shown.getUri()).isEqualTo(page).startsWith("http://127.0.0.1:");
      assertThat(shown.getExternal()).isTrue();
      assertThat(preview(talk)).as("asked again, it is the same page").isEqualTo(page);
      assertThat(talk.heard.logged).isEmpty();
    }
  }

  @Test
  void anEditorThatCannotOpenABrowserIsToldTheAddress() {
    try (Conversation talk = Conversation.greeted("preview", EXAMPLES)) {
      String page = preview(talk);
      MessageParams told = heard(talk.heard.logged);
      assertThat(told.getMessage()).contains(page);
      assertThat(talk.heard.shown).isEmpty();
    }
  }

  @Test
  void anEditChangesTheDrawingAndItsFindingsFollow() {
    try (Conversation talk = Conversation.greeted("preview", EXAMPLES, showing())) {
      talk.open(address, text);
      try (PageTalk page = new PageTalk(preview(talk))) {
        page.listen();
        page.wait("summary", "No findings");
        String before = page.text("drawing");
        talk.replace(address, text.replace("row R5      at 9'-6\"", "row R5      at 9'-0\""));
        while (page.text("drawing").equals(before)) {
          page.next("parts");
        }
        talk.replace(address, text.replace("gap 5/8\"", "gap 1/16\""));
        assertThat(page.wait("findings", "splice-gap-too-small")).contains("splice-0");
      }
    }
  }

  @Test
  void aClickOnAPieceAsksTheEditorToGoToItsStatement() {
    try (Conversation talk = Conversation.greeted("preview", EXAMPLES, showing())) {
      talk.open(address, text);
      try (PageTalk page = new PageTalk(preview(talk))) {
        heard(talk.heard.shown);
        page.listen();
        page.wait("drawing", "splice-0");
        assertThat(page.post("open?piece=splice-0").status()).isEqualTo(200);
        ShowDocumentParams shown = heard(talk.heard.shown);
        assertThat(shown.getUri()).isEqualTo(address);
        assertThat(shown.getTakeFocus()).isTrue();
        assertThat(shown.getExternal()).isFalse();
        assertThat(selected(shown.getSelection())).startsWith("splice B..F");
      }
    }
  }

  private String selected(Range range) {
    LineTable lines = LineTable.of(text);
    return text.substring(
        lines.offset(range.getStart().getLine(), range.getStart().getCharacter()),
        lines.offset(range.getEnd().getLine(), range.getEnd().getCharacter()));
  }

  @Test
  void theCursorLightsThePiecesOfItsStatement() {
    try (Conversation talk = Conversation.greeted("preview", EXAMPLES, showing())) {
      talk.open(address, text);
      try (PageTalk page = new PageTalk(preview(talk))) {
        page.listen();
        page.wait("summary", "No findings");
        LineTable lines = LineTable.of(text);
        int offset = text.indexOf("splice B..F");
        Position at = new Position(lines.line(offset), lines.column(offset));
        await(
            talk.server
                .getTextDocumentService()
                .documentHighlight(
                    new DocumentHighlightParams(new TextDocumentIdentifier(address), at)));
        assertThat(page.wait("lit", "splice")).contains("splice-0").contains("splice-4");
      }
    }
  }

  @Test
  void tablesStandBesideTheDrawingAndTheirRowsNamePieces() {
    try (Conversation talk = Conversation.greeted("preview", EXAMPLES, showing())) {
      talk.open(address, text);
      try (PageTalk page = new PageTalk(preview(talk))) {
        page.listen();
        assertThat(page.wait("schedule", "Glass sizes"))
            .contains("data-pieces=\"vertical-1 vertical-3");
        assertThat(page.wait("calculations", "Verticals: bending stress"))
            .contains("a licensed engineer and the local code");
      }
    }
  }

  @Test
  void thePageEndsWithTheTalk() {
    PageTalk page;
    try (Conversation talk = Conversation.greeted("preview", EXAMPLES, showing())) {
      talk.open(address, text);
      page = new PageTalk(preview(talk));
      page.listen();
    }
    assertThat(page.next("over")).isNotNull();
    page.close();
  }
}
