package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DidChangeWatchedFilesParams;
import org.eclipse.lsp4j.DidSaveTextDocumentParams;
import org.eclipse.lsp4j.ExecuteCommandParams;
import org.eclipse.lsp4j.FileChangeType;
import org.eclipse.lsp4j.FileEvent;
import org.eclipse.lsp4j.RenameParams;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextEdit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two editors, each with a server of its own, on one folder: as when two drafters share a job. */
class TwoEditorsTest {
  private static final String EAST = "walls/east.wall";
  private static final String WALL = WallTalk.WALL.text();

  @TempDir Path folder;

  private Conversation first;
  private Conversation second;
  private String east;
  private String catalog;

  @BeforeEach
  void begin() {
    Conversation.write(folder, SmallCatalog.PATH, SmallCatalog.TEXT);
    Conversation.write(folder, EAST, WALL);
    first = Conversation.greeted("two-editors-first", folder);
    second = Conversation.greeted("two-editors-second", folder);
    east = Conversation.address(folder.resolve(EAST));
    catalog = Conversation.address(folder.resolve(SmallCatalog.PATH));
  }

  @AfterEach
  void end() {
    first.close();
    second.close();
  }

  /** Saves a text in one editor; the other is told by its watcher. */
  private void saved(
      Conversation by, Conversation other, String address, String path, String text) {
    Conversation.write(folder, path, text);
    by.server
        .getTextDocumentService()
        .didSave(new DidSaveTextDocumentParams(new TextDocumentIdentifier(address)));
    for (Conversation told : List.of(by, other)) {
      told.server
          .getWorkspaceService()
          .didChangeWatchedFiles(
              new DidChangeWatchedFilesParams(
                  List.of(new FileEvent(address, FileChangeType.Changed))));
    }
  }

  private static List<String> rules(List<Diagnostic> diagnostics) {
    return diagnostics.stream().map(it -> it.getCode().getLeft()).distinct().toList();
  }

  @Test
  void whatOneSavesTheOtherSeesAtOnce() {
    second.open(east, WALL);
    assertThat(rules(second.heard.next(east).getDiagnostics())).doesNotContain("unknown-name");
    first.open(catalog, SmallCatalog.TEXT);
    String without = SmallCatalog.TEXT.replace("anchor angle-s", "anchor angle-t");
    first.replace(catalog, without);
    assertThat(rules(lengths(second))).isEmpty();
    saved(first, second, catalog, SmallCatalog.PATH, without);
    assertThat(rules(second.heard.next(east).getDiagnostics())).contains("unknown-name");
    first.replace(catalog, SmallCatalog.TEXT);
    saved(first, second, catalog, SmallCatalog.PATH, SmallCatalog.TEXT);
    assertThat(rules(second.heard.next(east).getDiagnostics())).doesNotContain("unknown-name");
  }

  /** Nothing that is not saved is seen: the answer comes after whatever would have been told. */
  private List<Diagnostic> lengths(Conversation of) {
    await(
        of.server
            .getWorkspaceService()
            .executeCommand(new ExecuteCommandParams("mullwright.showLengths", List.of(east))));
    return of.heard.diagnostics.stream()
        .filter(it -> it.getUri().equals(east))
        .flatMap(it -> it.getDiagnostics().stream())
        .toList();
  }

  /** Both have the same wall open: what each types is its own until somebody saves. */
  @Test
  void noTextIsLostWhereBothEditOneFile() throws IOException {
    first.open(east, WALL);
    second.open(east, WALL);
    String typed =
        WALL.replace("row   rail", "row   transom").replace("sill..rail", "sill..transom");
    int version = second.replace(east, typed);
    assertThat(rules(second.heard.of(east, version).getDiagnostics()))
        .doesNotContain("unknown-name");
    String other = WALL.replace("13'-0\"", "12'-0\"");
    first.replace(east, other);
    saved(first, second, east, EAST, other);
    // the second still answers for what stands in its window: the row it made is there
    String renamed = renamed(second, typed, "transom");
    assertThat(renamed).isEqualTo(typed.replace("transom", "belt"));
    assertThat(Files.readString(folder.resolve(EAST))).isEqualTo(other);
    // and once it lets go, for what the first saved
    second.closeDocument(east);
    assertThat(hoverOf(second, other, "12'-0\"")).contains("12'-0\"");
  }

  private String renamed(Conversation by, String text, String name) {
    RenameParams rename =
        new RenameParams(
            new TextDocumentIdentifier(east),
            ProtocolTalk.position(text, text.indexOf(name)),
            "belt");
    List<TextEdit> edits =
        await(by.server.getTextDocumentService().rename(rename)).getChanges().get(east);
    return WallTalk.apply(text, edits);
  }

  private String hoverOf(Conversation by, String text, String words) {
    var hover =
        new org.eclipse.lsp4j.HoverParams(
            new TextDocumentIdentifier(east), ProtocolTalk.position(text, text.indexOf(words) + 1));
    return await(by.server.getTextDocumentService().hover(hover))
        .getContents()
        .getRight()
        .getValue();
  }

  /** All that can be shown is shown by both at once; no file of the job is made or changed. */
  @Test
  void nothingOfTheJobIsWrittenHoweverMuchIsShown() {
    Conversation.write(folder, "walls/east.marks", "");
    Map<String, String> before = files();
    first.open(east, WALL);
    second.open(east, WALL);
    List<CompletableFuture<Object>> shown =
        Stream.of("Lengths", "Tickets", "Takeoff", "Glass", "Cut", "Sequence", "Explain")
            .map(what -> new ExecuteCommandParams("mullwright.show" + what, List.of(east)))
            .flatMap(
                command ->
                    Stream.of(first, second)
                        .map(talk -> talk.server.getWorkspaceService().executeCommand(command)))
            .toList();
    shown.forEach(it -> assertThat(await(it).toString()).startsWith("file:"));
    assertThat(files()).isEqualTo(before);
  }

  private Map<String, String> files() {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(folder.relativize(file).toString(), Files.readString(file));
      }
      return files;
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  @Test
  void aFileThatOneTakesAwayIsGoneForTheOther() throws IOException {
    second.open(east, WALL);
    assertThat(rules(second.heard.next(east).getDiagnostics())).doesNotContain("broken-use");
    Path gone = folder.resolve(SmallCatalog.PATH);
    Files.delete(gone);
    second
        .server
        .getWorkspaceService()
        .didChangeWatchedFiles(
            new DidChangeWatchedFilesParams(
                List.of(new FileEvent(catalog, FileChangeType.Deleted))));
    assertThat(rules(second.heard.next(east).getDiagnostics())).contains("broken-use");
    saved(first, second, catalog, SmallCatalog.PATH, SmallCatalog.TEXT);
    assertThat(rules(second.heard.next(east).getDiagnostics())).doesNotContain("broken-use");
  }
}
