package mullwright.server.command;

import com.google.auto.service.AutoService;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.List;
import mullwright.server.Command;
import mullwright.server.CommandSource;
import mullwright.server.Desk;
import mullwright.server.Document;
import mullwright.server.Window;
import mullwright.server.piece.LoadSummary;
import mullwright.server.piece.PieceWords;

/**
 * Tells what the pieces of a statement carry, piece by piece.
 *
 * <p>Arguments: the address of a document and a position in it; without a position each statement
 * of members, anchors and lites is told in one line. The answer is {@code {"title": …, "lines":
 * […], "caution": …}}. Few editors show an answer, so the title is said in a message too, with the
 * caution.
 */
@AutoService(CommandSource.class)
public final class LoadsCommand implements Command {
  @Override
  public String name() {
    return LoadSummary.COMMAND;
  }

  @Override
  public Object run(List<JsonElement> arguments, Desk desk) {
    JsonObject answer =
        Place.of(arguments, desk)
            .map(place -> answer(place, desk))
            .orElseGet(() -> answer("No wall file is open.", List.of()));
    boolean loads = answer.getAsJsonArray("lines").size() > 0;
    new Window(desk.editor())
        .say(answer.get("title").getAsString() + (loads ? ". " + PieceWords.CAUTION : ""));
    return answer;
  }

  private static JsonObject answer(Place place, Desk desk) {
    if (place.offset().isEmpty()) {
      return all(place.document(), desk);
    }
    return LoadSummary.at(place.document(), place.offset().get())
        .map(it -> answer(it.line(), it.pieces()))
        .orElseGet(
            () ->
                answer(
                    "Nothing here carries a load. Put the cursor on a statement of members,"
                        + " anchors or lites.",
                    List.of()));
  }

  private static JsonObject all(Document document, Desk desk) {
    List<String> lines = new ArrayList<>();
    for (int place : LoadSummary.places(document, desk.cancel())) {
      desk.cancel().check();
      int line = document.file().lines().line(place) + 1;
      LoadSummary.at(document, place).ifPresent(it -> lines.add("line " + line + ": " + it.line()));
    }
    return answer(
        PieceWords.count(lines.size(), "statement") + " of " + name(document) + " carry loads",
        lines);
  }

  /** Its path, or what the editor calls a text that is in no file yet. */
  private static String name(Document document) {
    String address = document.address();
    return address.startsWith("file:")
        ? document.path()
        : address.substring(Math.max(address.lastIndexOf('/'), address.lastIndexOf(':')) + 1);
  }

  private static JsonObject answer(String title, List<String> lines) {
    JsonObject answer = new JsonObject();
    answer.addProperty("title", title);
    JsonArray array = new JsonArray();
    lines.forEach(array::add);
    answer.add("lines", array);
    answer.addProperty("caution", PieceWords.CAUTION);
    return answer;
  }
}
