package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.DidChangeWorkspaceFoldersParams;
import org.eclipse.lsp4j.FileRename;
import org.eclipse.lsp4j.RegistrationParams;
import org.eclipse.lsp4j.RenameFilesParams;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.WorkspaceFolder;
import org.eclipse.lsp4j.WorkspaceFoldersChangeEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that move, folders that come and go, files without a folder. */
class FilesTest extends ProtocolTalk {
  private static final String USES = "use \"../catalog/small.wall\"\nwall East {\n}\n";

  private WorkspaceEdit renamed(String from, String to) {
    return await(
        talk.server
            .getWorkspaceService()
            .willRenameFiles(
                new RenameFilesParams(
                    List.of(
                        new FileRename(
                            Conversation.address(folder.resolve(from)),
                            Conversation.address(folder.resolve(to)))))));
  }

  private static String after(WorkspaceEdit edit, String address, String text) {
    List<TextEdit> edits =
        edit.getDocumentChanges().stream()
            .map(change -> change.getLeft())
            .filter(change -> change.getTextDocument().getUri().equals(address))
            .flatMap(change -> change.getEdits().stream())
            .map(each -> each.getLeft())
            .toList();
    return WallTalk.apply(text, edits);
  }

  @Test
  void aFileThatMovesIsStillUsed() {
    String east = open("walls/east.wall", USES);
    WorkspaceEdit edit = renamed("catalog/small.wall", "office/parts/captured.wall");
    assertThat(after(edit, east, USES))
        .isEqualTo(USES.replace("../catalog/small.wall", "../office/parts/captured.wall"));
  }

  @Test
  void aFileThatMovesStillUsesWhatItUsed() {
    String east = open("walls/east.wall", USES);
    WorkspaceEdit edit = renamed("walls/east.wall", "walls/phase-2/east.wall");
    assertThat(after(edit, east, USES)).isEqualTo(USES.replace("../catalog", "../../catalog"));
  }

  @Test
  void aFolderThatMovesTakesItsFilesAlong() {
    String east = open("walls/east.wall", USES);
    assertThat(after(renamed("catalog", "shared/catalog"), east, USES))
        .isEqualTo(USES.replace("../catalog", "../shared/catalog"));
    open("walls/more/west.wall", "use \"../east.wall\"\n");
    assertThat(renamed("walls", "facades")).isNull();
  }

  /** A text in quotes ends at the next quote, so no path can hold one. */
  @Test
  void aNameThatNoUseCanHoldIsToldAndBreaksNoText() throws Exception {
    open("walls/east.wall", USES);
    assertThat(renamed("catalog/small.wall", "catalog/6\" parts.wall")).isNull();
    assertThat(talk.heard.logged.poll(Conversation.PATIENCE_SECONDS, TimeUnit.SECONDS).getMessage())
        .contains("“catalog/6\" parts.wall”", "walls/east.wall keeps the old path");
    String west = open("walls/west.wall", "use \"east.wall\"\n");
    assertThat(after(renamed("walls/east.wall", "east.wall"), west, "use \"east.wall\"\n"))
        .isEqualTo("use \"../east.wall\"\n");
  }

  @Test
  void aWallOfATextInNoFileMovesOnceTheTextIsSaved() {
    String untitled = "untitled:Untitled-1";
    String both = "wall East {\n}\n\nwall West {\n}\n";
    talk.open(untitled, both);
    CodeAction move = titled(actions(untitled, both, "wall West"), "Move wall West");
    assertThat(move.getDisabled().getReason()).contains("Save it first");
  }

  @Test
  void namesNothingThatStaysAndSurvivesNonsense() {
    open("walls/east.wall", USES);
    assertThat(renamed("walls/other.wall", "walls/another.wall")).isNull();
    assertThat(
            await(
                talk.server
                    .getWorkspaceService()
                    .willRenameFiles(
                        new RenameFilesParams(
                            List.of(new FileRename("untitled:x", "no address %%"))))))
        .isNull();
  }

