package mullwright.server;

import static mullwright.server.Conversation.await;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.Gson;
import com.google.gson.JsonObject;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.eclipse.lsp4j.ApplyWorkspaceEditParams;
import org.eclipse.lsp4j.ExecuteCommandParams;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A grid line is moved by any length, by a command that any editor can run. */
class MoveLineTest extends ProtocolTalk {
  private static final String WALL = WallTalk.WALL.text();

  @Override
  JsonObject json() {
    JsonObject json = super.json();
    json.getAsJsonObject("workspace").addProperty("applyEdit", true);
    return json;
  }

  private JsonObject run(Object... arguments) {
    Object answer =
        await(
            talk.server
                .getWorkspaceService()
                .executeCommand(
                    new ExecuteCommandParams("mullwright.moveLine", List.of(arguments))));
    return new Gson().toJsonTree(answer).getAsJsonObject();
  }

  private String refusal(Object... arguments) {
    return WallTalk.refusal(
        talk.server
            .getWorkspaceService()
            .executeCommand(new ExecuteCommandParams("mullwright.moveLine", List.of(arguments))));
  }

  private ApplyWorkspaceEditParams applied() {
    try {
      return talk.heard.applied.poll(Conversation.PATIENCE_SECONDS, TimeUnit.SECONDS);
    } catch (InterruptedException stopped) {
      throw new AssertionError(stopped);
    }
  }

