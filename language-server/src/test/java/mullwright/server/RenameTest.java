package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.RenameParams;
import org.eclipse.lsp4j.TextDocumentEdit;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Renames over several files of a workspace, for a client that takes versioned changes. */
class RenameTest extends WallTalk {
  private static final String WEST =
      """
      use "../catalog/small.wall"
      wall West {
        system small
        grid {
          lines A..B  spaced 5'
          floor L1 at 0'
          floor L2 at 13'
        }
        anchors {
          dead-load all at L2 part angle-s
        }
      }
      """;

  private final String catalog = Conversation.address(folder.resolve(SmallCatalog.PATH));
  private final String west = Conversation.address(folder.resolve("walls/west.wall"));

  @Override
  ClientCapabilities client() {
    return AbleClient.pushed();
  }

  @BeforeEach
  void write() {
    Conversation.write(folder, "walls/west.wall", WEST);
  }

  private WorkspaceEdit renamed(String newName) {
    return await(rename(newName));
  }

  private CompletableFuture<WorkspaceEdit> rename(String newName) {
    return text.rename(new RenameParams(which, WALL.at("part"), newName));
  }

  @Test
  void renamesAPartInItsCatalogAndInAllWallsThatUseIt() {
    int version = talk.change(address, new Range(new Position(0, 0), new Position(0, 0)), "");
    List<TextDocumentEdit> edits =
        renamed("angle-t").getDocumentChanges().stream().map(it -> it.getLeft()).toList();
    assertThat(edits)
        .extracting(
            it -> it.getTextDocument().getUri(),
            it -> it.getTextDocument().getVersion(),
            it -> it.getEdits().size())
        .containsExactly(tuple(catalog, null, 1), tuple(address, version, 1), tuple(west, null, 1));
    TextEdit inWest = edits.get(2).getEdits().get(0).getLeft();
    assertThat(apply(WEST, List.of(inWest))).contains("part angle-t");
  }

  @Test
  void refusesANameThatIsTakenInAnotherFileAndSaysWhere() {
    int line = lineOf(SmallCatalog.TEXT, "fastener bolt-s") + 1;
    talk.open(
        catalog, SmallCatalog.TEXT.replace("  fastener", "  anchor angle-t {\n  }\n  fastener"));
    assertThat(refusal(rename("angle-t")))
        .contains("angle-t is taken")
        .contains("catalog/small.wall, line " + line);
    assertThat(refusal(rename(" "))).contains("not empty");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "angle of steel | `\"angle of steel\"`",
        "angle//steel   | `\"angle//steel\"`",
        "angle/*steel*/ | `\"angle/*steel*/\"`",
        "`  angle-9 `   | angle-9",
      })
  void quotesANameThatNeedsIt(String name, String written) {
    List<TextDocumentEdit> edits =
        renamed(name).getDocumentChanges().stream().map(it -> it.getLeft()).toList();
    assertThat(edits.get(0).getEdits().get(0).getLeft().getNewText()).isEqualTo(written);
  }

  @Test
  void renamesFromTheCatalogsSide() {
    Position part =
        new Position(lineOf(SmallCatalog.TEXT, "anchor angle-s"), "  anchor a".length());
    WorkspaceEdit edit =
        await(text.rename(new RenameParams(new TextDocumentIdentifier(catalog), part, "bracket")));
    assertThat(edit.getDocumentChanges())
        .extracting(it -> it.getLeft().getTextDocument().getUri())
        .containsExactly(catalog, address, west);
  }
}
