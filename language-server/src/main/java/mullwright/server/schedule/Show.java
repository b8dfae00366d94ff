package mullwright.server.schedule;

import com.google.gson.JsonElement;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import mullwright.server.Command;
import mullwright.server.Desk;
import mullwright.server.Document;
import mullwright.server.Editor;
import mullwright.server.Route;
import mullwright.server.ShownFiles;
import mullwright.server.VirtualDocument;
import mullwright.server.Window;

/**
 * Shows a schedule of a file's walls in the editor. With no argument it is about the document last
 * touched; the first argument may be the address of another.
 *
 * <p>An editor that takes documents of the server ({@code workspace.textDocumentContent}, LSP 3.18)
 * shows one that follows every edit. For others the text is written to a file of the server's
 * temporary folder, which the editor is asked to show ({@code window.showDocument}) or, where it
 * cannot, told of. The answer is the address.
 */
final class Show implements Command {
  private static final String PREFIX = "mullwright.show";

  private final String schedule;
  private final ScheduleTexts texts;

  Show(String schedule, ScheduleTexts texts) {
    this.schedule = schedule;
    this.texts = texts;
  }

  @Override
  public String name() {
    return PREFIX + Character.toUpperCase(schedule.charAt(0)) + schedule.substring(1);
  }

  @Override
  public Object run(List<JsonElement> arguments, Desk desk) {
    Document document = document(arguments, desk);
    boolean shows = desk.client().can(Window.SHOWS);
    if (shows && desk.client().has("workspace.textDocumentContent")) {
      String address = new VirtualDocument(schedule, document.address()).address();
      new Window(desk.editor()).show(address);
      return address;
    }
    Editor editor = desk.editor();
    ShownFiles files = desk.shownFiles();
    return texts.apart(schedule, document, text -> written(document, text, files, shows, editor));
  }

  private static Document document(List<JsonElement> arguments, Desk desk) {
    if (!arguments.isEmpty() && arguments.get(0).isJsonPrimitive()) {
      String address = arguments.get(0).getAsString();
      return desk.document(address)
          .orElseThrow(() -> Route.refused("There is no wall file " + address + "."));
    }
    return desk.touched().orElseThrow(() -> Route.refused("Open a wall file first."));
  }

  private String written(
      Document document, String text, ShownFiles files, boolean shows, Editor editor) {
    String name = document.path().replace('/', '-').replaceAll("\\.wall$", "");
    Path file;
    try {
      file = files.write(document.address(), name + "." + schedule + ".txt", text);
    } catch (IOException unwritable) {
      throw Route.refused("The schedule cannot be written: " + unwritable.getMessage());
    }
    String address = Document.address(file);
    if (shows) {
      new Window(editor).show(address);
    } else {
      new Window(editor).say("Written to " + file);
    }
    return address;
  }
}
