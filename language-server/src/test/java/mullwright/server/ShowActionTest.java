package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.Gson;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.util.List;
import java.util.TreeSet;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.CodeLens;
import org.eclipse.lsp4j.CodeLensParams;
import org.eclipse.lsp4j.Command;
import org.eclipse.lsp4j.ExecuteCommandParams;
import org.eclipse.lsp4j.InitializeResult;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.junit.jupiter.api.Test;

/** What a lens or a command shows is offered as a code action too. */
class ShowActionTest extends ProtocolTalk {
  private static final String WALL = WallTalk.WALL.text();

  private String told(Command command) {
    Object answer =
        await(
            talk.server
                .getWorkspaceService()
                .executeCommand(
                    new ExecuteCommandParams(command.getCommand(), command.getArguments())));
    talk.heard.logged.clear();
    JsonObject object = new Gson().toJsonTree(answer).getAsJsonObject();
    return object.get("title").getAsString();
  }

  @Test
  void eachLensIsAnActionAnywhereOnItsStatementAndTellsTheSame() {
    String address = open("walls/east.wall", WALL);
    List<? extends CodeLens> lenses =
        await(
            talk.server
                .getTextDocumentService()
                .codeLens(new CodeLensParams(new TextDocumentIdentifier(address))));
    assertThat(lenses).hasSize(6);
    for (CodeLens lens : lenses) {
      CodeLens shown = await(talk.server.getTextDocumentService().resolveCodeLens(lens));
      int line = lens.getRange().getStart().getLine();
      String words = WALL.split("\n")[line].strip();
      CodeAction action = titled(actions(address, WALL, words), "Tell what this statement's");
      assertThat(action.getKind()).isEqualTo("show");
      assertThat(action.getEdit()).isNull();
      assertThat(action.getData()).isNull();
      assertThat(told(action.getCommand())).isEqualTo(shown.getCommand().getTitle());
    }
    assertThat(titles(actions(address, WALL, "grid {"))).noneMatch(it -> it.startsWith("Tell"));
  }

  @Test
  void areOfferedWithTheLensesOffAndToNobodyWhoWantsMendsOnly() {
    Conversation.write(folder, "mullwright.properties", "editor.lens = off\n");
    String address = open("walls/east.wall", WALL);
    assertThat(titles(actions(address, WALL, "vertical   all")))
        .anyMatch(it -> it.contains("carry"));
    assertThat(actions(address, WALL, "vertical   all", "quickfix")).isEmpty();
    assertThat(actions(address, WALL, "vertical   all", "show")).hasSize(1);
  }

  /** Every command there is but those that change a text or concern one statement. */
  @Test
  void theLineOfAWallOffersAllThatCanBeShownOfIt() {
    String address = open("walls/east.wall", WALL);
    List<CodeAction> actions = actions(address, WALL, "wall East", "show");
    TreeSet<String> offered = new TreeSet<>();
    actions.forEach(action -> offered.add(action.getCommand().getCommand()));
    TreeSet<String> shows = new TreeSet<>();
    for (CommandSource source : java.util.ServiceLoader.load(CommandSource.class)) {
      source.commands().forEach(command -> shows.add(command.name()));
    }
    shows.removeIf(name -> !name.matches("mullwright\\.(show.*|preview)"));
    assertThat(offered).isEqualTo(shows);
    assertThat(titles(actions)).doesNotHaveDuplicates();
    assertThat(actions)
        .allSatisfy(it -> assertThat(it.getCommand().getArguments()).singleElement().isNotNull());
    assertThat(actions(address, WALL, "grid {", "show")).isEmpty();
  }

  /** LSP 3.17, {@code codeActionLiteralSupport}: without it the answer may hold commands only. */
  @Test
  void aClientThatTakesCommandsOnlyIsGivenThese() {
    JsonObject json =
        JsonParser.parseString("{\"textDocument\": {\"codeAction\": {}}}").getAsJsonObject();
    Conversation plain = new Conversation("ShowActionTest");
    InitializeResult greeting = plain.greet(folder, capabilities(json));
    assertThat(greeting.getCapabilities().getCodeActionProvider().getLeft()).isTrue();
    String address = Conversation.address(folder.resolve("walls/east.wall"));
    plain.open(address, WALL);
    Range at =
        new Range(
            position(WALL, WALL.indexOf("vertical   all")),
            position(WALL, WALL.indexOf("vertical   all")));
    List<Either<Command, CodeAction>> offers =
        await(
            plain
                .server
                .getTextDocumentService()
                .codeAction(
                    new CodeActionParams(
                        new TextDocumentIdentifier(address),
                        at,
                        new CodeActionContext(List.of()))));
    assertThat(offers).singleElement().satisfies(it -> assertThat(it.isLeft()).isTrue());
    assertThat(offers.get(0).getLeft().getCommand()).isEqualTo("mullwright.loads");
    plain.close();
  }
}
