package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import com.google.gson.Gson;
import com.google.gson.JsonObject;
import java.util.List;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.CodeLens;
import org.eclipse.lsp4j.CodeLensParams;
import org.eclipse.lsp4j.ExecuteCommandParams;
import org.eclipse.lsp4j.ImplementationParams;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.LocationLink;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TypeDefinitionParams;
import org.eclipse.lsp4j.TypeHierarchyItem;
import org.eclipse.lsp4j.TypeHierarchyPrepareParams;
import org.eclipse.lsp4j.TypeHierarchySubtypesParams;
import org.eclipse.lsp4j.TypeHierarchySupertypesParams;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.junit.jupiter.api.Test;

/** From pieces to parts and back; lenses and commands on what pieces carry. */
class PieceTest extends WallTalk {
  private final String catalog = Conversation.address(folder.resolve(SmallCatalog.PATH));

  @Override
  ClientCapabilities client() {
    return AbleClient.pushed();
  }

  private static Position inCatalog(String words, int column) {
    return new Position(lineOf(SmallCatalog.TEXT, words), column);
  }

  @Test
  void goesFromAPieceToWhatItIsMadeOf() {
    assertThat(typesAt("vertical")).containsExactly(part("profile mullion-s"));
    assertThat(typesAt("role")).containsExactly(part("profile mullion-s"));
    assertThat(typesAt("vision")).containsExactly(part("glass V1"));
    assertThat(typesAt("useRail")).containsExactly(part("glass V1"));
    assertThat(typesAt("part")).containsExactly(part("anchor angle-s"));
    assertThat(typesAt("useL2")).containsExactly(part("anchor angle-s"));
    assertThat(typesAt("row")).containsExactly(part("profile rail-s"));
    assertThat(typesAt("wall")).containsExactly(part("system small"));
    assertThat(typesAt("psf")).isEmpty();
  }

  private List<String> typesAt(String mark) {
    return links(await(text.typeDefinition(new TypeDefinitionParams(which, WALL.at(mark)))))
        .stream()
        .map(it -> it.getTargetUri() + " " + it.getTargetSelectionRange().getStart().getLine())
        .toList();
  }

  /** Nothing at all is read as the other form of an answer. */
  private static List<? extends LocationLink> links(
      Either<List<? extends Location>, List<? extends LocationLink>> answer) {
    return answer.isRight() ? answer.getRight() : List.of();
  }

  private String part(String words) {
    return catalog + " " + lineOf(SmallCatalog.TEXT, words);
  }

  @Test
  void goesFromARowOrAPartToTheStatementsThatBuildIt() {
    assertThat(built(which, WALL.at("row")))
        .containsExactly(tuple(address, lineOf(WALL.text(), "horizontal all")));
    assertThat(built(which, WALL.at("useB")))
        .contains(
            tuple(address, lineOf(WALL.text(), "vertical   all")),
            tuple(address, lineOf(WALL.text(), "clip")));
    TextDocumentIdentifier parts = new TextDocumentIdentifier(catalog);
    // a wall chooses it by role only: no reference could find it
    assertThat(built(parts, inCatalog("profile rail-s", 12)))
        .containsExactly(tuple(address, lineOf(WALL.text(), "horizontal all")));
    assertThat(built(parts, inCatalog("system small", 12)))
        .containsExactly(tuple(address, WALL.at("wall").getLine()));
  }

  private List<org.assertj.core.groups.Tuple> built(TextDocumentIdentifier in, Position at) {
    return links(await(text.implementation(new ImplementationParams(in, at)))).stream()
        .map(it -> tuple(it.getTargetUri(), it.getTargetSelectionRange().getStart().getLine()))
        .toList();
  }

