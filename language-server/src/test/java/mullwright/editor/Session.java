package mullwright.editor;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * A recorded talk of a real editor with the server, as kept in {@code
 * src/test/resources/editors/sessions}: the workspace's folder reads {@value #FOLDER}, and no
 * process is named.
 *
 * @param messages as recorded, each with {@code from} and {@code message}
 */
public record Session(List<JsonObject> messages) {
  public static final String FOLDER = "/WORKSPACE";

  private static final Path SESSIONS = Path.of("src/test/resources/editors/sessions");

  public Session {
    messages = List.copyOf(messages);
  }

  /** Where the talk of an editor is kept. */
  public static Path file(String editor) {
    return SESSIONS.resolve(editor + ".jsonl");
  }

  /** Where the answers to it are kept. */
  public static Path answers(String editor) {
    return SESSIONS.resolve(editor + ".answers.json");
  }

  /** The kept talk of an editor, in that folder. */
  public static Session of(String editor, Path folder) {
    List<JsonObject> messages = new ArrayList<>();
    try {
      for (String line : Files.readAllLines(file(editor))) {
        messages.add(
            JsonParser.parseString(line.replace(FOLDER, folder.toString())).getAsJsonObject());
      }
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
    return new Session(messages);
  }

  /** Keeps a recording made in that folder. */
  static void keep(String editor, Path recording, Path folder) throws IOException {
    StringBuilder kept = new StringBuilder();
    for (String line : Files.readAllLines(recording)) {
      JsonObject said = JsonParser.parseString(line).getAsJsonObject();
      JsonElement parameters = said.getAsJsonObject("message").get("params");
      if (parameters != null
          && parameters.isJsonObject()
          && parameters.getAsJsonObject().has("processId")) {
        parameters.getAsJsonObject().add("processId", com.google.gson.JsonNull.INSTANCE);
      }
      // what the server said is kept for its order only
      if (said.get("from").getAsString().equals("server")) {
        said.getAsJsonObject("message").remove("result");
        JsonElement told = said.getAsJsonObject("message").get("params");
        if (told != null && told.isJsonObject()) {
          told.getAsJsonObject().remove("diagnostics");
        }
      }
      com.google.gson.Gson gson =
          new com.google.gson.GsonBuilder().serializeNulls().disableHtmlEscaping().create();
      kept.append(gson.toJson(said).replaceAll(Pattern.quote(folder.toString()), FOLDER))
          .append('\n');
    }
    Files.writeString(file(editor), kept);
  }
}
