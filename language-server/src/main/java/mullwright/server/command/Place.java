package mullwright.server.command;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.util.List;
import java.util.Optional;
import mullwright.server.Desk;
import mullwright.server.Document;
import org.eclipse.lsp4j.Position;

/**
 * The place a command is about: an address and a position as its first two arguments. What is
 * missing or of another form counts as not said.
 *
 * @param offset in the document, if a position is given
 */
record Place(Document document, Optional<Integer> offset) {
  /** The place that was said; without an address, the document last touched. */
  static Optional<Place> of(List<JsonElement> arguments, Desk desk) {
    Optional<Document> document =
        arguments.isEmpty() ? desk.touched() : text(arguments.get(0)).flatMap(desk::document);
    return document.map(
        it ->
            new Place(
                it,
                arguments.size() < 2
                    ? Optional.empty()
                    : position(arguments.get(1)).map(it::offset)));
  }

  private static Optional<String> text(JsonElement element) {
    return element.isJsonPrimitive() && element.getAsJsonPrimitive().isString()
        ? Optional.of(element.getAsString())
        : Optional.empty();
  }

  private static Optional<Position> position(JsonElement element) {
    if (!element.isJsonObject()) {
      return Optional.empty();
    }
    JsonObject fields = element.getAsJsonObject();
    return isNumber(fields.get("line")) && isNumber(fields.get("character"))
        ? Optional.of(
            new Position(fields.get("line").getAsInt(), fields.get("character").getAsInt()))
        : Optional.empty();
  }

  private static boolean isNumber(JsonElement element) {
    return element != null && element.isJsonPrimitive() && element.getAsJsonPrimitive().isNumber();
  }
}
