package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import com.google.gson.JsonParser;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import mullwright.check.Rules;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DidChangeWatchedFilesParams;
import org.eclipse.lsp4j.DocumentDiagnosticParams;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.WorkspaceDiagnosticParams;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is wrong in a project's file of settings is told in it, and goes when it is mended. */
class SettingsFileTest {
  private static final String SETTINGS =
      """
      # how we work
      editor.lense = off
      severity.unused = loud
        editor.units : furlongs
      severity.nothing-known = off
      editor.lens = on
      editor.lens = off
      """;

  @TempDir Path folder;

  private static SettingsFile read(String text) {
    return SettingsFile.read(text, Rules.find());
  }

  @Test
  void eachProblemStandsOnItsLineInTheOrderOfTheText() {
    List<Diagnostic> problems = read(SETTINGS).diagnostics(PositionEncoding.UTF16);
    assertThat(problems)
        .extracting(
            it -> it.getRange().getStart().getLine(),
            it -> it.getRange().getStart().getCharacter(),
            it -> it.getRange().getEnd().getCharacter())
        .containsExactly(
            tuple(1, 0, 18), tuple(2, 0, 22), tuple(3, 2, 25), tuple(4, 0, 28), tuple(5, 0, 16));
    assertThat(problems.get(0).getMessage().getLeft())
        .contains("“editor.lense” is not known. Is “lens” meant? Known are");
    assertThat(problems.get(1).getMessage().getLeft()).contains("a severity is error, warning");
    assertThat(problems.get(2).getMessage().getLeft())
        .contains("it may be file, inches, millimetres");
    assertThat(problems.get(3).getMessage().getLeft()).contains("the name of a rule");
    assertThat(problems.get(4).getMessage().getLeft()).contains("is set again on line 7");
    assertThat(read(SETTINGS).editor().on(Settings.LENS)).isFalse();
    assertThat(read("").problems()).isEmpty();
    assertThat(read("editor.lens = off\nseverity.unused = off\n").problems()).isEmpty();
  }

  /** The form of such files as {@link java.util.Properties} reads them. */
  @Test
  void keysAreFoundWhereverTheyMayStand() {
    String text = "! remark \\\na\\=b = 1\nlong = one \\\n  editor.lense = two\n\tc\\ d:3\n\n=x\n";
    assertThat(PropertyPlaces.of(text)).containsOnlyKeys("a=b", "long", "c d");
    assertThat(read("editor.x = \\u00zz\n").problems())
        .singleElement()
        .satisfies(it -> assertThat(it.sentence()).contains("cannot be read"));
  }

  @Test
  void areToldWithTheFileAndTakenBackWhenItIsMended() throws Exception {
    Path settings = Conversation.write(folder, "mullwright.properties", SETTINGS);
    String address = Conversation.address(settings);
    try (Conversation talk = Conversation.greeted("settings-file", folder)) {
      String east = Conversation.address(folder.resolve("east.wall"));
      talk.open(east, "wall East {\n}\n");
      assertThat(talk.heard.next(address).getDiagnostics()).hasSize(5);
      // an editor that opens every file it shows: it is no wall, and counts as saved
      talk.open(address, "editor.lens = maybe\n");
      assertThat(
              await(
                  talk.server
                      .getTextDocumentService()
                      .hover(
                          new HoverParams(
                              new TextDocumentIdentifier(address), new Position(0, 2)))))
          .isNull();
      talk.closeDocument(address);
      Files.writeString(settings, SETTINGS.replace("lense", "lens"));
      changed(talk);
      List<Diagnostic> now = talk.heard.next(address).getDiagnostics();
      while (now.stream().anyMatch(it -> it.getMessage().getLeft().contains("lense"))) {
        now = talk.heard.next(address).getDiagnostics();
      }
      assertThat(now).hasSize(5);
      Files.writeString(settings, "editor.lens = off\n");
      changed(talk);
      assertThat(talk.heard.next(address).getDiagnostics()).isEmpty();
      assertThat(talk.heard.logged).isEmpty();
    }
  }

  private static void changed(Conversation talk) {
    talk.server
        .getWorkspaceService()
        .didChangeWatchedFiles(new DidChangeWatchedFilesParams(List.of()));
  }

  @Test
  void areHandedToAClientThatFetchesThem() {
    String address =
        Conversation.address(Conversation.write(folder, "mullwright.properties", SETTINGS));
    Conversation.write(folder, "east.wall", "wall East {\n}\n");
    ClientCapabilities puller =
        ProtocolTalk.capabilities(
            JsonParser.parseString(
                """
                {"textDocument": {"diagnostic": {}},
                 "workspace": {"diagnostics": {"refreshSupport": true}}}
                """));
    try (Conversation talk = Conversation.greeted("settings-file", folder, puller)) {
      assertThat(
              await(
                      talk.server
                          .getWorkspaceService()
                          .diagnostic(new WorkspaceDiagnosticParams(List.of())))
                  .getItems())
          .map(it -> it.getWorkspaceFullDocumentDiagnosticReport())
          .filteredOn(it -> it.getUri().equals(address))
          .singleElement()
          .satisfies(it -> assertThat(it.getItems()).hasSize(5));
      DocumentDiagnosticParams one =
          new DocumentDiagnosticParams(new TextDocumentIdentifier(address));
      var report = await(talk.server.getTextDocumentService().diagnostic(one)).getLeft();
      assertThat(report.getItems()).hasSize(5);
      one.setPreviousResultId(report.getResultId());
      assertThat(
              await(talk.server.getTextDocumentService().diagnostic(one)).getRight().getResultId())
          .isEqualTo(report.getResultId());
    }
  }
}
