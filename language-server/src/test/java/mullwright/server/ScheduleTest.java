package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.eclipse.lsp4j.ExecuteCommandParams;
import org.eclipse.lsp4j.ShowDocumentParams;
import org.eclipse.lsp4j.TextDocumentContentParams;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Schedules of a file's walls in the editor. */
class ScheduleTest extends ProtocolTalk {
  private static final String WALL = WallTalk.WALL.text();

  private String shown(Conversation in, String command, Object... arguments) {
    Object answer =
        await(
            in.server
                .getWorkspaceService()
                .executeCommand(new ExecuteCommandParams(command, List.of(arguments))));
    String address = (String) answer;
    ShowDocumentParams asked;
    try {
      asked = in.heard.shown.poll(Conversation.PATIENCE_SECONDS, TimeUnit.SECONDS);
    } catch (InterruptedException stopped) {
      throw new AssertionError(stopped);
    }
    assertThat(asked.getUri()).isEqualTo(address);
    assertThat(asked.getExternal()).isFalse();
    return address;
  }

  private String content(String address) {
    return await(
            talk.server
                .getWorkspaceService()
                .textDocumentContent(new TextDocumentContentParams(address)))
        .getText();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "lengths:Cut lengths", "takeoff:Takeoff", "glass:Glass", "tickets:ickets",
        "cut:Cutting plan", "sequence:rder", "calculations:alculations", "explain:efault"
      })
  void aCommandWithoutArgumentsShowsTheOneOfTheFileLastTouched(String which) {
    String name = which.substring(0, which.indexOf(':'));
    String word = which.substring(which.indexOf(':') + 1);
    open("walls/ea st.wall", WALL);
    String command = "mullwright.show" + Character.toUpperCase(name.charAt(0)) + name.substring(1);
    String address = shown(talk, command);
    assertThat(address).startsWith("mullwright:/" + name + "/");
    assertThat(content(address)).contains(word);
  }

  @Test
  void followsEditsThatChangeIt() throws InterruptedException {
    String address = open("walls/east.wall", WALL);
    String lengths = shown(talk, "mullwright.showLengths", address);
    // as in the tests of features: 12'-8 1/2"; a head one inch lower makes it 12'-7 1/2"
    assertThat(content(lengths)).contains("12'-8 1/2\"");
    talk.replace(address, WALL.replace("at 4\" below L2", "at 5\" below L2"));
    assertThat(talk.heard.stale.poll(Conversation.PATIENCE_SECONDS, TimeUnit.SECONDS))
        .isEqualTo(lengths);
    assertThat(content(lengths)).contains("12'-7 1/2\"").doesNotContain("12'-8 1/2\"");
    talk.replace(address, WALL.replace("at 4\" below L2", "at 6\" below L2"));
    assertThat(talk.heard.stale.poll(Conversation.PATIENCE_SECONDS, TimeUnit.SECONDS))
        .isEqualTo(lengths);
  }

  @Test
  void anAddressOfNothingSaysSo() {
    assertThat(content("mullwright:/lengths/x.txt?file%3A%2F%2F%2Fnowhere.wall")).contains("gone");
    assertThat(content("mullwright:/")).contains("nothing");
    String address = open("walls/east.wall", WALL);
    assertThat(content(new VirtualDocument("poems", address).address()))
        .contains("There is no schedule “poems”");
    String catalog = Conversation.address(folder.resolve(SmallCatalog.PATH));
    assertThat(content(new VirtualDocument("lengths", catalog).address()))
        .contains("No wall stands in");
  }

  @Test
  void aDocumentOfTheServersOwnIsNoWallFile() {
    open("walls/east.wall", WALL);
    String lengths = shown(talk, "mullwright.showLengths");
    talk.open(lengths, content(lengths));
    assertThat(shown(talk, "mullwright.showGlass")).contains("east.glass");
  }

  @Test
  void theMarksAreThoseOfTheLedger(@TempDir Path other) throws IOException {
    String address = open("walls/east.wall", WALL);
    Conversation.write(folder, "walls/east.marks", "this is no ledger\n");
    assertThat(content(shown(talk, "mullwright.showTickets", address)))
        .contains("The ledger of marks east.marks is at fault");
  }

  @Test
  void anEditorWithoutSuchDocumentsIsShownAFile() throws IOException {
    JsonObject json = json();
    json.getAsJsonObject("workspace").remove("textDocumentContent");
    try (Conversation plain = Conversation.greeted("ScheduleTest", folder, capabilities(json))) {
      String address = Conversation.address(Conversation.write(folder, "walls/east.wall", WALL));
      plain.open(address, WALL);
      String file = shown(plain, "mullwright.showLengths");
      assertThat(Files.readString(Path.of(URI.create(file)))).contains("12'-8 1/2\"");
    }
  }

  @Test
  void allFilesAreInOneFolderThatIsGoneWhenTheServerEnds() throws IOException {
    JsonObject json = json();
    json.getAsJsonObject("workspace").remove("textDocumentContent");
    Path one;
    Path top;
    try (Conversation plain = Conversation.greeted("ScheduleTest", folder, capabilities(json))) {
      String east = Conversation.address(Conversation.write(folder, "walls/east.wall", WALL));
      String other = Conversation.address(Conversation.write(folder, "walls-east.wall", WALL));
      plain.open(east, WALL);
      String lower = WALL.replace("at 4\" below L2", "at 5\" below L2");
      plain.open(other, lower.replace("../catalog", "catalog"));
      one = Path.of(URI.create(shown(plain, "mullwright.showLengths", east)));
      Path glass = Path.of(URI.create(shown(plain, "mullwright.showGlass", east)));
      Path two = Path.of(URI.create(shown(plain, "mullwright.showLengths", other)));
      assertThat(one).isNotEqualTo(two);
      top = one.getParent().getParent();
      assertThat(glass.getParent().getParent()).isEqualTo(top);
      assertThat(two.getParent().getParent()).isEqualTo(top);
      assertThat(Files.readString(one)).contains("12'-8 1/2\"");
      assertThat(Files.readString(two)).contains("12'-7 1/2\"");
      plain.replace(east, lower);
      assertThat(Path.of(URI.create(shown(plain, "mullwright.showLengths", east)))).isEqualTo(one);
      assertThat(Files.readString(one)).contains("12'-7 1/2\"");
    }
    assertThat(one).doesNotExist();
    assertThat(top).doesNotExist();
  }

  @Test
  void anEditorThatShowsNothingIsToldWhereItIs() throws InterruptedException {
    try (Conversation plain = Conversation.greeted("ScheduleTest", folder)) {
      String refusal =
          WallTalk.refusal(
              plain
                  .server
                  .getWorkspaceService()
                  .executeCommand(new ExecuteCommandParams("mullwright.showGlass", List.of())));
      assertThat(refusal).contains("Open a wall file first.");
      String address = Conversation.address(Conversation.write(folder, "walls/east.wall", WALL));
      plain.open(address, WALL);
      await(
          plain
              .server
              .getWorkspaceService()
              .executeCommand(new ExecuteCommandParams("mullwright.showGlass", List.of())));
      assertThat(plain.heard.logged.poll(Conversation.PATIENCE_SECONDS, TimeUnit.SECONDS))
          .satisfies(it -> assertThat(it.getMessage()).startsWith("Written to "));
    }
  }
}
