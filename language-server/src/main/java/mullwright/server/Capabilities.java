package mullwright.server;

import com.google.gson.JsonObject;
import java.util.List;

/**
 * The answer to {@code initialize}: what each feature advertises, and how texts are kept in step.
 *
 * <p>Written as JSON and not as LSP4J's {@code ServerCapabilities}, whose forty fields of many
 * types cost a tenth of a cold start to write; a test reads it back as the real type.
 */
final class Capabilities {
  private static final int INCREMENTAL = 2;

  private Capabilities() {}

  static JsonObject of(Session session, List<Feature> features) {
    JsonObject server = new JsonObject();
    server.addProperty("positionEncoding", session.encoding().word());
    server.add("textDocumentSync", sync());
    server.add("workspace", folders());
    for (Feature feature : features) {
      feature.advertise(session.client(), server);
    }
    JsonObject result = new JsonObject();
    result.add("capabilities", server);
    JsonObject info = new JsonObject();
    info.addProperty("name", "mullwright");
    result.add("serverInfo", info);
    return result;
  }

  private static JsonObject sync() {
    JsonObject sync = new JsonObject();
    sync.addProperty("openClose", true);
    sync.addProperty("change", INCREMENTAL);
    sync.addProperty("save", true);
    return sync;
  }

  private static JsonObject folders() {
    JsonObject folders = new JsonObject();
    folders.addProperty("supported", true);
    folders.addProperty("changeNotifications", true);
    JsonObject workspace = new JsonObject();
    workspace.add("workspaceFolders", folders);
    return workspace;
  }
}
