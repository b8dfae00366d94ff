package mullwright.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonObject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import mullwright.editor.Session;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What real editors once said, said again: the server answers as it did. {@code
 * -Dsessions.write=true} keeps the answers of today.
 */
class ReplayTest {
  private static final Path WORKSPACE = Path.of("src/test/resources/editors/workspace");
  private static final String PUBLISH = "textDocument/publishDiagnostics";
  private static final Gson GSON =
      new GsonBuilder().serializeNulls().disableHtmlEscaping().setPrettyPrinting().create();

  @TempDir Path folder;

  /** Answers by number of the request, and the last diagnostics of each document. */
  private final Map<Integer, JsonObject> answers = new TreeMap<>();

  private final Map<String, JsonObject> published = new TreeMap<>();

  /** The last version of each document that the editor sent. */
  private final Map<String, Integer> sent = new TreeMap<>();

  private final Map<String, String> methods = new HashMap<>();

  @ParameterizedTest
  @ValueSource(strings = {"neovim", "vim", "emacs"})
  void answersARecordedEditorAsItDid(String editor) throws IOException {
    copyWorkspace();
    RawTalk talk = new RawTalk();
    for (JsonObject said : Session.of(editor, folder).messages()) {
      JsonObject message = said.getAsJsonObject("message");
      if (said.get("from").getAsString().equals("client")) {
        if (message.has("id") && message.has("method")) {
          methods.put(message.get("id").getAsString(), message.get("method").getAsString());
        }
        if (isOneOf(message, "shutdown", "exit")) {
          break;
        }
        remember(message);
        talk.say(message);
      } else if (message.has("id") && !message.has("method")) {
        until(talk, () -> answers.containsKey(message.get("id").getAsInt()));
      } else if (message.get("method").getAsString().equals(PUBLISH)) {
        JsonObject told = message.getAsJsonObject("params");
        if (told.has("version")) {
          until(
              talk,
              () -> isPublished(told.get("uri").getAsString(), told.get("version").getAsInt()));
        }
      }
    }
    // the last word on every document, which an editor may have left without
    sent.forEach((address, version) -> until(talk, () -> isPublished(address, version)));
    talk.hangUp();
    talk.end();

    String now =
        GSON.toJson(new TreeMap<>(Map.of("answers", answers, "published", published)))
                .replace(folder.toString(), Session.FOLDER)
            + "\n";
    if (Boolean.getBoolean("sessions.write")) {
      Files.writeString(Session.answers(editor), now);
    }
    assertThat(now).isEqualTo(Files.readString(Session.answers(editor)));
  }

  private interface Heard {
    boolean enough();
  }

  private void until(RawTalk talk, Heard heard) {
    while (!heard.enough()) {
      JsonObject next = talk.next();
      if (next.has("method")) {
        if (next.get("method").getAsString().equals(PUBLISH)) {
          JsonObject parameters = next.getAsJsonObject("params");
          published.put(parameters.get("uri").getAsString(), parameters);
        }
      } else {
        String method = methods.get(next.get("id").getAsString());
        next.remove("jsonrpc");
        next.addProperty("method", method);
        if (method.equals("initialize")) {
          // what is offered is held by a test of its own
          next.remove("result");
        }
        answers.put(next.get("id").getAsInt(), next);
      }
    }
  }

  /** True if what stands published is of that version or a later one. */
  private boolean isPublished(String address, int version) {
    JsonObject now = published.get(address);
    return now != null && now.has("version") && now.get("version").getAsInt() >= version;
  }

  private static boolean isOneOf(JsonObject message, String... methods) {
    return message.has("method") && List.of(methods).contains(message.get("method").getAsString());
  }

  private void remember(JsonObject message) {
    if (isOneOf(message, "textDocument/didOpen", "textDocument/didChange")) {
      JsonObject document = message.getAsJsonObject("params").getAsJsonObject("textDocument");
      sent.put(document.get("uri").getAsString(), document.get("version").getAsInt());
    }
  }

  private void copyWorkspace() throws IOException {
    try (Stream<Path> files = Files.walk(WORKSPACE)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path there = folder.resolve(WORKSPACE.relativize(file).toString());
        Files.createDirectories(there.getParent());
        Files.copy(file, there);
      }
    }
  }
}
