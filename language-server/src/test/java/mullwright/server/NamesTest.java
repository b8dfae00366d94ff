package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.eclipse.lsp4j.DefinitionParams;
import org.eclipse.lsp4j.DocumentHighlight;
import org.eclipse.lsp4j.DocumentHighlightKind;
import org.eclipse.lsp4j.DocumentHighlightParams;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.PrepareRenameParams;
import org.eclipse.lsp4j.ReferenceContext;
import org.eclipse.lsp4j.ReferenceParams;
import org.eclipse.lsp4j.RenameParams;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.WorkspaceSymbolParams;
import org.junit.jupiter.api.Test;

/** Definitions, references, highlights, renames and symbols of the workspace. */
class NamesTest extends WallTalk {
  @Test
  void goesToTheDefinitionInTheSameFileAndInTheCatalog() {
    assertThat(definition("useL2")).containsExactly(new Location(address, WALL.range("floor")));
    assertThat(definition("useRail")).containsExactly(new Location(address, WALL.range("row")));
    Location part = definition("part").get(0);
    assertThat(part.getUri()).isEqualTo(Conversation.address(folder.resolve(SmallCatalog.PATH)));
    assertThat(part.getRange().getStart().getLine())
        .isEqualTo(lineOf(SmallCatalog.TEXT, "anchor angle-s"));
    assertThat(definition("path").get(0).getUri()).isEqualTo(part.getUri());
  }

  private List<Location> definition(String mark) {
    return List.copyOf(
        await(text.definition(new DefinitionParams(which, WALL.at(mark)))).getLeft());
  }

  @Test
  void findsReferencesAndMarksThem() {
    List<Location> found =
        List.copyOf(
            await(
                text.references(
                    new ReferenceParams(which, WALL.at("floor"), new ReferenceContext(true)))));
    assertThat(found)
        .contains(
            new Location(address, WALL.range("floor")), new Location(address, WALL.range("useL2")));
    assertThat(
            await(text.documentHighlight(new DocumentHighlightParams(which, WALL.at("useRail")))))
        .contains(
            new DocumentHighlight(WALL.range("row"), DocumentHighlightKind.Write),
            new DocumentHighlight(WALL.range("useRail"), DocumentHighlightKind.Read));
  }

  @Test
  void findsWhoUsesAPartFromTheCatalog() {
    String catalog = Conversation.address(folder.resolve(SmallCatalog.PATH));
    talk.open(catalog, SmallCatalog.TEXT);
    int line = lineOf(SmallCatalog.TEXT, "anchor angle-s");
    List<Location> found =
        List.copyOf(
            await(
                text.references(
                    new ReferenceParams(
                        new TextDocumentIdentifier(catalog),
                        new Position(line, "  anchor an".length()),
                        new ReferenceContext(false)))));
    assertThat(found).contains(new Location(address, WALL.range("part")));
  }

  @Test
  void renamesEveryUseAndRefusesAPatternsName() {
    WorkspaceEdit edit = await(text.rename(new RenameParams(which, WALL.at("useL2"), "Upper")));
    assertThat(edit.getChanges().get(address))
        .hasSizeGreaterThanOrEqualTo(3)
        .allMatch(change -> change.getNewText().equals("Upper"));
    assertThat(apply(WALL.text(), edit.getChanges().get(address)))
        .contains("floor Upper    at 13'-0\"", "below Upper", "at Upper  part")
        .doesNotContain("L2");
    assertThat(refusal(text.rename(new RenameParams(which, WALL.at("useB"), "M"))))
        .contains("pattern A..C");
    assertThat(refusal(text.rename(new RenameParams(which, WALL.at("floor"), "L1"))))
        .contains("taken");
  }

  @Test
  void preparesARename() {
    var prepared =
        await(text.prepareRename(new PrepareRenameParams(which, WALL.at("useRail")))).getSecond();
    assertThat(prepared.getPlaceholder()).isEqualTo("rail");
    assertThat(prepared.getRange()).isEqualTo(WALL.range("useRail"));
  }

  @Test
  void findsThingsByNameInTheWorkspace() {
    assertThat(symbols("angle")).contains("angle-s");
    assertThat(symbols("east")).contains("East");
    assertThat(symbols("zzz")).isEmpty();
  }

  private List<String> symbols(String query) {
    return await(talk.server.getWorkspaceService().symbol(new WorkspaceSymbolParams(query)))
        .getRight()
        .stream()
        .map(it -> (String) it.getName())
        .toList();
  }
}
