package mullwright.server.command;

import com.google.auto.service.AutoService;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.quantity.Length;
import mullwright.quantity.LengthPrinter;
import mullwright.quantity.LengthReader;
import mullwright.server.Command;
import mullwright.server.CommandSource;
import mullwright.server.Desk;
import mullwright.server.Document;
import mullwright.server.Fields;
import mullwright.server.Route;
import mullwright.server.Window;
import mullwright.server.action.LineMove;
import org.eclipse.lsp4j.ApplyWorkspaceEditParams;

/**
 * Moves a grid line by any length; its neighbours stay where they are.
 *
 * <p>Arguments: the name of a line of the document last touched and a length with its unit, {@code
 * C} and {@code -2 1/2"}; or the address of a document, a position on a line's name, and a length,
 * which may have the name of another line before it: {@code C -2 1/2"}, since a line within {@code
 * A..G} need not be named anywhere. A length below nothing moves it to the left. Without arguments
 * the lines there are are told, and how to say which. Heeds {@code workspace.applyEdit}. The answer
 * is {@code {"title": …, "lines": […]}}.
 */
@AutoService(CommandSource.class)
public final class MoveLineCommand implements Command {
  private static final String HOW =
      "Say which grid line and how far: its name and a length with its unit, such as C and 2\", or"
          + " C and -50 mm for the left.";
  private static final String HOW_AT_PLACE =
      "Put the cursor on a line's name, or write the name before the length: C 2\", or C -50 mm for"
          + " the left.";

  /** What is to be moved, and how far. */
  private record Order(LineMove line, Length by) {}

  @Override
  public String name() {
    return "mullwright.moveLine";
  }

  @Override
  public Object run(List<JsonElement> arguments, Desk desk) {
    if (arguments.isEmpty()) {
      JsonObject answer = lines(desk);
      new Window(desk.editor()).say(answer.get("title").getAsString());
      return answer;
    }
    Order order = arguments.size() < 3 ? named(arguments, desk) : placed(arguments, desk);
    LineMove line = order.line();
    Length by = order.by();
    line.refusal(by)
        .ifPresent(
            why -> {
              throw Route.refused("Line " + line.line().name() + " is not moved. " + why);
            });
    if (!desk.client().can("workspace.applyEdit")) {
      throw Route.refused("This editor takes no edits from a command.");
    }
    String follows = line.follows(by, desk.cancel());
    ApplyWorkspaceEditParams edit =
        new ApplyWorkspaceEditParams(
            line.edits(by, desk.cancel()).toWorkspaceEdit(desk.client()), line.title(by));
    Window window = new Window(desk.editor());
    desk.editor()
        .request("workspace/applyEdit", edit)
        .whenComplete(
            (answer, refused) -> {
              if (refused != null || !applied(answer)) {
                window.say("The editor did not take the edit: " + line.title(by) + ".");
              }
            });
    return answer(line.title(by), List.of(follows));
  }

  // the wire reads an answer that has no type of its own as JSON
  private static boolean applied(Object answer) {
    return answer instanceof JsonObject said
        && said.has("applied")
        && said.get("applied").isJsonPrimitive()
        && said.get("applied").getAsBoolean();
  }

  /** The line of that name in the document last touched. */
  private static Order named(List<JsonElement> arguments, Desk desk) {
    Document document = desk.touched().orElseThrow(() -> Route.refused("Open a wall file first."));
    String name = Fields.text(arguments.get(0)).orElseThrow(() -> Route.refused(HOW));
    if (arguments.size() < 2) {
      throw Route.refused(HOW);
    }
    List<LineMove> lines = lines(document, name);
    if (lines.isEmpty()) {
      throw Route.refused("No wall of " + document.path() + " has a line " + name + ". " + HOW);
    }
    if (lines.size() > 1) {
      throw Route.refused(
          lines.size()
              + " walls of "
              + document.path()
              + " have a line "
              + name
              + ". Say which by the address of the file and a position on the line's name.");
    }
    String by = text(arguments.get(1));
    return new Order(lines.get(0), length(by).orElseThrow(() -> refused(by, HOW)));
  }

  /** Those of walls that say themselves where it stands, if there are any. */
  private static List<LineMove> lines(Document document, String name) {
    List<LineMove> all =
        LineMove.all(document).stream().filter(it -> it.line().name().equals(name)).toList();
    List<LineMove> own = all.stream().filter(LineMove::isOwn).toList();
    return own.isEmpty() ? all : own;
  }

  /** The line that is named before the length, else the line of the position. */
  private static Order placed(List<JsonElement> arguments, Desk desk) {
    Optional<Place> place = Place.of(arguments, desk);
    String said = text(arguments.get(2));
    Optional<Length> by = length(said);
    int space = said.indexOf(' ');
    if (place.isPresent() && by.isEmpty() && space > 0) {
      List<LineMove> named = lines(place.get().document(), said.substring(0, space));
      if (named.size() == 1) {
        String rest = said.substring(space).strip();
        return new Order(named.get(0), length(rest).orElseThrow(() -> refused(rest, HOW_AT_PLACE)));
      }
    }
    LineMove line =
        place
            .flatMap(Place::offset)
            .flatMap(
                offset ->
                    LineMove.at(place.get().document().cursor(offset), place.get().document()))
            .orElseThrow(
                () ->
                    Route.refused(
                        "No grid line of the wall's own is named there. " + HOW_AT_PLACE));
    return new Order(line, by.orElseThrow(() -> refused(said, "Say 2\", or -50 mm for the left.")));
  }

  private static String text(JsonElement argument) {
    return argument.isJsonPrimitive() ? argument.getAsString().strip() : "";
  }

  private static RuntimeException refused(String text, String how) {
    return Route.refused("“" + text + "” is no length with its unit. " + how);
  }

  /** A length with its sign; empty if it is none. */
  private static Optional<Length> length(String text) {
    boolean left = text.startsWith("-") || text.startsWith("−");
    String bare = left || text.startsWith("+") ? text.substring(1).strip() : text;
    Optional<Length> length = LengthReader.read(bare).value();
    if (length.isPresent() && length.get().signum() <= 0) {
      throw Route.refused("“" + text + "” moves nothing. Say 2\", or -50 mm for the left.");
    }
    return length.map(it -> left ? it.negated() : it);
  }

  private static JsonObject lines(Desk desk) {
    List<String> lines = new ArrayList<>();
    desk.touched()
        .ifPresent(
            document ->
                LineMove.all(document)
                    .forEach(
                        it ->
                            lines.add(
                                "wall "
                                    + it.wall().name()
                                    + ", line "
                                    + it.line().name()
                                    + " at "
                                    + LengthPrinter.exact(it.line().x(), it.units()))));
    return answer(HOW, lines);
  }

  private static JsonObject answer(String title, List<String> lines) {
    JsonObject answer = new JsonObject();
    answer.addProperty("title", title);
    JsonArray array = new JsonArray();
    lines.forEach(array::add);
    answer.add("lines", array);
    return answer;
  }
}
