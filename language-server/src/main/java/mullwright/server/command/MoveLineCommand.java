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
 * C} and {@code -2 1/2"}; or the address of a document, a position on a line's name, and a length.
 * A length below nothing moves it to the left. Without arguments the lines there are are told, and
 * how to say which. Heeds {@code workspace.applyEdit}. The answer is {@code {"title": …, "lines":
 * […]}}.
 */
@AutoService(CommandSource.class)
public final class MoveLineCommand implements Command {
  private static final String HOW =
      "Say which grid line and how far: its name and a length with its unit, such as C and 2\", or"
          + " C and -50 mm for the left.";

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
    LineMove line = arguments.size() < 3 ? named(arguments, desk) : placed(arguments, desk);
    Length by = length(arguments.get(arguments.size() - 1));
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
  private static LineMove named(List<JsonElement> arguments, Desk desk) {
    Document document = desk.touched().orElseThrow(() -> Route.refused("Open a wall file first."));
    String name = Fields.text(arguments.get(0)).orElseThrow(() -> Route.refused(HOW));
    if (arguments.size() < 2) {
      throw Route.refused(HOW);
    }
    List<LineMove> lines =
        LineMove.all(document).stream().filter(it -> it.line().name().equals(name)).toList();
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
    return lines.get(0);
  }

  private static LineMove placed(List<JsonElement> arguments, Desk desk) {
    Optional<Place> place = Place.of(arguments, desk);
    return place
        .flatMap(Place::offset)
        .flatMap(
            offset -> LineMove.at(place.get().document().cursor(offset), place.get().document()))
        .orElseThrow(() -> Route.refused("No grid line is named there. " + HOW));
  }

  private static Length length(JsonElement argument) {
    String text = argument.isJsonPrimitive() ? argument.getAsString().strip() : "";
    boolean left = text.startsWith("-") || text.startsWith("−");
    String bare = left || text.startsWith("+") ? text.substring(1).strip() : text;
    Length length =
        LengthReader.read(bare)
            .value()
            .orElseThrow(() -> Route.refused("“" + text + "” is no length with its unit. " + HOW));
    if (length.signum() <= 0) {
      throw Route.refused("“" + text + "” moves nothing. " + HOW);
    }
    return left ? length.negated() : length;
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
