package mullwright.server.command;

import com.google.gson.JsonElement;
import java.util.List;
import java.util.Optional;
import mullwright.server.Desk;
import mullwright.server.Document;
import mullwright.server.Fields;
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
        arguments.isEmpty()
            ? desk.touched()
            : Fields.text(arguments.get(0)).flatMap(desk::document);
    return document.map(
        it ->
            new Place(
                it,
                arguments.size() < 2
                    ? Optional.empty()
                    : position(arguments.get(1)).map(it::offset)));
  }

  private static Optional<Position> position(JsonElement element) {
    return Fields.of(element)
        .flatMap(
            fields ->
                fields
                    .number("line")
                    .flatMap(
                        line ->
                            fields
                                .number("character")
                                .map(character -> new Position(line, character))));
  }
}