  @Test
  void aWallInAFolderWithItsCatalogWorksWithoutAnyWorkspaceFolder(@TempDir Path alone) {
    Conversation.write(alone, SmallCatalog.PATH, SmallCatalog.TEXT);
    try (Conversation single = Conversation.greeted("FilesTest", null)) {
      String east = Conversation.address(alone.resolve("walls/east.wall"));
      single.open(east, WallTalk.WALL.text());
      assertThat(single.heard.next(east).getDiagnostics())
          .noneMatch(it -> it.getCode().getLeft().equals("broken-use"));
      String untitled = "untitled:Untitled-1";
      single.open(untitled, "wall East {\n  gridd {\n  }\n}\n");
      assertThat(single.heard.next(untitled).getDiagnostics()).isNotEmpty();
      single.replace(untitled, USES);
      assertThat(single.heard.next(untitled).getDiagnostics())
          .filteredOn(it -> it.getCode().getLeft().equals("broken-use"))
          .singleElement()
          .satisfies(it -> assertThat(it.getMessage().getLeft()).contains("Save it first"));
    }
  }

  @Test
  void watchesBelowEachFolderWhereTheEditorCan(@TempDir Path second) throws Exception {
    Files.createDirectories(second);
    String json =
        """
        {"workspace": {"didChangeWatchedFiles":
          {"dynamicRegistration": true, "relativePatternSupport": true}}}
        """;
    try (Conversation watching =
        Conversation.greeted("FilesTest", folder, capabilities(JsonParser.parseString(json)))) {
      RegistrationParams first =
          watching.heard.registrations.poll(Conversation.PATIENCE_SECONDS, TimeUnit.SECONDS);
      assertThat(first.getRegistrations().get(0).getRegisterOptions().toString())
          .contains("\"baseUri\":\"" + Conversation.address(folder) + "\"")
          .contains("mullwright.properties");
      watching
          .server
          .getWorkspaceService()
          .didChangeWorkspaceFolders(
              new DidChangeWorkspaceFoldersParams(
                  new WorkspaceFoldersChangeEvent(
                      List.of(new WorkspaceFolder(Conversation.address(second), "second")),
                      List.of())));
      assertThat(
              watching
                  .heard
                  .unregistrations
                  .poll(Conversation.PATIENCE_SECONDS, TimeUnit.SECONDS)
                  .getUnregisterations())
          .singleElement()
          .satisfies(
              it -> assertThat(it.getId()).isEqualTo(first.getRegistrations().get(0).getId()));
      assertThat(
              watching
                  .heard
                  .registrations
                  .poll(Conversation.PATIENCE_SECONDS, TimeUnit.SECONDS)
                  .getRegistrations()
                  .get(0)
                  .getRegisterOptions()
                  .toString())
          .contains(Conversation.address(second));
    }
  }

  /** A file open from a folder that goes and comes again is there once. */
  @Test
  void aFolderThatComesAgainTellsNothingTwice(@TempDir Path second) {
    Path file = Conversation.write(second, SmallCatalog.PATH, SmallCatalog.TEXT);
    String address = Conversation.address(file);
    WorkspaceFolder added = new WorkspaceFolder(Conversation.address(second), "second");
    try (Conversation coming =
        Conversation.greeted("FilesTest", folder, capabilities(new JsonObject()))) {
      coming.open(address, SmallCatalog.TEXT);
      for (int i = 0; i < 2; i++) {
        coming
            .server
            .getWorkspaceService()
            .didChangeWorkspaceFolders(change(List.of(added), List.of()));
        assertThat(mullions(coming, address)).isEqualTo(1);
        coming
            .server
            .getWorkspaceService()
            .didChangeWorkspaceFolders(change(List.of(), List.of(added)));
        assertThat(mullions(coming, address)).isEqualTo(1);
      }
    }
  }

  private static DidChangeWorkspaceFoldersParams change(
      List<WorkspaceFolder> added, List<WorkspaceFolder> removed) {
    return new DidChangeWorkspaceFoldersParams(new WorkspaceFoldersChangeEvent(added, removed));
  }

  private static long mullions(Conversation talk, String address) {
    return Conversation.await(
            talk.server
                .getWorkspaceService()
                .symbol(new org.eclipse.lsp4j.WorkspaceSymbolParams("mullion-s")))
        .getRight()
        .stream()
        .filter(symbol -> symbol.getLocation().getLeft().getUri().equals(address))
        .count();
  }
}
