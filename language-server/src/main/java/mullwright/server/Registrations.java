package mullwright.server;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.util.List;
import java.util.function.Consumer;
import mullwright.check.Severities;

/**
 * What the server asks of the editor once the talk has begun: to be told of files that change
 * outside of it, to be told of settings that change, and the settings themselves (LSP 3.17, {@code
 * client/registerCapability}, {@code workspace/configuration}).
 */
final class Registrations {
  private static final String WATCHED = "workspace/didChangeWatchedFiles";
  private static final String CONFIGURATION = "workspace/didChangeConfiguration";
  private static final String SECTION = "mullwright";
  private static final List<String> PATTERNS = List.of("**/*.wall", "**/" + Severities.FILE);

  private final Outgoing outgoing;
  private final Log log;
  private List<String> watchedBelow = List.of();
  private int watches;

  Registrations(Outgoing outgoing, Log log) {
    this.outgoing = outgoing;
    this.log = log;
  }

  /** Asks to be told when wall files change, below folders where the client can watch these. */
  void watch(Session session) {
    Client client = session.client();
    if (!client.can(WATCHED.replace('/', '.') + ".dynamicRegistration")) {
      return;
    }
    boolean relative = client.can(WATCHED.replace('/', '.') + ".relativePatternSupport");
    List<String> below = relative ? session.folders() : List.of();
    if (watches > 0 && below.equals(watchedBelow)) {
      return;
    }
    if (watches > 0) {
      unregister("wall-files-" + watches);
    }
    watchedBelow = List.copyOf(below);
    JsonArray watchers = new JsonArray();
    for (String pattern : PATTERNS) {
      if (below.isEmpty()) {
        watchers.add(watcher(new JsonPrimitive(pattern)));
      }
      for (String folder : below) {
        JsonObject glob = new JsonObject();
        glob.addProperty("baseUri", folder);
        glob.addProperty("pattern", pattern);
        watchers.add(watcher(glob));
      }
    }
    JsonObject options = new JsonObject();
    options.add("watchers", watchers);
    register("wall-files-" + ++watches, WATCHED, options);
  }

  private static JsonObject watcher(JsonElement glob) {
    JsonObject watcher = new JsonObject();
    watcher.add("globPattern", glob);
    return watcher;
  }

  /** Asks to be told when settings change. */
  void watchSettings(Client client) {
    if (client.can(CONFIGURATION.replace('/', '.') + ".dynamicRegistration")) {
      JsonObject options = new JsonObject();
      options.addProperty("section", SECTION);
      register("settings", CONFIGURATION, options);
    }
  }

  /**
   * Asks for the settings, if the client can be asked.
   *
   * @param taker given them, on any thread
   */
  void pullSettings(Client client, Consumer<JsonElement> taker) {
    if (!client.can("workspace.configuration")) {
      return;
    }
    JsonObject item = new JsonObject();
    item.addProperty("section", SECTION);
    JsonArray items = new JsonArray();
    items.add(item);
    JsonObject parameters = new JsonObject();
    parameters.add("items", items);
    outgoing.request(
        "workspace/configuration",
        parameters,
        (answer, refused) -> {
          if (answer instanceof JsonArray sections && sections.size() == 1) {
            taker.accept(sections.get(0));
          } else if (refused != null) {
            log.unreadable("The client gives no settings: " + refused.getMessage());
          }
        });
  }

  private void register(String id, String method, JsonObject options) {
    JsonObject registration = new JsonObject();
    registration.addProperty("id", id);
    registration.addProperty("method", method);
    registration.add("registerOptions", options);
    send("client/registerCapability", "registrations", registration);
  }

  private void unregister(String id) {
    JsonObject registration = new JsonObject();
    registration.addProperty("id", id);
    registration.addProperty("method", WATCHED);
    // the protocol spells it so
    send("client/unregisterCapability", "unregisterations", registration);
  }

  private void send(String method, String list, JsonObject registration) {
    JsonArray registrations = new JsonArray();
    registrations.add(registration);
    JsonObject parameters = new JsonObject();
    parameters.add(list, registrations);
    String what = registration.get("method").getAsString();
    outgoing.request(
        method,
        parameters,
        (done, refused) -> {
          if (refused != null) {
            log.unreadable("The client refuses " + what + ": " + refused.getMessage());
          }
        });
  }
}
