package mullwright.server;

import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.util.concurrent.CompletableFuture;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;

/**
 * What the editor's window can be asked for: to say a sentence, to show a document (LSP 3.17,
 * "Window Features").
 *
 * @param editor the way to it
 */
public record Window(Editor editor) {
  /** The capability of a client that shows documents when asked. */
  public static final String SHOWS = "window.showDocument.support";

  private static final int ERROR = 1;
  private static final int INFORMATION = 3;

  /** Says a sentence to the user. */
  public void say(String sentence) {
    say(INFORMATION, sentence);
  }

  /** Says a sentence to the user about what cannot be done. */
  public void complain(String sentence) {
    say(ERROR, sentence);
  }

  private void say(int type, String sentence) {
    JsonObject message = new JsonObject();
    message.addProperty("type", type);
    message.addProperty("message", sentence);
    editor.notify("window/showMessage", message);
  }

  /** Shows a document in the editor. */
  public CompletableFuture<Boolean> show(String address) {
    return show(parameters(address, false));
  }

  /** Shows an address in a program beside the editor, such as a browser. */
  public CompletableFuture<Boolean> showOutside(String address) {
    return show(parameters(address, true));
  }

  /** Shows a place of a document in the editor. */
  public CompletableFuture<Boolean> show(String address, Range place) {
    JsonObject parameters = parameters(address, false);
    JsonObject selection = new JsonObject();
    selection.add("start", json(place.getStart()));
    selection.add("end", json(place.getEnd()));
    parameters.add("selection", selection);
    return show(parameters);
  }

  private static JsonObject parameters(String address, boolean external) {
    JsonObject parameters = new JsonObject();
    parameters.addProperty("uri", address);
    parameters.addProperty("external", external);
    parameters.addProperty("takeFocus", true);
    return parameters;
  }

  private static JsonObject json(Position position) {
    JsonObject json = new JsonObject();
    json.addProperty("line", position.getLine());
    json.addProperty("character", position.getCharacter());
    return json;
  }

  /** True where it is shown; fails where the editor refuses. */
  private CompletableFuture<Boolean> show(JsonObject parameters) {
    return editor.request("window/showDocument", parameters).thenApply(Window::success);
  }

  // the wire reads an answer that has no type of its own as JSON
  private static boolean success(Object answer) {
    return answer instanceof JsonObject said
        && said.get("success") instanceof JsonPrimitive success
        && success.isBoolean()
        && success.getAsBoolean();
  }
}