  @Test
  void walksFromASystemToItsProfilesAndTheirPiecesAndBack() {
    TypeHierarchyItem system =
        await(text.prepareTypeHierarchy(new TypeHierarchyPrepareParams(which, WALL.at("system"))))
            .get(0);
    List<TypeHierarchyItem> profiles = below(system);
    assertThat(profiles)
        .extracting(TypeHierarchyItem::getName, TypeHierarchyItem::getDetail)
        .containsExactly(
            tuple("mullion-s", "mullion, jamb"), tuple("rail-s", "sill, head, intermediate"));
    List<TypeHierarchyItem> pieces = below(profiles.get(0));
    assertThat(pieces)
        .extracting(TypeHierarchyItem::getName)
        .containsExactly("vertical A", "vertical B", "vertical C");
    assertThat(pieces.get(0).getDetail()).startsWith("wall East: mullion-s, cut length ");
    assertThat(above(pieces.get(0)))
        .extracting(TypeHierarchyItem::getName)
        .containsExactly("mullion-s");
    assertThat(above(profiles.get(0)))
        .extracting(TypeHierarchyItem::getName)
        .containsExactly("small");
    assertThat(above(system)).isEmpty();
    assertThat(below(pieces.get(0))).isEmpty();
  }

  private List<TypeHierarchyItem> below(TypeHierarchyItem item) {
    return await(text.typeHierarchySubtypes(new TypeHierarchySubtypesParams(item)));
  }

  private List<TypeHierarchyItem> above(TypeHierarchyItem item) {
    return await(text.typeHierarchySupertypes(new TypeHierarchySupertypesParams(item)));
  }

  @Test
  void tellsAboveStatementsWhatTheyCarry() {
    List<? extends CodeLens> lenses = await(text.codeLens(new CodeLensParams(which)));
    assertThat(lenses).extracting(it -> it.getRange().getStart().getLine()).hasSize(6);
    assertThat(lenses).extracting(CodeLens::getCommand).containsOnlyNulls();
    assertThat(titles(lenses))
        .satisfiesExactly(
            vertical ->
                assertThat(vertical)
                    .startsWith("3 lengths, carry 4 lites, ")
                    .contains("greatest reaction ", "kN) down"),
            horizontal ->
                assertThat(horizontal)
                    .startsWith("6 horizontals, carry 4 lites, ")
                    .contains("down at an end"),
            clip -> assertThat(clip).startsWith("3 anchors, hold 4 lites, ").doesNotContain("down"),
            anchor -> assertThat(anchor).startsWith("3 anchors, carry 4 lites, ").contains("down"),
            vision -> assertThat(vision).startsWith("3 lites, "),
            // by hand, as in LoadPathTest: 1.4859 × 0.8255 m of two 6 mm plies (ASTM C1036, from
            // memory), 2500 kg/m³ (EN 572-1, from memory): 36.80 kg
            narrow -> assertThat(narrow).startsWith("1 lite, ").contains("(36.8 kg)"));
    talk.replace(address, WALL.text().replace("bays A..B", ""));
    assertThat(titles(lenses).get(4)).startsWith("2 lites");
  }

  private List<String> titles(List<? extends CodeLens> lenses) {
    return lenses.stream()
        .map(it -> await(text.resolveCodeLens(new CodeLens(it.getRange(), null, it.getData()))))
        .map(it -> it.getCommand().getTitle())
        .toList();
  }

  @Test
  void runsALensesCommandAndSaysItInAMessageToo() {
    CodeLens lens =
        await(text.resolveCodeLens(await(text.codeLens(new CodeLensParams(which))).get(0)));
    assertThat(lens.getCommand().getTooltip()).contains("licensed engineer");
    JsonObject answer =
        run(
            new ExecuteCommandParams(
                lens.getCommand().getCommand(), lens.getCommand().getArguments()));
    assertThat(answer.get("title").getAsString()).isEqualTo(lens.getCommand().getTitle());
    assertThat(answer.getAsJsonArray("lines")).hasSize(3);
    assertThat(answer.get("caution").getAsString()).contains("licensed engineer");
    assertThat(talk.heard.logged.remove().getMessage())
        .startsWith(lens.getCommand().getTitle())
        .contains("licensed engineer");
    JsonObject all = run(new ExecuteCommandParams("mullwright.loads", List.of()));
    assertThat(all.getAsJsonArray("lines")).hasSize(6);
    talk.heard.logged.clear();
  }

  private JsonObject run(ExecuteCommandParams parameters) {
    Object answer = await(talk.server.getWorkspaceService().executeCommand(parameters));
    return new Gson().toJsonTree(answer).getAsJsonObject();
  }
}
