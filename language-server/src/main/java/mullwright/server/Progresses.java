package mullwright.server;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/** The long work that goes on. The only part of it that is touched by more threads than one. */
final class Progresses {
  private static final String CREATE = "window/workDoneProgress/create";

  private final Map<String, Progress> running = new ConcurrentHashMap<>();
  private final AtomicInteger made = new AtomicInteger();
  private final Editor editor;

  Progresses(Editor editor) {
    this.editor = editor;
  }

  /**
   * Begins work.
   *
   * @param given the editor's own token, null if it gave none
   */
  Progress begin(Either<String, Integer> given, String title, Client client) {
    Object token = given == null ? "mullwright-" + made.incrementAndGet() : given.get();
    String key = token.toString();
    Runnable ask = given != null ? null : () -> ask(key, client);
    Progress progress =
        new Progress(editor, token, title, ask, System::nanoTime, () -> running.remove(key));
    running.put(key, progress);
    return progress;
  }

  private void ask(String key, Client client) {
    if (client.can("window.workDoneProgress")) {
      JsonObject parameters = new JsonObject();
      parameters.addProperty("token", key);
      editor
          .request(CREATE, parameters)
          .thenRun(
              () -> {
                Progress progress = running.get(key);
                if (progress != null) {
                  progress.taken();
                }
              });
    }
  }

  /** The editor wants the work of that token to stop. */
  void cancel(Object parameters) {
    JsonElement token = parameters instanceof JsonObject said ? said.get("token") : null;
    Progress progress =
        token != null && token.isJsonPrimitive() ? running.get(token.getAsString()) : null;
    if (progress != null) {
      progress.cancel();
    }
  }
}
