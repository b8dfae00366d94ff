package mullwright.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import mullwright.bench.GeneratedWalls;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** JSON-RPC 2.0, section 4: an id is a number or a text, and 7 is not "7". */
class TwoIdsTest {
  /** So many walls of 60 floors and 60 bays take seconds, unless the question is taken back. */
  private static final int WALLS = 8;

  private static final String HOVER =
      "{'jsonrpc':'2.0','id':ID,'method':'textDocument/hover','params':{'textDocument':"
          + "{'uri':'file:///nowhere.wall'},'position':{'line':0,'character':0}}}";

  @TempDir Path folder;

  @Test
  void takingBackANumberLeavesTheTextThatReadsLikeIt() throws IOException {
    onlyTheOneTakenBackIsRefused("7", "'7'");
  }

  @Test
  void takingBackATextLeavesTheNumberThatReadsLikeIt() throws IOException {
    onlyTheOneTakenBackIsRefused("'7'", "7");
  }

  /** Asks both behind long work. */
  private void onlyTheOneTakenBackIsRefused(String id, String other) throws IOException {
    Path examples = Path.of("..", "examples");
    String catalog = Files.readString(examples.resolve("catalog/captured.wall"));
    String tower = Files.readString(examples.resolve("tower/north.wall"));
    Conversation.write(folder, "catalog/captured.wall", catalog);
    Conversation.write(
        folder, "tower/w.wall", GeneratedWalls.times(WALLS, GeneratedWalls.tower(tower, 60, 60)));
    RawTalk talk = new RawTalk();
    talk.say(
        RawTalk.INITIALIZE.replace(
            "'params':{", "'params':{'rootUri':'" + Conversation.address(folder) + "',"));
    talk.answer(1);
    // one answer in one go: nothing that comes after it is answered before it
    talk.say(
        "{'jsonrpc':'2.0','id':2,'method':'textDocument/diagnostic','params':{'textDocument':"
            + "{'uri':'"
            + Conversation.address(folder)
            + "/tower/w.wall'}}}");
    talk.say(HOVER.replace("ID", "7")).say(HOVER.replace("ID", "'7'"));
    talk.say("{'jsonrpc':'2.0','method':'$/cancelRequest','params':{'id':" + id + "}}");
    talk.say("{'jsonrpc':'2.0','method':'$/cancelRequest','params':{'id':2}}");
    Map<String, JsonObject> answers = new HashMap<>();
    while (answers.size() < 3) {
      JsonObject next = talk.next();
      if (next.get("id") instanceof JsonPrimitive of) {
        answers.put(of.toString(), next);
      }
    }
    talk.say("{'jsonrpc':'2.0','id':3,'method':'shutdown'}");
    talk.answer(3);
    talk.say("{'jsonrpc':'2.0','method':'exit'}");
    assertThat(talk.end()).isZero();
    assertThat(answers).containsOnlyKeys("2", "7", "\"7\"");
    assertThat(answers.get("2").has("error")).as("long enough to be taken back").isTrue();
    assertThat(answers.get(other.replace('\'', '"')).has("error")).isFalse();
    // LSP 3.17, ErrorCodes.RequestCancelled
    JsonObject refused = answers.get(id.replace('\'', '"')).getAsJsonObject("error");
    assertThat(refused.get("code").getAsInt()).isEqualTo(-32800);
  }
}
