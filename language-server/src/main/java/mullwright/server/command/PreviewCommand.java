package mullwright.server.command;

import com.google.auto.service.AutoService;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.io.UncheckedIOException;
import java.util.List;
import mullwright.server.Command;
import mullwright.server.CommandSource;
import mullwright.server.Desk;
import mullwright.server.Route;
import mullwright.server.Window;

/**
 * Shows the live drawing of the walls that are open in a browser.
 *
 * <p>Answers with its address. Heeds {@code window.showDocument.support}: without it, or where the
 * client does not open it, the address is told by {@code window/showMessage}.
 */
@AutoService(CommandSource.class)
public final class PreviewCommand implements Command {
  @Override
  public String name() {
    return "mullwright.preview";
  }

  @Override
  public Object run(List<JsonElement> arguments, Desk desk) {
    String address = address(desk);
    Window window = new Window(desk.editor());
    if (desk.client().can(Window.SHOWS)) {
      window
          .showOutside(address)
          .whenComplete(
              (shown, refused) -> {
                if (refused != null || !shown) {
                  tell(window, address);
                }
              });
    } else {
      tell(window, address);
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

  private static void tell(Window window, String address) {
    window.say("The live drawing is at " + address);
  }
}
