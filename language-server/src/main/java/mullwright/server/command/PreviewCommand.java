package mullwright.server.command;

import com.google.auto.service.AutoService;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.io.UncheckedIOException;
import java.util.List;
import mullwright.server.Command;
import mullwright.server.CommandSource;
import mullwright.server.Desk;
import mullwright.server.Editor;
import mullwright.server.Route;

/**
 * Shows the live drawing of the walls that are open in a browser.
 *
 * <p>Answers with its address. Heeds {@code window.showDocument.support}: without it, or where the
 * client does not open it, the address is told by {@code window/showMessage}.
 */
@AutoService(CommandSource.class)
public final class PreviewCommand implements Command {
  private static final int INFO = 3;

  @Override
  public String name() {
    return "mullwright.preview";
  }

  @Override
  public Object run(List<JsonElement> arguments, Desk desk) {
    String address = address(desk);
    Editor editor = desk.editor();
    if (desk.client().can("window.showDocument.support")) {
      JsonObject parameters = new JsonObject();
      parameters.addProperty("uri", address);
      parameters.addProperty("external", true);
      parameters.addProperty("takeFocus", true);
      editor
          .request("window/showDocument", parameters)
          .whenComplete(
              (answer, refused) -> {
                if (refused != null || !success(answer)) {
                  tell(editor, address);
                }
              });
    } else {
      tell(editor, address);
    }
    JsonObject answer = new JsonObject();
    answer.addProperty("uri", address);
    return answer;
  }

  private static String address(Desk desk) {
    try {
      return desk.liveView().orElseThrow(() -> Route.refused("This build has no live drawing."));
    } catch (UncheckedIOException failed) {
      throw Route.refused(
          "The live drawing cannot be served: "
              + failed.getCause().getMessage()
              + ". It needs a free port of this machine's loopback address.");
    }
  }

  // the wire reads an answer that has no type of its own as JSON
  private static boolean success(Object answer) {
    return answer instanceof JsonObject said
        && said.get("success") instanceof JsonPrimitive success
        && success.isBoolean()
        && success.getAsBoolean();
  }

  private static void tell(Editor editor, String address) {
    JsonObject message = new JsonObject();
    message.addProperty("type", INFO);
    message.addProperty("message", "The live drawing is at " + address);
    editor.notify("window/showMessage", message);
  }
}