  /** 5'-0" and 5'-0"; the line between them 2 1/2" to the left makes it 4'-9 1/2" and 5'-2 1/2". */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "-2 1/2\" | 4'-9 1/2\", 5'-2 1/2\"",
        "+1/16\"  | 5'-0 1/16\", 4'-11 15/16\"",
        "2'      | 7'-0\", 3'-0\"",
        "-25.4 mm | 4'-11\", 5'-1\"",
      })
  void movesANamedLine(String by, String spacings) {
    String address = open("walls/east.wall", WALL);
    JsonObject answer = run("B", by);
    ApplyWorkspaceEditParams edit = applied();
    assertThat(edit.getLabel())
        .isEqualTo(answer.get("title").getAsString())
        .startsWith("Move line B");
    org.eclipse.lsp4j.CodeAction action = new org.eclipse.lsp4j.CodeAction(edit.getLabel());
    action.setEdit(edit.getEdit());
    assertThat(after(action, address, WALL)).isEqualTo(WALL.replace("2 @ 5'-0\"", spacings));
    assertThat(annotation(action).getNeedsConfirmation()).isNull();
    assertThat(annotation(action).getDescription())
        .isEqualTo(answer.getAsJsonArray("lines").get(0).getAsString());
  }

  /** LSP 3.18, WorkspaceEditClientCapabilities: annotations are for clients that announce them. */
  @ParameterizedTest
  @ValueSource(strings = {"changeAnnotationSupport", "documentChanges"})
  void aClientThatKnowsNoAnnotationsIsSentNone(String lacking) throws InterruptedException {
    JsonObject json = json();
    json.getAsJsonObject("workspace").getAsJsonObject("workspaceEdit").remove(lacking);
    try (Conversation plain = Conversation.greeted("plain", folder, capabilities(json))) {
      String address = Conversation.address(Conversation.write(folder, "walls/east.wall", WALL));
      plain.open(address, WALL);
      await(
          plain
              .server
              .getWorkspaceService()
              .executeCommand(
                  new ExecuteCommandParams("mullwright.moveLine", List.of("B", "1\""))));
      ApplyWorkspaceEditParams told =
          plain.heard.applied.poll(Conversation.PATIENCE_SECONDS, TimeUnit.SECONDS);
      JsonObject edit = new Gson().toJsonTree(told.getEdit()).getAsJsonObject();
      assertThat(edit.has("changeAnnotations")).isFalse();
      assertThat(edit.toString()).doesNotContain("annotationId").contains("newText");
      assertThat(edit.has("documentChanges")).isNotEqualTo(lacking.equals("documentChanges"));
    }
  }

  @Test
  void movesTheLineAtAPlace() {
    String address = open("walls/east.wall", WALL);
    int at = WALL.indexOf("B\n", WALL.indexOf("bays A..B"));
    run(address, position(WALL, at), "1\"");
    assertThat(applied().getLabel()).isEqualTo("Move line B 1\" to the right");
  }

  @Test
  void movesTheLineNamedBeforeTheLengthWhereverTheCursorStands() {
    String address = open("walls/east.wall", WALL);
    run(address, Map.of("line", 0, "character", 0), "B -1 1/2\"");
    assertThat(applied().getLabel()).isEqualTo("Move line B 1 1/2\" to the left");
    int at = WALL.indexOf("B\n", WALL.indexOf("bays A..B"));
    assertThat(refusal(address, position(WALL, at), "B soon")).contains("“soon” is no length");
    assertThat(refusal(address, position(WALL, at), "Z 1\"")).contains("“Z 1\"” is no length");
    assertThat(refusal(address, Map.of("line", 0, "character", 0), "1\""))
        .contains("write the name before the length");
  }

  @Test
  void withoutArgumentsTellsTheLinesAndHowToSay() {
    open("walls/east.wall", WALL);
    JsonObject answer = run();
    assertThat(answer.get("title").getAsString()).contains("its name and a length");
    assertThat(answer.getAsJsonArray("lines"))
        .extracting(it -> it.getAsString())
        .containsExactly(
            "wall East, line A at 0\"",
            "wall East, line B at 5'-0\"",
            "wall East, line C at 10'-0\"");
    assertThat(talk.heard.logged.remove().getMessage()).contains("its name and a length");
    assertThat(talk.heard.applied).isEmpty();
  }

  @Test
  void refusesWithASentenceWhatItCannotDo() {
    assertThat(refusal("B", "1\"")).contains("Open a wall file first");
    open("walls/east.wall", WALL);
    assertThat(refusal("Z", "1\"")).contains("has a line Z");
    assertThat(refusal("B")).contains("how far");
    assertThat(refusal(7, "1\"")).contains("how far");
    assertThat(refusal("B", "soon")).contains("“soon” is no length");
    assertThat(refusal("B", 25)).contains("“25” is no length with its unit");
    assertThat(refusal("B", "0\"")).contains("moves nothing");
    assertThat(refusal("B", "-5'")).contains("Line B is not moved. The line would pass its neigh");
    assertThat(refusal("A", "1\"")).contains("counted from the first line");
    assertThat(refusal("x", Map.of("line", 0, "character", 0), "1\"")).contains("No grid line");
    open(
        "walls/two.wall",
        WALL + "\n" + WALL.substring(WALL.indexOf("wall East")).replace("East", "West"));
    assertThat(refusal("B", "1\"")).contains("2 walls of walls/two.wall have a line B");
    assertThat(talk.heard.applied).isEmpty();
  }

  /** What is to the right in one is to the left in the other, and the bays come the other way. */
  @Test
  void aLineMovesInTheWallThatSaysWhereItStandsOnly() {
    String west = "wall West like East mirrored {\n  members { vertical B as mullion }\n}\n";
    open("walls/east.wall", WALL);
    String address = open("walls/west.wall", "use \"east.wall\"\n" + west);
    assertThat(refusal("B", "1\""))
        .contains("Line B is not moved. Wall West has it from the wall it is like; move it there.");
    int at = ("use \"east.wall\"\n" + west).indexOf("B as");
    assertThat(refusal(address, position("use \"east.wall\"\n" + west, at), "1\""))
        .contains("No grid line of the wall's own is named there.");
    String both = WALL + "\n" + west;
    String one = open("walls/both.wall", both);
    assertThat(titles(actions(one, both, "B as mullion }")))
        .noneMatch(title -> title.startsWith("Move line"));
    run("B", "1\"");
    assertThat(applied().getLabel()).isEqualTo("Move line B 1\" to the right");
  }
}
